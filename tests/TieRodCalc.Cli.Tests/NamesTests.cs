using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Threads;

namespace TieRodCalc.Cli.Tests;

/// <summary>The names that output and scripts rely on: each value has its own, and a value that is none has no name.</summary>
public sealed class NamesTests
{
    [Fact]
    public void Limits() => Named(
        Names.Of,
        (Limit.Engagement, "engagement"),
        (Limit.NutRoom, "nut room"),
        (Limit.ClosedBore, "closed bore"),
        (Limit.FarThread, "far thread"),
        (Limit.Tips, "tips"),
        (Limit.Witness, "witness"),
        (Limit.Clamp, "clamp"),
        (Limit.Cut, "cut"));

    [Fact]
    public void Sides() => Named(Names.Of, (RodSide.Inner, "inner"), (RodSide.Outer, "outer"));

    [Fact]
    public void Verdicts() => Named(
        Names.Of,
        (Verdict.Buildable, "buildable"),
        (Verdict.BuildableAfterCutting, "buildable after cutting"),
        (Verdict.NotBuildable, "not buildable"),
        (Verdict.NotChecked, "not checked"));

    [Fact]
    public void What_is_locked() => Named(
        Names.Of, (Locking.None, "none"), (Locking.Inner, "inner"), (Locking.Outer, "outer"), (Locking.Both, "both"));

    [Fact]
    public void Directions() =>
        Named(Names.Of, (TurnDirection.Clockwise, "clockwise"), (TurnDirection.Counterclockwise, "counterclockwise"));

    [Fact]
    public void Points_of_the_adjustment() => Named(
        Names.Of,
        (AdjustmentPoint.Shortest, "shortest"),
        (AdjustmentPoint.Longest, "longest"),
        (AdjustmentPoint.Any, "any"),
        (AdjustmentPoint.Present, "present"));

    [Fact]
    public void What_governs_the_engagement() => Named(
        Names.Of, (EngagementSource.Rule, "rule"), (EngagementSource.Job, "job"), (EngagementSource.Strength, "strength"));

    [Fact]
    public void What_gives_way() => Named(
        Names.Of,
        (GivesWay.MaleBreaks, "male breaks"),
        (GivesWay.MaleStrips, "male thread strips"),
        (GivesWay.FemaleStrips, "female thread strips"));

    [Fact]
    public void Hands() => Named(Names.Of, (Hand.Left, "left-hand"), (Hand.Right, "right-hand"));

    [Fact]
    public void Warnings_are_the_words_of_their_code()
    {
        foreach (WarningCode code in Enum.GetValues<WarningCode>())
        {
            string words = string.Concat(code.ToString().Select((letter, place) =>
                char.IsUpper(letter) && place > 0 ? $"-{char.ToLowerInvariant(letter)}" : $"{char.ToLowerInvariant(letter)}"));
            Assert.Equal(words, Names.Of(code));
        }
    }

    [Fact]
    public void Differences_are_a_list_in_words()
    {
        Named(
            Names.Of,
            (ThreadDifference.None, string.Empty),
            (ThreadDifference.Hand, "hand"),
            (ThreadDifference.Diameter, "diameter"),
            (ThreadDifference.Pitch, "pitch"),
            (ThreadDifference.Form, "form"));
        Assert.Equal("hand and pitch", Names.Of(ThreadDifference.Pitch | ThreadDifference.Hand));
        Assert.Equal(
            "hand, diameter, pitch and form",
            Names.Of(ThreadDifference.Form | ThreadDifference.Pitch | ThreadDifference.Diameter | ThreadDifference.Hand));
    }

    [Fact]
    public void A_value_that_is_none_has_no_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Names.Of((Limit)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => Names.Of((Verdict)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => Names.Of((Locking)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => Names.Of((AdjustmentPoint)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => Names.Of((WarningCode)99));
    }

    /// <summary>Every value of the enumeration is listed, has the name listed, and no two have the same.</summary>
    private static void Named<T>(Func<T, string> nameOf, params (T Value, string Name)[] names)
        where T : struct, Enum
    {
        Assert.Equal(Enum.GetValues<T>().Order(), names.Select(pair => pair.Value).Order());
        Assert.All(names, pair => Assert.Equal(pair.Name, nameOf(pair.Value)));
        Assert.Distinct(names.Select(pair => nameOf(pair.Value)));
    }
}
