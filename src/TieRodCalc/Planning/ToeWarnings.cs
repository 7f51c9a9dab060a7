using TieRodCalc.Rods;
using TieRodCalc.Steering;

namespace TieRodCalc.Planning;

/// <summary>Gathers what a plan of toe has to warn of.</summary>
internal static class ToeWarnings
{
    /// <summary>Points that were measured with another rod stand this far from its length at least (our own choice).</summary>
    private const double OtherLength = 5;

    public static List<ToeWarning> Of(ToeRequest request, IReadOnlyList<ToeMove> moves, ToeMove? stays)
    {
        List<ToeWarning> warnings = [];
        if (stays is not null)
        {
            AddStays(warnings, stays, (stays.Side == CarSide.Left ? request.Left : request.Right)!);
        }

        foreach (ToeMove move in moves)
        {
            AddRod(warnings, move, (move.Side == CarSide.Left ? request.Left : request.Right)!);
        }

        if (request.OnlyTotalMeasured)
        {
            warnings.Add(new(ToeWarningCode.HalvesAssumed));
        }

        if (request.Share != ToeShare.BothRods)
        {
            warnings.Add(request.OneRod
                ? new(ToeWarningCode.WheelHeld, request.Share == ToeShare.LeftOnly ? CarSide.Right : CarSide.Left)
                : new(ToeWarningCode.SteeringWheelLeavesCenter));
        }

        return warnings;
    }

    private static void AddStays(List<ToeWarning> warnings, ToeMove stays, ToeRod rod)
    {
        AddLocking(warnings, stays, rod);
        if (stays.PastALimit)
        {
            warnings.Add(new(ToeWarningCode.StaysPastALimit, stays.Side));
        }
    }

    private static void AddLocking(List<ToeWarning> warnings, ToeMove move, ToeRod rod)
    {
        if (rod.Rod.Locking == Locking.None)
        {
            warnings.Add(new(ToeWarningCode.NotLocked, move.Side));
        }
    }

    private static void AddRod(List<ToeWarning> warnings, ToeMove move, ToeRod rod)
    {
        AddLocking(warnings, move, rod);
        if (move.SteeringUnlikely)
        {
            warnings.Add(new(ToeWarningCode.SteeringUnlikely, move.Side));
        }

        double apart = Math.Abs(rod.Steering.LengthMm - Millimeters.Of(rod.Present));
        if (apart > OtherLength)
        {
            warnings.Add(new(ToeWarningCode.PointsAtOtherLength, move.Side, Value: UnitsNet.Length.FromMillimeters(apart)));
        }

        if (move is { PastALimit: true, Outcome: MoveOutcome.Holds })
        {
            warnings.Add(new(ToeWarningCode.PastALimit, move.Side));
        }

        if (!rod.PresentMeasured)
        {
            warnings.Add(new(ToeWarningCode.PresentLengthPlanned, move.Side));
        }

        if (move.Plan is { Solution: null })
        {
            warnings.Add(new(ToeWarningCode.NotBuildable, move.Side));
        }
        else if (move.BuiltDiffers)
        {
            warnings.Add(new(ToeWarningCode.BuiltDiffers, move.Side));
        }
        else if (move.Plan is not null)
        {
            warnings.Add(new(ToeWarningCode.SettingFromPlan, move.Side));
        }
        else if (move.Shorter is null)
        {
            warnings.Add(new(ToeWarningCode.CutNotKnown, move.Side));
        }

        foreach (MovedJoint joint in move.Joints)
        {
            if (joint.NutLoosens is not null && Millimeters.Of(joint.NutRoom) < Millimeters.Of(joint.Pitch) - Millimeters.Negligible)
            {
                warnings.Add(new(ToeWarningCode.LittleRoomForTheNut, move.Side, joint.End, joint.NutRoom));
            }
        }
    }
}
