using TieRodCalc.Parts;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>A dimension of a rod that may carry a tolerance.</summary>
public enum RodDimension
{
    /// <summary>Ball center to tip of an end.</summary>
    CenterToTip,

    /// <summary>Length of full thread of an end.</summary>
    ThreadLength,

    /// <summary>Lead of an end.</summary>
    Lead,

    /// <summary>Offset of a bent end.</summary>
    Offset,

    /// <summary>The most that may be cut off an end.</summary>
    MaxCut,

    /// <summary>Depth of full thread in the sleeve or socket.</summary>
    Depth,

    /// <summary>Countersink of the mouth.</summary>
    Countersink,

    /// <summary>Far edge of the witness hole.</summary>
    Witness,

    /// <summary>Inner edge of the clamp.</summary>
    Clamp,

    /// <summary>Thickness of the jam nut.</summary>
    Thickness,

    /// <summary>Length of the sleeve.</summary>
    SleeveLength,

    /// <summary>Ball center to face of an outer end with a socket.</summary>
    CenterToFace,

    /// <summary>Outside of the sleeve, on which its dilation depends.</summary>
    Outside,

    /// <summary>The cut itself: one mark each way.</summary>
    Cut,
}

/// <summary>The tolerances of a rod's parts, and the problem at both ends of each.</summary>
internal sealed class ToleranceBox
{
    private readonly List<Tolerance> _all = [];

    /// <summary>Gathers the tolerances.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="wanted">The rod at its nominal dimensions.</param>
    /// <param name="required">Required engagement of a joint where the sleeve's outside has a width.</param>
    public ToleranceBox(RodParts parts, RodProblem wanted, Func<RodSide, Length, double> required)
    {
        foreach (RodSide side in parts.Joints)
        {
            ThreadedEnd end = parts.EndAt(side);
            TappedHole hole = parts.HoleAt(side);
            void Add(RodDimension dimension, Measured? measured, Func<JointDimensions, double, JointDimensions> moved)
            {
                if (measured is { PlusMinusMm: > 0 and var plusMinus })
                {
                    AddBoth(wanted, dimension, side, plusMinus, by => wanted.Rod.With(side, moved(wanted.Rod[side], by)));
                }
            }

            Add(RodDimension.CenterToTip, end.CenterToTip, static (joint, by) => joint with { CenterToTip = joint.CenterToTip + by });
            Add(RodDimension.ThreadLength, end.ThreadLength, static (joint, by) => joint with { ThreadLength = joint.ThreadLength + by });
            Add(RodDimension.Lead, end.Lead, static (joint, by) => joint with { Lead = joint.Lead + by });
            Add(RodDimension.MaxCut, end.MaxCut, static (joint, by) => joint with { MostCut = joint.MostCut + by });
            Add(RodDimension.Depth, hole.Depth, static (joint, by) => joint with { Depth = joint.Depth + by });
            Add(RodDimension.Countersink, hole.Countersink, static (joint, by) => joint with { Mouth = joint.Mouth + by });
            Add(RodDimension.Witness, hole.Witness, static (joint, by) => joint with { Witness = joint.Witness + by });
            Add(RodDimension.Clamp, hole.Clamp, static (joint, by) => joint with { Clamp = joint.Clamp + by });
            Add(RodDimension.Thickness, parts.NutAt(side)?.Thickness, static (joint, by) => joint with { Nut = joint.Nut + by });
        }

        Measured length = parts.Sleeve?.Length ?? parts.Socket!.CenterToFace;
        AddBoth(
            wanted,
            parts.OneJoint ? RodDimension.CenterToFace : RodDimension.SleeveLength,
            null,
            length.PlusMinusMm,
            by => wanted.Rod with { Sleeve = wanted.Rod.Sleeve + by });
        if (parts.Sleeve?.Outside is { Across: { PlusMinusMm: > 0 } across })
        {
            AddBoth(wanted, RodDimension.Outside, null, across.PlusMinusMm, by => Dilated(wanted.Rod, parts, required, across.Mm + by));
        }

        AddOffsets(parts, wanted);
    }

