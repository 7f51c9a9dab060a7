using System.Globalization;
using System.Xml.Linq;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Cli.Tests;

/// <summary>The drawings of rods, measured: drawn lengths against the numbers of the plan.</summary>
public sealed class RodPictureTests
{
    /// <summary>Millimeters of paper.</summary>
    private const double OnPaper = 0.02;

    /// <summary>Width of the drawings, and what they leave free of it at the sides.</summary>
    private const double Width = 720;
    private const double Free = 28;

    /// <summary>How high the parts are drawn at most, and units of the drawing to the millimeter of paper.</summary>
    private const double MostHeight = 110;
    private const double UnitsPerMm = 4;

    /// <summary>The scales of ISO 5455 with the steps between, tenfold down: what a drawing may be reduced to.</summary>
    private static readonly double[] s_scales =
        [5, 2, 1, 1 / 1.5, 0.5, 0.4, 1 / 3.0, 0.25, 0.2, 1 / 6.0, 1 / 7.5, 0.1, 1 / 15.0, 0.05, 0.04];

    internal static IEnumerable<(string Text, Job Job, PlannedRod Rod)> Rods =>
    [
        .. new[] { CheckJobs.W1, CheckJobs.W2, CheckJobs.W3(), CheckJobs.W5(), CheckJobs.W6, CheckJobs.W8 }
            .Concat(from clocking in (int[])[0, 60, 90, 180] select CheckJobs.W7(clocking))
            .Select(RandomRodTexts.Planned),
        .. RandomRodTexts.All,
    ];

    [Fact]
    public void There_are_rods_of_every_kind()
    {
        PlannedRod[] rods = [.. RandomRodTexts.All.Select(drawn => drawn.Rod)];
        PlannedRod[] made = [.. rods.Where(rod => rod.Plan.Solution is not null)];
        Assert.InRange(made.Length, rods.Length / 5, rods.Length * 4 / 5);
        Assert.Contains(made, rod => rod.Rod.Parts.Socket is not null);
        Assert.Contains(made, rod => rod.Cuts.Count == 2);
        Assert.Contains(made, rod => rod.Rod.Parts is { Inner.IsBent: true, Outer.IsBent: true });
        Assert.Contains(made, rod => rod.Rod.Parts is { Inner.IsBent: true, Outer.IsBent: false });
        Assert.Contains(rods, rod => rod.Plan.Binding.Any(binding => binding.Limit == TieRodCalc.Rods.Limit.Tips));
    }

    [Fact]
    public void Every_dimension_is_drawn_as_long_as_its_number_says()
    {
        foreach ((string text, Job job, PlannedRod rod) in Rods)
        {
            DrawnPicture picture = Draw(rod, job);
            Assert.All(picture.Dimensions.Where(dimension => dimension.LengthMm is not null), dimension =>
                Near(text, dimension.Name, picture.Scale * dimension.LengthMm!.Value, dimension.Drawn / DrawnPicture.UnitsPerMm));
        }
    }

    [Fact]
    public void The_numbers_are_those_of_the_plan()
    {
        foreach ((string text, Job job, PlannedRod rod) in Rods.Where(drawn => drawn.Rod.Plan.Solution is not null))
        {
            DrawnPicture picture = Draw(rod, job);
            Dictionary<string, double?> drawn = picture.Dimensions.ToDictionary(dimension => dimension.Name, dimension => dimension.LengthMm);
            Dictionary<string, Length?> plan = Figures(rod.Plan);
            Assert.Equal(plan.Keys.Order(), drawn.Keys.Order());
            Assert.All(drawn.Where(dimension => dimension.Value is not null), dimension =>
                Assert.Equal(plan[dimension.Key]!.Value.Millimeters, dimension.Value!.Value, 1e-6));
            bool shortened = rod.Rod.Parts is { Inner.IsBent: true, Outer.IsBent: true, Clocking: { } clocking }
                && clocking.Degrees is > 0 and < 180;
            Assert.True(shortened == drawn["center-to-center"] is null, text);
        }
    }

