using System.Text.RegularExpressions;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Tests;

/// <summary>The drawings in characters: within a terminal's width, and to scale along the thread axis.</summary>
public sealed partial class RodSketchTests
{
    private const int Columns = 75;

    /// <summary>A letter that its line is too short for stands so far beside it at most.</summary>
    private const int Beside = 3;

    /// <summary>What a plan's page puts before a drawing.</summary>
    private const int Indent = 2;

    [Fact]
    public void No_line_is_wider_than_a_terminal_and_nothing_but_signs_of_drawings_stands_in_it()
    {
        foreach ((string text, Job job, PlannedRod rod) in RodPictureTests.Rods)
        {
            Sketch sketch = Sketch.Of(rod);
            Assert.All(sketch.Lines.Concat(Cuts(rod)), line => Assert.True(line.Length <= Columns && Indent + line.Length <= 79, $"{line}\n{text}"));
            Assert.All(sketch.Lines.Concat(Cuts(rod)), line => Assert.Matches("^[ A-Zx0-9●═╪█░┃─┼┌┐└┘│┬┴/\\\\]*$", line));
            string page = PlanText.Of(job, [rod], []);
            Assert.All(page.Split('\n'), line => Assert.True(line.Length <= 79, $"{line}\n{text}"));
        }
    }

    [Fact]
    public void In_ascii_it_is_as_wide_and_every_sign_has_one_of_its_own_place()
    {
        foreach ((string text, Job _, PlannedRod rod) in RodPictureTests.Rods)
        {
            string drawn = string.Join('\n', Sketch.Of(rod).Lines.Concat(Cuts(rod)));
            string ascii = SketchGrid.InAscii(drawn);
            Assert.True(ascii.All(char.IsAscii), $"{ascii}\n{text}");
            Assert.Equal(drawn.Length, ascii.Length);
            Assert.All(drawn.Zip(ascii), pair => Assert.Equal(char.IsAscii(pair.First) ? pair.First : pair.Second, pair.Second));
            Assert.Equal(drawn.Count(sign => sign == '█'), ascii.Count(sign => sign == '#'));
            Assert.Equal(drawn.Count(sign => sign == '●'), ascii.Count(sign => sign == 'O') - drawn.Count(sign => sign == 'O'));
        }
    }

    [Fact]
    public void Balls_faces_and_tips_stand_where_their_lengths_say()
    {
        foreach ((string text, Job _, PlannedRod rod) in RodPictureTests.Rods.Where(drawn => drawn.Rod.Plan.Solution is not null))
        {
            Sketch sketch = Sketch.Of(rod);
            RodSolution made = rod.Plan.Solution!;
            double axial = rod.Plan.Axial.Millimeters;
            int[] balls = [.. sketch.Rod.SelectMany(line => Regex.Matches(line, "[●O]").Select(match => match.Index)).Order()];
            Assert.Equal(2, balls.Length);
            Near(text, sketch, "inner ball", sketch.Column(0), balls[0]);
            Near(text, sketch, "outer ball", sketch.Column(axial), balls[1]);

            // From the part and the plan alone: tip = c - x, face = tip - s, counted from the end's own ball.
            foreach (RodSide side in rod.Rod.Parts.Joints)
            {
                JointPlan plan = side == RodSide.Inner ? made.Inner : made.Outer!;
                double cut = (side == RodSide.Inner ? made.InnerCut : made.OuterCut)?.Recommended.Millimeters ?? 0;
                double tip = rod.Rod.Parts.EndAt(side).CenterToTip.Nominal.Millimeters - cut;
                double face = tip - plan.Insertion.Millimeters;
                int inward = side == RodSide.Inner ? 1 : -1;
                int At(double fromBall) => sketch.Column(side == RodSide.Inner ? fromBall : axial - fromBall);
                string axis = sketch.Axis;
                Assert.True(axis[At(face)] == '│', $"face of the {side} end: column {At(face)}\n{sketch}\n{text}");
                if (made.TipGap is { } gap && sketch.Column(gap.Millimeters) - sketch.Column(0) < 3)
                {
                    // One end cannot be told from the other.
                    continue;
                }

                int last = At(face);
                while (axis.Length > last + inward && axis[last + inward] is '█' or '░' or '│' or 'X')
                {
                    last += inward;
                }

                Near(text, sketch, $"tip of the {side} end", At(tip), last);
            }
        }
    }

    [Fact]
    public void Letters_stand_between_the_ends_of_what_they_name()
    {
        foreach ((string text, Job _, PlannedRod rod) in RodPictureTests.Rods)
        {
            Sketch sketch = Sketch.Of(rod);
            Assert.Equal(sketch.Measures.Count, sketch.Measures.Select(measure => measure.Letter).Distinct().Count());
            foreach (Measure measure in sketch.Measures)
            {
                string lane = Assert.Single(sketch.Lanes, line => Regex.IsMatch(line, $"(?<![0-9]){measure.Letter}(?![0-9])"));
                int letter = lane.IndexOf(measure.Letter, StringComparison.Ordinal);
                Assert.True(
                    letter >= sketch.Column(measure.From) - Beside && letter <= sketch.Column(measure.To) + Beside,
                    $"{measure} at column {letter}\n{sketch}\n{text}");
                foreach (double end in (double[])[measure.From, measure.To])
                {
                    Assert.True(lane[sketch.Column(end)] == '┼', $"{measure} ends at column {sketch.Column(end)}\n{sketch}\n{text}");
                }
            }

            if (rod.Plan.Solution is { } made)
            {
                string letters = made.Outer is null ? "ABCD" : "ABCDEFGH";
                Assert.Equal(letters, string.Concat(sketch.Measures.Select(measure => measure.Letter).Order()));
            }
        }
    }

