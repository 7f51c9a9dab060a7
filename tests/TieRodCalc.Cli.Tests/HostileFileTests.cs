using System.Diagnostics;
using System.Text;

namespace TieRodCalc.Cli.Tests;

/// <summary>Names that are no file, files that are no text, and files that change: through the commands.</summary>
public sealed class HostileFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("tierodcalc-hostile").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_large_file_is_refused_and_not_read()
    {
        string path = At("large.yaml");
        using (FileStream large = File.Create(path))
        {
            large.Write(Encoding.UTF8.GetBytes(CheckJobs.W2 + "\n#"));
            large.SetLength(200_000_000);
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        AssertRefused($"{path}: error: the file is larger than 8 MiB", "check", path);
        AssertRefused($"{path}: error: the file is larger than 8 MiB", "plan", path);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 4_000_000);
    }

    /// <summary>The length of such a file is known to nobody, and its end never comes.</summary>
    [Fact]
    public void An_endless_input_is_read_to_8_mebibytes()
    {
        using EndlessInput endless = new();
        using MemoryStream output = new();
        using MemoryStream error = new();
        long before = GC.GetAllocatedBytesForCurrentThread();
        int status = Application.Run(["plan", "-"], new Terminal(() => endless, output, error));
        Assert.Equal((2, 0), (status, output.Length));
        Assert.Contains("-: error: the file is larger than 8 MiB", Encoding.UTF8.GetString(error.ToArray()), StringComparison.Ordinal);
        Assert.InRange(endless.Given, 8 * 1024 * 1024, 9 * 1024 * 1024);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 64 * 1024 * 1024);
    }

    [Fact]
    public void What_is_no_file_is_refused_by_itself_and_as_a_part_file()
    {
        List<(string Path, string Error)> cases =
        [
            (_folder, "this is a folder, not a file"),
            (At("missing.yaml"), "there is no such file"),
            (At(new string('a', 300) + ".yaml"), "there is no such file"),
        ];
        if (!OperatingSystem.IsWindows())
        {
            Process.Start("mkfifo", [At("pipe.yaml")]).WaitForExit();
            File.CreateSymbolicLink(At("loop-1.yaml"), At("loop-2.yaml"));
            File.CreateSymbolicLink(At("loop-2.yaml"), At("loop-1.yaml"));
            File.CreateSymbolicLink(At("nowhere.yaml"), At("missing.yaml"));
            File.CreateSymbolicLink(At("to-pipe.yaml"), At("pipe.yaml"));
            cases.AddRange(
            [
                ("/dev/zero", "a device or a pipe"),
                ("/dev/null", "a device or a pipe"),
                (At("pipe.yaml"), "a device or a pipe"),
                (At("to-pipe.yaml"), "a device or a pipe"),
                (At("loop-1.yaml"), "it cannot be read"),
                (At("nowhere.yaml"), "there is no such file"),
            ]);
        }

        foreach ((string path, string error) in cases)
        {
            AssertRefused(error, "check", path);
            AssertRefused(error, "plan", path);
            if (path != _folder)
            {
                string job = At("job.yaml");
                File.WriteAllText(job, $"{CheckJobs.W2}\nparts: ['{path}']\n");
                AssertRefused(error, "check", job);
            }
        }
    }

    [Fact]
    public void A_folder_of_parts_that_holds_a_pipe_is_refused()
    {
        if (!OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(At("parts"));
            Process.Start("mkfifo", [At("parts/pipe.yaml")]).WaitForExit();
            Directory.CreateDirectory(At("parts/folder.yaml"));
            File.CreateSymbolicLink(At("parts/parts.yaml"), At("parts"));
            File.WriteAllText(At("job.yaml"), $"{CheckJobs.W2}\nparts: [parts]\n");
            AssertRefused("pipe.yaml: error: the file is empty (or is a device or a pipe", "plan", At("job.yaml"));
        }
    }

    /// <summary>Every prefix of this file that ends in the growing comment is sound, so what was read is sound or too large.</summary>
    [Fact]
    public void A_file_that_grows_while_it_is_read_is_sound_or_too_large()
    {
        string path = At("growing.yaml");
        byte[] comment = new byte[1 << 16];
        comment.AsSpan().Fill((byte)'#');
        int grown = 0;
        for (int round = 0; round < 20; round++)
        {
            File.WriteAllText(path, CheckJobs.W2 + "\n#");
            using FileStream writer = new(path, FileMode.Append, FileAccess.Write, FileShare.ReadWrite, bufferSize: 0);
            using ManualResetEventSlim begun = new();
            bool stop = false;
            Thread growing = new(() =>
            {
                while (!Volatile.Read(ref stop) && writer.Length < 50_000_000)
                {
                    writer.Write(comment);
                    begun.Set();
                }
            });
            growing.Start();
            begun.Wait();
            long before = writer.Length;
            CommandLine run = CommandLine.Run("check", path);
            Volatile.Write(ref stop, true);
            growing.Join();
            grown += writer.Length > before ? 1 : 0;
            string expected = run.Status == 0 ? $"{path}: sound; a job with 1 rod\n" : $"{path}: error: the file is larger than 8 MiB";
            Assert.StartsWith(expected, run.Status == 0 ? run.Output : run.Error, StringComparison.Ordinal);
            Assert.Empty(run.Status == 0 ? run.Error : run.Output);
        }

        Assert.True(grown > 0, "the file never grew while it was read");
    }

    [Fact]
    public void A_file_without_permission_is_told()
    {
        if (!OperatingSystem.IsWindows() && !Environment.IsPrivilegedProcess)
        {
            // Who may read everything has the same answer tested below, on a stream.
            string path = At("secret.yaml");
            File.WriteAllText(path, CheckJobs.W2);
            File.SetUnixFileMode(path, UnixFileMode.None);
            AssertRefused($"{path}: error: there is no permission to read it", "plan", path);
        }

        using MemoryStream output = new();
        using MemoryStream error = new();
        int status = Application.Run(["plan", "-"], new Terminal(() => new ForbiddenInput(), output, error));
        Assert.Equal((2, 0), (status, output.Length));
        Assert.Contains("-: error: there is no permission to read it", Encoding.UTF8.GetString(error.ToArray()), StringComparison.Ordinal);
    }

    private static void AssertRefused(string error, params string[] args)
    {
        CommandLine run = CommandLine.Run(args);
        Assert.True(run.Status == 2 && run.Output.Length == 0, $"{string.Join(' ', args)}: {run}");
        Assert.Contains(error, run.Error, StringComparison.Ordinal);
    }

    private string At(string name) => Path.Combine(_folder, name);

    /// <summary>A comment without end.</summary>
    private sealed class EndlessInput : MemoryStream
    {
        public long Given { get; private set; }

        public override int Read(byte[] buffer, int offset, int count)
        {
            buffer.AsSpan(offset, count).Fill((byte)'#');
            Given += count;
            return count;
        }
    }

    private sealed class ForbiddenInput : MemoryStream
    {
        public override int Read(byte[] buffer, int offset, int count) =>
            throw new UnauthorizedAccessException("Access to the path is denied.");
    }
}
