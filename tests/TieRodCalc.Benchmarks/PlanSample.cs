using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Tests.Planning;

namespace TieRodCalc.Benchmarks;

/// <summary>Random rods of the tests, those that can be built, in every form that the measurements take them.</summary>
internal sealed class PlanSample
{
    /// <summary>How many: few enough to stay in the cache, enough that no branch is learned by heart.</summary>
    public const int Count = 500;

    /// <summary>Two ways to one figure differ by what doubles lose.</summary>
    private const double Same = 1e-9;

    public PlanSample()
    {
        for (int index = 0; Cases.Count < Count; index++)
        {
            RodCase drawn = RandomRods.Draw(index);
            Rod rod = drawn.ToRod();
            RodRequest request = drawn.ToRequest();
            if (RodPlanner.Plan(rod, request) is { Solution: not null } plan)
            {
                RodProblem problem = RodProblem.Of(
                    rod, request, Millimeters.Of(plan.InnerRequired.Required), Millimeters.Of(plan.OuterRequired!.Required));
                Cases.Add(drawn);
                Rods.Add((rod, request));
                Problems.Add((problem, Millimeters.Of(request.Rules.Allowance), Millimeters.Of(request.Rules.Mark)));
                ByHand.Add(new(problem, Problems[^1].Allowance, Problems[^1].Mark));
            }
        }

        for (int i = 0; i < Count; i++)
        {
            Compare(i);
        }
    }

    public List<RodCase> Cases { get; } = [];

    public List<(Rod Rod, RodRequest Request)> Rods { get; } = [];

    public List<(RodProblem Problem, double Allowance, double Mark)> Problems { get; } = [];

    public List<HandWrittenPlan> ByHand { get; } = [];

    private void Compare(int i)
    {
        ByHand[i].Solve(out HandWrittenAnswer hand);
        PlanKernel kernel = new(Problems[i].Problem, Problems[i].Allowance, Problems[i].Mark);
        SolutionFigures figures = kernel.Figures;
        RodSolution solution = RodPlanner.Plan(Rods[i].Rod, Rods[i].Request).Solution!;
        double[] one =
        [
            hand.Low, hand.High, hand.Inner, hand.Outer, hand.InnerCut, hand.OuterCut, hand.LeastInnerCut, hand.LeastOuterCut,
            hand.MostInnerCut, hand.MostOuterCut, hand.LeastCutInner, hand.LeastCutOuter, hand.Margin, hand.Shortest, hand.Longest,
            .. Of(hand.Shorter), .. Of(hand.Longer), .. Of(hand.InnerJoint), .. Of(hand.OuterJoint),
            hand.Inner, hand.InnerCut, hand.Margin,
        ];
        double[] other =
        [
            figures.Insertions.Low, figures.Insertions.High, figures.Setting.Inner, figures.Setting.Outer, kernel.Cuts.Inner,
            kernel.Cuts.Outer, kernel.Least.Inner, kernel.Least.Outer, figures.Most.Inner, figures.Most.Outer,
            figures.LeastCutSetting.Inner, figures.LeastCutSetting.Outer, figures.WorstMargin, figures.Reach.Low, figures.Reach.High,
            .. Of(figures.Shorter), .. Of(figures.Longer), .. Of(figures.Inner), .. Of(figures.Outer),
            solution.Inner.Insertion.Millimeters, solution.InnerCut?.Recommended.Millimeters ?? 0, solution.WorstMargin.Millimeters,
        ];
        bool same = hand.Buildable && kernel.Buildable
            && (hand.InnerOnMark, hand.OuterOnMark) == (kernel.InnerOnMark, kernel.OuterOnMark)
            && one.Zip(other).All(pair => Math.Abs(pair.First - pair.Second) <= Same);
        if (!same)
        {
            throw new InvalidOperationException(
                $"By hand {string.Join(" ", one)}, by the kernel and the planner {string.Join(" ", other)} for\n{Cases[i]}");
        }
    }

    private static double[] Of(in HandWrittenWay way) => [way.Length, way.Turns, way.Limit, way.End];

    private static double[] Of(in Way way) => way.EndsAt is { } limit
        ? [way.Length, way.Turns, (double)limit, way.End is { } end ? (double)end : -1]
        : [0, 0, 0, 0];

    private static double[] Of(in HandWrittenJoint joint) =>
        [joint.Showing, joint.Engaged, joint.EngagedLeast, joint.NutRoom, joint.NutRoomLeast];

    private static double[] Of(in JointFigures joint) =>
        [joint.Showing, joint.Engaged, joint.EngagedLeast, joint.NutRoom, joint.NutRoomLeast];
}