    [Fact]
    public void Engaged_thread_is_as_long_as_the_plan_says_and_stands_where_it_is_dimensioned()
    {
        foreach ((string text, Job job, PlannedRod rod) in Rods.Where(drawn => drawn.Rod.Plan.Solution is not null))
        {
            DrawnPicture picture = Draw(rod, job);
            RodSolution made = rod.Plan.Solution!;
            double[] expected = [made.Inner.Engaged.Millimeters, .. made.Outer is { } outer ? new[] { outer.Engaged.Millimeters } : []];
            DrawnDimension[] dimensions =
                [.. picture.Dimensions.Where(dimension => dimension.Name.StartsWith("engaged", StringComparison.Ordinal)).OrderBy(dimension => dimension.X)];
            DrawnBox[] drawn = [.. picture.Engaged.OrderBy(box => box.Left).ThenBy(box => box.Top)];
            Assert.Equal(2 * expected.Length, drawn.Length);
            for (int side = 0; side < drawn.Length; side++)
            {
                Near(text, "engaged", expected[side / 2] * picture.Scale, (drawn[side].Right - drawn[side].Left) / DrawnPicture.UnitsPerMm);
                Near(text, "engaged from", dimensions[side / 2].X / DrawnPicture.UnitsPerMm, drawn[side].Left / DrawnPicture.UnitsPerMm);
            }
        }
    }

    [Fact]
    public void Extension_lines_stand_at_both_ends_of_every_dimension_below()
    {
        foreach ((string text, Job job, PlannedRod rod) in Rods)
        {
            DrawnPicture picture = Draw(rod, job);
            IReadOnlyList<double> extensions = picture.Extensions;
            foreach (DrawnDimension dimension in picture.Dimensions.Where(dimension => dimension.Name != "center-to-center"))
            {
                Assert.True(extensions.Any(place => Math.Abs(place - dimension.X) < 0.02), $"{dimension}\n{text}");
                Assert.True(extensions.Any(place => Math.Abs(place - dimension.EndX) < 0.02), $"{dimension}\n{text}");
            }
        }
    }

    [Fact]
    public void Center_to_center_is_drawn_from_ball_to_ball_seen_from_the_side()
    {
        foreach ((string text, Job job, PlannedRod rod) in Rods.Where(drawn => drawn.Rod.Plan.Solution is not null))
        {
            DrawnPicture picture = Draw(rod, job);
            DrawnDimension whole = picture.Dimensions.Single(dimension => dimension.Name == "center-to-center");
            Assert.Equal(2, picture.Balls.Count);
            ((double x, double y), (double toX, double toY)) = (picture.Balls[0], picture.Balls[1]);
            Near(text, "across", (toX - x) / DrawnPicture.UnitsPerMm, (whole.EndX - whole.X) / DrawnPicture.UnitsPerMm);
            Near(text, "down", (toY - y) / DrawnPicture.UnitsPerMm, (whole.EndY - whole.Y) / DrawnPicture.UnitsPerMm);

            // The first bend lies in the paper, of the second one what is seen of it: o2 cos(clocking).
            double o1 = rod.Rod.Parts.Inner.Offset.Nominal.Millimeters;
            double o2 = (rod.Rod.Parts.Outer?.Offset.Nominal.Millimeters ?? 0) * Math.Cos(o1 > 0 ? rod.Rod.Parts.Clocking?.Radians ?? 0 : 0);
            double axial = rod.Plan.Axial.Millimeters;
            Near(text, "axial", axial * picture.Scale, (toX - x) / DrawnPicture.UnitsPerMm);
            Near(text, "bends", (o1 - o2) * picture.Scale, (toY - y) / DrawnPicture.UnitsPerMm);
        }
    }

