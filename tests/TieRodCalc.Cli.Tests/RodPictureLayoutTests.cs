using System.Globalization;
using System.Xml.Linq;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Planning;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Tests;

/// <summary>The drawings of rods and of cuts as they lie on paper: nothing outside, nothing over anything else, black on white.</summary>
public sealed class RodPictureLayoutTests
{
    /// <summary>Half of a line's width may stand out.</summary>
    private const double Line = 1;

    /// <summary>The pictures of all rods and cuts, each with its frame.</summary>
    private static IEnumerable<(string Text, XElement Picture)> Pictures =>
        from drawn in RodPictureTests.Rods
        from picture in PlanPicture.OfCuts(drawn.Rod, drawn.Job.Units, "0", 360)
            .Concat(PlanPicture.OfCuts(drawn.Rod, drawn.Job.Units, "0", RodPicture.Width))
            .Append(RodPicture.Of(drawn.Rod, drawn.Job.Units, "0"))
            .Append(RodPicture.Of(drawn.Rod, drawn.Job.Units, "0", titled: false))
        select (drawn.Text, XElement.Parse(picture.ToString()));

    [Fact]
    public void Everything_is_inside_the_frame()
    {
        foreach ((string text, XElement root) in Pictures)
        {
            double[] frame = DrawnPicture.Numbers((string)root.Attribute("viewBox")!);
            DrawnPicture picture = new(root);
            Assert.All(picture.Points, point => Assert.True(
                point.X >= -Line && point.Y >= -Line && point.X <= frame[2] + Line && point.Y <= frame[3] + Line,
                $"({point.X}, {point.Y}) is outside {frame[2]} x {frame[3]}: {point.Of}\n{text}"));
            Assert.All(picture.Labels.Concat(picture.Notes), box => Assert.True(
                box.Left >= -2 - Line && box.Top >= -Line && box.Right <= frame[2] + 2 + Line && box.Bottom <= frame[3] + Line,
                $"outside {frame[2]} x {frame[3]}: {box}\n{text}"));
        }
    }

    [Fact]
    public void No_label_meets_another_one_or_other_words()
    {
        foreach ((string text, XElement root) in Pictures)
        {
            DrawnPicture picture = new(root);
            DrawnBox[] boxes = [.. picture.Labels, .. picture.Notes];
            for (int one = 0; one < picture.Labels.Count; one++)
            {
                Assert.All(boxes[(one + 1)..], other => Assert.False(boxes[one].Meets(other), $"{boxes[one]} meets {other}\n{text}"));
            }
        }
    }

    [Fact]
    public void The_words_of_a_label_stand_on_its_ground()
    {
        foreach ((string text, XElement root) in Pictures)
        {
            DrawnPicture picture = new(root);
            Assert.All(picture.Labels.Zip(picture.LabelTexts), pair => Assert.True(
                pair.First.Left <= pair.Second.Left && pair.First.Right >= pair.Second.Right
                    && pair.First.Top <= pair.Second.Top && pair.First.Bottom >= pair.Second.Bottom,
                $"{pair}\n{text}"));
        }
    }

    [Fact]
    public void No_label_hides_the_ends_of_a_dimension()
    {
        foreach ((string text, XElement root) in Pictures)
        {
            DrawnPicture picture = new(root);
            foreach (DrawnDimension dimension in picture.Dimensions)
            {
                DrawnBox[] ends = [End(dimension.X, dimension.Y), End(dimension.EndX, dimension.EndY)];
                Assert.All(picture.Labels, label => Assert.All(ends, end => Assert.False(label.Meets(end), $"{label} hides an end of {dimension}\n{text}")));
            }
        }
    }

    [Fact]
    public void Every_label_stands_at_the_height_of_its_line()
    {
        foreach ((string text, XElement root) in Pictures)
        {
            DrawnPicture picture = new(root);
            Assert.Equal(picture.Dimensions.Count, picture.Labels.Count);
            Assert.All(picture.Dimensions.Zip(picture.Labels), pair => Assert.True(
                Math.Abs(((pair.First.Y + pair.First.EndY) / 2) - ((pair.Second.Top + pair.Second.Bottom) / 2)) < 3, $"{pair}\n{text}"));
        }
    }

