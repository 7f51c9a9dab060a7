using System.Xml.Linq;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>
/// The parts of a rod in section, drawn to scale along the thread axis and in their thread diameters. What no part file says is
/// indicated: heads of the joints, widths of the nuts, how a shank is bent.
/// </summary>
/// <param name="across">From millimeters along the thread axis to places across the drawing.</param>
/// <param name="axis">Where the thread axis is, from the top.</param>
/// <param name="hatching">The id of the hatching.</param>
internal sealed class RodShapes(Scale across, double axis, string hatching)
{
    private const double Outline = 1.6;
    private const double Thin = 0.8;

    /// <summary>Heads, nuts and sleeves of unknown width are this many thread diameters high (indicated only).</summary>
    private const double HeadDiameters = 1.9;
    private const double NutDiameters = 1.6;
    private const double SleeveDiameters = 1.7;

    /// <summary>A bent shank comes to the thread axis at this part of its way to the thread (indicated only).</summary>
    private const double KneeAt = 0.6;

    /// <summary>Engaged thread is drawn at least so high that it can be seen.</summary>
    private const double LeastEngagedHeight = 4.8;

    /// <summary>So far at most the lines of a ball center stand out of the head: drawings leave a little more free beside it.</summary>
    private const double MostBeyondHead = 12;

    private readonly double _perMm = (across.Last - across.First) / (across.To - across.From);

    /// <summary>How far above the thread axis an end and its nut reach, in millimeters.</summary>
    public static double HeightOf(ThreadedEnd end) => Math.Max(HeadDiameters, NutDiameters) / 2 * Major(end);

    /// <summary>How far from the thread axis the sleeve's outside is, in millimeters.</summary>
    public static double HeightOf(RodParts parts) => parts.Sleeve?.Outside is { } outside
        ? outside.Across.Nominal.Millimeters / 2
        : SleeveDiameters / 2 * Math.Max(Major(parts.Inner), parts.Outer is { } outer ? Major(outer) : 0);

    /// <summary>How far beyond its ball center a head reaches, in millimeters.</summary>
    public static double HeadOf(ThreadedEnd end) => HeadDiameters / 2 * Major(end);

    /// <summary>
    /// How far an end's ball center is above the thread axis as it is seen, in millimeters: the first bend lies in the paper.
    /// </summary>
    public static double SeenOffset(RodParts parts, RodSide side)
    {
        double inner = parts.Inner.Offset.Nominal.Millimeters;
        double outer = parts.Outer?.Offset.Nominal.Millimeters ?? 0;
        return side == RodSide.Inner ? inner
            : parts is { Inner.IsBent: true, Outer.IsBent: true, Clocking: { } clocking } ? outer * Math.Cos(clocking.Radians)
            : outer;
    }

    /// <summary>Whether the two bends do not lie in one plane, so that the line of the balls is drawn shorter than it is.</summary>
    public static bool IsSeenShortened(RodParts parts) =>
        parts is { Inner.IsBent: true, Outer.IsBent: true, Clocking: { } clocking } && Math.Abs(Math.Sin(clocking.Radians)) > 1e-6;

    /// <summary>An end with its thread, from ball to tip; what is cut off is hatched where it is shown.</summary>
    /// <param name="end">The part.</param>
    /// <param name="ball">Place of the ball center.</param>
    /// <param name="offset">How far the ball center is above the thread axis as it is seen, in millimeters.</param>
    /// <param name="start">Where the full thread begins.</param>
    /// <param name="tip">The tip.</param>
    /// <param name="waste">The tip before the cut, where it is to be shown.</param>
    public IEnumerable<XElement> End(ThreadedEnd end, double ball, double offset, double start, double tip, double? waste = null)
    {
        double major = Major(end) / 2;
        double minor = end.Thread.Size.MinorDiameter.Millimeters / 2;
        double knee = ball + ((start - ball) * (offset == 0 ? 0 : KneeAt));
        string shank = $"M{X(ball)} {Y(offset)} L{X(knee)} {Y(0)} L{X(start)} {Y(0)}";
        yield return Wide(shank, (2 * major * _perMm) + (2 * Outline), "black");
        yield return Wide(shank, 2 * major * _perMm, "white");

        double last = waste ?? tip;
        double lead = last - (Math.Sign(last - start) * Math.Min(Lead(end), Math.Abs(last - start)));
        yield return Area(
            $"M{X(start)} {Y(major)} L{X(lead)} {Y(major)} L{X(last)} {Y(minor)} L{X(last)} {Y(-minor)} L{X(lead)} {Y(-major)} "
                + $"L{X(start)} {Y(-major)} Z",
            "white");
        yield return Svg.Path($"M{X(start)} {Y(minor)} H{X(lead)} M{X(start)} {Y(-minor)} H{X(lead)}", Thin);
        yield return Svg.Path($"M{X(start)} {Y(major)} V{Y(-major)}", Outline);
        if (waste is { } old)
        {
            string cut = $"M{X(tip)} {Y(major)} H{X(old)} V{Y(-major)} H{X(tip)} Z";
            foreach (XElement element in Hatched(hatching, cut, (tip, major), (old, -major)))
            {
                yield return element;
            }
        }

        foreach (XElement head in Head(ball, offset, major))
        {
            yield return head;
        }
    }

