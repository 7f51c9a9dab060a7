using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace TieRodCalc.Browser.Checks;

/// <summary>On each paper, as many printed pages as there are rods, and the paper is the one in the printer.</summary>
internal static partial class PrintCheck
{
    /// <param name="findings">Takes what is found.</param>
    /// <param name="page">The sheet.</param>
    /// <param name="rods">How many rods there are.</param>
    /// <param name="paper">The paper.</param>
    /// <returns>The printed document.</returns>
    public static async Task<byte[]> AddAsync(Findings findings, SheetPage page, int rods, Paper paper)
    {
        byte[] pdf = await page.PrintAsync(paper);
        string text = Encoding.Latin1.GetString(pdf);
        int pages = PageObject().Count(text);
        findings.Add(
            $"one page a rod, {paper.Name}",
            pages == rods && rods > 0,
            string.Create(CultureInfo.InvariantCulture, $"{rods} rods on {pages} pages"));
        string[] sizes = [.. MediaBox().Matches(text).Select(match => match.Value).Distinct()];
        findings.Add(
            $"the paper's own size, {paper.Name}",
            sizes.Length == 1 && Is(MediaBox().Match(text), paper),
            $"printed on {string.Join(", ", sizes)}");
        return pdf;
    }

    /// <summary>A point is a seventy-second of an inch; a whole one is given for the rounding of the browser.</summary>
    private static bool Is(Match box, Paper paper)
    {
        double Millimeters(int group) =>
            double.Parse(box.Groups[group].ValueSpan, CultureInfo.InvariantCulture) / 72 * Paper.MillimetersPerInch;
        const double Point = Paper.MillimetersPerInch / 72;
        return Math.Abs(Millimeters(1) - paper.Width) <= Point && Math.Abs(Millimeters(2) - paper.Height) <= Point;
    }

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PageObject();

    [GeneratedRegex(@"/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]")]
    private static partial Regex MediaBox();
}
