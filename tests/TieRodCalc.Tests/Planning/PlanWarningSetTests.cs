using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// The warnings of random plans that hang neither on a strength nor on how little is left: those that the facts of the job ask for, with
/// their figures, and no others.
/// </summary>
public class PlanWarningSetTests
{
    /// <summary>Enough that every kind occurs.</summary>
    private const int Count = 800;

    private static readonly WarningCode[] s_codes =
    [
        WarningCode.NotLocked, WarningCode.OneJointLocked, WarningCode.SleeveCannotAdjust, WarningCode.SetByTheEnd,
        WarningCode.SocketTakenAsClosed, WarningCode.SteelAssumed, WarningCode.SpecialThread, WarningCode.LoadLeavesOut,
        WarningCode.NominalTrusted, WarningCode.HoldsOnlyAtNominal, WarningCode.NoUncutReach, WarningCode.ClassAssumed,
        WarningCode.CoarsePitchAssumed, WarningCode.LeadAssumed, WarningCode.CountersinkAssumed, WarningCode.ToeNotComputed,
        WarningCode.ToeOutOfReach, WarningCode.PlatesNotGiven,
    ];

    [Fact]
    public void A_plan_warns_of_what_its_facts_ask_for_and_of_nothing_else()
    {
        Findings findings = new();
        HashSet<WarningCode> seen = [];
        for (int index = 0; index < Count; index++)
        {
            Random random = RandomCounts.For(950_000 + index);
            RodJob job = index % 3 == 0 ? new RodJob(RandomRods.Draw(index), default, default, false) : RandomJobs.Draw(index);
            bool stated = random.Next(2) == 0;
            RodParts parts = Drawn(job.Parts(), stated, random);
            RodRequest request = Drawn(job.Rod.ToRequest(), random);
            RodPlan plan = RodPlanner.Plan(RodJob.Made(parts), request);
            Warning[] expected = [.. Expected(job, parts, request, plan, stated)];
            Warning[] found =
            [
                .. plan.Warnings.Where(warning => s_codes.Contains(warning.Code))
                    .Select(warning => new Warning(warning.Code, warning.End, Rounded(warning.Value))),
            ];
            findings.That(
                job.Rod,
                $"more {string.Join(", ", found.Except(expected))}, missing {string.Join(", ", expected.Except(found))}",
                found.Length == expected.Length && found.ToHashSet().SetEquals(expected));
            seen.UnionWith(found.Select(warning => warning.Code));
            findings.That(
                job.Rod,
                $"one joint {job.OneJoint}: tips {plan.Solution?.TipGap}, setting {plan.Solution?.LeastCutSetting}",
                plan.Solution is null || (job.OneJoint == plan.Solution.TipGap is null
                    && job.OneJoint == plan.Solution.LeastCutSetting.Outer is null));
        }

        findings.AssertNone();
        Assert.Equal(s_codes.Order(), seen.Order());
    }

