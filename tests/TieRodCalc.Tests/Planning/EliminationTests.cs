namespace TieRodCalc.Tests.Planning;

/// <summary>The elimination that remedies and tolerances are held against, itself held against the linear programme.</summary>
public class EliminationTests
{
    /// <summary>Closer to the edge than this the two may differ by rounding.</summary>
    private const double Edge = 1e-7;

    [Fact]
    public void Rods_that_can_be_made_are_those_of_the_linear_programme()
    {
        Findings findings = new();
        using LinearProgram program = new();
        for (int index = 0; index < RandomCounts.FailingJobs; index++)
        {
            RodJob job = RandomJobs.Draw(index);
            if (job.OneJoint || (job.Rod.WantsAdjustment && !job.Rod.SleeveAdjusts))
            {
                continue;
            }

            program.Load(job.Rod);
            double loosening = program.LeastLoosening(null);
            double margin = LeastSize.Margin(job.Numbers);
            findings.That(
                job.Rod,
                $"margin {margin}, loosening {loosening}",
                Math.Abs(margin) < Edge || (loosening is > 0 and < Edge) || margin < 0 == loosening > 0);
        }

        findings.AssertNone();
    }

    [Fact]
    public void Least_cut_safe_at_every_corner_is_that_of_the_linear_programme_where_the_box_is_a_point()
    {
        Findings findings = new();
        using LinearProgram program = new();
        for (int index = 0; index < RandomCounts.TolerancedRods; index++)
        {
            RodCase rod = RandomRods.Draw(index) with { Mark = default };
            PlanReference reference = PlanReference.Of(rod, program);
            CutPair? safe = new WorstCaseReference(new TolerancedRod(rod, [])).LeastSafeCut();
            if (reference.Loosening is > 0 and < Edge)
            {
                continue;
            }

            findings.That(rod, $"{reference.LeastCut} against {safe}", safe is null == reference.LeastCut is null);
            if (safe is { } cut && reference.LeastCut is { } expected)
            {
                findings.Near(rod, "least total", expected.Total, cut.Total, Edge);
            }
        }

        findings.AssertNone();
    }

    [Fact]
    public void A_fine_search_finds_no_safe_cut_that_the_elimination_does_not_know()
    {
        const int Steps = 24;
        const int Tenth = 10;
        Findings findings = new();
        (int found, int none) = (0, 0);
        for (int index = 0; index < RandomCounts.TolerancedRods / Tenth; index++)
        {
            TolerancedRod rod = RandomTolerances.Draw(index);
            WorstCaseReference reference = new(rod);
            CutPair? least = reference.LeastSafeCut();
            _ = least is null ? none++ : found++;
            if (least is { } cut)
            {
                findings.That(rod.Rod, $"{rod}: {cut} is safe", reference.IsSafe(cut, 1e-7));
            }

            double bound = least?.Total - 1e-6 ?? double.PositiveInfinity;
            for (int one = 0; one <= Steps; one++)
            {
                for (int other = 0; other <= Steps; other++)
                {
                    CutPair tried = new(rod.Rod.Inner.MaxCut.Mm * one / Steps, rod.Rod.Outer.MaxCut.Mm * other / Steps);
                    if (tried.Total < bound)
                    {
                        findings.That(rod.Rod, $"{rod}: {tried} is not safe, least {least}", !reference.IsSafe(tried, 0));
                    }
                }
            }
        }

        Assert.True(found > 0 && none > 0, $"{found} with a safe cut, {none} without");
        findings.AssertNone();
    }
}
