using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Tests.Planning;

namespace TieRodCalc.Benchmarks;

/// <summary>
/// The same plans by a general library for linear programmes (GLOP), in the formulation that the tests hold the planner against: least
/// cut, cut windows, what the insertion may be, and reach, for rods that can be built; beside the kernel of the planner.
/// </summary>
internal static class LinearProgramMeasurement
{
    private const int Repeats = 10;
    private const double Same = 1e-6;

    public static void Run()
    {
        PlanSample sample = new();
        using LinearProgram program = new();
        for (int i = 0; i < PlanSample.Count; i++)
        {
            (RodProblem problem, double allowance, double mark) = sample.Problems[i];
            PlanKernel kernel = new(problem, allowance, mark);
            double[] closed =
            [
                kernel.Least.Inner, kernel.Least.Outer, kernel.Cuts.Inner, kernel.Cuts.Outer,
                kernel.Figures.Insertions.Low, kernel.Figures.Insertions.High, kernel.Figures.Reach.Low, kernel.Figures.Reach.High,
            ];
            double[] solved = Solved(program, sample.Cases[i], allowance, mark);
            if (!closed.Zip(solved).All(pair => Math.Abs(pair.First - pair.Second) <= Same))
            {
                throw new InvalidOperationException(
                    $"Closed form {string.Join(" ", closed)}, linear programme {string.Join(" ", solved)} for\n{sample.Cases[i]}");
            }
        }

        PlanBenchmarks plan = new();
        double[] best = Rounds.Best(
            Repeats,
            () => plan.Kernel(),
            () => plan.Plan(),
            () =>
            {
                for (int i = 0; i < PlanSample.Count; i++)
                {
                    Solved(program, sample.Cases[i], sample.Problems[i].Allowance, sample.Problems[i].Mark);
                }
            });
        Rounds.Print($"{PlanSample.Count} rods, the same results; linear programme {best[2] * 1e3 / PlanSample.Count:0} us a rod");
        Rounds.Print($"{best[2] / best[0]:0} times the kernel, {best[2] / best[1]:0} times the whole public plan");
    }

    private static double[] Solved(LinearProgram program, RodCase rod, double allowance, double mark)
    {
        program.Load(rod);
        double loosening = program.LeastLoosening(null);
        program.Load(rod, loosenedAll: Math.Min(loosening, Millimeters.Negligible));
        CutPair least = program.LeastCut()!.Value.Cut;
        double inner = Recommended(program, RodSide.Inner, NoneIfNegligible(least.Outer), allowance, mark);
        double outer = Recommended(program, RodSide.Outer, inner, allowance, mark);
        CutPair cuts = new(inner, outer);
        Span insertions = program.InnerInsertionSpan(cuts)!.Value;
        Span axial = program.AxialSpan(cuts)!.Value;
        return
        [
            NoneIfNegligible(least.Inner), NoneIfNegligible(least.Outer), inner, outer, insertions.Low, insertions.High,
            rod.LengthOf(axial.Low), rod.LengthOf(axial.High),
        ];
    }

    private static double Recommended(LinearProgram program, RodSide side, double other, double allowance, double mark)
    {
        Span window = program.CutSpan(side, other)!.Value;
        return CutRounding.Recommended(new(NoneIfNegligible(window.Low), window.High), allowance, mark).Cut;
    }

    private static double NoneIfNegligible(double cut) => cut <= Millimeters.Negligible ? 0 : cut;
}
