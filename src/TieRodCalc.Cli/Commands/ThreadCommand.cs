using System.CommandLine;
using TieRodCalc.Cli.Rendering;

namespace TieRodCalc.Cli.Commands;

/// <summary><c>thread DESIGNATION</c>: limits, engagement and look-alikes of a thread, or whether two go together.</summary>
internal static class ThreadCommand
{
    public static Command Make(Terminal terminal)
    {
        ThreadInput input = new();
        Command command = input.AddTo(new Command(
            "thread",
            "Tell what a thread is and needs, or whether it goes into another one.\n"
            + "Says limits of size, tap drill, stress area, required engagement and look-alikes.\n"
            + "Example: tierodcalc thread 5/8-18 UNF-2A LH --male-tensile 120 ksi"));
        command.SetAction(parsed => Run(input, parsed, terminal));
        return command;
    }

    private static int Run(ThreadInput input, ParseResult parsed, Terminal terminal)
    {
        if (input.Read(parsed, terminal) is not { } question)
        {
            return ExitStatus.WrongInput;
        }

        ThreadReport report = ThreadReport.Of(question);
        int? notWritten = terminal.Write(input.WantsJson(parsed) ? ThreadJson.Of(report) : ThreadPage.Of(report));
        return notWritten ?? (report.Matches ? ExitStatus.Holds : ExitStatus.DoesNotHold);
    }
}
