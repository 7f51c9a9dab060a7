using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>How to start the threads. Counted turns are a guide, a turn more or less; the thread showing decides.</summary>
/// <param name="First">The end that is run in by itself.</param>
/// <param name="AloneTurns">By how many turns, counted from flush with the face.</param>
/// <param name="ShowingBeforeSecond">Its thread that shows then.</param>
/// <param name="SleeveTurns">Opposite hands: turns of the sleeve after the other end is started; null with the same hand.</param>
/// <param name="SleeveDirection">Which way those turns go, seen from the inner end outward; null with the same hand.</param>
/// <param name="EndTurns">
/// Same hand: turns of the outer end itself, before it is fitted; null with opposite hands and where there is one joint only.
/// </param>
public sealed record StartProcedure(
    RodSide First, double AloneTurns, Length ShowingBeforeSecond, double? SleeveTurns, TurnDirection? SleeveDirection, double? EndTurns)
{
    /// <summary>
    /// With opposite hands the sleeve draws both ends in together, so the end that needs more turns goes first by the
    /// difference. With the same hand it draws one in and lets the other out: the outer end itself is turned in.
    /// </summary>
    internal static StartProcedure Of(in RodDimensions rod, in Turning turning, double inner, double outer, Cuts cuts)
    {
        double innerTurns = inner / rod.Inner.Pitch;
        Length innerShowing = Length.FromMillimeters(rod.Inner.Showing(inner, cuts.Inner));
        if (rod.OneJoint)
        {
            return new StartProcedure(RodSide.Inner, innerTurns, innerShowing, null, null, null);
        }

        double outerTurns = outer / rod.Outer.Pitch;
        if (!turning.OppositeHands)
        {
            return new StartProcedure(RodSide.Inner, innerTurns, innerShowing, null, null, outerTurns);
        }

        RodSide first = innerTurns >= outerTurns - Millimeters.Negligible ? RodSide.Inner : RodSide.Outer;
        double alone = Math.Abs(innerTurns - outerTurns);
        double showing = rod[first].Showing(alone * rod[first].Pitch, cuts[first]);
        return new StartProcedure(first, alone, Length.FromMillimeters(showing), Math.Min(innerTurns, outerTurns), turning.Shortens, null);
    }
}
