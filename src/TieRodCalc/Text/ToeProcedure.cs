using TieRodCalc.Planning;

namespace TieRodCalc.Text;

/// <summary>How toe is set, whatever the numbers (common practice, no source).</summary>
public static class ToeProcedure
{
    /// <summary>The steps for what is to be turned, one or two sentences each; none where nothing is, or not all of it may be.</summary>
    /// <param name="plan">The plan of toe.</param>
    public static IReadOnlyList<string> Of(ToePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ToeMove[] turned = [.. plan.Moves.Where(move => move.Direction is not null)];
        List<string> steps = [];
        if (turned.Length == 0 || !plan.Moves.All(move => move.Holds))
        {
            return steps;
        }

        steps.Add("Ride height, camber and caster first: each of them moves toe.");
        steps.Add("Steering wheel at its center, and locked there.");
        steps.Add("Loosen what locks the joints. A left-hand nut loosens the other way.");
        if (turned.Any(move => move.Part == TurnedPart.Sleeve))
        {
            steps.Add("Hold both ends while a sleeve turns, so that neither joint is carried to the end of its swing.");
        }

        if (turned.Any(move => move.Part != TurnedPart.Sleeve))
        {
            steps.Add("Take an end off its pin before it is turned, and secure the pin again behind it.");
        }

        steps.Add("Before tightening: both joints in mid-swing, free from lock to lock. Then tighten what locks the joints.");
        steps.Add(
            "Roll the car forward and measure again. Tightening takes up the play of the threads; that is worth about a tenth of a turn.");
        return steps;
    }
}