    /// <summary>Every dimension that has a tolerance; not the cut.</summary>
    public IReadOnlyList<Tolerance> All => _all;

    private void AddBoth(RodProblem wanted, RodDimension dimension, RodSide? end, double plusMinus, Func<double, RodDimensions> moved)
    {
        if (plusMinus > 0)
        {
            _all.Add(new(dimension, end, plusMinus, wanted with { Rod = moved(-plusMinus) }, wanted with { Rod = moved(plusMinus) }));
        }
    }

    private static RodDimensions Dilated(RodDimensions rod, RodParts parts, Func<RodSide, Length, double> required, double across)
    {
        foreach (RodSide side in parts.Joints)
        {
            rod = rod.With(side, rod[side] with { Required = required(side, Length.FromMillimeters(across)) });
        }

        return rod;
    }

    /// <summary>
    /// Offsets act through <c>O</c> alone. All that the limits take from it is at its worst where it is least or greatest: greatest at
    /// a corner, least at a corner or, with two bent ends, on an edge or where the balls come to stand in line.
    /// </summary>
    private void AddOffsets(RodParts parts, RodProblem wanted)
    {
        Measured inner = parts.Inner.Offset;
        Measured outer = parts.Outer?.Offset ?? default;
        double cosine = Math.Cos(parts.Clocking?.Radians ?? 0);
        (double low1, double high1) = Ends(inner);
        (double low2, double high2) = Ends(outer);
        double least = double.PositiveInfinity;
        double most = 0;
        foreach ((double one, double other) in (ReadOnlySpan<(double, double)>)
            [
                (low1, low2), (low1, high2), (high1, low2), (high1, high2),
                (low1, Math.Clamp(low1 * cosine, low2, high2)), (high1, Math.Clamp(high1 * cosine, low2, high2)),
                (Math.Clamp(low2 * cosine, low1, high1), low2), (Math.Clamp(high2 * cosine, low1, high1), high2),
            ])
        {
            double offset = Math.Sqrt(Math.Max(0, one * one + other * other - 2 * one * other * cosine));
            least = Math.Min(least, offset);
            most = Math.Max(most, offset);
        }

        double all = inner.PlusMinusMm + outer.PlusMinusMm;
        if (all > 0)
        {
            // Both offsets together have one effect; each end's tolerance has its share of it.
            RodProblem low = wanted with { Rod = wanted.Rod with { Offset = least } };
            RodProblem high = wanted with { Rod = wanted.Rod with { Offset = most } };
            AddShare(RodSide.Inner, inner);
            AddShare(RodSide.Outer, outer);
            void AddShare(RodSide side, Measured offset)
            {
                if (offset.PlusMinusMm > 0)
                {
                    _all.Add(new(RodDimension.Offset, side, offset.PlusMinusMm, low, high) { Share = offset.PlusMinusMm / all });
                }
            }
        }
    }

    private static (double Low, double High) Ends(Measured offset) =>
        (Math.Max(0, offset.Mm - offset.PlusMinusMm), offset.Mm + offset.PlusMinusMm);
}

/// <summary>One dimension with a tolerance, and the rod at both ends of it.</summary>
/// <param name="Dimension">Which.</param>
/// <param name="End">Of which end; null where it belongs to the whole rod.</param>
/// <param name="PlusMinus">The tolerance, millimeters.</param>
/// <param name="Low">The rod with the dimension at its least.</param>
/// <param name="High">The rod with the dimension at its greatest.</param>
internal sealed record Tolerance(RodDimension Dimension, RodSide? End, double PlusMinus, RodProblem Low, RodProblem High)
{
    /// <summary>How much of the effect is this dimension's own.</summary>
    public double Share { get; init; } = 1;
}