    [Fact]
    public void A_bent_end_rises_by_one_to_three_rows_and_a_straight_one_stays()
    {
        int[] rows = new int[4];
        foreach ((string text, Job _, PlannedRod rod) in RodPictureTests.Rods.Where(drawn => drawn.Rod.Rod.Parts is { Outer.IsBent: false }))
        {
            Sketch sketch = Sketch.Of(rod);
            int up = sketch.AxisRow - Array.FindIndex(sketch.Rod, line => line.Contains('●', StringComparison.Ordinal));
            Assert.True(rod.Rod.Parts.Inner.IsBent ? up is >= 1 and <= 3 : up == 0, $"{up} rows\n{sketch}\n{text}");
            rows[up]++;
        }

        Assert.All(rows[..3], found => Assert.True(found > 0));
    }

    [Fact]
    public void Ends_bent_to_opposite_sides_are_seen_on_both_sides_of_the_axis()
    {
        (int inner, int outer) = Balls(CheckJobs.W7(180));
        Assert.True(inner < 0 && outer > 0, $"{inner} {outer}");
        (inner, outer) = Balls(CheckJobs.W7(0));
        Assert.True(inner < 0 && outer < 0, $"{inner} {outer}");
        (inner, outer) = Balls(CheckJobs.W7(90));
        Assert.True(inner < 0 && outer == 0, $"{inner} {outer}");
    }

    [Fact]
    public void Tips_that_would_pass_each_other_are_crossed_out()
    {
        int passed = 0;
        foreach ((string text, Job _, PlannedRod rod) in RodPictureTests.Rods.Where(drawn => drawn.Rod.Rod.Parts.Socket is null))
        {
            Sketch sketch = Sketch.Of(rod);
            bool over = sketch.Layout.Inner.Tip > sketch.Layout.Outer!.Tip;
            passed += over ? 1 : 0;
            Assert.True(over == sketch.Axis.Contains('X', StringComparison.Ordinal), $"{sketch}\n{text}");
        }

        Assert.True(passed > 5);
    }

    [Fact]
    public void A_cut_is_scribed_where_the_plan_puts_it()
    {
        foreach ((string text, Job _, PlannedRod rod) in RodPictureTests.Rods)
        {
            foreach (EndCut cut in rod.Cuts)
            {
                double center = cut.End.CenterToTip.Nominal.Millimeters;
                int mark = 1 + (int)Math.Round(cut.Cut.MarkFromCenter.Millimeters / center * (Columns - 3), MidpointRounding.AwayFromZero);
                string[] lines = [.. RodSketch.Of(cut.End, cut.Cut, RodMeasures.Of(cut))];
                Assert.True(lines.Count(line => line.Length > mark && line[mark] == '┃') == 3, $"column {mark}\n{string.Join('\n', lines)}\n{text}");
            }
        }
    }

    /// <summary>How many rows below the axis the two balls are.</summary>
    private static (int Inner, int Outer) Balls(string job)
    {
        Sketch sketch = Sketch.Of(RandomRodTexts.Planned(job).Rod);
        int Row(int column) => Array.FindIndex(sketch.Rod, line => line.Length > column && line[column] == '●') - sketch.AxisRow;
        return (Row(sketch.Column(0)), Row(sketch.Column(sketch.Layout.Axial.Millimeters)));
    }

    private static IEnumerable<string> Cuts(PlannedRod rod) =>
        rod.Cuts.SelectMany(cut => RodSketch.Of(cut.End, cut.Cut, RodMeasures.Of(cut)));

    private static void Near(string text, Sketch sketch, string what, int expected, int actual) =>
        Assert.True(Math.Abs(expected - actual) <= 1, $"{what}: column {expected} expected, {actual} found\n{sketch}\n{text}");

    /// <summary>A rod in characters: first the rows of the rod, then the lanes of the dimensions.</summary>
    private sealed record Sketch(RodLayout Layout, IReadOnlyList<Measure> Measures, string[] Lines)
    {
        /// <summary>The sleeve's upper wall is the row above the axis.</summary>
        public int AxisRow => 1 + Array.FindIndex(Lines, line => line.Contains('┌', StringComparison.Ordinal));

        public string Axis => Lines[AxisRow];

        public string[] Lanes => [.. Lines.Where(line => LaneOnly().IsMatch(line) && line.Contains('┼', StringComparison.Ordinal))];

        public string[] Rod => [.. Lines.Where(line => !Lanes.Contains(line))];

        public static Sketch Of(PlannedRod rod)
        {
            RodLayout layout = RodLayout.Of(rod.Rod, rod.Request, rod.Plan);
            IReadOnlyList<Measure> measures = RodMeasures.Of(rod, layout);
            return new Sketch(layout, measures, [.. RodSketch.Of(rod, layout, measures)]);
        }

        /// <summary>From the first to the last of balls, faces, tips and what is dimensioned it takes all columns but the outermost.</summary>
        public int Column(double mm)
        {
            double[] places =
            [
                0, Layout.Axial.Millimeters, Layout.Inner.Tip.Millimeters, Layout.Inner.Face.Millimeters,
                .. Layout.Outer is { } outer ? new[] { outer.Tip.Millimeters, outer.Face.Millimeters } : [],
                .. Measures.SelectMany(measure => new[] { measure.From, measure.To }),
            ];
            double part = (mm - places.Min()) / (places.Max() - places.Min());
            return 1 + (int)Math.Round(part * (Columns - 3), MidpointRounding.AwayFromZero);
        }

        public override string ToString() => string.Join('\n', Lines);
    }

    [GeneratedRegex("^[ ┼─A-Z0-9]*$")]
    private static partial Regex LaneOnly();
}
