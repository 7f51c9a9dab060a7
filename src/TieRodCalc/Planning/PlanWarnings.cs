using TieRodCalc.Parts;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>Gathers what a plan has to warn of.</summary>
internal static class PlanWarnings
{
    /// <summary>Less than this left to be cut off by mistake is warned of: 1/16 in (common practice, no source).</summary>
    private const double LittleSpare = Millimeters.Inch / 16;

    public static List<PlanWarning> Of(
        Rod rod,
        RodRequest request,
        in Turning turning,
        RodSolution? solution,
        bool noUncutReach,
        ReadOnlySpan<JointNeeds> joints)
    {
        List<PlanWarning> warnings = [];
        AddLocking(warnings, rod);
        StrengthWarnings.AddLoad(warnings, RodSide.Inner, solution?.Inner);
        StrengthWarnings.AddLoad(warnings, RodSide.Outer, solution?.Outer);
        if (!turning.Adjusts)
        {
            warnings.Add(new(WarningCode.SleeveCannotAdjust, Value: StepByEnds(rod.Parts)));
        }

        if (solution is not null)
        {
            AddSolution(warnings, rod, request, solution);
        }

        if (noUncutReach)
        {
            warnings.Add(new(WarningCode.NoUncutReach));
        }

        foreach (JointNeeds joint in joints)
        {
            StrengthWarnings.Add(warnings, joint.Side, joint.Materials, joint.Required, request.Rules.Load is not null);
            AddAssumed(warnings, joint.Side, rod.Parts);
        }

        if (solution is not null && request.Rules.Load is not null)
        {
            warnings.Add(new(WarningCode.LoadLeavesOut));
        }

        if (EngagementRequirement.AssumesSteel(rod.Parts.Female.Material, request.Rules.Engagement))
        {
            warnings.Add(new(WarningCode.SteelAssumed));
        }

        if (solution is { WorstCase.TolerancesStated: false })
        {
            warnings.Add(new(WarningCode.NominalTrusted));
        }

        return warnings;
    }

    private static void AddLocking(List<PlanWarning> warnings, Rod rod)
    {
        if (rod.Locking == Locking.None)
        {
            warnings.Add(new(WarningCode.NotLocked));
        }
        else if (!rod.AllLocked)
        {
            warnings.Add(new(WarningCode.OneJointLocked, rod.Locking == Locking.Inner ? RodSide.Outer : RodSide.Inner));
        }
    }

    private static void AddSolution(List<PlanWarning> warnings, Rod rod, RodRequest request, RodSolution solution)
    {
        if (!solution.WorstCase.PlanIsSafe)
        {
            warnings.Add(new(WarningCode.HoldsOnlyAtNominal, Value: -solution.WorstCase.Slack));
        }

        AddCut(warnings, RodSide.Inner, solution.InnerCut);
        AddCut(warnings, RodSide.Outer, solution.OuterCut);
        AddNut(warnings, RodSide.Inner, rod.Parts.InnerNut, solution.Inner);
        if (solution.Outer is { } outer)
        {
            AddNut(warnings, RodSide.Outer, rod.Parts.OuterNut, outer);
        }
        else
        {
            warnings.Add(new(WarningCode.SetByTheEnd, Value: StepByEnds(rod.Parts)));
        }

        if (rod.Parts.Socket is { Socket.Bore: Bore.Open })
        {
            warnings.Add(new(WarningCode.SocketTakenAsClosed));
        }

        Length free = solution.Inner.InsertionSpan.Width;
        if (solution.StartStep is { } step && Millimeters.Of(free) < Millimeters.Of(step) - Millimeters.Negligible)
        {
            warnings.Add(new(WarningCode.StartMayNotMatch, Value: Positive(free), Other: step));
        }

        if (solution.PerTurn is { } perTurn)
        {
            AddToe(warnings, request, perTurn);
        }
    }

    private static void AddToe(List<PlanWarning> warnings, RodRequest request, TurnEffect perTurn)
    {
        if (request.Steering is null)
        {
            warnings.Add(new(WarningCode.ToeNotComputed));
        }
        else if (perTurn.Toe is null)
        {
            warnings.Add(new(WarningCode.ToeOutOfReach));
        }
        else if (request.Plates is null)
        {
            warnings.Add(new(WarningCode.PlatesNotGiven));
        }
    }

    private static void AddCut(List<PlanWarning> warnings, RodSide side, CutAdvice? cut)
    {
        if (cut is not { IsNeeded: true })
        {
            return;
        }

        if (Millimeters.Of(cut.Spare) < LittleSpare - Millimeters.Negligible)
        {
            warnings.Add(new(WarningCode.LittleCutToSpare, side, Positive(cut.Spare)));
        }

        if (!cut.OnMark)
        {
            warnings.Add(new(WarningCode.CutOffTheMarks, side, cut.Recommended));
        }
    }

    private static void AddNut(List<PlanWarning> warnings, RodSide side, JamNut? nut, JointPlan joint)
    {
        if (nut is not null && Millimeters.Of(joint.NutRoomLeast) < nut.Thread.Size.PitchMm - Millimeters.Negligible)
        {
            warnings.Add(new(WarningCode.LittleRoomForTheNut, side, Positive(joint.NutRoomLeast)));
        }
    }

    private static void AddAssumed(List<PlanWarning> warnings, RodSide side, RodParts parts)
    {
        ThreadedEnd end = parts.EndAt(side);
        TappedHole hole = parts.HoleAt(side);
        Threads.ThreadDesignation?[] threads = [end.Thread, hole.Thread, parts.NutAt(side)?.Thread];
        if (threads.Any(thread => thread is { CoarsePitchAssumed: true }))
        {
            warnings.Add(new(WarningCode.CoarsePitchAssumed, side, end.Thread.Size.Pitch));
        }

        if (threads.Any(thread => thread is { ToleranceClass: null }))
        {
            warnings.Add(new(WarningCode.ClassAssumed, side));
        }

        if (end.Thread.IsSpecial)
        {
            warnings.Add(new(WarningCode.SpecialThread, side));
        }

        if (end.Lead is null)
        {
            warnings.Add(new(WarningCode.LeadAssumed, side, Length.FromMillimeters(end.LeadMm)));
        }

        if (hole.Countersink is null)
        {
            warnings.Add(new(WarningCode.CountersinkAssumed, side, Length.FromMillimeters(hole.CountersinkMm)));
        }
    }

    /// <summary>The step between the lengths that turning an end gives: a pitch, or half of one where an end turns by halves.</summary>
    private static Length StepByEnds(RodParts parts) =>
        Length.FromMillimeters(parts.Inner.Thread.Size.PitchMm * (parts.StartsByHalves ? 0.5 : 1));

    /// <summary>A value that may be missed by the comparison constant, never shown below zero.</summary>
    private static Length Positive(Length value) => Length.FromMillimeters(Math.Max(0, Millimeters.Of(value)));
}
