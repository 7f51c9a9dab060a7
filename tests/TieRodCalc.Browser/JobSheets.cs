using System.ComponentModel;
using System.Text.Json;
using TieRodCalc.Browser.Checks;
using TieRodCalc.Yaml;

namespace TieRodCalc.Browser;

/// <summary>Makes the bench sheets of jobs with the command, prints and checks them.</summary>
internal sealed class JobSheets(DevTools tools, Options options)
{
    private readonly CommandLine _command = new(options.Command);

    /// <summary>All findings of one job; a sheet that is not made is one.</summary>
    public async Task<IReadOnlyList<Finding>> CheckAsync(string job)
    {
        const string Made = "the sheet is made";
        Directory.CreateDirectory(options.Folder);
        string name = Path.Combine(options.Folder, Path.GetFileNameWithoutExtension(job));
        File.Delete(name + ".html");
        if (JobReader.Read(job).Value is not { } read)
        {
            return [new Finding(Made, [$"{job} cannot be read"])];
        }

        CommandResult plan;
        CommandResult sheet;
        try
        {
            plan = await _command.RunAsync("plan", job, "--json");
            sheet = await _command.RunAsync("sheet", job, "-o", name + ".html");
        }
        catch (Win32Exception e)
        {
            return [new Finding(Made, [e.Message])];
        }

        // A rod that cannot be built has its page too: 1, as the plan says.
        if (sheet.Status is not (0 or 1) || sheet.Status != plan.Status || !File.Exists(name + ".html"))
        {
            return [new Finding(Made, [$"status {sheet.Status}, of the plan {plan.Status}: {sheet.Errors}{plan.Errors}".TrimEnd()])];
        }

        using JsonDocument planned = JsonDocument.Parse(plan.Output);
        Findings findings = await SheetChecks.RunAsync(
            tools,
            name + ".html",
            PlanFigures.Of(planned.RootElement, read.Units),
            (paper, printed) => KeepAsync(name, paper, printed));
        return findings.All;
    }

    private async Task KeepAsync(string name, Paper paper, byte[] printed)
    {
        string file = $"{name}-{paper.Name}";
        await File.WriteAllBytesAsync(file + ".pdf", printed);
        if (options.Pictures)
        {
            CommandResult drawn = await new CommandLine("pdftoppm").RunAsync("-r", "110", "-png", file + ".pdf", file);
            if (drawn.Status != 0)
            {
                throw new BrowserException($"pdftoppm: {drawn.Errors}");
            }
        }
    }
}
