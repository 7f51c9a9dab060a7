using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Rendering;

/// <summary>What every answer about a job ends with: notes on its files, and the cautions.</summary>
internal static class PageEnd
{
    public static void Add(Page page, IReadOnlyList<Problem> notes)
    {
        if (notes.Count > 0)
        {
            page.Heading("Notes on the files");
            foreach (Problem note in notes)
            {
                page.Point($"{ProblemText.Place(note)}: {note.Message}");
            }
        }

        page.Heading("Cautions");
        foreach (string caution in Cautions.All.Append(Cautions.NotChecked))
        {
            page.Point(caution);
        }
    }
}
