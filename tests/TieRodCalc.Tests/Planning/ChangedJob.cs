using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// Makes the changes of a remedy to the parts and wishes of a job, from what a change says and not from what the library made.
/// </summary>
internal static class ChangedJob
{
    public static RodPlan Plan(RodJob job, IReadOnlyList<RodChange> changes)
    {
        (RodParts Parts, RodRequest Request) changed = changes.Aggregate((job.Parts(), job.Rod.ToRequest()), With);
        return RodPlanner.Plan(RodJob.Made(changed.Parts), changed.Request);
    }

    /// <summary>What a changed dimension becomes, in millimeters.</summary>
    public static double Becomes(FailingJob failing, RodChange change)
    {
        RodNumbers rod = failing.Changes[(change.Kind, change.End)].Apply(failing.Numbers, change.By.Millimeters);
        return change.Kind switch
        {
            ChangeKind.Cut => rod.Joint(change.End!.Value).MostCut,
            ChangeKind.Chase => rod.Joint(change.End!.Value).ThreadLength,
            ChangeKind.LessEngagement => rod.Joint(change.End!.Value).Required,
            ChangeKind.NoNut => rod.Joint(change.End!.Value).Nut,
            ChangeKind.LessShorter or ChangeKind.LessAdjustment => rod.Shorter,
            ChangeKind.LessLonger => rod.Longer,
            ChangeKind.ShorterTarget or ChangeKind.LongerTarget => rod.Target,
            _ => rod.Sleeve,
        };
    }

    private static (RodParts Parts, RodRequest Request) With((RodParts Parts, RodRequest Request) job, RodChange change)
    {
        (RodParts parts, RodRequest request) = job;
        Measured to = new(change.To);
        return change.Kind switch
        {
            ChangeKind.Cut => (End(parts, change, end => end with { MaxCut = to }), request),
            ChangeKind.Chase => (End(parts, change, end => end with { ThreadLength = to, Rethread = default }), request),
            ChangeKind.ShorterSleeve or ChangeKind.LongerSleeve => (parts with { Sleeve = parts.Sleeve! with { Length = to } }, request),
            ChangeKind.ShorterOuterEnd or ChangeKind.LongerOuterEnd =>
                (parts with { Socket = parts.Socket! with { CenterToFace = to } }, request),
            ChangeKind.LessShorter => (parts, request with { Shorter = change.To }),
            ChangeKind.LessLonger => (parts, request with { Longer = change.To }),
            ChangeKind.LessAdjustment => (parts, request with { Shorter = change.To, Longer = change.To }),
            ChangeKind.ShorterTarget or ChangeKind.LongerTarget => (parts, request with { Target = change.To }),
            ChangeKind.LessEngagement => (parts, request with { Rules = Less(request.Rules, change.End, change.To) }),
            ChangeKind.NoNut => (change.End == RodSide.Inner ? parts with { InnerNut = null } : parts with { OuterNut = null }, request),
            _ => throw new InvalidOperationException($"{change.Kind} is not known."),
        };
    }

    private static PlanRules Less(PlanRules rules, RodSide? end, Length to) => end == RodSide.Inner
        ? rules with { InnerEngagement = EngagementRule.FromLength(to) }
        : rules with { OuterEngagement = EngagementRule.FromLength(to) };

    private static RodParts End(RodParts parts, RodChange change, Func<ThreadedEnd, ThreadedEnd> with) => change.End == RodSide.Inner
        ? parts with { Inner = with(parts.Inner) }
        : parts with { Outer = with(parts.Outer!) };
}
