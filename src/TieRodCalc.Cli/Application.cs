using System.CommandLine;
using System.CommandLine.Invocation;
using TieRodCalc.Cli.Commands;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Text;

namespace TieRodCalc.Cli;

/// <summary>The command line as a whole.</summary>
internal static class Application
{
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

    private static int Invoke(string[] args, Terminal terminal)
    {
        RootCommand root = new(
            "Plans steering tie rods made of mismatched parts: how much to cut, how much thread is engaged at every "
            + "setting, whether the nuts fit, and how far a turn moves the toe.\n\n"
            + string.Join("\n", Cautions.All))
        {
            PlanCommand.Make(terminal),
            ChooseCommand.Make(terminal),
            AsBuiltCommand.Make(terminal),
            ToeCommand.Make(terminal),
            ThreadCommand.Make(terminal),
            CheckCommand.Make(terminal),
            SheetCommand.Make(terminal),
            NewCommand.Make(terminal),
        };
        ParseResult parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Action is ParseErrorAction || (parsed.Action is null && parsed.Errors.Count > 0))
        {
            terminal.Complain(UsageErrors.Of(parsed));
            return ExitStatus.WrongInput;
        }

        using StringWriter help = new();
        int status = parsed.Invoke(new InvocationConfiguration
        {
            EnableDefaultExceptionHandler = false,
            Output = help,
            Error = help,
            ProcessTerminationTimeout = null,
        });
        string helped = help.ToString();
        return helped.Length == 0 ? status : terminal.Write(helped) ?? status;
    }
}