    [Fact]
    public void It_is_black_on_white_and_has_a_name_and_words()
    {
        foreach ((string text, XElement root) in Pictures)
        {
            Assert.All(root.Descendants().Attributes("fill").Concat(root.Descendants().Attributes("stroke")), color =>
                Assert.Contains(color.Value, (string[])["black", "white", "none"]));
            Assert.Empty(root.Descendants().Attributes("style"));
            Assert.NotEmpty(root.Element(DrawnPicture.Svg + "title")!.Value.Trim());
            Assert.True(root.Element(DrawnPicture.Svg + "desc")!.Value.Trim().Length > 0, text);
            Assert.Equal("img", (string)root.Attribute("role")!);
            double[] frame = DrawnPicture.Numbers((string)root.Attribute("viewBox")!);
            Assert.Equal(frame[2] / DrawnPicture.UnitsPerMm, DrawnPicture.Numbers((string)root.Attribute("width")!)[0], 0.01);
            Assert.Equal(frame[3] / DrawnPicture.UnitsPerMm, DrawnPicture.Numbers((string)root.Attribute("height")!)[0], 0.01);
        }
    }

    [Fact]
    public void A_cut_is_drawn_where_the_plan_puts_it()
    {
        int cuts = 0;
        foreach ((string text, Job job, PlannedRod rod) in RodPictureTests.Rods)
        {
            foreach ((XElement root, EndCut cut) in PlanPicture.OfCuts(rod, job.Units, "0", RodPicture.Width).Zip(rod.Cuts))
            {
                cuts++;
                DrawnPicture picture = new(XElement.Parse(root.ToString()));
                Dictionary<string, double?> expected = new()
                {
                    ["mark-from-center"] = cut.Cut.MarkFromCenter.Millimeters,
                    ["cut"] = cut.Cut.Recommended.Millimeters,
                    ["thread-left"] = cut.Cut.ThreadLeft.Millimeters,
                };
                if (cut.End.IsBent)
                {
                    expected["straight-from-center"] = Math.Sqrt(
                        Math.Pow(cut.Cut.MarkFromCenter.Millimeters, 2) + Math.Pow(cut.End.Offset.Nominal.Millimeters, 2));
                }

                Assert.Equal(expected.Keys.Order(), picture.Dimensions.Select(dimension => dimension.Name).Order());
                Assert.All(picture.Dimensions, dimension =>
                {
                    Assert.Equal(expected[dimension.Name]!.Value, dimension.LengthMm!.Value, 1e-5);
                    Assert.True(
                        Math.Abs((picture.Scale * dimension.LengthMm.Value) - (dimension.Drawn / DrawnPicture.UnitsPerMm)) <= 0.02,
                        $"{dimension}\n{text}");
                });

                // The heavy line stands where the ball center's dimension ends.
                double mark = picture.Dimensions.Single(dimension => dimension.Name == "mark-from-center").EndX;
                XElement heavy = root.Elements(DrawnPicture.Svg + "path").Single(path => (string)path.Attribute("stroke-width")! == "3.2");
                Assert.Equal(mark, DrawnPicture.Numbers((string)heavy.Attribute("d")!)[0], 0.03);
            }
        }

        Assert.True(cuts > 50, cuts.ToString(CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Ids_of_all_rods_of_a_job_differ_and_every_reference_finds_one()
    {
        (_, Job job, PlannedRod cut) = RandomRodTexts.All.First(drawn => drawn.Rod.Cuts.Count == 2);
        PlannedRod missing = RandomRodTexts.All.First(drawn => drawn.Rod.Plan.Verdict == Verdict.NotBuildable).Rod;
        XElement picture = XElement.Parse(PlanPicture.Of(job, [cut, missing, cut]));
        string[] ids = [.. picture.Descendants().Attributes("id").Select(id => id.Value)];
        Assert.True(ids.Length >= 7);
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.All(picture.Descendants().Attributes("clip-path"), area => Assert.Contains(area.Value["url(#".Length..^1], ids));
        string words = picture.Element(DrawnPicture.Svg + "desc")!.Value;
        Assert.Contains("ROD r: BUILDABLE AFTER CUTTING.", words, StringComparison.Ordinal);
        Assert.Contains("ROD r: NOT BUILDABLE.", words, StringComparison.Ordinal);
    }

    private static DrawnBox End(double x, double y) => new(x - 1, y - 1, x + 1, y + 1, "end");
}
