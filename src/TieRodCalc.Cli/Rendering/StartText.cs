using System.Globalization;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>How the threads are started, step by step.</summary>
internal sealed class StartText(LengthDisplay unit)
{
    /// <summary>What counted turns are worth.</summary>
    public static string Guide { get; } =
        "Counted turns are a guide, a turn more or less: nobody knows where a thread catches. The thread showing decides. What "
        + "is given as \"at least\" holds over the wanted adjustment.";

    /// <summary>Fewer turns than this are none that anybody counts.</summary>
    private const double LeastTurns = 0.05;

    /// <summary>The steps in their order.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="solution">The plan.</param>
    /// <param name="brief">Whether what is done in one go is one step.</param>
    public IEnumerable<string> Steps(RodParts parts, RodSolution solution, bool brief = false)
    {
        StartProcedure start = solution.Start;
        string first = Names.Of(start.First);
        string second = start.First == RodSide.Inner ? "outer" : "inner";
        string alone = $"{Number(start.AloneTurns)} turns";
        string until = $"until {Both(start.ShowingBeforeSecond)} of its thread shows";
        if (Nuts(parts) is { } nuts)
        {
            yield return nuts;
        }

        if (parts.OneJoint)
        {
            yield return $"Turn the inner end into the outer end: {alone} from flush with the face, {until}.";
        }
        else if (start.SleeveTurns is { } sleeveTurns)
        {
            if (start.AloneTurns < LeastTurns)
            {
                yield return "Start both ends together, each from flush with its face.";
            }
            else
            {
                string run = $"Run the {first} end in by itself: {alone} from flush with the face, {until}.";
                string[] steps = [run, $"Start the {second} end."];
                foreach (string step in brief ? [string.Join(' ', steps)] : steps)
                {
                    yield return step;
                }
            }

            yield return $"Turn the sleeve {Number(sleeveTurns)} turns {Names.Of(start.SleeveDirection!.Value)}, seen from the inner end "
                + "outward; both ends run in.";
        }
        else
        {
            yield return $"Turn the sleeve onto the {first} end: {alone} from flush with the face, {until}.";
            yield return $"Turn the {second} end itself in: {Number(start.EndTurns!.Value)} turns, before it is "
                + $"fitted{(solution.Lengthens is null ? "; take the nearest at which the joints line up" : string.Empty)}.";
        }
    }

    /// <summary>How far the bends of two bent ends are turned against each other, or null where there are not two.</summary>
    public static string? Clocking(RodParts parts) => parts is { Inner.IsBent: true, Outer.IsBent: true, Clocking: { } clocking }
        ? $"{clocking.Degrees.ToString("0.##", CultureInfo.InvariantCulture)} deg between the two bends, seen along the rod"
        : null;

    /// <summary>A nut goes onto its end before the end goes in.</summary>
    private static string? Nuts(RodParts parts)
    {
        RodSide[] sides = [.. parts.Joints.Where(side => parts.NutAt(side) is not null)];
        bool left = sides.Any(side => parts.EndAt(side).Thread.Hand == Hand.Left);
        string hand = left ? ", a left-hand nut onto the left-hand thread" : string.Empty;
        return sides.Length switch
        {
            0 => null,
            1 => $"Run the jam nut onto the {Names.Of(sides[0])} end first, back to where its thread begins{hand}.",
            _ => $"Run the jam nuts onto both ends first, back to where their threads begin{hand}.",
        };
    }

    private string Both(Length length) => Page.Whole(LengthFormat.Both(length, unit));

    private static string Number(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);
}
