using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace TieRodCalc.Cli.Tests;

/// <summary>The bench sheet as a page: well formed, nothing from outside, to be read by everybody.</summary>
public sealed class SheetPageTests
{
    /// <summary>Jobs, how many rods they have, and the status.</summary>
    public static TheoryData<string, int, int> Samples => new()
    {
        { "car-27.yaml", 2, 0 },
        { "car-27-rack.yaml", 2, 0 },
        { "car-27-short-sleeve.yaml", 1, 1 },
        { "car-27-tolerances.yaml", 1, 0 },
    };

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_rod_has_a_section_and_the_status_is_that_of_the_plan(string job, int rods, int status)
    {
        SheetFile sheet = SheetFile.OfSample(job);
        CommandLine plan = CommandLine.Run("plan", Repository.Sample("jobs", job));

        Assert.Equal(rods, sheet.Rods.Count);
        Assert.Equal(status, sheet.Run.Status);
        Assert.Equal(plan.Status, sheet.Run.Status);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Headings_begin_with_one_of_the_first_rank_and_leave_none_out(string job, int rods, int status)
    {
        SheetFile sheet = SheetFile.OfSample(job);
        int[] ranks =
        [
            .. sheet.Page.Descendants().Where(element => Regex.IsMatch(element.Name.LocalName, "^h[1-6]$"))
                .Select(element => element.Name.LocalName[1] - '0'),
        ];

        Assert.Equal(status, sheet.Run.Status);
        Assert.Equal(1, ranks[0]);
        Assert.Equal(1, ranks.Count(rank => rank == 1));
        Assert.Equal(rods, ranks.Count(rank => rank == 2));
        Assert.All(ranks.Zip(ranks.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Nothing_comes_from_outside_and_nothing_runs(string job, int rods, int status)
    {
        SheetFile sheet = SheetFile.OfSample(job);
        string[] names = [.. sheet.Page.DescendantsAndSelf().Select(element => element.Name.LocalName).Distinct()];

        Assert.Equal((rods, status), (sheet.Rods.Count, sheet.Run.Status));
        Assert.Empty(names.Intersect(["script", "link", "img", "image", "iframe", "object", "embed", "base", "a", "use", "font", "form"]));
        Assert.DoesNotContain(sheet.Page.Descendants().Attributes(), attribute =>
            attribute.Name.LocalName is "src" or "href" or "srcset" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        string style = sheet.Page.Descendants("style").Single().Value;
        Assert.DoesNotContain("url(", style, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", style, StringComparison.Ordinal);
        Assert.All(Regex.Matches(sheet.Text, @"url\(").Select(match => sheet.Text[match.Index + 4]), sign => Assert.Equal('#', sign));
        string[] addresses = [.. Regex.Matches(sheet.Text, "[a-z]+://[^\"]*").Select(match => match.Value).Distinct()];
        Assert.All(addresses, address => Assert.Equal("http://www.w3.org/2000/svg", address));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Names_and_heads_are_there_for_who_does_not_see_it(string job, int rods, int status)
    {
        SheetFile sheet = SheetFile.OfSample(job);

        Assert.Equal((rods, status), (sheet.Rods.Count, sheet.Run.Status));
        Assert.Equal("en", (string)sheet.Page.Attribute("lang")!);
        Assert.NotEmpty(sheet.Page.Element("head")!.Element("title")!.Value);
        Assert.Equal("utf-8", (string)sheet.Page.Descendants("meta").Attributes("charset").Single());
        string[] ids = [.. sheet.Page.Descendants().Attributes("id").Select(id => id.Value)];
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.All(sheet.Page.Descendants().Attributes("aria-labelledby"), named => Assert.Contains(named.Value, ids));
        Assert.All(sheet.Page.Descendants().Attributes("clip-path"), area => Assert.Contains(area.Value["url(#".Length..^1], ids));
        Assert.All(sheet.Page.Descendants().Where(element => (string?)element.Attribute("role") == "img"), image => Assert.NotEmpty(
            (string?)image.Attribute("aria-label") ?? image.Element(DrawnPicture.Svg + "title")!.Value));
        Assert.All(sheet.Page.Descendants(DrawnPicture.Svg + "svg"), picture => Assert.NotEmpty(picture.Element(DrawnPicture.Svg + "desc")!.Value));
        Assert.NotEmpty(sheet.Page.Descendants("table"));
        Assert.All(sheet.Page.Descendants("th"), head => Assert.Contains((string?)head.Attribute("scope"), (string[])["row", "col", "rowgroup"]));
        Assert.All(sheet.Page.Descendants("table"), table => Assert.NotEmpty(table.Element("thead")!.Descendants("th")));
        Assert.All(sheet.Page.Descendants("tbody").Elements("tr"), row => Assert.NotEmpty(row.Elements("th")));
    }

    [Fact]
    public void Every_row_of_a_table_is_as_wide_as_its_head()
    {
        foreach (XElement table in SheetFile.OfSample("car-27.yaml").Page.Descendants("table"))
        {
            static int Wide(XElement row) => row.Elements().Sum(cell => (int?)cell.Attribute("colspan") ?? 1);
            int head = Wide(table.Element("thead")!.Element("tr")!);
            Assert.All(table.Element("tbody")!.Elements("tr"), row => Assert.Equal(head, Wide(row)));
        }
    }

    [Fact]
    public void Names_are_shown_as_they_were_written()
    {
        string job = CheckJobs.W1
            .With("units: in", "units: in\njob: 'Größe <b> & \"so\" </main>'")
            .With("name: w1,", "name: '<i> & Öse \"x\"',");
        SheetFile sheet = SheetFile.Of(job);

        Assert.Equal("Größe <b> & \"so\" </main>", sheet.Page.Descendants("h1").Single().Value);
        Assert.StartsWith("Rod <i> & Öse \"x\": ", sheet.Page.Descendants("h2").Single().Value, StringComparison.Ordinal);
        Assert.Empty(sheet.Page.Descendants("b").Concat(sheet.Page.Descendants("i")));
        Assert.DoesNotContain("<i>", sheet.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Elements_without_content_are_closed_as_html_wants_it()
    {
        string text = SheetFile.OfSample("car-27.yaml").Text;
        string[] closed = [.. Regex.Matches(text, "<([a-z0-9]+)[^<>]*/>").Select(match => match.Groups[1].Value).Distinct()];
        Assert.Empty(closed.Except(["meta", "br", "path", "rect", "circle"]));
    }
}
