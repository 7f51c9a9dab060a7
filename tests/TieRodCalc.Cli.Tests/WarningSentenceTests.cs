using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Tests;

/// <summary>What each warning says: of which end, and which of its two values where.</summary>
public sealed class WarningSentenceTests
{
    private const string Value = "12.34 mm (~31/64 in)";
    private const string Other = "5.67 mm (~7/32 in)";

    private static readonly PlanSentences Sentences = new(LengthDisplay.Millimeter);

    /// <summary>Words of each warning, the end written as END.</summary>
    private static readonly Dictionary<WarningCode, string[]> Words = new()
    {
        [WarningCode.NotLocked] = ["NOTHING LOCKS THIS ROD: no joint has a jam nut or a clamp.", "Do not drive it."],
        [WarningCode.OneJointLocked] =
            ["Only one joint is locked. The END has no nut and no clamp", "the sleeve is held by the other end alone"],
        [WarningCode.SleeveCannotAdjust] =
            ["the same hand and the same pitch", "does not change the length at all", $"only lengths {Value} apart exist"],
        [WarningCode.StartMayNotMatch] =
            [$"free over {Value} only", $"the next start of a thread moves it by {Other}:", "More cut or less adjustment gives more freedom."],
        [WarningCode.LittleCutToSpare] = [$"Only {Value} may be taken off the END by mistake", "Cut exactly, or cut less and try."],
        [WarningCode.CutOffTheMarks] = ["No mark of the grid", $"the least and the most cut of the END: the middle, {Value}, is given in decimals"],
        [WarningCode.LittleRoomForTheNut] = [$"The END's nut keeps only {Value} of thread to be backed off by", "less than one pitch"],
        [WarningCode.EngagementBelowRule] =
            [$"asks for {Value} of engagement at the END", $"less than the usual rule for the sleeve's material, {Other}."],
        [WarningCode.SteelAssumed] = ["not said to be steel or aluminum", "1.5 diameters", "A softer material needs more."],
        [WarningCode.StrengthNotChecked] =
            ["Whether the threads of the END strip was not checked: the tensile strength of the end and of the sleeve is not given."],
        [WarningCode.StrengthGoverns] =
            ["5.67 mm (~15/64 in) of engagement is not enough at the END: strength asks for 12.34 mm (~1/2 in).", "(J = 1.97)", "strip before the end breaks"],
        [WarningCode.OutsideUnknown] = ["The sleeve's outside is not said", "not counted at the END."],
        [WarningCode.SleeveTooThin] = ["The sleeve's wall at the END is thinner", "asks for more engagement than is shown"],
        [WarningCode.SleeveSlit] = ["A clamp closes the sleeve at the END", "asks for more engagement than is shown"],
        [WarningCode.BendingBeyondRange] = ["The strengths at the END are so far apart", "outside the method"],
        [WarningCode.SpecialThread] = ["The thread of the END is in no standard series: it is special"],
        [WarningCode.BeyondTables] = ["The standard's tables do not reach to the thread of the END"],
        [WarningCode.GivesWayUnderLoad] = ["GIVES WAY UNDER THE LOAD", "the least factor is 1.97.", "Do not drive it."],
        [WarningCode.LoadNotChecked] = ["THE LOAD WAS NOT CHECKED IN FULL at the END: the tensile strength of"],
        [WarningCode.LoadLeavesOut] = ["yielding, shock, fatigue, buckling, the sleeve's own section, the ball joints"],
        [WarningCode.NominalTrusted] = ["Nominal dimensions were trusted", "no dimension of the parts carries a tolerance"],
        [WarningCode.HoldsOnlyAtNominal] = ["holds only at nominal dimensions", "may miss by 12.34 mm (~1/2 in)."],
        [WarningCode.NoRemedy] = ["Neither a single change nor two together"],
        [WarningCode.SetByTheEnd] =
            ["There is one threaded joint:", "turning the inner end in the outer end's thread", $"lengths {Value} apart exist"],
        [WarningCode.SocketTakenAsClosed] = ["The outer end's bore is said to be open", "the tip is kept within the full thread"],
        [WarningCode.NoUncutReach] = ["The parts as they are keep all limits at no setting at all", "no uncut reach"],
        [WarningCode.ClassAssumed] = ["A tolerance class is not said at the END: 2A/2B or 6g/6H is assumed."],
        [WarningCode.CoarsePitchAssumed] = [$"Only the diameter is said at the END: the coarse pitch, {Value}, is assumed."],
        [WarningCode.LeadAssumed] = [$"The lead of the END is not said: one pitch, {Value}, is taken."],
        [WarningCode.CountersinkAssumed] = [$"The countersink at the END is not said: half a pitch, {Value}, is taken."],
        [WarningCode.ToeNotComputed] = ["Toe is not computed: the job gives no steering arm for this rod."],
        [WarningCode.ToeOutOfReach] = ["Toe is not computed: the rod stands in line with the steer axis, or its length is out of the joint's reach."],
        [WarningCode.PlatesNotGiven] = ["Toe at the plates is not computed: the job gives no width of the plates."],
    };

