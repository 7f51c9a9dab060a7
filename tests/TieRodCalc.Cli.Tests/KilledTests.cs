using System.Diagnostics;

namespace TieRodCalc.Cli.Tests;

/// <summary>Killed outright, or out of space: there is the old file or the new one, whole.</summary>
public sealed class KilledTests : IDisposable
{
    private const int Runs = 4;
    private const int Seed = 271_828;
    private readonly string _folder = Directory.CreateTempSubdirectory("tierodcalc-").FullName;

    /// <summary>So many rods that a sheet of them is some megabytes, which take a while to write.</summary>
    private static readonly string s_job = CheckJobs.W1 + string.Concat(Enumerable.Range(2, 40).Select(number =>
        $"\n  - {{name: w{number}, inner: i, sleeve: s, outer: o, nuts: {{inner: nl, outer: nr}}, length: 365.125 mm, adjust: 3.175 mm}}"));

    private string Sheet => Path.Combine(_folder, "sheet.html");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData(null)]
    [InlineData("mine")]
    public void Killed_at_any_moment_it_leaves_the_old_file_or_the_new_one(string? before)
    {
        Assert.Equal(0, CommandLine.RunWith(s_job, "sheet", "-", "-o", Sheet).Status);
        string after = File.ReadAllText(Sheet);
        Assert.InRange(after.Length, 500_000, int.MaxValue);
        Random random = new(Seed);
        for (int run = 0; run < Runs; run++)
        {
            Array.ForEach(Directory.GetFiles(_folder), File.Delete);
            if (before is not null)
            {
                File.WriteAllText(Sheet, before);
            }

            using Process process = CommandProcess.Start(["sheet", "-", "-o", Sheet, "--force"], withInput: true);
            process.StandardInput.Write(s_job);
            process.StandardInput.Close();

            // At the first sign of a file, or shortly after it, while it is written and moved.
            (int Files, long Length) there = Seen();
            while (Seen() == there && !process.HasExited)
            {
            }

            Thread.SpinWait(run == 0 ? 0 : random.Next(200_000));
            process.Kill();
            process.WaitForExit();

            string? left = File.Exists(Sheet) ? File.ReadAllText(Sheet) : null;
            Assert.True(left == before || left == after, $"run {run}: {left?.Length} characters");
            Assert.All(Directory.GetFiles(_folder).Where(file => file != Sheet), file =>
                Assert.Matches(@"/\.tierodcalc\.[a-z0-9.]+\.part$", file));
        }
    }

    /// <summary>A limit of the size of files is what makes a disk full for anybody who runs this test.</summary>
    [Theory]
    [InlineData(null)]
    [InlineData("mine")]
    public void A_full_disk_is_said_and_the_old_file_is_kept(string? before)
    {
        if (before is not null)
        {
            File.WriteAllText(Sheet, before);
        }

        CommandLine run = Limited("sheet", Repository.Sample("jobs", "car-27.yaml"), "-o", Sheet, "--force");
        Assert.Equal((ExitStatus.WrongInput, string.Empty), (run.Status, run.Output));
        Assert.StartsWith($"tierodcalc: {Sheet} cannot be written: ", run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(before is null ? [] : [Sheet], Directory.GetFileSystemEntries(_folder));
        Assert.Equal(before, File.Exists(Sheet) ? File.ReadAllText(Sheet) : null);
    }

    /// <summary>How many files there are, and how long the one is that is waited for.</summary>
    private (int Files, long Length) Seen()
    {
        FileInfo sheet = new(Sheet);
        return (Directory.GetFileSystemEntries(_folder).Length, sheet.Exists ? sheet.Length : 0);
    }

    private static CommandLine Limited(params string[] args) => CommandProcess.InShell(
        "trap '' XFSZ; ulimit -f 16; DOTNET_EnableWriteXorExecute=0", string.Empty, string.Empty, args);
}
