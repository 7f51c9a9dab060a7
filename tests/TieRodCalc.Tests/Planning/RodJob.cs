using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>
/// A rod that is asked for, how much further up each shank a die can go, and whether it has one threaded joint alone: then the inner
/// joint of the case is that joint, and the length of the case's sleeve is the way from the outer ball center to its thread's face.
/// </summary>
internal sealed record RodJob(RodCase Rod, Dim InnerRethread, Dim OuterRethread, bool OneJoint)
{
    /// <summary>The rod in plain millimeters.</summary>
    public RodNumbers Numbers => RodNumbers.Of(Rod, OneJoint);

    /// <summary>The library's parts.</summary>
    public RodParts Parts()
    {
        RodParts parts = Rod.ToRod().Parts;
        ThreadedEnd inner = parts.Inner with { Rethread = new Measured(InnerRethread.ToLength()) };
        if (!OneJoint)
        {
            return parts with { Inner = inner, Outer = parts.Outer! with { Rethread = new Measured(OuterRethread.ToLength()) } };
        }

        SocketEnd socket = new()
        {
            Info = parts.Sleeve!.Info,
            CenterToFace = parts.Sleeve.Length,
            Socket = parts.Sleeve.Inner,
            Joint = Rod.Outer.Joint,
        };
        return new RodParts(inner, socket, parts.InnerNut);
    }

    /// <summary>The library's rod of some parts that must make one.</summary>
    public static Rod Made(RodParts parts)
    {
        RodFaults? faults = TieRodCalc.Rods.Rod.Make(parts, out Rod? made);
        return made ?? throw new InvalidOperationException(
            $"No rod: {string.Join(", ", faults!.PartFaults)} {string.Join(", ", faults.Mismatches)} {faults.ClockingMissing}");
    }

    public RodPlan Plan() => RodPlanner.Plan(Made(Parts()), Rod.ToRequest());

    public override string ToString() => $"{(OneJoint ? "one joint, " : "")}rethread {InnerRethread} / {OuterRethread}";
}
