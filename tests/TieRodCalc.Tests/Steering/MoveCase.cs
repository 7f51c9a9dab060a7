using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Steering;

/// <summary>
/// A random corner with a travel and limits of the moves. The reference searches with a general-purpose minimizer that knows no
/// derivatives; the moves stay within their limits because each is the middle of its range and half of it times a sine.
/// </summary>
internal sealed record MoveCase(RandomCorner Drawn, double Droop, double Bump, MoveLimits Limits)
{
    private const int Intervals = 24;
    private const int MostStarts = 30;

    /// <summary>A part of what is left below which the reference is done.</summary>
    private const double LeastGain = 1e-4;

    private static readonly Lazy<IReadOnlyList<(MoveCase Case, CornerBest Best)>> s_solved = new(() => [.. All!.Select(each => (each, each.Best()))]);

    public static IReadOnlyList<MoveCase> All { get; } =
        [.. Enumerable.Range(0, 2 * RandomCounts.SearchedCorners).Select(Draw).OfType<MoveCase>().Take(RandomCounts.SearchedCorners)];

    /// <summary>The cases and their best moves.</summary>
    public static IReadOnlyList<(MoveCase Case, CornerBest Best)> Solved => s_solved.Value;

    public CornerGeometry Corner => Drawn.Geometry;

    public CornerBest Best() => CornerOptimum.Find(Corner, Mm(Droop), Mm(Bump), Limits)!;

    /// <summary>Root of the mean square of the toe changes, radians; not finite where the corner does not reach the travel.</summary>
    public double ToeLeft(CornerGeometry? corner)
    {
        Angle? start = corner?.At(Length.Zero)?.Toe;
        double[] toes =
        [
            .. Enumerable.Range(0, Intervals + 1)
                .Select(step => -Droop + step * (Droop + Bump) / Intervals)
                .Where(travel => Math.Abs(travel) > 1e-9)
                .Select(travel => (corner?.At(Mm(travel))?.Toe - start)?.Radians ?? double.NaN),
        ];
        return Math.Sqrt(toes.Average(toe => toe * toe));
    }

    /// <summary>The least that the general-purpose minimizer finds, from several starts and started again where it ended.</summary>
    public double LeastByMinimizer()
    {
        (double Middle, double Half)[] ranges = [.. Ranges()];
        int[] free = [.. Enumerable.Range(0, ranges.Length).Where(index => ranges[index].Half > 0)];
        IObjectiveFunction left = ObjectiveFunction.Value(point => ToeOrMuch(Corner.Moved(MovesAt(point))) * 1e3);
        double least = double.PositiveInfinity;
        foreach (double start in new[] { 0.1, -0.7 })
        {
            Vector<double> point = Vector<double>.Build.Dense(free.Length, start);
            double before = double.MaxValue;
            for (int again = 0; again < MostStarts && left.Fork() is var there; again++)
            {
                there.EvaluateAt(point);
                if (there.Value > (1 - LeastGain) * before)
                {
                    break;
                }

                // A fresh simplex each time, smaller ones in turn: one that has shrunk along a narrow valley gets no further.
                before = there.Value;
                Vector<double> width = Vector<double>.Build.Dense(free.Length, 0.3 / (1 + again % 3));
                point = NelderMeadSimplex.Minimum(left, point, width, LeastGain / 100, 10_000).MinimizingPoint;
            }

            least = Math.Min(least, ToeLeft(Corner.Moved(MovesAt(point))));
        }

        return least;

        JointMoves MovesAt(Vector<double> point)
        {
            double[] moves = [.. ranges.Select(range => range.Middle)];
            foreach ((int index, double at) in free.Zip(point))
            {
                moves[index] += ranges[index].Half * Math.Sin(at);
            }

            return new JointMoves(Mm(moves[0]), Mm(moves[1]), Mm(moves[2]));
        }
    }

    /// <summary>Moves in the order of the limits, each with the least and the most that it may be.</summary>
    public IEnumerable<(double Move, double Least, double Most)> Held(JointMoves moves) =>
        new[] { moves.OuterRaised, moves.InnerRaised, moves.RodLonger }
            .Zip(Each(), (move, range) => (move.Millimeters, -range.Less.Millimeters, range.More.Millimeters));

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static MoveCase? Draw(int index)
    {
        Random random = RandomCounts.For(-1 - index);
        double Between(double low, double high) => low + (high - low) * random.NextDouble();
        MoveRange Range(double low, double high) => new(Mm(Between(low, high)), Mm(Between(low, high)));
        MoveLimits limits = (index % 5) switch
        {
            0 => MoveLimits.Usual,
            1 => new MoveLimits(Range(40, 80), Range(10, 30), Range(100, 200)),
            2 => new MoveLimits(Range(0, 6), Range(0, 3), Range(0, 10)),
            3 => new MoveLimits(Range(20, 50), default, default),
            _ => new MoveLimits(default, Range(20, 50), Range(60, 150)),
        };
        MoveCase drawn = new(RandomCorners.Draw(index), Between(15, 60), Between(15, 60), limits);
        return double.IsFinite(drawn.ToeLeft(drawn.Corner)) ? drawn : null;
    }

    private IEnumerable<MoveRange> Each() => [Limits.Outer, Limits.Inner, Limits.Rod];

    private IEnumerable<(double Middle, double Half)> Ranges() => Each().Select(range =>
        ((range.More - range.Less).Millimeters / 2, (range.More + range.Less).Millimeters / 2));

    /// <summary>More than any toe change where the moved corner does not reach, for a minimizer that wants a number.</summary>
    private double ToeOrMuch(CornerGeometry? moved) => ToeLeft(moved) is var left && double.IsFinite(left) ? left : 10;
}
