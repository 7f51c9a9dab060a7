using System.Text.Json;
using System.Text.Json.Nodes;

namespace TieRodCalc.Browser.Checks;

/// <summary>All checks of one sheet.</summary>
internal static class SheetChecks
{
    /// <param name="tools">The browser.</param>
    /// <param name="file">The sheet.</param>
    /// <param name="plan">What has to stand in it.</param>
    /// <param name="keep">Takes each printed document.</param>
    public static async Task<Findings> RunAsync(DevTools tools, string file, PlanFigures plan, Func<Paper, byte[], Task> keep)
    {
        Findings findings = new();
        await using SheetPage page = await SheetPage.OpenAsync(tools, file);
        PageFacts facts = PageFacts.Of(await page.RunAsync("page.js"));
        Add(findings, await page.RunAsync("document.js"));
        FigureCheck.Add(findings, facts, plan);
        foreach (Paper paper in Paper.Both)
        {
            await keep(paper, await PrintCheck.AddAsync(findings, page, facts.Sections.Count, paper));
            (int width, int height) = facts.Printable(paper);
            await page.LayOutAsync(width, height);
            Add(findings, await page.RunAsync("layout.js", new JsonObject { ["width"] = width, ["height"] = height }), paper);
            ScaleCheck.Add(findings, await page.RunAsync("drawing.js"), plan, paper);
        }

        QuietCheck.Add(findings, page);
        return findings;
    }

    private static void Add(Findings findings, JsonElement found, Paper? paper = null)
    {
        foreach (JsonElement each in found.EnumerateArray())
        {
            string check = each.GetProperty("check").GetString()!;
            findings.Add(
                paper is null ? check : $"{check}, {paper.Name}",
                each.GetProperty("problems").EnumerateArray().Select(problem => problem.GetString()!));
        }
    }
}