    /// <summary>The head of a joint with its ball center.</summary>
    public IEnumerable<XElement> Head(double ball, double offset, double threadRadius)
    {
        double radius = HeadDiameters * threadRadius * _perMm;
        yield return Svg.Element(
            "circle",
            [
                ("cx", X(ball)), ("cy", Y(offset)), ("r", Svg.Number(radius)), ("fill", "white"), ("stroke", "black"),
                ("stroke-width", Svg.Number(Outline)),
            ]);
        double reach = radius + Math.Min(radius / 4, MostBeyondHead);
        (string arm, string cross) = (Svg.Number(reach), Svg.Number(2 * reach));
        yield return Svg.Path(
            $"M{X(ball)} {Y(offset)} m-{arm} 0 h{cross} M{X(ball)} {Y(offset)} m0 -{arm} v{cross}",
            Thin,
            "9 3 2 3");
    }

    /// <summary>A line along the thread axis.</summary>
    public XElement Axis(double from, double to) => Svg.Path($"M{X(from)} {Y(0)} H{X(to)}", Thin, "14 3 2 3");

    /// <summary>The engaged thread of a joint: black on both sides, from thread root to thread crest.</summary>
    public IEnumerable<XElement> Engaged(ThreadedEnd end, LengthSpan engaged)
    {
        double depth = (end.Thread.Size.Diameter - end.Thread.Size.MinorDiameter).Millimeters / 2 * _perMm;
        double height = Math.Max(LeastEngagedHeight, depth);
        double middle = ((Major(end) / 2) * _perMm) - (depth / 2);
        foreach (int side in (int[])[-1, 1])
        {
            yield return Svg.Element(
                "rect",
                [
                    ("class", "engaged"),
                    ("x", X(engaged.Shortest.Millimeters)),
                    ("y", Svg.Number(axis + (side * middle) - (height / 2))),
                    ("width", Svg.Number((engaged.Longest - engaged.Shortest).Millimeters * _perMm)),
                    ("height", Svg.Number(height)),
                ]);
        }
    }

    /// <summary>A jam nut, tight on the face.</summary>
    public IEnumerable<XElement> Nut(ThreadedEnd end, Length face, Length nut)
    {
        double half = NutDiameters / 2 * Major(end);
        (double from, double to) = (face.Millimeters, nut.Millimeters);
        yield return Area($"M{X(from)} {Y(half)} H{X(to)} V{Y(-half)} H{X(from)} Z", "white");
        yield return Svg.Path($"M{X(from)} {Y(half / 2)} H{X(to)} M{X(from)} {Y(-half / 2)} H{X(to)}", Thin);
    }

    /// <summary>The line at which an end is cut.</summary>
    public XElement ScribeLine(ThreadedEnd end, double at)
    {
        double half = Major(end) * 0.95;
        return Svg.Path($"M{X(at)} {Y(half)} V{Y(-half)}", 3.2);
    }

    public static double Major(ThreadedEnd end) => end.Thread.Size.Diameter.Millimeters;

    /// <summary>The incomplete thread at a tip: one pitch where nothing was said.</summary>
    public static double Lead(ThreadedEnd end) => (end.Lead?.Nominal ?? end.Thread.Size.Pitch).Millimeters;

    public string X(double millimeters) => Svg.Number(across.At(millimeters));

    public string Y(double above) => Svg.Number(axis - (above * _perMm));

    /// <summary>An area filled with slanted lines, between two corners in millimeters along and above the thread axis.</summary>
    public IEnumerable<XElement> Hatched(string id, string points, (double At, double Above) one, (double At, double Above) other) =>
        Svg.Hatched(
            id,
            points,
            across.At(one.At),
            axis - (one.Above * _perMm),
            across.At(other.At),
            axis - (other.Above * _perMm));

    public static XElement Area(string points, string fill, double stroke = Outline) => Svg.Element(
        "path",
        [("d", points), ("fill", fill), ("stroke", "black"), ("stroke-width", Svg.Number(stroke)), ("stroke-linejoin", "round")]);

    private static XElement Wide(string points, double width, string stroke) => Svg.Element(
        "path",
        [
            ("d", points), ("fill", "none"), ("stroke", stroke), ("stroke-width", Svg.Number(width)), ("stroke-linejoin", "round"),
        ]);
}