    private static IEnumerable<Warning> Expected(RodJob job, RodParts parts, RodRequest request, RodPlan plan, bool stated)
    {
        RodSide[] sides = job.OneJoint ? [RodSide.Inner] : [RodSide.Inner, RodSide.Outer];
        RodSide[] free = [.. sides.Where(side => job.Rod.Joint(side) is { Nut: null, Clamp: null })];
        double step = job.Rod.Inner.Thread.PitchMm * job.Rod.StartTurns;
        if (free.Length > 0)
        {
            yield return free.Length == sides.Length ? new(WarningCode.NotLocked) : new(WarningCode.OneJointLocked, free[0]);
        }

        if (!job.OneJoint && !job.Rod.SleeveAdjusts)
        {
            yield return new(WarningCode.SleeveCannotAdjust, null, Rounded(step));
        }

        if (plan.UncutReach is null)
        {
            yield return new(WarningCode.NoUncutReach);
        }

        if (job.Rod is { Engagement: null, SleeveKind: null or MaterialKind.Other })
        {
            yield return new(WarningCode.SteelAssumed);
        }

        if (job.OneJoint && job.Rod.Inner.Bore == Bore.Open)
        {
            yield return new(WarningCode.SocketTakenAsClosed);
        }

        if (plan.Solution is { } made)
        {
            if (job.OneJoint)
            {
                yield return new(WarningCode.SetByTheEnd, null, Rounded(step));
            }

            if (!stated)
            {
                yield return new(WarningCode.NominalTrusted);
            }

            if (made.WorstCase.Verdict == Verdict.NotBuildable || !made.WorstCase.PlanIsSafe)
            {
                yield return new(WarningCode.HoldsOnlyAtNominal, null, Rounded(-made.WorstCase.Slack));
            }

            if (request.Rules.Load is not null)
            {
                yield return new(WarningCode.LoadLeavesOut);
            }

            if (made.PerTurn is not null && (request.Steering is null || request.Steering.InLine || request.Plates is null))
            {
                yield return new(request.Steering is null ? WarningCode.ToeNotComputed
                    : request.Steering.InLine ? WarningCode.ToeOutOfReach
                    : WarningCode.PlatesNotGiven);
            }
        }

        foreach (RodSide side in sides)
        {
            ThreadedEnd end = side == RodSide.Inner ? parts.Inner : parts.Outer!;
            TappedHole hole = parts.Socket?.Socket ?? (side == RodSide.Inner ? parts.Sleeve!.Inner : parts.Sleeve!.Outer);
            JointCase joint = job.Rod.Joint(side);
            ThreadDesignation?[] threads =
                [end.Thread, hole.Thread, (side == RodSide.Inner ? parts.InnerNut : parts.OuterNut)?.Thread];
            if (threads.Any(thread => thread is { CoarsePitchAssumed: true }))
            {
                yield return new(WarningCode.CoarsePitchAssumed, side, Rounded(joint.Thread.PitchMm));
            }

            if (threads.Any(thread => thread is { ToleranceClass: null }))
            {
                yield return new(WarningCode.ClassAssumed, side);
            }

            if (end.Thread.IsSpecial)
            {
                yield return new(WarningCode.SpecialThread, side);
            }

            if (joint.Lead is null)
            {
                yield return new(WarningCode.LeadAssumed, side, Rounded(joint.Thread.PitchMm));
            }

            if (joint.Countersink is null)
            {
                yield return new(WarningCode.CountersinkAssumed, side, Rounded(joint.Thread.PitchMm / 2));
            }
        }
    }

    /// <summary>The parts with a tolerance, with classes and with pitches said or not; now and then a thread that is in no series.</summary>
    private static RodParts Drawn(RodParts parts, bool stated, Random random)
    {
        ThreadDesignation Thread(ThreadDesignation thread) => thread with
        {
            ToleranceClass = random.Next(4) > 0 ? "2A" : null,
            CoarsePitchAssumed = random.Next(4) == 0,
        };
        ThreadedEnd inner = parts.Inner with { Thread = Thread(parts.Inner.Thread) };
        return parts with
        {
            Inner = stated
                ? inner with { ThreadLength = new Measured(inner.ThreadLength.Nominal, Length.FromMillimeters(1.5 * random.NextDouble())) }
                : inner,
            Sleeve = parts.Sleeve is { } sleeve
                ? sleeve with { Outer = sleeve.Outer with { Thread = Thread(sleeve.Outer.Thread) } }
                : null,
            InnerNut = parts.InnerNut is { } nut ? nut with { Thread = Thread(nut.Thread) } : null,
        };
    }

    /// <summary>Without a wheel, in line with its steer axis, or on an arm; with plates or without.</summary>
    private static RodRequest Drawn(RodRequest request, Random random) => request with
    {
        Rules = request.Rules with { Load = random.Next(2) == 0 ? Force.FromNewtons(4_000) : null },
        Plates = random.Next(2) == 0 ? Length.FromMillimeters(450) : null,
        Steering = random.Next(3) switch
        {
            0 => null,
            1 => SteeringGeometry.FromPoints(
                CarSide.Left, Mm(0, 0), new Point(Length.Zero, Length.Zero, Length.FromMillimeters(100)), Mm(150, 0), Mm(400, 0)),
            _ => SteeringGeometry.FromArm(
                CarSide.Left, Length.FromMillimeters(150), JointPlace.BehindAxle, Angle.FromDegrees(5), request.Target),
        },
    };

    private static Point Mm(double x, double y) => new(Length.FromMillimeters(x), Length.FromMillimeters(y), Length.Zero);

    private static double? Rounded(Length? value) => value is { } known ? Rounded(known.Millimeters) : null;

    private static double Rounded(double value) => Math.Round(value, 6);

    private sealed record Warning(WarningCode Code, RodSide? End = null, double? Value = null);
}
