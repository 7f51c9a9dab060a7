using System.Xml.Linq;
using TieRodCalc.Text;

namespace TieRodCalc.Cli.Rendering;

/// <summary>Dimensions as they stand in a drawing: extension lines, lines with arrowheads, labels.</summary>
/// <param name="unit">The job's unit.</param>
internal sealed class DimensionLines(LengthDisplay unit)
{
    /// <summary>From one lane to the next.</summary>
    public const double LaneHeight = 21;

    /// <summary>A label is 11.3 points on paper, to be read at arm's length.</summary>
    private const int LetterSize = 16;

    private const double Arrow = 9;
    private const double Overshoot = 5;
    private const double HalfLetter = 6;

    /// <summary>How wide a label is.</summary>
    public double WidthOf(Measure measure) => Svg.WidthOf(measure.Label(unit)) * LetterSize / Svg.FontSize;

    /// <summary>Dimensions below a drawing, the lanes downward.</summary>
    /// <param name="laid">The dimensions.</param>
    /// <param name="from">Where their extension lines begin.</param>
    /// <param name="first">Where the first lane is.</param>
    public IEnumerable<XElement> Below(IReadOnlyList<LaidDimension> laid, double from, double first)
    {
        // Labels last, so that they stand on the lines that pass them.
        foreach (LaidDimension dimension in laid)
        {
            double y = first + (dimension.Lane * LaneHeight);
            yield return Svg.Path(
                $"M{N(dimension.From)} {N(from)} V{N(y + Overshoot)} M{N(dimension.To)} {N(from)} V{N(y + Overshoot)}",
                dimension.Measure.Missing ? 1.6 : 0.7);
        }

        foreach (LaidDimension dimension in laid)
        {
            double y = first + (dimension.Lane * LaneHeight);
            yield return Line(dimension.Measure, dimension.From, y, dimension.To, y);
            foreach (XElement element in Label(dimension.Measure, dimension.Label, y + HalfLetter))
            {
                yield return element;
            }
        }
    }

    /// <summary>A straight dimension between two points, its line set off upward.</summary>
    /// <param name="measure">What is dimensioned.</param>
    /// <param name="from">The point where it begins.</param>
    /// <param name="to">The point where it ends.</param>
    /// <param name="up">How far above the points the line is.</param>
    public IEnumerable<XElement> Above(Measure measure, (double X, double Y) from, (double X, double Y) to, double up)
    {
        double length = Math.Sqrt(Math.Pow(to.X - from.X, 2) + Math.Pow(to.Y - from.Y, 2));
        (double x, double y) = ((to.Y - from.Y) / length, (from.X - to.X) / length);
        (double X, double Y) At((double X, double Y) point, double off) => (point.X + (x * off), point.Y + (y * off));
        foreach ((double X, double Y) point in ((double, double)[])[from, to])
        {
            ((double x1, double y1), (double x2, double y2)) = (At(point, Overshoot), At(point, up + Overshoot));
            yield return Svg.Path($"M{N(x1)} {N(y1)} L{N(x2)} {N(y2)}", 0.7);
        }

        ((double fromX, double fromY), (double toX, double toY)) = (At(from, up), At(to, up));
        yield return Line(measure, fromX, fromY, toX, toY);
        foreach (XElement element in Label(measure, ((fromX + toX) / 2) - (WidthOf(measure) / 2), ((fromY + toY) / 2) + HalfLetter))
        {
            yield return element;
        }
    }

    private static XElement Line(Measure measure, double fromX, double fromY, double toX, double toY)
    {
        double length = Math.Sqrt(Math.Pow(toX - fromX, 2) + Math.Pow(toY - fromY, 2));
        double degrees = Math.Atan2(toY - fromY, toX - fromX) * 180 / Math.PI;

        // Arrowheads stand outside where there is no room for two.
        bool inside = length > 2.5 * Arrow;
        string head = inside
            ? $"M0 0 l{N(Arrow)} -3 v6 Z M{N(length)} 0 l-{N(Arrow)} -3 v6 Z"
            : $"M0 0 l-{N(Arrow)} -3 v6 Z M{N(length)} 0 l{N(Arrow)} -3 v6 Z";
        (string, string)[] size = measure.SeenShortened
            ? []
            : [("data-length-mm", Svg.Exact(measure.Missing ? measure.To - measure.From : measure.Value.Millimeters))];
        return Svg.Element(
            "g",
            [
                ("class", "dimension"),
                ("data-name", measure.Name),
                .. size,
                ("transform", $"translate({N(fromX)} {N(fromY)}) rotate({Svg.Exact(degrees)})"),
            ],
            Svg.Path($"M0 0 H{N(length)}", measure.Missing ? 2.6 : 0.9),
            Svg.Element("path", [("d", head)]));
    }

    /// <summary>On a white ground, so that lines that pass it leave it free.</summary>
    private IEnumerable<XElement> Label(Measure measure, double x, double y)
    {
        yield return Svg.Element(
            "rect",
            [
                ("x", N(x - 2)), ("y", N(y - 13)), ("width", N(WidthOf(measure) + 4)), ("height", "17"), ("fill", "white"),
            ]);
        XElement label = Svg.Label(x + (WidthOf(measure) / 2), y, measure.Label(unit), "middle");
        label.SetAttributeValue("font-weight", "bold");
        label.SetAttributeValue("font-size", LetterSize);
        yield return label;
    }

    private static string N(double value) => Svg.Number(value);
}
