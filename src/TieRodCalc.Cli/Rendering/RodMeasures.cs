using System.Globalization;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The dimensions of a planned rod that are drawn and listed.</summary>
internal static class RodMeasures
{
    /// <summary>Name of the way from the ball center to the line of a cut.</summary>
    public const string MarkFromCenter = "mark-from-center";

    /// <summary>Name of what is cut off.</summary>
    public const string CutOff = "cut";

    /// <summary>Less than this, in millimeters, is not seen in a drawing.</summary>
    private const double LeastSeen = 0.01;

    /// <summary>Those of the rod as it is made; of a rod that cannot be built those that are missing.</summary>
    public static IReadOnlyList<Measure> Of(PlannedRod planned, RodLayout layout) =>
        planned.Plan.Solution is { } made ? [.. Made(planned, made, layout)] : Missing(planned.Plan, layout);

    /// <summary>Those by which an end is cut, in millimeters from its ball center.</summary>
    public static IReadOnlyList<Measure> Of(EndCut of)
    {
        (RodSide side, ThreadedEnd end, CutAdvice cut) = of;
        double center = end.CenterToTip.Nominal.Millimeters;
        double mark = cut.MarkFromCenter.Millimeters;
        double start = center - end.ThreadLength.Nominal.Millimeters;
        string[] letters = side == RodSide.Inner ? ["K", "L", "M", "N"] : ["P", "Q", "R", "S"];
        Measure Line(int letter, string name, string words, Length value, double from, double to) =>
            new(letters[letter], name, words, value, LengthRounding.Nearest, from, to) { FromOutside = true };
        List<Measure> measures =
        [
            Line(0, MarkFromCenter, $"ball center to line{(end.IsBent ? ", ALONG THE THREAD AXIS" : string.Empty)}", cut.MarkFromCenter, 0, mark),
            Line(1, CutOff, "old tip to line", cut.Recommended, mark, center),
            Line(2, "thread-left", "full thread left", cut.ThreadLeft, start, mark),
        ];
        if (cut.StraightFromCenter is { } straight)
        {
            measures.Add(
                Line(3, "straight-from-center", "the same line, straight across the bend", straight, 0, mark)
                    with
                { Straight = true });
        }

        return measures;
    }

    private static IEnumerable<Measure> Made(PlannedRod planned, RodSolution made, RodLayout layout)
    {
        yield return new(
            "A", "center-to-center", "center to center", planned.Plan.Target, LengthRounding.Nearest, 0, layout.Axial.Millimeters)
        {
            FromOutside = true,
            Straight = true,
            SeenShortened = RodShapes.IsSeenShortened(planned.Rod.Parts),
        };
        foreach (Measure measure in Joint(layout.Inner, made.Inner, "BCD"))
        {
            yield return measure;
        }

        if (layout.Outer is { } outer)
        {
            yield return Between(
                "E", "tip-gap", "between the tips", made.TipGap!.Value, LengthRounding.Nearest, layout.Inner.Tip, outer.Tip);
            foreach (Measure measure in Joint(outer, made.Outer!, "HGF"))
            {
                yield return measure;
            }
        }
    }

    private static IEnumerable<Measure> Joint(JointLayout place, JointPlan joint, string letters)
    {
        string side = Names.Of(place.Side);
        yield return Between(
            letters[..1], $"showing-{side}", $"{side} showing", joint.Showing, LengthRounding.Nearest, place.ThreadStart, place.Face)
            with
        { FromOutside = true };
        yield return Between(
            letters[1..2], $"inserted-{side}", $"{side} inserted", joint.Insertion, LengthRounding.Nearest, place.Face, place.Tip);
        if (place.Engaged is { } engaged)
        {
            yield return Between(
                letters[2..],
                $"engaged-{side}",
                $"{side} engaged",
                joint.Engaged,
                LengthRounding.Down,
                engaged.Shortest,
                engaged.Longest);
        }
    }

    /// <summary>
    /// What is missing as it lies at one length. What is missing at another length only, or partly at each of two ends, is no place of
    /// its size in the drawing and is left to the words; where that is all, the first place is shown without its size.
    /// </summary>
    private static List<Measure> Missing(RodPlan plan, RodLayout layout)
    {
        List<Measure> found = [];
        foreach (BindingLimit binding in plan.Binding)
        {
            if (layout.Missing(binding) is { } place && Math.Abs((place.Width - binding.MissedBy).Millimeters) < LeastSeen)
            {
                found.Add(Miss(found.Count + 1, binding, place));
            }
        }

        return found.Count > 0 ? found
            : [.. (from binding in plan.Binding
                  let place = layout.Missing(binding)
                  where place is not null && place.Width.Millimeters > LeastSeen
                  select Miss(1, binding, place) with { SizeShown = false }).Take(1)];
    }

    private static Measure Miss(int number, BindingLimit binding, LengthSpan place) => new(
        number.ToString(CultureInfo.InvariantCulture),
        "missing",
        Names.Of(binding.Limit, binding.End),
        binding.MissedBy,
        LengthRounding.Nearest,
        place.Shortest.Millimeters,
        place.Longest.Millimeters)
    {
        Missing = true,
    };

    private static Measure Between(
        string letter, string name, string words, Length value, LengthRounding rounding, Length one, Length other) => new(
            letter,
            name,
            words,
            value,
            rounding,
            Math.Min(one.Millimeters, other.Millimeters),
            Math.Max(one.Millimeters, other.Millimeters));
}
