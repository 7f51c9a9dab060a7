using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Text;

/// <summary>The sentences that say what measurements tell of a made-up rod.</summary>
/// <param name="unit">The unit that lengths are told in first.</param>
public sealed class BuiltSentences(LengthDisplay unit)
{
    /// <summary>Measurements that do not go together.</summary>
    public string Of(Contradiction contradiction)
    {
        ArgumentNullException.ThrowIfNull(contradiction);
        string missed = LengthFormat.Both(contradiction.MissedBy, unit);
        string end = contradiction.End is { } side ? $"the {Names.Of(side)} end" : "the rod";
        return contradiction.Kind switch
        {
            ContradictionKind.Length when contradiction.End is not null =>
                $"Center to center cannot be: for it {end} would have to show {missed} less thread than none, or more than all of it.",
            ContradictionKind.Length =>
                $"Center to center does not go together with the parts and the thread showing: they miss each other by {missed} more than "
                    + "the tolerances that are stated. A reading is wrong, a part is not the one named, or something is bent.",
            ContradictionKind.Bore =>
                $"The tip of {end} would be {missed} deeper in its closed bore than it can be: the cut, the thread showing or a part is "
                    + "not as said, and less may be engaged than is shown.",
            ContradictionKind.End =>
                $"Thread showing, cut and depth of {end} do not add up to its thread: they miss it by {missed} more than the tolerances "
                    + "that are stated.",
            _ =>
                $"More thread shows of {end} than it has left, by {missed} more than the tolerances that are stated.",
        };
    }

    /// <summary>What is missing for a verdict, one sentence for each; none where all is known.</summary>
    public static IEnumerable<(string Code, RodSide? End, string Text)> Missing(BuiltRod built)
    {
        ArgumentNullException.ThrowIfNull(built);
        foreach ((RodSide side, BuiltJoint? joint) in new[] { (RodSide.Inner, built.Inner), (RodSide.Outer, built.Outer) })
        {
            string end = Names.Of(side);
            if (joint is { Showing: null })
            {
                string length = built.Readings.CenterToCenter is null ? ", or the rod center to center" : string.Empty;
                yield return ("showing-not-known", side, $"How much thread of the {end} end shows is not known; measure it{length}.");
            }

            if (joint is { Cut: null })
            {
                yield return (
                    "cut-not-known",
                    side,
                    $"What was cut off the {end} end is not known, and the part may be cut. No outside measurement shows it: read how deep "
                        + "the tip is, through a witness hole or an open bore, or take the rod apart. The engagement may be the least "
                        + "given.");
            }
        }

        if (built.Present is null)
        {
            yield return (
                "length-not-known", null, "The rod's length is not known: measure it center to center, or both ends' thread showing.");
        }
    }
}