    public static TheoryData<WarningCode> Codes => [.. Enum.GetValues<WarningCode>()];

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_warning_says_its_end_and_its_values_at_their_places(WarningCode code)
    {
        PlanWarning warning = new(code, null, Length.FromMillimeters(12.34), Length.FromMillimeters(5.67), 1.9749, MissingStrength.End | MissingStrength.Sleeve);

        Says(code, "inner end", Sentences.Of(warning with { End = RodSide.Inner }));
        Says(code, "outer end", Sentences.Of(warning with { End = RodSide.Outer }));
        Says(code, "inner and outer end", Sentences.Of(warning with { End = RodSide.Inner }, bothEnds: true));
        Says(code, "inner and outer end", Sentences.Of(warning with { End = RodSide.Outer }, bothEnds: true));
        Says(code, "rod", Sentences.Of(warning));
    }

    [Fact]
    public void Values_come_first_in_the_unit_of_the_job()
    {
        PlanWarning warning = new(WarningCode.LeadAssumed, RodSide.Inner, Length.FromInches(0.5));

        Assert.Contains("0.500 in (1/2, 12.70 mm)", new PlanSentences(LengthDisplay.Inch).Of(warning), StringComparison.Ordinal);
        Assert.Contains("12.70 mm (1/2 in)", Sentences.Of(warning), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(MissingStrength.End, "the tensile strength of the end is not given.")]
    [InlineData(MissingStrength.Sleeve, "the tensile strength of the sleeve is not given.")]
    [InlineData(
        MissingStrength.Sleeve | MissingStrength.Limits,
        "the tensile strength of the sleeve is not given; the standard has no such tolerance class for this pitch, or the threads "
        + "would not meet at their limits.")]
    public void What_is_missing_for_a_strength_is_said(MissingStrength missing, string end)
    {
        foreach (WarningCode code in (WarningCode[])[WarningCode.StrengthNotChecked, WarningCode.LoadNotChecked])
        {
            Assert.EndsWith(end, Sentences.Of(new PlanWarning(code, RodSide.Inner, Missing: missing)), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(1.01, "The sleeve's thread is the weaker one (J = 1.01) and would strip before the end breaks")]
    [InlineData(0.99, "The end's thread (J = 0.99) would strip before the end breaks")]
    public void The_weaker_thread_is_named(double ratio, string words) => Assert.Contains(
        words, Sentences.Of(new PlanWarning(WarningCode.StrengthGoverns, RodSide.Outer, Ratio: ratio)), StringComparison.Ordinal);

    [Fact]
    public void No_two_warnings_say_the_same()
    {
        Assert.Distinct(Enum.GetValues<WarningCode>().Select(code => Sentences.Of(new PlanWarning(code, RodSide.Inner))));
    }

    [Fact]
    public void A_code_that_is_none_has_no_sentence() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Sentences.Of(new PlanWarning((WarningCode)99)));

    private static void Says(WarningCode code, string end, string sentence)
    {
        string[] words = Words[code];
        Assert.All(words, some => Assert.Contains(some.Replace("END", end, StringComparison.Ordinal), sentence, StringComparison.Ordinal));
        Assert.EndsWith(".", sentence, StringComparison.Ordinal);
        Assert.Equal(words.Sum(some => Count(some, " mm (")), Count(sentence, " mm ("));
        foreach (string other in (string[])["inner end", "outer end", "inner and outer end"])
        {
            int expected = words.Sum(some => Count(some.Replace("END", end, StringComparison.Ordinal), other));
            Assert.Equal(expected, Count(sentence, other));
        }
    }

    private static int Count(string text, string words) => text.Split(words).Length - 1;
}
