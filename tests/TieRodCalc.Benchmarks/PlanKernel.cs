using TieRodCalc.Planning;

namespace TieRodCalc.Benchmarks;

/// <summary>A plan in doubles in the planner's own steps, without quantities, warnings and tolerances around them.</summary>
internal readonly struct PlanKernel
{
    public readonly bool Buildable;
    public readonly Cuts Least;
    public readonly Cuts Cuts;
    public readonly bool InnerOnMark;
    public readonly bool OuterOnMark;
    public readonly SolutionFigures Figures;

    public PlanKernel(in RodProblem wanted, double allowance, double mark)
    {
        SettingProblem problem = wanted.Setting;
        Buildable = problem.Adjusts && problem.Conflicts().Count == 0;
        if (Buildable)
        {
            Least = problem.LeastCuts();
            (Cuts, InnerOnMark, OuterOnMark) = CutRounding.Recommended(problem, Least, allowance, mark);
            Figures = new(wanted.Rod, problem, Least, Cuts);
        }
    }
}
