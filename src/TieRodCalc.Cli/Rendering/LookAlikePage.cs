using TieRodCalc.Text;
using TieRodCalc.Threads;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The part of a thread's page that says what it can be taken for, the most dangerous first.</summary>
internal sealed class LookAlikePage(Page page, ThreadDesignation thread)
{
    private readonly FitSentences _sentences = new(ThreadSentences.UnitOf(thread));
    private readonly string _name = ThreadText.Format(new ThreadDesignation(thread.Size, thread.Hand));

    public void Add(IReadOnlyList<LookAlike> alikes)
    {
        page.Heading("What it can be taken for, among the standard threads");
        if (alikes.Count == 0)
        {
            page.Sentence(FitSentences.NoLookAlike);
            return;
        }

        page.Sentence(FitSentences.NeverForce).Sentence(FitSentences.HowTurnsAreCounted);

        // The directions come the most dangerous first, so that of each thread the first one met is the worse of its two.
        foreach (IGrouping<FitOutcome, IGrouping<ThreadDesignation, LookAlike>> group in
            alikes.GroupBy(alike => alike.Thread).GroupBy(directions => directions.First().Fit.Outcome))
        {
            page.Sentence(FitSentences.GroupHeadline(group.Key));
            foreach (IGrouping<ThreadDesignation, LookAlike> directions in group)
            {
                string label = $"  {ThreadText.Format(directions.Key)}";
                foreach (LookAlike alike in directions)
                {
                    page.Row(label, Told(alike));
                    label = string.Empty;
                }
            }
        }
    }

    private string Told(LookAlike alike) => alike.Direction == FitDirection.LookAlikeInto
        ? $"into {_name}: {_sentences.Short(alike.Fit)}"
        : $"{_name} into it: {_sentences.Short(alike.Fit)}";
}
