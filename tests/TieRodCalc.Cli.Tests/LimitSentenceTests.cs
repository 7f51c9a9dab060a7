using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Tests;

/// <summary>What is said of a limit in the way, of a limit that ends an adjustment, and of cutting.</summary>
public sealed class LimitSentenceTests
{
    private static readonly PlanSentences Sentences = new(LengthDisplay.Millimeter);

    private static readonly Dictionary<Limit, (string Name, string Meaning)> Words = new()
    {
        [Limit.Engagement] = ("Engagement", "Less thread would hold than is required."),
        [Limit.NutRoom] = (
            "Nut room",
            "The nut, or without one the end of the thread, meets the sleeve; the distance from ball to nut is fixed by the part, and cutting does not change it."),
        [Limit.ClosedBore] = ("Closed bore", "The tip meets the end of the sleeve's thread."),
        [Limit.FarThread] = ("Far thread", "The tip meets the thread of the other end."),
        [Limit.Tips] = ("Tips", "The two tips come too near to each other inside the sleeve."),
        [Limit.Witness] = ("Witness", "Full thread does not cover the witness hole."),
        [Limit.Clamp] = ("Clamp", "Full thread does not reach under the clamp."),
        [Limit.Cut] = ("Cut", "More would have to be cut than the part allows."),
    };

    private static readonly Dictionary<AdjustmentPoint, string> Points = new()
    {
        [AdjustmentPoint.Shortest] = ", at the shortest wanted length",
        [AdjustmentPoint.Longest] = ", at the longest wanted length",
        [AdjustmentPoint.Any] = string.Empty,
        [AdjustmentPoint.Present] = ", as the rod stands",
    };

    public static TheoryData<Limit, AdjustmentPoint> Limits
    {
        get
        {
            TheoryData<Limit, AdjustmentPoint> all = [];
            foreach (Limit limit in Enum.GetValues<Limit>())
            {
                foreach (AdjustmentPoint point in Enum.GetValues<AdjustmentPoint>())
                {
                    all.Add(limit, point);
                }
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Limits))]
    public void A_limit_in_the_way_says_where_by_how_much_and_what_it_means(Limit limit, AdjustmentPoint at)
    {
        foreach ((RodSide? side, string end) in new (RodSide?, string)[]
            {
                (RodSide.Inner, ", inner end"), (RodSide.Outer, ", outer end"), (null, string.Empty),
            })
        {
            string sentence = Sentences.Of(new BindingLimit(limit, side, at, Length.FromMillimeters(12.34)));

            string meaning = limit == Limit.Engagement && at == AdjustmentPoint.Any
                ? "The sleeve's full thread is shorter than the required engagement, at any length."
                : (limit, at) == (Limit.Cut, AdjustmentPoint.Present) ? "More was cut off than the part allows."
                : Words[limit].Meaning;
            Assert.Equal($"{Words[limit].Name}{end}{Points[at]}: misses by 12.34 mm (~31/64 in). {meaning}", sentence);
        }
    }

    [Fact]
    public void A_miss_comes_first_in_the_unit_of_the_job() => Assert.StartsWith(
        "Tips, at the shortest wanted length: misses by 0.500 in (1/2, 12.70 mm). ",
        new PlanSentences(LengthDisplay.Inch).Of(new BindingLimit(Limit.Tips, null, AdjustmentPoint.Shortest, Length.FromInches(0.5))),
        StringComparison.Ordinal);

    [Fact]
    public void A_limit_that_is_none_has_no_sentence() => Assert.Throws<ArgumentOutOfRangeException>(
        () => Sentences.Of(new BindingLimit((Limit)99, null, AdjustmentPoint.Any, Length.Zero)));

    [Theory]
    [InlineData(Limit.ClosedBore, RodSide.Inner, "then closed bore of the inner end")]
    [InlineData(Limit.NutRoom, RodSide.Outer, "then nut room of the outer end")]
    [InlineData(Limit.Tips, null, "then tips")]
    [InlineData(null, null, "turning the sleeve does not change the length")]
    public void An_adjustment_says_what_ends_it(Limit? limit, RodSide? end, string words) =>
        Assert.Equal(words, PlanSentences.Of(new Travel(Length.Zero, 0, limit, end)));
}
