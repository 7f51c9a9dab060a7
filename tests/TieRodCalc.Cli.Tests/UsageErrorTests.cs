namespace TieRodCalc.Cli.Tests;

/// <summary>What a wrong command line is told, whole.</summary>
public sealed class UsageErrorTests
{
    [Fact]
    public void An_unknown_command_is_not_also_said_to_be_missing() => Says(
        "tierodcalc: Unrecognized command or argument 'nonsense'.\nHelp: tierodcalc --help\n", "nonsense");

    [Fact]
    public void Every_unknown_word_is_said_once() => Says(
        "tierodcalc: Unrecognized command or argument 'one'.\ntierodcalc: Unrecognized command or argument 'two'.\nHelp: tierodcalc --help\n",
        "one", "two", "one");

    [Fact]
    public void A_missing_command_is_said() => Says("tierodcalc: Required command was not provided.\nHelp: tierodcalc --help\n");

    [Fact]
    public void Help_is_that_of_the_command_in_question()
    {
        Says("tierodcalc: Required argument 'JOB' missing for command: 'plan'.\nHelp: tierodcalc plan --help\n", "plan");
        Says("tierodcalc: Required argument 'FILE' missing for command: 'check'.\nHelp: tierodcalc check --help\n", "check");
        Says("tierodcalc: Unrecognized command or argument '--nonsense'.\nHelp: tierodcalc plan --help\n", "plan", "-", "--nonsense");
    }

    [Fact]
    public void Check_refuses_options_and_takes_the_dash_that_is_standard_input()
    {
        Says("tierodcalc: Unrecognized option '--nonsense'.\nHelp: tierodcalc check --help\n", "check", "-", "--nonsense");
        Says(
            "tierodcalc: Unrecognized option '-x'.\ntierodcalc: Unrecognized option '--json'.\nHelp: tierodcalc check --help\n",
            "check", "-x", "-", "--json");
        Assert.Equal(0, CommandLine.RunWith(CheckJobs.W1, "check", "-").Status);
    }

    private static void Says(string message, params string[] args)
    {
        CommandLine run = CommandLine.Run(args);
        Assert.Equal(message, run.Error);
        Assert.Equal(2, run.Status);
        Assert.Empty(run.Output);
    }
}
