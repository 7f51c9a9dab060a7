namespace TieRodCalc.Cli.Rendering;

/// <summary>A dimension laid out beside a drawing: its line, its label and the lane that it stands in.</summary>
/// <param name="Measure">What is dimensioned.</param>
/// <param name="From">Where its line begins across the drawing.</param>
/// <param name="To">Where its line ends.</param>
/// <param name="Label">Where its label begins.</param>
/// <param name="Width">How wide the label is.</param>
/// <param name="Lane">Counted from the drawing outward, from 0.</param>
internal sealed record LaidDimension(Measure Measure, double From, double To, double Label, double Width, int Lane);

/// <summary>
/// Lays dimensions out in lanes so that no label and no line meets another: each takes the lane nearest to the drawing that is free.
/// </summary>
/// <param name="Scale">From millimeters to places of the drawing.</param>
/// <param name="Right">Where the drawing ends; it begins at 0.</param>
/// <param name="Gap">What is left free beside a label.</param>
internal sealed record DimensionLanes(Scale Scale, double Right, double Gap)
{
    /// <summary>The dimensions in the order given, laid out.</summary>
    public IReadOnlyList<LaidDimension> Of(IEnumerable<Measure> measures, Func<Measure, double> width)
    {
        List<LaidDimension> laid = [];
        foreach (Measure measure in measures)
        {
            laid.Add(Places(measure, width(measure)).SelectMany(place => InFreeLanes(place, laid)).MinBy(place => Cost(place, laid))!);
        }

        return laid;
    }

    /// <summary>A place further out costs a lane; a label that a line passes costs a little more.</summary>
    private double Cost(LaidDimension place, List<LaidDimension> laid)
    {
        const double LineThroughLabel = 1.5;
        return place.Lane + (LineThroughLabel * laid.Count(other =>
            (other.Lane > place.Lane && Passes(other, place)) || (other.Lane < place.Lane && Passes(place, other))));
    }

    /// <summary>Whether an extension line of a dimension passes another one's label.</summary>
    private bool Passes(LaidDimension line, LaidDimension label) =>
        Overlap(line.From, line.From, label.Label, label.Label + label.Width, Gap / 2)
        || Overlap(line.To, line.To, label.Label, label.Label + label.Width, Gap / 2);

    private IEnumerable<LaidDimension> InFreeLanes(LaidDimension place, List<LaidDimension> laid)
    {
        int lanes = laid.Count == 0 ? 1 : laid.Max(other => other.Lane) + 2;
        return from lane in Enumerable.Range(0, lanes)
               where !laid.Exists(other => other.Lane == lane && Meets(place, other))
               select place with { Lane = lane };
    }

    /// <summary>Lines may follow each other closely; beside a label there is a gap.</summary>
    private bool Meets(LaidDimension one, LaidDimension other) =>
        Overlap(one.From, one.To, other.From, other.To, 0)
        || Overlap(one.Label, one.Label + one.Width, other.From, other.To, Gap)
        || Overlap(one.From, one.To, other.Label, other.Label + other.Width, Gap)
        || Overlap(one.Label, one.Label + one.Width, other.Label, other.Label + other.Width, Gap);

    private static bool Overlap(double low, double high, double otherLow, double otherHigh, double gap) =>
        low - gap < otherHigh && otherLow - gap < high;

    /// <summary>The label within the line where it fits, otherwise on either side of it, the outer side first.</summary>
    private LaidDimension[] Places(Measure measure, double wide)
    {
        (double from, double to) = (Scale.At(measure.From), Scale.At(measure.To));
        LaidDimension At(double label) => new(measure, from, to, label, wide, 0);
        if (to - from >= wide + (4 * Gap))
        {
            return [At(((from + to) / 2) - (wide / 2))];
        }

        LaidDimension left = At(from - (2 * Gap) - wide);
        LaidDimension right = At(to + (2 * Gap));
        LaidDimension[] sides = from + to < Right ? [left, right] : [right, left];
        LaidDimension[] within = [.. sides.Where(side => side.Label >= 0 && side.Label + wide <= Right)];
        return within.Length > 0 ? within : [At(Math.Max(0, Math.Min(from, Right - wide)))];
    }
}
