using System.Globalization;
using System.Xml.Linq;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;

namespace TieRodCalc.Cli.Rendering;

/// <summary>A rod in section with its dimensions: as it is made, or what is in the way of it.</summary>
internal sealed class RodPicture
{
    /// <summary>Width of all drawings of a rod: 180 mm of paper.</summary>
    public const double Width = 720;

    /// <summary>The parts themselves are at most so high: a bend far off the axis makes the scale smaller, not the page longer.</summary>
    private const double MostHeight = 110;

    private const double Side = 14;
    private const double Gap = 5;

    private readonly PlannedRod _planned;
    private readonly LengthDisplay _unit;
    private readonly RodLayout _layout;
    private readonly RodParts _parts;
    private readonly IReadOnlyList<Measure> _measures;
    private readonly string _id;

    private RodPicture(PlannedRod planned, LengthDisplay unit, string id)
    {
        (_planned, _unit, _id, _parts) = (planned, unit, id, planned.Rod.Parts);
        _layout = RodLayout.Of(planned.Rod, planned.Request, planned.Plan);
        _measures = RodMeasures.Of(planned, _layout);
    }

    private RodPlan Plan => _planned.Plan;

    /// <summary>The picture.</summary>
    /// <param name="planned">The rod and its plan.</param>
    /// <param name="unit">The job's unit.</param>
    /// <param name="id">What sets the ids within it apart from those of another picture on the same page.</param>
    /// <param name="titled">Whether the ends are named in it.</param>
    public static XElement Of(PlannedRod planned, LengthDisplay unit, string id, bool titled = true) =>
        new RodPicture(planned, unit, id).Draw(titled);

    /// <summary>How the parts lie, in words.</summary>
    private string Words => _measures.Count == 0
        ? "Nothing that is missing has a place on the rod."
        : string.Join(' ', _measures.Select(measure =>
        $"{measure.Label(_unit)}, {measure.Words}."));

    private string Name => Plan.Solution is not null
        ? $"Rod {_planned.Name} as it is made, in section"
        : $"Rod {_planned.Name} cannot be made so: what is in the way, in section";

    private XElement Draw(bool titled)
    {
        (double from, double to) = Extent();
        double[] offsets = [OffsetOf(RodSide.Inner), OffsetOf(RodSide.Outer)];
        double high = new[] { RodShapes.HeightOf(_parts.Inner), RodShapes.HeightOf(_parts), Outer(RodShapes.HeightOf) }.Max() * 1.15;
        double above = Math.Max(high, (offsets.Max() + RodShapes.HeightOf(_parts.Inner)) * 1.1);
        double below = Math.Max(high, (-offsets.Min() + RodShapes.HeightOf(_parts.Inner)) * 1.1);
        PaperScale paper = PaperScale.For((to - from, Width - (2 * Side)), (above + below, MostHeight));
        double drawn = (to - from) * paper.Units;
        double left = (Width - drawn) / 2;
        Scale across = new(from, to, left, left + drawn);

        double header = titled ? 30 : 12;
        Measure? overall = _measures.FirstOrDefault(measure => measure.Straight);
        double top = header + (overall is null ? 8 : DimensionLines.LaneHeight);
        double axis = top + (above * paper.Units);

        DimensionLines lines = new(_unit);
        DimensionLanes lanes = new(across, Width, Gap);
        IReadOnlyList<LaidDimension> laid = lanes.Of(
            _measures.Where(measure => !measure.Straight), lines.WidthOf);
        double first = axis + (below * paper.Units) + 16;
        double height = first + ((laid.Count == 0 ? 0 : laid.Max(dimension => dimension.Lane)) * DimensionLines.LaneHeight) + 24;

        string hatching = $"hatch-{_id}";
        List<XElement> content = [.. Parts(new RodShapes(across, axis, hatching), hatching, from, to)];
        if (overall is not null)
        {
            (double X, double Y) Center(double at, double offset) => (across.At(at), axis - (offset * paper.Units));
            double up = Math.Min(Center(0, offsets[0]).Y, Center(0, offsets[1]).Y) - header;
            content.AddRange(lines.Above(overall, Center(0, offsets[0]), Center(_layout.Axial.Millimeters, offsets[1]), up));
        }

        content.AddRange(lines.Below(laid, axis, first));
        const double HalfWidth = (Width / 2) - 8;
        PartInfo outer = _parts.Outer?.Info ?? _parts.Socket!.Info;
        if (titled)
        {
            content.Add(Svg.Label(2, 20, Svg.Shortened($"inner end: {_parts.Inner.Info.Id}", HalfWidth)));
            content.Add(Svg.Label(Width - 2, 20, Svg.Shortened($"outer end: {outer.Id}", HalfWidth), "end"));
        }

        string seen = RodShapes.IsSeenShortened(_parts)
            ? $"Bends {Svg.Number(_parts.Clocking!.Value.Degrees)} deg apart: A is seen shortened."
            : "Heads, nut widths and bends are only indicated.";
        string missing = string.Join("; ", from measure in _measures
                                           where measure.Missing
                                           select $"{measure.Letter} {measure.Words}");
        content.AddRange(new ScaleBar(_unit).Draw(
            paper, height, missing.Length > 0 ? $"Missing: {missing}." : $"Black: engaged thread. {seen}"));
        XElement picture = Svg.Picture(Width, height, Name, Words, content);
        picture.SetAttributeValue("data-scale", Svg.Exact(paper.PaperPerMm));
        return picture;
    }

    private double Outer(Func<ThreadedEnd, double> of) => _parts.Outer is { } outer ? of(outer) : 0;

    private double OffsetOf(RodSide side) => RodShapes.SeenOffset(_parts, side);

    private (double From, double To) Extent()
    {
        double outerHead = _parts.Outer is { } outer ? RodShapes.HeadOf(outer) : RodShapes.HeadOf(_parts.Inner);
        double[] places =
        [
            -RodShapes.HeadOf(_parts.Inner), _layout.Axial.Millimeters + outerHead,
            .. Joints().SelectMany(joint => new[] { joint.Tip, joint.Face, joint.Nut ?? joint.Face }).Select(place => place.Millimeters),
            .. _measures.SelectMany(measure => new[] { measure.From, measure.To }),
        ];
        return (places.Min(), places.Max());
    }

    private IEnumerable<JointLayout> Joints() => new[] { _layout.Inner, _layout.Outer }.OfType<JointLayout>();

    private IEnumerable<XElement> Parts(RodShapes shapes, string hatching, double from, double to)
    {
        SleeveShapes sleeve = new(shapes, _parts, _layout, hatching);
        foreach (XElement element in sleeve.Draw())
        {
            yield return element;
        }

        if (_parts.Socket is not null)
        {
            foreach (XElement element in shapes.Head(_layout.Axial.Millimeters, 0, RodShapes.Major(_parts.Inner) / 2))
            {
                yield return element;
            }
        }

        foreach (JointLayout joint in Joints())
        {
            ThreadedEnd end = _parts.EndAt(joint.Side);
            IEnumerable<XElement> drawn = shapes.End(
                end, joint.Ball.Millimeters, OffsetOf(joint.Side), joint.ThreadStart.Millimeters, joint.Tip.Millimeters);
            drawn = joint.Engaged is { } engaged ? drawn.Concat(shapes.Engaged(end, engaged)) : drawn;
            drawn = joint.Nut is { } nut ? drawn.Concat(shapes.Nut(end, joint.Face, nut)) : drawn;
            foreach (XElement element in drawn)
            {
                yield return element;
            }
        }

        yield return shapes.Axis(from, to);
    }
}
