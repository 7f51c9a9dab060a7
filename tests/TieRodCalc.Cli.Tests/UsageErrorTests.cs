namespace TieRodCalc.Cli.Tests;

/// <summary>What a wrong command line is told, whole: status 2, nothing on standard output.</summary>
public sealed class UsageErrorTests
{
    private static readonly string Car = Repository.Sample("jobs", "car-27.yaml");
    private static readonly string Short = Repository.Sample("jobs", "car-27-short-sleeve.yaml");

    private static readonly string Commands =
        string.Join(", ", Application.Root(CommandLine.Nowhere).Subcommands.Select(command => command.Name));

    [Theory]
    [InlineData("there is no command 'plam'. Did you mean 'plan'?", "plam")]
    [InlineData("there is no command 'PLAN'. Did you mean 'plan'?", "PLAN", "car.yaml")]
    [InlineData("there is no command 'thraed'. Did you mean 'thread'?", "thraed", "5/8-18")]
    [InlineData("there is no command 'help'. Did you mean '--help'?", "help")]
    [InlineData("there is no option '--verison'. Did you mean '--version'?", "--verison")]
    [InlineData("'car.yaml' is no command; the command comes first, as in: tierodcalc plan car.yaml", "car.yaml")]
    [InlineData("'jobs/car' is no command; the command comes first, as in: tierodcalc plan jobs/car", "jobs/car")]
    public void A_wrong_command_is_told_the_nearest(string message, params string[] args) => Says($"{message}\nHelp: tierodcalc --help\n",
        args);

    [Theory]
    [InlineData("a command is missing")]
    [InlineData("there is no command 'nonsense'", "nonsense")]
    [InlineData("there is no command 'one'", "one", "two", "one")]
    [InlineData("there is no command '@file'", "@file")]
    public void Where_none_is_near_all_are_named(string message, params string[] args) =>
        Says($"{message}; the commands are {Commands}.\nHelp: tierodcalc --help\n", args);

    [Theory]
    [InlineData("plan has no option '--jsn'. Did you mean '--json'?", "plan", "-", "--jsn")]
    [InlineData("plan has no option '-json'. Did you mean '--json'?", "plan", "-json", "-")]
    [InlineData("plan has no option '--rood'. Did you mean '--rod'?", "plan", "-", "--rood=left")]
    [InlineData("plan has no option '--nonsense'.", "plan", "-", "--nonsense")]
    [InlineData("plan has no option '--top'; choose has it.", "plan", "--top", "3")]
    [InlineData("plan has no option '--top'; choose has it.", "plan", "-", "--top=3")]
    [InlineData("plan has no option '--version'; it stands alone: tierodcalc --version", "plan", "--version")]
    [InlineData("'--json' stands where no option can; options come after the command: tierodcalc plan --json", "--json", "plan", "-")]
    [InlineData("'car.yaml' stands before the command; the command comes first: tierodcalc plan car.yaml", "car.yaml", "plan")]
    [InlineData("there is no command 'help'. Did you mean '--help'?", "help", "plan")]
    [InlineData("plan needs JOB: the job file; - reads it from standard input.", "plan")]
    [InlineData("JOB is empty, and is to be the name of a file.", "plan", "")]
    [InlineData("'two' is one word too many: plan takes one JOB. What holds a blank is written in quotes.", "plan", "-", "--rod", "one",
        "two")]
    [InlineData("--json takes no value, and is given 'maybe'.", "plan", "-", "--json=maybe")]
    [InlineData("--json takes no value, and is given 'maybe'.", "plan", "--json:maybe")]
    [InlineData("--rod needs a value after it: --rod NAME", "plan", "-", "--rod")]
    [InlineData("--with is given more than once.", "plan", "-", "--with", "one", "--with", "two")]
    public void A_fault_is_one_plain_sentence(string message, params string[] args) => Says($"{message}\nHelp: tierodcalc plan --help\n",
        args);

