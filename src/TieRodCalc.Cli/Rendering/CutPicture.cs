using System.Xml.Linq;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;

namespace TieRodCalc.Cli.Rendering;

/// <summary>An end before it is cut, with the scribe line and the dimensions by which it is found.</summary>
/// <param name="rod">The rod's name.</param>
/// <param name="of">The end and its cut.</param>
/// <param name="unit">The job's unit.</param>
internal sealed class CutPicture(string rod, EndCut of, LengthDisplay unit)
{
    private const double MostHeight = 80;
    private const double Side = 14;
    private const double Gap = 5;

    /// <summary>
    /// An end is cut by what is measured from the ball center, on a bent one two ways, or from the old tip; the rest is for control.
    /// </summary>
    public static bool IsNeeded(Measure measure) =>
        measure.Straight || measure.Name is RodMeasures.MarkFromCenter or RodMeasures.CutOff;

    /// <summary>The picture.</summary>
    /// <param name="id">What sets the ids within it apart from those of another picture on the same page.</param>
    /// <param name="width">How wide it is; narrower than the rod's own drawing, it is left to what is needed.</param>
    public XElement Draw(string id, double width)
    {
        (RodSide side, ThreadedEnd end, CutAdvice cut) = of;
        bool narrow = width < RodPicture.Width;
        IReadOnlyList<Measure> measures = [.. RodMeasures.Of(of).Where(measure => !narrow || IsNeeded(measure))];
        double center = end.CenterToTip.Nominal.Millimeters;
        double offset = end.Offset.Nominal.Millimeters;
        double mark = cut.MarkFromCenter.Millimeters;
        double start = center - end.ThreadLength.Nominal.Millimeters;
        double head = RodShapes.HeadOf(end);
        double half = RodShapes.HeightOf(end) * 1.1;
        PaperScale paper = PaperScale.For((center + (2 * head), width - (2 * Side)), (offset + (2 * half), MostHeight));
        double drawn = (center + (2 * head)) * paper.Units;
        double left = (width - drawn) / 2;
        Scale across = new(-head, center + head, left, left + drawn);

        Measure? straight = measures.FirstOrDefault(measure => measure.Straight);
        double header = narrow ? 8 : 28;
        double up = (half * paper.Units) + 8;
        double axis = header + (straight is null ? half * paper.Units : up + 6) + (offset * paper.Units);
        DimensionLines lines = new(unit);
        DimensionLanes lanes = new(across, width, Gap);
        IReadOnlyList<LaidDimension> laid = lanes.Of(
            measures.Where(measure => !measure.Straight).OrderBy(measure => measure.To - measure.From),
            lines.WidthOf);
        double first = axis + (half * paper.Units) + 10;
        double height = first + (laid.Max(dimension => dimension.Lane) * DimensionLines.LaneHeight) + 24;

        string hatching = $"hatch-{id}";
        RodShapes shapes = new(across, axis, hatching);
        List<XElement> content =
        [
            .. shapes.End(end, 0, offset, start, mark, center),
            shapes.Axis(-head, center + head),
            shapes.ScribeLine(end, mark),
        ];
        if (straight is not null)
        {
            content.AddRange(lines.Above(straight, (across.At(0), axis - (offset * paper.Units)), (across.At(mark), axis), up));
        }

        content.AddRange(lines.Below(laid, axis, first));
        if (!narrow)
        {
            content.Add(Svg.Label(2, 20, Svg.Shortened($"{Names.Of(side)} end before the cut: {end.Info.Id}", width - 4)));
        }

        content.AddRange(new ScaleBar(unit).Draw(
            paper, height, narrow ? string.Empty : "Heavy line: cut here. Hatched: waste. Head and bend are only indicated."));
        XElement picture = Svg.Picture(
            width,
            height,
            $"Rod {rod}: where the {Names.Of(side)} end is cut",
            string.Join(' ', measures.Select(measure => $"{measure.Label(unit)}, {measure.Words}.")),
            content);
        picture.SetAttributeValue("data-scale", Svg.Exact(paper.PaperPerMm));
        return picture;
    }
}
