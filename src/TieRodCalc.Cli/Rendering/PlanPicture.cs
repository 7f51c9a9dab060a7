using System.Globalization;
using System.Xml.Linq;
using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The drawings of planned rods: where ends are cut, and the rod as it is made or what is in the way of it.</summary>
internal static class PlanPicture
{
    private const double TitleHeight = 30;
    private const double TitleWidth = RodPicture.Width - 16;

    /// <summary>All rods in one SVG.</summary>
    public static string Of(Job job, IReadOnlyList<PlannedRod> plans)
    {
        double height = TitleHeight;
        string name = job.Name ?? "Planned rods";
        List<XElement> content = [Svg.Label(2, 18, Svg.Shortened(name, TitleWidth))];
        List<string> words = [];
        foreach ((PlannedRod planned, int index) in plans.Select((planned, index) => (planned, index)))
        {
            content.Add(Svg.Path($"M0 {Svg.Number(height)} H{Svg.Number(RodPicture.Width)}", 0.7));
            string title = $"ROD {planned.Name}: {Names.Of(planned.Plan.Verdict).ToUpperInvariant()}";
            content.Add(Svg.Label(2, height + 22, Svg.Shortened(title, TitleWidth)));
            words.Add(title + ".");
            height += TitleHeight;
            string id = index.ToString(CultureInfo.InvariantCulture);
            foreach (XElement picture in
                (XElement[])[.. OfCuts(planned, job.Units, id, RodPicture.Width), RodPicture.Of(planned, job.Units, id)])
            {
                words.Add($"{picture.Element(Svg.Space + "title")!.Value}: {picture.Element(Svg.Space + "desc")!.Value}");
                content.Add(Moved(picture, height));
                height += HeightOf(picture);
            }
        }

        return Svg.Picture(RodPicture.Width, height, name, string.Join(' ', words), content) + "\n";
    }

    /// <summary>The drawings of the ends of a rod that are cut.</summary>
    public static IEnumerable<XElement> OfCuts(PlannedRod planned, LengthDisplay unit, string id, double width) =>
        planned.Cuts.Select(cut => new CutPicture(planned.Name, cut, unit).Draw($"{id}-{Names.Of(cut.Side)}", width));

    private static double HeightOf(XElement picture) =>
        double.Parse(picture.Attribute("viewBox")!.Value.Split(' ')[3], CultureInfo.InvariantCulture);

    /// <summary>The same drawing as a part of a larger one, which has name and words of its own.</summary>
    private static XElement Moved(XElement picture, double down) => Svg.Element(
        "g",
        [("transform", $"translate(0 {Svg.Number(down)})"), ("data-scale", picture.Attribute("data-scale")!.Value)],
        [.. picture.Elements().Where(element => element.Name != Svg.Space + "title" && element.Name != Svg.Space + "desc")]);
}
