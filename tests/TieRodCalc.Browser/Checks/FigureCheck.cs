using System.Text.RegularExpressions;

namespace TieRodCalc.Browser.Checks;

/// <summary>The figures of the plan stand on the page of their rod.</summary>
internal static class FigureCheck
{
    public static void Add(Findings findings, PageFacts facts, PlanFigures plan)
    {
        findings.Add(
            "a section for each rod",
            facts.Sections.Count == plan.Rods.Count,
            $"{plan.Rods.Count} rods, {facts.Sections.Count} sections");
        findings.Add(
            "names and verdicts",
            facts.Sections.Zip(plan.Rods).SelectMany(pair => Misnamed(pair.First, pair.Second)));
        findings.Add(
            "figures of the plan",
            facts.Sections.Zip(plan.Rods).SelectMany(pair => Missing(pair.First, pair.Second)));
    }

    private static IEnumerable<string> Missing(SectionText section, RodFigures rod) =>
        rod.Figures
            .Where(figure => !figure.Spellings.Any(spelling => Stands(spelling, section.Text)))
            .Select(figure => $"{section.Place}: {figure.Name} is missing: {string.Join(" or ", figure.Spellings)}");

    /// <summary>After name and verdict more may be said, set off by a comma.</summary>
    private static IEnumerable<string> Misnamed(SectionText section, RodFigures rod) =>
        $"{section.Heading},".StartsWith($"{rod.Heading},", StringComparison.OrdinalIgnoreCase)
            ? []
            : [$"{section.Place}: should be {rod.Heading}"];

    /// <summary>As a whole: 0.438 in does not stand in 10.438 in.</summary>
    private static bool Stands(string spelling, string text) =>
        Regex.IsMatch(text, $@"(?<![\w.]){Regex.Escape(spelling)}(?![\w])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
}
