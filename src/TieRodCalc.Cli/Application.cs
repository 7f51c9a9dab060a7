using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using TieRodCalc.Cli.Commands;
using TieRodCalc.Cli.Rendering;

namespace TieRodCalc.Cli;

/// <summary>The command line as a whole.</summary>
internal static class Application
{
    /// <summary>How words are parsed: no response files.</summary>
    public static ParserConfiguration Parsing => new() { ResponseFileTokenReplacer = null };

    /// <summary>Runs one command.</summary>
    /// <param name="args">Its words.</param>
    /// <param name="terminal">Where it reads and writes.</param>
    /// <returns>The exit status.</returns>
    public static int Run(string[] args, Terminal terminal)
    {
        try
        {
            return Invoke(args, terminal);
        }
        catch (OperationCanceledException)
        {
            terminal.Complain("tierodcalc: interrupted; nothing was written.\n");
            return ExitStatus.Interrupted;
        }
#pragma warning disable CA1031 // Whatever gets here is a fault of this program, and is told as one.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            terminal.Complain(
                $"tierodcalc: a fault of the program itself, nothing was computed. Please report it with the files.\n{fault}\n");
            return ExitStatus.Fault;
        }
    }

    /// <summary>All commands.</summary>
    public static RootCommand Root(Terminal terminal)
    {
        RootCommand root = new(
            "Plans steering tie rods made of mismatched parts: how much to cut, how much thread is engaged at every "
            + "setting, whether the nuts fit, and how far a turn moves the toe.\n"
            + "Example: tierodcalc plan catalog-samples/jobs/car-27.yaml")
        {
            PlanCommand.Make(terminal),
            ChooseCommand.Make(terminal),
            AsBuiltCommand.Make(terminal),
            ToeCommand.Make(terminal),
            BumpCommand.Make(terminal),
            ThreadCommand.Make(terminal),
            CheckCommand.Make(terminal),
            SheetCommand.Make(terminal),
            NewCommand.Make(terminal),
            CompletionCommand.Make(terminal),
        };
        foreach (Option option in root.Options)
        {
            option.Description = option is VersionOption ? "Print the version." : "Print this help; after a command, that of the command.";
        }

        return root;
    }

    private static int Invoke(string[] args, Terminal terminal)
    {
        RootCommand root = Root(terminal);
        if (ShellCompletion.Answer(args, root) is { } answer)
        {
            return terminal.Write(answer) ?? ExitStatus.Holds;
        }

        ParseResult parsed = root.Parse(args, Parsing);
        if (parsed.Action is HelpAction)
        {
            return terminal.Write(HelpText.Of(parsed.CommandResult.Command, root)) ?? ExitStatus.Holds;
        }

        if (UsageErrors.OfFlags(args, parsed) is { } valued)
        {
            terminal.Complain(valued);
            return ExitStatus.WrongInput;
        }

        if (parsed.Action is ParseErrorAction || (parsed.Action is null && parsed.Errors.Count > 0))
        {
            terminal.Complain(UsageErrors.Of(parsed));
            return ExitStatus.WrongInput;
        }

        using StringWriter written = new();
        int status = parsed.Invoke(new InvocationConfiguration
        {
            EnableDefaultExceptionHandler = false,
            Output = written,
            Error = written,
            ProcessTerminationTimeout = null,
        });
        string version = written.ToString();
        return version.Length == 0 ? status : terminal.Write(version) ?? status;
    }
}
