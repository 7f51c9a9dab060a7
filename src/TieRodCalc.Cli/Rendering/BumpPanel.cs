using System.Xml.Linq;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;
using UnitsNet.Units;

namespace TieRodCalc.Cli.Rendering;

/// <summary>Toe over travel of one side: travel upward, toe across, toe-in to the right.</summary>
internal sealed class BumpPanel
{
    public const int Width = 720;
    public const int Height = 430;

    /// <summary>Units to the left of the frame, for the travels.</summary>
    private const double Left = 84;

    private const double Margin = 64;
    private const double SmallMargin = 8;
    private const double BelowFrame = 64;
    private const double BelowSmallFrame = 42;
    private const int LineHeight = 19;
    private const int WordsLeft = 74;
    private const double UnitsPerTick = 48;

    private readonly LengthDisplay _unit;
    private readonly List<Curve> _curves;
    private readonly Scale _across;
    private readonly Scale _up;
    private readonly bool _titled;

    /// <param name="side">The side.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="width">Width of the panel.</param>
    /// <param name="height">Height of the panel.</param>
    /// <param name="titled">Whether what is drawn is said above it.</param>
    public BumpPanel(BumpSide side, LengthDisplay unit, double width = Width, double height = Height, bool titled = true)
    {
        _unit = unit;
        _titled = titled;
        _curves = [.. CurvesOf(side, unit)];
        string of = side.Rod is { } rod ? $", rod {rod.Name}" : string.Empty;
        Words = [$"{Names.Of(side.Side)} wheel{of}", .. _curves.Select(curve => curve.Words)];
        // Without a curve the scales are of nothing, and nothing is drawn by them.
        BumpPoint[] points = [default, .. _curves.SelectMany(curve => curve.Points)];
        double most = Math.Max(points.Max(point => Math.Abs(In(point.AtGauge))), In(Length.FromMillimeters(0.1)));
        _across = new Scale(-1.1 * most, 1.1 * most, Left, width - (titled ? Margin + 20 : SmallMargin));
        double low = points.Min(point => In(point.Travel));
        double high = points.Max(point => In(point.Travel));
        double margin = (high - low) * 0.06;
        int lines = _curves.Sum(curve => LinesOf(curve).Length);
        _up = new Scale(
            low - margin,
            high + margin,
            height - (titled ? BelowFrame : BelowSmallFrame),
            titled ? ((lines + 2) * LineHeight) + 12 : SmallMargin);
    }

    /// <summary>What the drawing says, in words.</summary>
    public IReadOnlyList<string> Words { get; }

    private double Right => _across.Last;

    private double Bottom => _up.First;

    private double Top => _up.Last;

    public IEnumerable<XElement> Draw() => _curves.Count == 0
        ? Title().Append(Svg.Label(20, 2 * LineHeight + 8, "nothing to draw: no readings, and the corner is not computed or does not "
            + "reach its travel"))
        : (_titled ? Title() : []).Concat(Axes()).Concat(_curves.SelectMany(Drawn));

    private IEnumerable<XElement> Title()
    {
        yield return Svg.Element("path", [("d", $"M20 2 H{Width - 20}"), ("stroke", "black"), ("stroke-width", "0.5")]);
        yield return Svg.Label(20, LineHeight + 4, Svg.Shortened(Words[0], Width - 40));
        int line = 1;
        foreach (Curve curve in _curves)
        {
            double y = (line + 1) * LineHeight + 3;
            yield return Svg.Path($"M20 {N(y)} h44", 1.6, curve.Dashes);
            yield return Mark(curve.Kind, 42, y);
            foreach (string words in LinesOf(curve))
            {
                yield return Svg.Label(WordsLeft, ++line * LineHeight + 8, words);
            }
        }
    }

    /// <summary>The words of a curve; in two lines where one is too long.</summary>
    private static string[] LinesOf(Curve curve) =>
        Svg.WidthOf(curve.Words) > Width - WordsLeft && curve.Words.LastIndexOf(": ", StringComparison.Ordinal) is > 0 and var at
            ? [curve.Words[..(at + 1)], curve.Words[(at + 2)..]]
            : [curve.Words];

