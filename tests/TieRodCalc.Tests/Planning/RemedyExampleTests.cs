using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>The worked rods that cannot be built: every change that alone makes them so, sizes by hand.</summary>
public class RemedyExampleTests
{
    private const double Tolerance = 1e-5;

    public static TheoryData<string> Names => [.. RemedyExamples.All.Select(example => example.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void All_changes_that_do_are_offered_with_their_sizes_and_no_others(string name)
    {
        RemedyExample example = RemedyExamples.All.Single(one => one.Name == name);
        RodJob job = example.Job;
        Assert.Equal(Verdict.NotBuildable, job.Plan().Verdict);
        IReadOnlyList<Remedy> remedies = RodRemedies.Of(RodJob.Made(job.Parts()), job.Rod.ToRequest());
        Assert.All(remedies, remedy => Assert.Single(remedy.Changes));
        Assert.Equal(
            example.Changes.Select(change => (change.Kind, change.End)).Order(),
            remedies.Select(remedy => (remedy.Changes[0].Kind, remedy.Changes[0].End)).Order());
        foreach (Remedy remedy in remedies)
        {
            WorkedChange worked = example.Changes.Single(
                change => change.Kind == remedy.Changes[0].Kind && change.End == remedy.Changes[0].End);
            Assert.Equal(worked.By, remedy.Size.Millimeters, Tolerance);
        }
    }

    [Fact]
    public void Cutting_further_is_said_to_what_is_cut_in_all()
    {
        // The inner end may be cut by 5 and must be by 12.7: 7.7 further.
        RodCase rod = CheckCases.Inch.Rod.WithInner(inner => inner with { MaxCut = Dim.OfMm(5) });
        RodChange change = RodRemedies.Of(rod.ToRod(), rod.ToRequest())
            .Select(remedy => Assert.Single(remedy.Changes))
            .Single(made => made.Kind == ChangeKind.Cut);
        Assert.Equal(7.7, change.By.Millimeters, Tolerance);
        Assert.Equal(12.7, change.To.Millimeters, Tolerance);
    }

    [Fact]
    public void A_longer_target_is_offered_where_it_helps_by_the_bend_alone()
    {
        // Between least engagement and nut room the outer end has 41.275 - 9.525 - 25.4 / 18 - 0.7 - 23.8125 = 5.826389 for its share of
        // the whole adjustment, 0.4847328 of the axial way. The longer a bent rod, the nearer its axial way is to what its length changes
        // by: at 402 what it has is just enough, at 400 it is not.
        RodCase bent = CheckCases.Bent.Rod;
        double share = bent.Outer.Thread.PitchMm / (bent.Inner.Thread.PitchMm + bent.Outer.Thread.PitchMm);
        double way = (41.275 - 9.525 - bent.Outer.Thread.PitchMm - 0.7 - 1.5 * 15.875) / share;
        double each = MathNet.Numerics.RootFinding.Brent.FindRoot(
            adjust => bent.AxialOf(402 + adjust) - bent.AxialOf(402 - adjust) - way, 5, 7, 1e-13);
        RodCase rod = bent with { Target = Dim.OfMm(400), Shorter = Dim.OfMm(each), Longer = Dim.OfMm(each) };
        Assert.Equal(Verdict.NotBuildable, rod.Plan().Verdict);
        Assert.Equal(Verdict.NotBuildable, (rod with { Target = Dim.OfMm(401.9) }).Plan().Verdict);
        Assert.NotEqual(Verdict.NotBuildable, (rod with { Target = Dim.OfMm(402.1) }).Plan().Verdict);
        Remedy longer = RodRemedies.Of(rod.ToRod(), rod.ToRequest())
            .Single(remedy => Assert.Single(remedy.Changes).Kind == ChangeKind.LongerTarget);

        // A micrometer of the way is 0.02 of the target.
        Assert.InRange(longer.Size.Millimeters, 1.9, 2.1);
    }

    [Fact]
    public void A_nut_left_out_comes_last_and_is_not_plainly_buildable()
    {
        // Two nuts of 8 leave 36 + 33 to K = 150 + 70 + 120 - 264 = 76: 7 too little, and a nut is 8.
        RodCase rod = CheckCases.NoRoomForNuts.Rod
            .WithInner(inner => inner with { Joint = JointKind.TaperedStud })
            .WithOuter(outer => outer with { Joint = JointKind.RodEnd });
        rod = rod with { Target = Dim.OfMm(264) };
        IReadOnlyList<Remedy> remedies = RodRemedies.Of(rod.ToRod(), rod.ToRequest());
        Assert.Equal(
            [
                (ChangeKind.ShorterSleeve, null), (ChangeKind.LongerTarget, null),
                (ChangeKind.NoNut, (RodSide?)RodSide.Inner), (ChangeKind.NoNut, RodSide.Outer),
            ],
            remedies.Select(remedy => (remedy.Changes[0].Kind, remedy.Changes[0].End)));
        Assert.Equal([Locking.Outer, Locking.Inner], remedies.Skip(2).Select(remedy => remedy.Plan.Locking));
        Assert.All(remedies.Skip(2), remedy => Assert.Equal(8, remedy.Size.Millimeters, Tolerance));
    }

    [Fact]
    public void A_rod_that_can_be_built_needs_no_remedy() =>
        Assert.All(
            CheckCases.All.Where(check => check.Verdict != Verdict.NotBuildable),
            check => Assert.Empty(RodRemedies.Of(check.Rod.ToRod(), check.Rod.ToRequest())));

    [Fact]
    public void Two_changes_are_offered_where_no_single_one_does()
    {
        // Without an adjustment either end must be in by 1.5 + 0.75 + 24 = 26.25. The outer thread of 32 less its nut of 8 leaves 24: 2.25
        // of thread are missing. K = 190 + 80 + 120 - 340 = 50, and 52.5 is asked for: 2.5 too long. Neither helps the other.
        RodCase rod = CheckCases.OpenInnerBore.Rod.WithOuter(outer => outer with { ThreadLength = Dim.OfMm(32) }) with
        {
            Target = Dim.OfMm(340),
            Shorter = default,
            Longer = default,
        };
        RodJob job = new(rod, Dim.OfMm(10), Dim.OfMm(10), OneJoint: false);
        IReadOnlyList<Remedy> remedies = RodRemedies.Of(RodJob.Made(job.Parts()), rod.ToRequest());
        Assert.Equal(2, remedies.Count);
        Assert.All(remedies, remedy => Assert.Equal(4.75, remedy.Size.Millimeters, Tolerance));
        foreach (ChangeKind kind in (ChangeKind[])[ChangeKind.LongerSleeve, ChangeKind.ShorterTarget])
        {
            Remedy remedy = remedies.Single(one => one.Changes.Any(change => change.Kind == kind));
            Assert.Equal(2.5, remedy.Changes.Single(change => change.Kind == kind).By.Millimeters, Tolerance);
            RodChange chased = remedy.Changes.Single(change => change is { Kind: ChangeKind.Chase, End: RodSide.Outer });
            Assert.Equal(2.25, chased.By.Millimeters, Tolerance);
            Assert.Equal(34.25, chased.To.Millimeters, Tolerance);
        }
    }
}
