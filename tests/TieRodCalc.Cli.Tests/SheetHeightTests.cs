using System.Xml.Linq;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Tests;

/// <summary>The letters of a page: the more there is to say, the smaller they are, and never larger.</summary>
public sealed class SheetHeightTests
{
    /// <summary>From the largest letters to the smallest.</summary>
    private static readonly string[] s_densities = ["", "dense", "denser", "densest", "crowded", "fullest"];

    [Fact]
    public void A_page_with_little_on_it_has_the_largest_letters_and_a_full_one_the_smallest()
    {
        Assert.Equal(s_densities[0], SheetHeight.Density([Html.Element("p", "one line")]));
        Assert.Equal(s_densities[^1], SheetHeight.Density([.. Lines(200)]));
    }

    [Fact]
    public void Line_by_line_the_letters_never_grow_and_every_size_is_met()
    {
        int[] sizes = [.. Enumerable.Range(1, 120).Select(lines => Array.IndexOf(s_densities, SheetHeight.Density([.. Lines(lines)])))];

        Assert.DoesNotContain(-1, sizes);
        Assert.Equal(sizes.Order(), sizes);
        Assert.Equal(s_densities.Length, sizes.Distinct().Count());
    }

    [Fact]
    public void One_more_point_never_makes_the_letters_of_a_rods_page_larger()
    {
        foreach ((string text, Job job, PlannedRod rod) in RandomRodTexts.All.Take(120))
        {
            XElement section = new SheetSection(rod, job, 0).Make();
            List<XElement> content = [.. section.Elements()];
            int before = Size(content);
            Assert.Equal(s_densities[before], ((string)section.Attribute("class")!)["rod".Length..].Trim());
            foreach (string kind in (string[])["p", "h3"])
            {
                List<XElement> more = [.. content, Html.Element(kind, "One more sentence that somebody has to read.")];
                Assert.True(Size(more) >= before, $"{before} before, {Size(more)} after a {kind}\n{text}");
            }
        }
    }

    [Fact]
    public void The_style_has_every_size_and_none_is_larger_than_the_one_before()
    {
        (_, Job job, PlannedRod rod) = RandomRodTexts.Planned(CheckJobs.W1);
        string page = SheetPage.Of(job, [rod]);
        double[] points =
        [
            .. s_densities.Select(density =>
            {
                string rule = $"section.{(density.Length == 0 ? "rod" : density)} {{";
                int from = page.IndexOf("font-size: ", page.IndexOf(rule, StringComparison.Ordinal), StringComparison.Ordinal) + "font-size: ".Length;
                Assert.Contains(rule, page, StringComparison.Ordinal);
                return double.Parse(page[from..page.IndexOf("pt", from, StringComparison.Ordinal)], System.Globalization.CultureInfo.InvariantCulture);
            }),
        ];
        Assert.Equal(points.OrderDescending(), points);
        Assert.Equal(points.Length, points.Distinct().Count());
    }

    private static int Size(IReadOnlyList<XElement> content) => Array.IndexOf(s_densities, SheetHeight.Density(content));

    private static IEnumerable<XElement> Lines(int count) =>
        Enumerable.Range(0, count).Select(_ => Html.Element("p", "A line of a page, of no great length."));
}
