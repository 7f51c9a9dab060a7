using System.Globalization;
using System.Text.Json;

namespace TieRodCalc.Browser.Checks;

/// <summary>Drawn lengths are those that they say, and those of the plan.</summary>
internal static class ScaleCheck
{
    /// <summary>On paper, in millimeters.</summary>
    private const double Seen = 0.1;

    /// <summary>Both sides have six decimals.</summary>
    private const double Same = 2e-6;

    public static void Add(Findings findings, JsonElement drawn, PlanFigures plan, Paper paper)
    {
        IEnumerable<string> Problems(string kind) => drawn.GetProperty(kind).EnumerateArray().Select(each => each.GetString()!);
        findings.Add($"drawn to scale, {paper.Name}", Problems("problems"));
        findings.Add($"dimensions can be seen, {paper.Name}", Problems("hidden"));
        JsonElement[] sections = [.. drawn.GetProperty("sections").EnumerateArray()];
        findings.Add(
            $"drawn as planned, {paper.Name}",
            sections.Zip(plan.Rods).SelectMany(pair => Dimensions(pair.First, pair.Second).Concat(Engaged(pair.First, pair.Second))
                .Select(problem => $"{Json.Text(pair.First, "place")}: {problem}")));
    }

    private static IEnumerable<string> Dimensions(JsonElement section, RodFigures rod)
    {
        ILookup<string, double> drawn = section.GetProperty("dimensions").EnumerateArray()
            .ToLookup(each => Json.Text(each, "name"), each => Json.Number(each, "mm"));
        string[] free =
            [.. DrawnLengths.Optional, .. section.GetProperty("shortened").EnumerateArray().Select(each => each.GetString()!)];
        static bool Has(IEnumerable<double> lengths, double mm) => lengths.Any(each => Math.Abs(each - mm) <= Same);
        IEnumerable<string> left = rod.Drawn.Where(planned => !free.Contains(planned.Key)).SelectMany(planned => planned
            .Where(mm => !Has(drawn[planned.Key], mm))
            .Select(mm => $"{planned.Key} of {Number(mm)} mm is not there, but {List(drawn[planned.Key])}"));
        IEnumerable<string> wrong = drawn.Where(each => rod.Drawn.Contains(each.Key)).SelectMany(each => each
            .Where(mm => !Has(rod.Drawn[each.Key], mm))
            .Select(mm => $"{each.Key} of {Number(mm)} mm is drawn, the plan has {List(rod.Drawn[each.Key])}"));
        return left.Concat(wrong);
    }

    /// <summary>The black parts are as long as the engaged threads, above and below the axis alike.</summary>
    private static IEnumerable<string> Engaged(JsonElement section, RodFigures rod)
    {
        JsonElement[] black = [.. section.GetProperty("engaged").EnumerateArray()];
        double[] planned = [.. Json.Sides.SelectMany(side => rod.Drawn[DrawnLengths.Engaged(side)])];
        foreach (double mm in planned)
        {
            int there = black.Count(each =>
                Math.Abs(Json.Number(each, "drawn") - (mm * Json.Number(each, "scale"))) <= Seen);
            if (there < 2)
            {
                yield return $"engaged thread of {Number(mm)} mm is not drawn black on both sides, but "
                    + List(black.Select(each => Json.Number(each, "drawn") / Json.Number(each, "scale")));
            }
        }
    }

    private static string List(IEnumerable<double> millimeters) =>
        string.Join(", ", millimeters.Select(Number).DefaultIfEmpty("nothing"));

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
