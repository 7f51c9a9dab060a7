using System.Text.Json;
using TieRodCalc.Browser.Checks;
using TieRodCalc.Text;

namespace TieRodCalc.Browser.Self;

/// <summary>Shows that a good page passes every check, and that every check refuses a page that is broken for it.</summary>
internal static class SelfCheck
{
    public static async Task RunAsync(DevTools tools, Tally tally)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("tierodcalc-pages-");
        try
        {
            string good = Resource.Text("good.html");
            string file = Path.Combine(folder.FullName, "page.html");
            using JsonDocument plan = JsonDocument.Parse(Resource.Text("plan.json"));
            PlanFigures figures = PlanFigures.Of(plan.RootElement, LengthDisplay.Millimeter);

            IReadOnlyList<Finding> sound = await FindAsync(good);
            tally.Add("good page", sound);
            foreach (BrokenPage broken in BrokenPages.All)
            {
                IReadOnlyList<Finding> found = await FindAsync(broken.Of(good));
                bool refused = found.Any(finding => !finding.Holds && Is(finding.Check, broken.Check));
                tally.Add("broken page", new Finding(
                    $"{broken.Check}: {broken.Fault}", refused ? [] : ["was not refused by this check"]));
            }

            tally.Add("self", new Finding(
                "every check has a page that it refuses",
                [.. sound.Select(finding => finding.Check).Where(check => !BrokenPages.All.Any(broken => Is(check, broken.Check)))]));

            async Task<IReadOnlyList<Finding>> FindAsync(string html)
            {
                await File.WriteAllTextAsync(file, html);
                return (await SheetChecks.RunAsync(tools, file, figures, (_, _) => Task.CompletedTask)).All;
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>A check is run on each paper.</summary>
    private static bool Is(string check, string name) => check == name || Paper.Both.Any(paper => check == $"{name}, {paper.Name}");
}
