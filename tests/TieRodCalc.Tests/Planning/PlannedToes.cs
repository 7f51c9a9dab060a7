using TieRodCalc.Planning;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>A random wheel and what the library says of it.</summary>
internal sealed record PlannedToe(ToeCase Case, ToePlan Plan, ToeMove Move);

/// <summary>Gathers what does not agree, with the wheel beside the rod; the text is made only where it is needed.</summary>
internal static class ToeFindings
{
    public static void That(this Findings findings, ToeCase drawn, bool holds, string what, object? was = null)
    {
        if (!holds)
        {
            findings.Add(drawn.Rod.Rod, $"{what}: {was}\n  {drawn}");
        }
    }

    public static void Near(this Findings findings, ToeCase drawn, string what, double? expected, double? actual, double tolerance) =>
        findings.That(
            drawn,
            expected is null ? actual is null : Math.Abs(expected.Value - (actual ?? double.NaN)) <= tolerance,
            what,
            FormattableString.Invariant($"expected {expected:R}, was {actual:R}"));
}

/// <summary>
/// The plans of all random wheels, made once: of every third pair both rods are turned, of the others each rod alone makes up the
/// change of the total, which is shared out between the wheels anyhow.
/// </summary>
internal static class PlannedToes
{
    private static readonly Lazy<IReadOnlyList<PlannedToe>> s_all = new(PlanAll);

    public static IReadOnlyList<PlannedToe> All => s_all.Value;

    private static PlannedToe[] PlanAll()
    {
        IReadOnlyList<ToeCase> cases = RandomToes.All;
        PlannedToe[] all = new PlannedToe[cases.Count / 2 * 2];
        Parallel.For(0, all.Length / 2, pair =>
        {
            ToeCase left = cases[2 * pair];
            ToeCase right = cases[2 * pair + 1];
            ToeRequest both = new()
            {
                Now = Toes(left.Now, right.Now),
                Want = Toes(left.Want, right.Want),
                Left = left.Rod.OnCar(left.Wheel, left.Camber),
                Right = right.Rod.OnCar(right.Wheel, right.Camber),
            };
            bool alone = pair % 3 != 0;
            ToePlan plan = ToePlanner.Plan(alone ? Alone(both, left, right.Now) : both);
            all[2 * pair] = new(left, plan, plan.Moves[0]);
            plan = alone ? ToePlanner.Plan(Alone(both, right, left.Now)) : plan;
            all[2 * pair + 1] = new(right, plan, plan.Moves[^1]);
        });
        return all;
    }

    /// <summary>
    /// The total is W (sin left + sin right): of the sum of sines that the turned wheel and the standing one have in the end, some
    /// share is asked of the one and the rest of the other.
    /// </summary>
    private static ToeRequest Alone(ToeRequest both, ToeCase turned, double other)
    {
        double sum = Math.Sin(turned.Want) + Math.Sin(other);
        double left = Math.Asin(sum * 0.3 + 0.01);
        double right = Math.Asin(sum - Math.Sin(left));
        return both with
        {
            Share = turned.Wheel.Side == CarSide.Left ? ToeShare.LeftOnly : ToeShare.RightOnly,
            Want = Toes(left, right),
        };
    }

    private static WheelToes Toes(double left, double right) => new(Angle.FromRadians(left), Angle.FromRadians(right));
}
