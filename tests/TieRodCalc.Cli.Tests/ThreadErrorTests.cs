namespace TieRodCalc.Cli.Tests;

/// <summary>What a wrong <c>thread</c> is told: which value, its text with the place marked, where help is.</summary>
public sealed class ThreadErrorTests
{
    private const string Help = "Help: tierodcalc thread --help\n";

    [Fact]
    public void A_fault_is_marked_in_the_words_as_they_were_joined() => Says(
        "tierodcalc: DESIGNATION: 5/8-18 is not UNC, it is UNF; UNC has 11 threads per inch there\n    5/8-18 UNC\n           ^^^\n",
        "5/8-18", "UNC");

    [Fact]
    public void Every_value_with_a_fault_is_said() => Says(
        """
        tierodcalc: DESIGNATION: 2B is a class of internal threads; this one is external: 2A
            5/8-18 UNF-2B
                       ^^
        tierodcalc: --into: 6g is a class of external threads; this one is internal: 6H
            M16 6g
                ^^
        tierodcalc: --male-tensile: the unit is missing: write a stress such as 120 ksi or 830 MPa
            120
               ^
        tierodcalc: --female-tensile: expected a stress such as 120 ksi or 830 MPa, found 'abc'
            abc
            ^^^
        tierodcalc: --outside: expected hex or round and then the size, as in hex 1 in, found 'square'
            square 1 in
            ^^^^^^

        """,
        "5/8-18", "UNF-2B", "--into", "M16", "6g", "--male-tensile", "120", "--female-tensile", "abc", "--outside", "square", "1", "in");

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    public void An_empty_designation_is_said(string designation) =>
        Assert.Contains("tierodcalc: DESIGNATION: expected a thread", Refused(designation), StringComparison.Ordinal);

    [Fact]
    public void An_empty_value_of_an_option_is_said() =>
        Assert.Contains("tierodcalc: --outside: expected hex or round", Refused("5/8-18", "--outside", ""), StringComparison.Ordinal);

    [Fact]
    public void Characters_that_would_break_the_line_do_not()
    {
        string error = Refused("5/8-18\nUNC");
        Assert.Contains("    5/8-18 UNC\n           ^^^\n", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_class_that_the_standard_does_not_have_is_marked_and_the_others_are_named()
    {
        string error = Refused("M18x1.5-5g");
        Assert.Contains(
            "ISO 965-1 has no class 5g for a pitch of 1.5 mm; for external threads it has 4e, 4f,", error, StringComparison.Ordinal);
        Assert.Contains("such as 5g6g\n    M18x1.5-5g\n            ^^\n", error, StringComparison.Ordinal);
        Assert.Equal(0, CommandLine.Run("thread", "M18x1.5-5g6g").Status);

        Assert.Contains(
            "--into: ISO 965-1 has no class 9H for a pitch of 1.5 mm; for internal threads it has 4G, 4H, 5G, 5H, 6G, 6H, 7G, 7H, 8G, 8H,",
            Refused("M18x1.5", "--into", "M18x1.5-9H"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_usual_class_that_the_standard_does_not_have_is_said_to_be_assumed()
    {
        string error = Refused("M1x0.2");
        Assert.Contains("no class 6H, which is taken where none is said of the internal thread", error, StringComparison.Ordinal);
        Assert.Contains("say the class\n    M1x0.2\n    ^^^^^^\n", error, StringComparison.Ordinal);
        Assert.Equal(0, CommandLine.Run("thread", "M1x0.2-4H").Status);
    }

    [Theory]
    [InlineData("5/8-18", null, "hex 5/8 in", "5/8-18 has 0.6250 in (15.875 mm)")]
    [InlineData("M16", "M18x1.5", "round 18 mm", "M18x1.5 has 18.000 mm (0.7087 in)")]
    public void An_outside_is_larger_than_the_thread_inside(string thread, string? into, string outside, string told)
    {
        string[] words = into is null ? [thread, "--outside", outside] : [thread, "--into", into, "--outside", outside];
        Assert.Contains(
            $"tierodcalc: --outside: the outside must be larger than the thread inside it: {told}\n    {outside}\n    ^^^^",
            Refused(words),
            StringComparison.Ordinal);
        words[^1] = "hex 18.1 mm";
        Assert.NotEqual(2, CommandLine.Run(["thread", .. words]).Status);
    }

    [Fact]
    public void Unknown_options_are_refused_wherever_they_stand()
    {
        Says("tierodcalc: thread has no option '--nonsense'.\n", "5/8-18", "--nonsense");
        Says("tierodcalc: thread has no option '-x'.\n", "5/8-18", "-x");
        Says("tierodcalc: thread has no option '--nonsense'.\n", "5/8-18", "--into", "5/8-18", "--nonsense");
    }

    [Fact]
    public void What_is_missing_or_given_twice_is_said()
    {
        const string Missing =
            "tierodcalc: thread needs DESIGNATION: the thread, such as 5/8-18 UNF-2A LH or M18x1.5; several words are one designation.\n";
        Says(Missing);
        Says(Missing, "--into", "5/8-18");
        Says("tierodcalc: --into needs a value after it: --into DESIGNATION\n", "5/8-18", "--into");
        Says("tierodcalc: --into is given more than once.\n", "5/8-18", "--into", "5/8-18", "--into", "M16");
        Says(
            "tierodcalc: --male-tensile is given more than once.\n",
            "5/8-18", "--male-tensile", "120 ksi", "--male-tensile", "130 ksi");
    }

    private static void Says(string message, params string[] words) => Assert.Equal(message + Help, Refused(words));

    private static string Refused(params string[] words)
    {
        CommandLine run = CommandLine.Run(["thread", .. words]);
        Assert.Equal(2, run.Status);
        Assert.Empty(run.Output);
        Assert.EndsWith("\n" + Help, run.Error, StringComparison.Ordinal);
        return run.Error;
    }
}
