namespace TieRodCalc.Cli.Tests;

/// <summary>What <c>thread</c> prints for a person.</summary>
public sealed class ThreadPageTests
{
    public static TheoryData<string> Commands =>
    [
        "5/8-18", "5/8-18 UNF-2A LH", "11/16-18 UNS-2A", "M18x1.5-6g", "M18", "1/4-20", "0.190-32", "2-12", "4-8 UN",
        "1 63/64-20 UNS-2A LH", "5.899999-4 UNS-3A LH", "M150x6", "M1x0.25-5H", "M1.2x0.25-5H", "M17.123456x1.234567 LH", "2-3.5",
        "5/8-18 UNS",
        "5/8-18 --male-tensile 120 ksi", "5/8-18 --female-tensile 120 ksi", "5/8-18 --outside hex 1 in",
        "M18x1.5 --male-tensile 1200 MPa --female-tensile 200 MPa --outside round 22 mm", "5/8-18 --into 5/8-18", "M16x1.5 --into 5/8-18",
        "1 63/64-20 UNS-2A LH --into M17.123456x1.234567", "M12x1.25 --into 1/2-20", "1/4-20 --into 5/8-18",
    ];

    [Theory]
    [MemberData(nameof(Commands))]
    public void No_line_is_longer_than_80_columns_and_json_is_given_of_the_same(string command)
    {
        string[] words = command.Split(' ');
        CommandLine run = CommandLine.Run(["thread", .. words]);
        Assert.InRange(run.Status, 0, 1);
        Assert.Empty(run.Error);
        Assert.All(run.Output.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
        Assert.EndsWith("Recheck the nuts after the first run.\n", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", run.Output, StringComparison.Ordinal);
        Assert.Equal(run.Status, CommandLine.Run(["thread", .. words, "--json"]).Status);
    }

    [Fact]
    public void Words_are_joined_to_one_value()
    {
        string[] options = ["--male-tensile", "120 ksi", "--female-tensile", "45 ksi", "--outside", "hex 1 in"];
        string joined = ThreadRun.Output(0, ["5/8-18 UNF-2A LH", "--into", "5/8-18 UNF-2B LH", .. options]);
        Assert.Equal(
            joined,
            ThreadRun.Output(
                0, "5/8-18", "UNF", "-2A", "LH", "--into", "5/8-18", "UNF-2B", "LH", "--male-tensile", "120", "ksi", "--female-tensile",
                "45", "ksi", "--outside", "hex", "1", "in"));
        Assert.Equal(joined, ThreadRun.Output(0, ["5/8-18", "UNF", "-2A", "-LH", "--into=5/8-18 UNF-2B", "-LH", .. options]));
    }

    [Fact]
    public void A_single_thread_is_told_from_designation_to_look_alikes()
    {
        string text = ThreadRun.Text(0, "5/8-18");
        string[] inOrder =
        [
            "THREAD 5/8-18", "series UNF, not said, found by its size", "pitch 0.0556 in (1.411 mm); 18 threads per inch",
            "hand right-hand", "basic major, D 0.6250 in (15.875 mm)", "basic pitch, D2 0.5889 in (14.958 mm)",
            "basic minor, D1 0.5649 in (14.347 mm)",
            "tensile stress area 0.2560 in2 (165.1 mm2)", "no class is said of the external thread; 2A, the usual one, is assumed",
            "no class is said of the internal thread; 2B, the usual one, is assumed", "external, class 2A",
            "major diameter 0.6149 in (15.619 mm) 0.6236 in (15.839 mm)", "minor diameter open 0.5635 in (14.312 mm)",
            "internal, class 2B", "major diameter 0.6250 in (15.875 mm) open", "hole 0.5650 in (14.351 mm) to 0.5780 in (14.681 mm)",
            "in sixty-fourths none; the nearest, 37/64 in, is 0.0002 in (0.004 mm) too large",
            "in tenths of a mm 14.4 mm, 14.5 mm, 14.6 mm",
            "by the rule 0.938 in (15/16, 23.82 mm), 1.50 diameters, 16.9 turns", "by strength not checked", "REQUIRED 0.938 in",
            "In aluminum take 2 diameters, 1.250 in (1 1/4, 31.75 mm) (both common practice, no source)",
            "the tensile strength of the male and of the female is not said", "Never force two threads together",
            "Turns are counted from where the full threads catch",
            "GOES IN LOOSE AND HOLDS NEXT TO NOTHING", "Starts, and binds:",
            "Steering that fails can kill.",
        ];
        int at = 0;
        foreach (string words in inOrder)
        {
            int found = text.IndexOf(words, at, StringComparison.Ordinal);
            Assert.True(found >= 0, $"'{words}' is not behind '{text[Math.Max(0, at - 40)..at]}' in: {text}");
            at = found + words.Length;
        }

        Assert.DoesNotContain("Loads at which", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Metric_comes_first_in_millimeters()
    {
        string text = ThreadRun.Text(0, "M18x1.5");
        Assert.Contains("major diameter 17.732 mm (0.6982 in) 17.968 mm (0.7074 in)", text, StringComparison.Ordinal);
        Assert.Contains("tensile stress area 216.2 mm2 (0.3352 in2)", text, StringComparison.Ordinal);
        Assert.Contains("in sixty-fourths 21/32 in in tenths of a mm 16.4 mm, 16.5 mm, 16.6 mm", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_look_alike_has_both_directions_the_dangerous_one_first()
    {
        string text = ThreadRun.Text(0, "5/8-18");
        Assert.Contains(
            "M15x1.5 into 5/8-18: goes in loose, overlap 0.001 to 0.013 in (0.02 to 0.31 mm) a side; binds after 5.7 to 7.7 turns "
                + "5/8-18 into it: does not start M17x1.5 5/8-18 into it: goes in loose",
            text,
            StringComparison.Ordinal);
        Assert.Contains("into 5/8-18: starts, binds after at most 1.2 turns, if it starts at all", text, StringComparison.Ordinal);
        Assert.Contains("M17x1.5 into M18x1.5: goes in loose, overlap 0.02 to 0.30 mm (0.001 to 0.012 in) a side; never binds",
            ThreadRun.Text(0, "M18x1.5"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_most_dangerous_is_said_first_and_loudest_of_a_pair()
    {
        string text = ThreadRun.Text(1, "M12x1.25", "--into", "1/2-20");
        Assert.StartsWith(
            "M12x1.25 INTO 1/2-20: GOES IN LOOSE AND HOLDS NEXT TO NOTHING THE THREADS DO NOT MATCH: diameter, pitch and form differ. It "
                + "turns in by half a diameter or more and looks right, even with a jam nut on it, and PULLS OUT: the crests overlap by "
                + "only 0.07 to 0.33 mm (0.002 to 0.013 in) a side, where the right male has 0.69 mm (0.027 in). "
                + "It binds after 21.1 to 29.1 turns.",
            text,
            StringComparison.Ordinal);
        Assert.Contains("no engagement makes this pair hold", text, StringComparison.Ordinal);
        Assert.DoesNotContain("What it can be taken for", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(
        "M16x1.5",
        "5/8-18",
        "STARTS AND BINDS",
        "binds after at most 1.2 turns, if it starts at all. Forced further it ruins both")]
    [InlineData("5/8-18", "M16x1.5", "STARTS AND BINDS", "binds after 1.1 to 3.2 turns. Forced further it ruins both")]
    [InlineData("5/8-18 LH", "5/8-18", "DOES NOT START", "hand differs. A left-hand thread does not start in a right-hand one.")]
    [InlineData("M18x1.5", "5/8-18", "DOES NOT START", "not one full turn goes in")]
    [InlineData("1/4-20", "5/8-18", "DROPS IN LOOSE AND HOLDS NOTHING", "The male is too small")]
    public void What_happens_to_a_pair_that_does_not_match_is_told(string male, string female, string headline, string sentence)
    {
        string text = ThreadRun.Text(1, male, "--into", female);
        Assert.StartsWith($"{male} INTO {female}: {headline} THE THREADS DO NOT MATCH: ", text, StringComparison.Ordinal);
        Assert.Contains(sentence, text, StringComparison.Ordinal);
        Assert.Contains("Never force two threads together", text, StringComparison.Ordinal);
        Assert.Equal(
            headline == "STARTS AND BINDS", text.Contains("Turns are counted from", StringComparison.Ordinal));
    }

    [Fact]
    public void A_pair_that_matches_says_so_first_and_is_told_once()
    {
        string text = ThreadRun.Text(
            0, "5/8-18 UNF-2A", "--into", "5/8-18 UNF-2B", "--male-tensile", "90 ksi", "--female-tensile", "45 ksi");
        Assert.StartsWith(
            "5/8-18 UNF-2A INTO 5/8-18 UNF-2B: GOES TOGETHER Form, diameter, pitch and hand are the same.",
            text,
            StringComparison.Ordinal);
        Assert.DoesNotContain("assumed", text, StringComparison.Ordinal);
        Assert.Single(text.Split("tensile stress area").Skip(1));
    }

    [Fact]
    public void Strengths_say_what_governs_and_what_gives_way()
    {
        string text = ThreadRun.Text(0, "5/8-18", "--male-tensile", "120 ksi", "--female-tensile", "45 ksi", "--outside", "hex 1 1/4 in");
        Assert.Contains("J 1.969: above 1, the female thread is the weaker one", text, StringComparison.Ordinal);
        Assert.Contains("outside of the female hexagon, 1.250 in (1 1/4, 31.75 mm) across flats", text, StringComparison.Ordinal);
        Assert.Contains(
            "C1, the wall widens 1.000 C2, male thread bends 0.897 C3, female thread bends 1.049",
            text,
            StringComparison.Ordinal);
        Assert.Contains("17.2 turns; strength governs", text, StringComparison.Ordinal);
        Assert.Contains("Loads at which it gives way, at the required engagement male breaks", text, StringComparison.Ordinal);
        Assert.Contains(", by the smaller stress area that counts above 100 ksi", text, StringComparison.Ordinal);
        Assert.Contains("first male breaks Pulled once, steadily, straight along the axis", text, StringComparison.Ordinal);
        Assert.DoesNotContain("not checked", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_rule_governs_the_first_to_give_way_is_the_male()
    {
        string text = ThreadRun.Text(0, "M18x1.5", "--male-tensile", "500 MPa", "--female-tensile", "500 MPa", "--outside", "round 40 mm");
        Assert.Contains("REQUIRED 27.00 mm (~1 5/64 in), 1.50 diameters, 18.0 turns; the rule governs", text, StringComparison.Ordinal);
        Assert.Contains("round, 40.00 mm (~1 37/64 in); counts as 38.00 mm wide", text, StringComparison.Ordinal);
        Assert.Contains("below 1, the male thread is the weaker one", text, StringComparison.Ordinal);
        Assert.Contains("male breaks 108 kN (24300 lbf) male thread strips", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("5/8-18 --male-tensile 120 ksi", "the tensile strength of the female is not said", "Load that breaks the male")]
    [InlineData("5/8-18 --female-tensile 120 ksi", "the tensile strength of the male is not said", null)]
    [InlineData(
        "5/8-18 --male-tensile 90 ksi --female-tensile 90 ksi",
        "that a thin wall widens and lets the threads strip sooner is not counted",
        "first")]
    [InlineData("M18x1.5 --outside hex 22 mm", "The wall of the female is thin", null)]
    [InlineData(
        "M18x1.5 --male-tensile 90 ksi --female-tensile 90 ksi --outside round 26 mm",
        "The wall of the female is thin",
        "C1, the wall widens not computed")]
    [InlineData(
        "M18x1.5 --male-tensile 1200 MPa --female-tensile 200 MPa --outside hex 40 mm",
        "the bending of the weaker one lies outside the method",
        "C3, female thread bends not computed")]
    [InlineData("2-3.5", "the tables of ASME B1.1 end before this size", null)]
    [InlineData("M17.5x1.7", "the tables of ISO 965-1 end before this size", "ISO 261 does not list this diameter with this pitch")]
    [InlineData(
        "11/16-18 UNS",
        "no series of ASME B1.1 has this diameter with this pitch. Its tolerances are made for nine pitches of engagement, 0.500 in",
        "UNS, as said; SPECIAL: in no series")]
    [InlineData("11/16-18", "UNS, not said, found by its size; SPECIAL: in no series", null)]
    [InlineData("5/8-18 UNS", "UNS, as said, but UNF by its size", null)]
    [InlineData("M18", "only the diameter is said; the coarse pitch, 2.50 mm (~3/32 in), is assumed", null)]
    public void What_was_assumed_or_not_counted_is_said(string command, string sentence, string? also)
    {
        string text = ThreadRun.Text(0, command.Split(' '));
        Assert.Contains(sentence, text, StringComparison.Ordinal);
        Assert.Contains(also ?? "Cautions", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_thread_with_no_look_alike_says_so() => Assert.Contains(
        "None among UNC, UNF, UNEF, UN and the threads of ISO 261", ThreadRun.Text(0, "5.7-100 UNS"), StringComparison.Ordinal);
}