    private static IEnumerable<Curve> CurvesOf(BumpSide side, LengthDisplay unit)
    {
        BumpSentences sentences = new(unit);
        if (side.Review?.Now is { } computed)
        {
            yield return new Curve(MarkKind.None, computed.Points, "2 3", $"by the points, worst {sentences.PerInch(computed.Worst)}");
        }

        if (side.Review?.WithBest is { } best)
        {
            yield return new Curve(MarkKind.None, best.Points, "10 4 2 4", "by the points with the best moves, worst "
                + $"{sentences.PerInch(best.Worst)}");
        }

        if (side.Findings is not { } findings)
        {
            yield break;
        }

        if (findings.Newest.Fitted.Count > 0)
        {
            yield return new Curve(MarkKind.None, findings.Newest.Fitted, "7 4", "height and length fitted (two terms)");
        }

        if (side.Advice is { } advice)
        {
            yield return new Curve(
                MarkKind.Then,
                advice.RoundedPredicted,
                null,
                $"predicted: {sentences.Task(advice.Rounded)}: worst {sentences.PerInch(advice.RoundedWorst)}");
        }

        yield return new Curve(
            MarkKind.Measured, findings.Newest.Points, null, $"measured, worst {sentences.PerInch(findings.Newest.Worst.PerInch)}");
    }

    private IEnumerable<XElement> Axes()
    {
        yield return Svg.Path($"M{N(Left)} {N(Top)} H{N(Right)} V{N(Bottom)} H{N(Left)} Z", 1);
        yield return Svg.Path($"M{N(_across.At(0))} {N(Top)} V{N(Bottom)} M{N(Left)} {N(_up.At(0))} H{N(Right)}", 0.7, "2 3");
        string unit = _unit == LengthDisplay.Inch ? "in" : "mm";
        foreach (double toe in _across.Ticks(Fine(), (int)((Right - Left) / UnitsPerTick)))
        {
            yield return Svg.Path($"M{N(_across.At(toe))} {N(Bottom)} v6", 1);
            yield return Svg.Label(_across.At(toe), Bottom + 20, Plain(toe), "middle");
        }

        foreach (double travel in _up.Ticks(Fine(), (int)((Bottom - Top) / LineHeight)))
        {
            yield return Svg.Path($"M{N(Left)} {N(_up.At(travel))} h-6", 1);
            yield return Svg.Label(Left - 9, _up.At(travel) + 5, Plain(travel), "end");
        }

        string toward = _titled ? "right of 0 toe-in, left toe-out" : "toe-in to the right";
        double middle = _titled ? (Left + Right) / 2 : (Right + SmallMargin) / 2;
        yield return Svg.Label(middle, Bottom + (_titled ? 42 : 37), $"toe at the gauge, {unit}; {toward}", "middle");
        XElement label = Svg.Label(22, (Top + Bottom) / 2, _titled ? $"travel, {unit}; bump above 0" : $"travel, {unit}", "middle");
        label.SetAttributeValue("transform", $"rotate(-90 22 {N((Top + Bottom) / 2)})");
        yield return label;
    }

    private IEnumerable<XElement> Drawn(Curve curve)
    {
        yield return Svg.Path(
            "M" + string.Join(" L", curve.Points.Select(point => $"{N(X(point))} {N(Y(point))}")),
            curve.Kind == MarkKind.None ? 1 : 1.6,
            curve.Dashes);
        foreach (BumpPoint point in curve.Kind == MarkKind.None ? [] : curve.Points)
        {
            yield return Mark(curve.Kind, X(point), Y(point));
        }
    }

    private static XElement Mark(MarkKind kind, double x, double y) => kind switch
    {
        MarkKind.Measured => Svg.Element(
            "circle", [("cx", N(x)), ("cy", N(y)), ("r", "4"), ("fill", "black"), ("stroke", "black"), ("stroke-width", "1")]),
        MarkKind.Then => Svg.Element(
            "rect",
            [("x", N(x - 5)), ("y", N(y - 5)), ("width", "10"), ("height", "10"), ("fill", "white"),
            ("stroke", "black"), ("stroke-width", "1.6")]),
        _ => Svg.Path("M0 0", 0),
    };

    /// <summary>Steps down to a thousandth.</summary>
    private static IEnumerable<double> Fine() => Scale.Decimals.Take(3).Select(step => step / 10).Concat(Scale.Decimals);

    private double X(BumpPoint point) => _across.At(In(point.AtGauge));

    private double Y(BumpPoint point) => _up.At(In(point.Travel));

    private double In(Length length) => length.As(_unit == LengthDisplay.Inch ? LengthUnit.Inch : LengthUnit.Millimeter);

    private static string Plain(double value) =>
        (value + 0.0).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture).Replace('-', '−');

    private static string N(double value) => Svg.Number(value);

    private enum MarkKind
    {
        None,
        Measured,
        Then,
    }

    private readonly record struct Curve(MarkKind Kind, IReadOnlyList<BumpPoint> Points, string? Dashes, string Words);
}