    [Theory]
    [InlineData("choose", "there is no order 'pricee'; --sort takes best, margin, price, mass, cut. Did you mean 'price'?", "-", "--sort",
        "pricee")]
    [InlineData("choose", "there is no order ''; --sort takes best, margin, price, mass, cut.", "-", "--sort", "")]
    [InlineData("choose", "--sort is given more than once.", "-", "--sort", "mass", "--sort", "price")]
    [InlineData("choose", "--top is given more than once.", "-", "--top", "3", "--top", "4")]
    [InlineData("choose", "--top takes a whole number from 1 to 10000, not 'many'.", "-", "--top", "many")]
    [InlineData("choose", "--top takes a whole number from 1 to 10000, not '+3'.", "-", "--top", "+3")]
    [InlineData("toe", "--picture is followed by an empty file name.", "-", "--picture", "")]
    [InlineData("toe", "--force overwrites the file of --picture, and none is named: --picture FILE --force", "-", "--force")]
    [InlineData("asbuilt", "--force overwrites the file of --record, and none is named: --record FILE --force", "--force", "-")]
    [InlineData("sheet", "sheet needs -o FILE: the HTML file to be written.", "-")]
    [InlineData("sheet", "-o is followed by an empty file name.", "-", "-o", "")]
    [InlineData("check", "check needs FILE: part and job files; - reads one from standard input.")]
    [InlineData("check", "FILE is empty, and is to be the name of a file.", "-", "")]
    [InlineData("completion", "completion needs SHELL: one of bash, zsh, fish, powershell.")]
    [InlineData("completion", "there is no script for a shell 'bsh'; there is one for bash, zsh, fish, powershell. Did you mean 'bash'?",
        "bsh")]
    [InlineData("completion", "completion has no option '--top'; choose has it.", "--top")]
    public void Help_is_that_of_the_command_in_question(string command, string message, params string[] args) =>
        Says($"{message}\nHelp: tierodcalc {command} --help\n", [command, .. args]);

    [Fact]
    public void Check_refuses_options_and_takes_the_dash_that_is_standard_input()
    {
        Says("check has no option '--nonsense'.\nHelp: tierodcalc check --help\n", "check", "-", "--nonsense");
        CommandLine two = CommandLine.Run("check", "-x", "-", "--json");
        Assert.StartsWith("tierodcalc: check has no option '-x'.\ntierodcalc: check has no option '--json'; plan,", two.Error,
            StringComparison.Ordinal);
        Assert.Equal(0, CommandLine.RunWith(CheckJobs.W1, "check", "-").Status);
    }

    [Fact]
    public void A_wrong_rod_is_told_the_nearest()
    {
        Says("no rod is called 'lfet'; the job has left, right. Did you mean 'left'?\n", "plan", Car, "--rod", "lfet");
        Says("no rod is called ''; the job has left, right.\n", "toe", Car, "--rod", "");
        Says(
            "no rod is called 'lift'; the job has left, right. Did you mean 'left'?\n"
                + "tierodcalc: no rod is called 'x'; the job has left, right.\n",
            "plan", Car, "--rod", "lift", "--rod", "right", "--rod", "x");
    }

    [Fact]
    public void A_wrong_remedy_is_told_the_nearest()
    {
        const string Known = "is no remedy of rod left; its remedies: longer-sleeve, shorter-target.";
        Says($"'longer-sleve' {Known} Did you mean 'longer-sleeve'?\n", "plan", Short, "--with", "longer-sleve");
        Says($"'nonsense' {Known}\n", "plan", Short, "--with", "nonsense");
        Says(
            "every rod can be built as it is, so there is no remedy to plan with, neither 'longer-sleeve' nor another; leave --with out.\n",
            "plan", Car, "--with", "longer-sleeve");
    }

    /// <summary>An option that another command has, of every command and every option that only others have.</summary>
    [Fact]
    public void An_option_of_another_command_says_whose_it_is()
    {
        System.CommandLine.Command[] commands = [.. Application.Root(CommandLine.Nowhere).Subcommands];
        string[] names = [.. commands.SelectMany(command => command.Options).Select(option => option.Name).Distinct()];
        int tried = 0;
        foreach (System.CommandLine.Command command in commands)
        {
            foreach (string name in names.Where(name => command.Options.All(option => option.Name != name)))
            {
                string[] others = [.. commands.Where(other => other.Options.Any(option => option.Name == name)).Select(other =>
                    other.Name)];
                Says(
                    $"{command.Name} has no option '{name}'; {string.Join(", ", others)} {(others.Length == 1 ? "has" : "have")} it.\n"
                        + $"Help: tierodcalc {command.Name} --help\n",
                    command.Name, name);
                tried++;
            }
        }

        Assert.True(tried > 20);
    }

    private static void Says(string message, params string[] args)
    {
        CommandLine run = CommandLine.Run(args);
        Assert.Equal($"tierodcalc: {message}", run.Error);
        Assert.Equal(2, run.Status);
        Assert.Empty(run.Output);
    }
}