    [Fact]
    public void The_scale_is_the_largest_that_fits()
    {
        foreach ((string text, Job job, PlannedRod rod) in Rods)
        {
            DrawnPicture picture = Draw(rod, job);
            (double from, double to) = picture.Axis;
            double mm = (to - from) / picture.Scale;
            int step = Array.FindIndex(s_scales, scale => Math.Abs(scale - picture.Scale) < 1e-6);
            Assert.True(step > 0, $"scale {picture.Scale}\n{text}");
            Assert.True(to - from <= Width - Free + 0.02, $"{to - from} wide\n{text}");
            double larger = s_scales[step - 1];
            Assert.True(
                mm * larger > Width - Free || HighestMm(rod.Rod.Parts) * larger * UnitsPerMm > MostHeight,
                $"scale {picture.Scale} though {larger} fits\n{text}");
        }
    }

    /// <summary>Heads, nuts, sleeve and bends above and below the thread axis, with the room that is left beside them.</summary>
    private static double HighestMm(RodParts parts)
    {
        double[] offsets = [RodShapes.SeenOffset(parts, RodSide.Inner), RodShapes.SeenOffset(parts, RodSide.Outer)];
        double end = RodShapes.HeightOf(parts.Inner);
        double high = 1.15 * Math.Max(Math.Max(end, RodShapes.HeightOf(parts)), parts.Outer is { } outer ? RodShapes.HeightOf(outer) : 0);
        return Math.Max(high, 1.1 * (offsets.Max() + end)) + Math.Max(high, 1.1 * (end - offsets.Min()));
    }

    [Fact]
    public void It_is_the_same_in_every_culture()
    {
        (_, Job job, PlannedRod rod) = RandomRodTexts.Planned(CheckJobs.W7(60));
        string drawn = PlanPicture.Of(job, [rod]);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE", useUserOverride: false);
            Assert.Equal(drawn, PlanPicture.Of(job, [rod]));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void The_words_tell_every_figure_that_is_drawn()
    {
        foreach ((string text, Job job, PlannedRod rod) in Rods.Where(drawn => drawn.Rod.Plan.Solution is not null))
        {
            XElement picture = RodPicture.Of(rod, job.Units, "0");
            string words = picture.Element(DrawnPicture.Svg + "desc")!.Value;
            Assert.Contains(rod.Name, picture.Element(DrawnPicture.Svg + "title")!.Value, StringComparison.Ordinal);
            Assert.All(Figures(rod.Plan), figure => Assert.True(
                words.Contains(
                    LengthFormat.Decimal(
                        figure.Value!.Value,
                        job.Units,
                        figure.Key.StartsWith("engaged", StringComparison.Ordinal) ? LengthRounding.Down : LengthRounding.Nearest),
                    StringComparison.Ordinal),
                $"{figure} is not in '{words}'\n{text}"));
        }
    }

    internal static DrawnPicture Draw(PlannedRod rod, Job job) =>
        new(XElement.Parse(RodPicture.Of(rod, job.Units, "0").ToString()));

    private static Dictionary<string, Length?> Figures(RodPlan plan)
    {
        RodSolution made = plan.Solution!;
        Dictionary<string, Length?> figures = new() { ["center-to-center"] = plan.Target };
        if (made.TipGap is { } gap)
        {
            figures["tip-gap"] = gap;
        }

        foreach ((string side, JointPlan joint) in
            new (string, JointPlan?)[] { ("inner", made.Inner), ("outer", made.Outer) }.Where(each => each.Item2 is not null).Select(each => (each.Item1, each.Item2!)))
        {
            figures[$"showing-{side}"] = joint.Showing;
            figures[$"inserted-{side}"] = joint.Insertion;
            figures[$"engaged-{side}"] = joint.Engaged;
        }

        return figures;
    }

    private static void Near(string text, string what, double expected, double actual) =>
        Assert.True(Math.Abs(expected - actual) <= OnPaper, $"{what}: {expected} expected, drawn {actual} mm of paper\n{text}");
}
