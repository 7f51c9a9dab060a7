using System.Xml.Linq;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Planning;
using TieRodCalc.Text;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Cli.Tests;

/// <summary>What a bench sheet tells: the figures of the plan, the work in its order, what is in the way, and the cautions.</summary>
public sealed class SheetContentTests
{
    public static TheoryData<string> Buildable => new(
        CheckJobs.W1, CheckJobs.W8, CheckJobs.W5(), CheckJobs.W6, CheckJobs.W7(60));

    [Theory]
    [MemberData(nameof(Buildable))]
    public void The_figures_of_the_plan_stand_in_it(string job)
    {
        (_, Job read, PlannedRod rod) = RandomRodTexts.Planned(job);
        string words = SheetFile.Words(Assert.Single(SheetFile.Of(job).Rods));
        RodSolution made = rod.Plan.Solution!;
        void Has(Length length, LengthRounding rounding = LengthRounding.Nearest) => Assert.Contains(
            LengthFormat.Both(length, read.Units, rounding), words, StringComparison.Ordinal);
        void HasShort(Length length, LengthRounding rounding) => Assert.Contains(
            LengthFormat.Decimal(length, read.Units, rounding), words, StringComparison.Ordinal);

        Has(rod.Request.Target);
        Has(made.Inner.Showing);
        HasShort(made.Inner.EngagedLeast, LengthRounding.Down);
        HasShort(made.Inner.Required.Required, LengthRounding.Up);
        if (made.Outer is { } outer)
        {
            Has(outer.Showing);
            HasShort(outer.EngagedLeast, LengthRounding.Down);
        }

        foreach (EndCut cut in rod.Cuts)
        {
            Has(cut.Cut.Recommended);
            Has(cut.Cut.MarkFromCenter);
            Has(cut.Cut.Least, LengthRounding.Up);
            Has(cut.Cut.Most, LengthRounding.Down);
        }

        HasShort(made.Shorter.Length, LengthRounding.Down);
        HasShort(made.Longer.Length, LengthRounding.Down);
        HasShort(made.PerTurn!.Length, LengthRounding.Nearest);
        Assert.Contains($"{Names.Of(made.Lengthens!.Value)}, seen from the inner end outward, lengthens.", words, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Buildable))]
    public void The_verdict_is_in_words_and_every_caution_is_there(string job)
    {
        (_, _, PlannedRod rod) = RandomRodTexts.Planned(job);
        XElement section = Assert.Single(SheetFile.Of(job).Rods);
        string words = SheetFile.Words(section);

        Assert.Equal($"Rod {rod.Name}: {Names.Of(rod.Plan.Verdict).ToUpperInvariant()}", section.Descendants("h2").Single().Value);
        Assert.All(Cautions.All.Append(Cautions.NotChecked), caution => Assert.Contains(caution, words, StringComparison.Ordinal));
        Assert.All(PlanText.Remarks(rod, new PlanSentences(RandomRodTexts.Planned(job).Job.Units, rod.Rod.Parts.OneJoint)), remark =>
            Assert.Contains(PlanPage.Joined(remark), words, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Buildable))]
    public void Steps_have_boxes_and_come_in_the_order_of_the_work(string job)
    {
        (_, _, PlannedRod rod) = RandomRodTexts.Planned(job);
        XElement section = Assert.Single(SheetFile.Of(job).Rods);
        XElement[] steps = [.. section.Descendants("ul").Single(list => (string?)list.Attribute("class") == "steps").Elements("li")];
        string[] words = [.. steps.Select(SheetFile.Words)];

        Assert.All(steps, step => Assert.Equal("box to tick", (string)step.Elements("span").Single().Attribute("aria-label")!));
        Assert.Equal(rod.Cuts.Count > 0, words[0].StartsWith("CUT ", StringComparison.Ordinal));
        Assert.DoesNotContain(words.Skip(1), step => step.StartsWith("CUT ", StringComparison.Ordinal));
        int set = Array.FindIndex(words, step => step.StartsWith("Set it by the thread that shows", StringComparison.Ordinal));
        Assert.True(set > (rod.Cuts.Count > 0 ? 1 : 0));
        Assert.Contains("tighten", words[^1], StringComparison.Ordinal);
        Assert.True(set < words.Length - 1);
    }

    [Theory]
    [MemberData(nameof(Buildable))]
    public void There_is_a_line_to_write_on_beside_every_dimension_that_is_measured(string job)
    {
        (_, _, PlannedRod rod) = RandomRodTexts.Planned(job);
        XElement section = Assert.Single(SheetFile.Of(job).Rods);
        string[] lines =
            [.. section.Descendants("span").Where(span => (string?)span.Attribute("class") == "line").Select(span => (string)span.Attribute("aria-label")!)];

        string[] expected =
        [
            "made by", "checked by", "date", "center to center", "inner showing", "center to tip", "full thread",
            .. rod.Rod.Parts.OneJoint ? Array.Empty<string>() : ["outer showing", "face to face"],
            .. rod.Cuts.Count > 0 ? ["ball center to line", "old tip to line"] : Array.Empty<string>(),
        ];
        Assert.All(expected, about => Assert.Contains(lines, line => line.StartsWith($"line to write on: {about}", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("car-27-short-sleeve.yaml")]
    public void What_cannot_be_built_says_what_is_in_the_way_and_is_not_cut(string sample)
    {
        SheetFile sheet = SheetFile.OfSample(sample);
        JobRod rod = JobReader.Read(Repository.Sample("jobs", sample)).Value!.Rods[0];
        RodPlan plan = RodPlanner.Plan(rod.Rod!, rod.Request!);
        XElement section = Assert.Single(sheet.Rods);
        string words = SheetFile.Words(section);
        PlanSentences sentences = new(LengthDisplay.Inch, rod.Rod!.Parts.OneJoint);

        Assert.Equal(1, sheet.Run.Status);
        Assert.Contains("NOT BUILDABLE", section.Descendants("h2").Single().Value, StringComparison.Ordinal);
        Assert.Contains(PlanSentences.DoNotCut, words, StringComparison.Ordinal);
        Assert.NotEmpty(plan.Binding);
        Assert.All(plan.Binding, binding => Assert.Contains(PlanPage.Joined(sentences.Of(binding)), words, StringComparison.Ordinal));
        Assert.All(RodRemedies.Of(rod.Rod!, rod.Request!).Take(6), remedy => Assert.Contains($"{Names.Of(remedy)}: ", words, StringComparison.Ordinal));
        Assert.DoesNotContain("CUT ", words.Replace(PlanSentences.DoNotCut, string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain(section.Descendants("h3"), heading => heading.Value.StartsWith("Cut ", StringComparison.Ordinal));
        Assert.DoesNotContain(section.Descendants(DrawnPicture.Svg + "title"), title => title.Value.Contains("is cut", StringComparison.Ordinal));
        Assert.DoesNotContain(section.Descendants("ul"), list => (string?)list.Attribute("class") == "steps");
        Assert.All(Cautions.All, caution => Assert.Contains(caution, words, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("nuts: {inner: none, outer: none}", 1)]
    [InlineData("nuts: {inner: none, outer: nr}", 0)]
    public void Joints_that_nothing_locks_are_in_the_heading(string nuts, int status)
    {
        SheetFile sheet = SheetFile.Of(CheckJobs.W1.With("nuts: {inner: nl, outer: nr}", nuts));
        XElement section = Assert.Single(sheet.Rods);

        Assert.Equal(status, sheet.Run.Status);
        Assert.EndsWith(", NOT ALL JOINTS LOCKED", section.Descendants("h2").Single().Value, StringComparison.Ordinal);
        Assert.Contains(section.Descendants("p"), point => (string?)point.Attribute("class") == "headline");
    }

    [Fact]
    public void A_remedy_is_in_the_heading_and_told_below()
    {
        SheetFile sheet = SheetFile.OfSample("car-27-short-sleeve.yaml", "--with", "longer-sleeve");
        XElement section = Assert.Single(sheet.Rods);

        Assert.Equal(0, sheet.Run.Status);
        Assert.EndsWith(", WITH longer-sleeve", section.Descendants("h2").Single().Value, StringComparison.Ordinal);
        Assert.Contains("Changed, by the least that works:", SheetFile.Words(section), StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_is_made_of_the_drawings_of_the_plan()
    {
        (_, Job job, PlannedRod rod) = RandomRodTexts.Planned(CheckJobs.W1);
        XElement[] pictures = [.. SheetFile.Of(CheckJobs.W1).Page.Descendants(DrawnPicture.Svg + "svg")];

        Assert.Equal(1 + rod.Cuts.Count, pictures.Length);
        DrawnPicture whole = new(pictures[0]);
        Assert.Equal(RodPictureTests.Draw(rod, job).Dimensions.Select(each => (each.Name, each.LengthMm)), whole.Dimensions.Select(each => (each.Name, each.LengthMm)));
        Assert.All(pictures, picture => Assert.Matches("^(180|90)mm$", (string)picture.Attribute("width")!));
    }
}
