using System.Runtime.CompilerServices;
using System.Xml.Linq;
using MathNet.Numerics.RootFinding;
using TieRodCalc.Steering;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>
/// The computed blocks of docs/toe.md, and that their figures hold by plain trigonometry and a root finder too. Set the
/// environment variable TIERODCALC_UPDATE_DOCS to write them anew.
/// </summary>
public class ToeDocumentTests
{
    private const string End = "<!-- end -->";
    private const double Mm = 1e-9;
    private const double Radians = 1e-12;
    private const double Degrees = 1e-9;
    private const double Fine = 1e-14;

    private static string Root => Path.GetFullPath(Path.Combine(Folder(), "..", "..", ".."));

    [Fact]
    public void Computed_blocks_are_what_the_library_computes()
    {
        string path = Path.Combine(Root, "docs", "toe.md");
        string before = File.ReadAllText(path);
        string after = before;
        foreach ((string name, string text) in ((string, string)[])
            [("example", WorkedToe.Text()), ("short form", ShortFormTable.Text()), ("one rod", OneRodTable.Text())])
        {
            string mark = $"<!-- toe: {name} -->\n";
            int start = after.IndexOf(mark, StringComparison.Ordinal);
            Assert.True(start >= 0, $"docs/toe.md has no block {name}");
            start += mark.Length;
            after = after[..start] + text + after[after.IndexOf(End, start, StringComparison.Ordinal)..];
        }

        if (Environment.GetEnvironmentVariable("TIERODCALC_UPDATE_DOCS") is { Length: > 0 })
        {
            File.WriteAllText(path, after);
        }

        Assert.Equal(after, before);
    }

    [Fact]
    public void The_drawing_is_plain_and_says_in_words_what_it_shows()
    {
        XNamespace svg = "http://www.w3.org/2000/svg";
        XElement drawing = XDocument.Load(Path.Combine(Root, "docs", "toe-signs.svg")).Root!;
        Assert.NotEmpty(drawing.Element(svg + "title")!.Value);
        Assert.NotEmpty(drawing.Element(svg + "desc")!.Value);
        Assert.Empty(drawing.Descendants(svg + "script"));
        Assert.DoesNotContain(drawing.DescendantsAndSelf().Attributes(), attribute => attribute.Name.LocalName is "href" or "style");
        Assert.All(
            drawing.Descendants().Attributes().Where(attribute => attribute.Name.LocalName is "fill" or "stroke"),
            attribute => Assert.Contains(attribute.Value, (string[])["black", "white", "none"]));
    }

    [Fact]
    public void The_example_is_the_left_rod_of_the_sample_job()
    {
        JobRod sample = WorkedToe.Sample(Root);
        Assert.Equal(WorkedToe.Rod, sample.Request!.Target.Millimeters, Mm);
        Assert.Equal(WorkedToe.Plates, sample.Request.Plates!.Value.Millimeters, Mm);
        foreach (double length in (double[])[WorkedToe.Rod - 4, WorkedToe.Rod, WorkedToe.Rod + 4])
        {
            Angle? toe = Toe.FromLength(sample.Request.Steering!.Aligned(WorkedToe.ToesNow.Left, Angle.Zero), Length.FromMillimeters(length)).Toe;
            Assert.Equal(Toe.FromLength(WorkedToe.Wheel, Length.FromMillimeters(length)).Toe!.Value.Radians, toe!.Value.Radians, Radians);
            Assert.Equal(WorkedToe.TurnsTo(length), WorkedToe.SampleTurnsTo(sample.Rod!, length), Mm);
        }
    }

    [Fact]
    public void The_steps_of_the_example_lead_where_the_library_and_a_root_finder_do()
    {
        WheelToes now = WorkedToe.ToesNow;
        WheelToes want = WorkedToe.ToesWanted;
        double before = WorkedToe.OfWheel(WorkedToe.Now);
        Assert.Equal((before, before), (now.Left.Radians, now.Right.Radians));
        Assert.Equal(WorkedToe.OfWheel(WorkedToe.Want), want.Left.Radians, Radians);
        Assert.Equal(WorkedToe.LeftAlone, now.AloneFor(CarSide.Left, want)!.Value.Radians, Radians);
        Assert.Equal(WorkedToe.Rod, WorkedToe.Measured(0), Mm);
        foreach (Angle toe in (Angle[])[want.Left, now.AloneFor(CarSide.Left, want)!.Value])
        {
            double length = WorkedToe.LengthAfter(toe.Radians - before);
            Assert.Equal(length, WorkedToe.LengthFor(toe), Mm);
            double turn = Brent.FindRoot(one => WorkedToe.Measured(one) - length, -0.1, 0.1, Fine);
            Assert.Equal(toe.Radians, before + turn, Radians);
            Assert.Equal(toe.Radians, Toe.FromLength(WorkedToe.Wheel, Length.FromMillimeters(length)).Toe!.Value.Radians, Radians);
        }
    }

    [Fact]
    public void The_table_of_the_short_form_agrees_with_a_root_finder()
    {
        Assert.All(ShortFormTable.All, corner =>
        {
            ShortFormError found = ShortFormTable.Of(corner);
            ShortFormError reference = ShortFormTable.Reference(corner);
            Assert.Equal(reference.Change, found.Change, Mm);
            Assert.Equal(reference.ArmAlone, found.ArmAlone, Degrees);
            Assert.Equal(reference.WithAngle, found.WithAngle, Degrees);

            // What the page says of the arm: it lies square to the steer axis, and is as long as it says.
            (Triple outer, Triple inner) = ShortFormTable.Joints(corner);
            Assert.Equal(ShortFormTable.Arm, outer.Size, Mm);
            Assert.Equal(ShortFormTable.Rod, inner.Less(outer).Size, Mm);
            Assert.Equal(0, outer.X * -Math.Tan(corner.Caster * Math.PI / 180) + outer.Z, Mm);
        });
    }

    [Fact]
    public void The_table_of_the_short_form_shows_its_worst_rows()
    {
        Assert.InRange(ShortFormTable.Shown.Count, 10, 30);
        foreach (Func<Corner, double> figure in (Func<Corner, double>[])
            [corner => ShortFormTable.Of(corner).ArmAlone, corner => ShortFormTable.Of(corner).WithAngle])
        {
            Assert.Equal(ShortFormTable.All.Min(figure), ShortFormTable.Shown.Min(figure), Degrees);
            Assert.Equal(ShortFormTable.All.Max(figure), ShortFormTable.Shown.Max(figure), Degrees);
        }
    }

    [Fact]
    public void The_rule_for_the_short_form_holds_to_a_percent()
    {
        Assert.All(ShortFormTable.All, corner =>
        {
            double error = 100 * (ShortFormTable.Of(corner).WithAngle / ShortFormTable.Wanted - 1);
            Assert.InRange(ShortFormTable.Rule(corner) - error, -1, 1);
        });
    }

    [Fact]
    public void One_rod_with_a_wheel_held_agrees_with_trigonometry()
    {
        Assert.All(OneRodTable.Rows, row =>
            Assert.Equal(OneRodTable.HeldReference(row.Lean, row.Now, row.Want), OneRodTable.Of(row.Lean, row.Now, row.Want).Held, Mm));
    }

    private static string Folder([CallerFilePath] string file = "") => Path.GetDirectoryName(file)!;
}
