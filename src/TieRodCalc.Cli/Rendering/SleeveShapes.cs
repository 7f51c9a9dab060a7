using System.Xml.Linq;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The part with the internal threads in section: an adjuster sleeve, or the socket of an outer end.</summary>
internal sealed class SleeveShapes(RodShapes shapes, RodParts parts, RodLayout layout, string hatching)
{
    /// <summary>A witness hole is drawn so wide, in thread diameters (indicated only; its far edge is to scale).</summary>
    private const double WitnessDiameters = 0.2;

    private readonly double _outside = RodShapes.HeightOf(parts);

    public IEnumerable<XElement> Draw()
    {
        double left = layout.Inner.Face.Millimeters;
        double right = layout.Outer?.Face.Millimeters ?? layout.Axial.Millimeters;
        (double At, double Radius)[] profile = [.. Profile(right)];
        string walls = string.Join(' ', from side in (int[])[1, -1]
                                        let bore = profile.Select(point => $"L{Point(point.At, side * point.Radius)}")
                                        let edge = $"M{Point(left, side * _outside)} {string.Join(' ', bore)}"
                                        select $"{edge} L{Point(right, side * _outside)} Z");
        foreach (XElement element in shapes.Hatched(hatching, walls, (left, _outside), (right, -_outside)))
        {
            yield return element;
        }

        foreach (int side in (int[])[1, -1])
        {
            // The middle of a sleeve that is bored from both ends is one piece: no line along the axis.
            string edges = string.Join(' ', profile.Select((point, index) =>
            {
                bool onAxis = index > 0 && point.Radius == 0 && profile[index - 1].Radius == 0;
                return $"{(index == 0 || onAxis ? 'M' : 'L')}{Point(point.At, side * point.Radius)}";
            }));
            yield return Outline(
                $"{edges} M{Point(left, side * profile[0].Radius)} L{Point(left, side * _outside)} "
                    + $"L{Point(right, side * _outside)} L{Point(right, side * profile[^1].Radius)}");
        }

        foreach (JointLayout joint in new[] { layout.Inner, layout.Outer }.OfType<JointLayout>())
        {
            foreach (XElement element in Hole(joint))
            {
                yield return element;
            }
        }
    }

    /// <summary>The bore's edge above the axis, from the inner face to the outer one.</summary>
    private IEnumerable<(double At, double Radius)> Profile(double right)
    {
        JointLayout inner = layout.Inner;
        foreach ((double, double) point in Mouth(inner))
        {
            yield return point;
        }

        bool innerOpen = parts.Sleeve?.Inner.Bore == Bore.Open;
        bool outerOpen = parts.Sleeve?.Outer.Bore == Bore.Open;
        double between = Math.Max(
            innerOpen ? RodShapes.Major(parts.Inner) / 2 : 0, outerOpen ? RodShapes.Major(parts.Outer!) / 2 : 0);
        if (!innerOpen)
        {
            yield return (inner.HoleEnd.Millimeters, 0);
        }

        yield return (inner.HoleEnd.Millimeters, between);
        if (layout.Outer is { } outer)
        {
            yield return (outer.HoleEnd.Millimeters, between);
            if (!outerOpen)
            {
                yield return (outer.HoleEnd.Millimeters, 0);
            }

            foreach ((double, double) point in Mouth(outer).Reverse())
            {
                yield return point;
            }
        }
        else
        {
            yield return (right, 0);
        }
    }

    /// <summary>Countersink and full thread: from the face inward.</summary>
    private IEnumerable<(double At, double Radius)> Mouth(JointLayout joint)
    {
        ThreadedEnd end = EndAt(joint);
        double minor = end.Thread.Size.MinorDiameter.Millimeters / 2;
        yield return (joint.Face.Millimeters, (RodShapes.Major(end) / 2) + (end.Thread.Size.Pitch.Millimeters / 4));
        yield return (joint.Mouth.Millimeters, minor);
        yield return (joint.HoleEnd.Millimeters, minor);
    }

    private IEnumerable<XElement> Hole(JointLayout joint)
    {
        ThreadedEnd end = EndAt(joint);
        double major = RodShapes.Major(end) / 2;
        yield return Svg.Path(
            $"M{Point(joint.Mouth.Millimeters, major)} L{Point(joint.HoleEnd.Millimeters, major)} "
                + $"M{Point(joint.Mouth.Millimeters, -major)} L{Point(joint.HoleEnd.Millimeters, -major)}",
            0.8);
        int inward = Math.Sign(joint.HoleEnd.Millimeters - joint.Face.Millimeters);
        if (joint.Witness is { } witness)
        {
            double far = witness.Millimeters;
            double near = far - (inward * Math.Min(WitnessDiameters * 2 * major, Math.Abs(far - joint.Face.Millimeters)));
            yield return RodShapes.Area(
                $"M{Point(near, _outside)} L{Point(far, _outside)} L{Point(far, 0)} L{Point(near, 0)} Z", "white", 1.2);
        }

        if (joint.Clamp is { } clamp)
        {
            (double far, double face) = (clamp.Millimeters, joint.Face.Millimeters);
            double high = _outside + (major / 3);
            double near = face + ((far - face) / 4);
            foreach (int side in (int[])[1, -1])
            {
                yield return RodShapes.Area(
                    $"M{Point(near, side * _outside)} L{Point(near, side * high)} L{Point(far, side * high)} "
                        + $"L{Point(far, side * _outside)} Z",
                    "white");
            }
        }
    }

    private XElement Outline(string points)
    {
        bool known = parts.Sleeve is null || parts.Sleeve.Outside is not null;
        return Svg.Path(points, 1.6, known ? null : "7 3");
    }

    private ThreadedEnd EndAt(JointLayout joint) => parts.EndAt(joint.Side);

    private string Point(double at, double above) => $"{shapes.X(at)} {shapes.Y(above)}";
}
