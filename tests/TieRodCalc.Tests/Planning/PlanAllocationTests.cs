using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>The steps of a plan in doubles allocate nothing where the rod can be built, and neither does toe.</summary>
public class PlanAllocationTests
{
    private const int Count = 200;

    [Fact]
    public void The_figures_of_a_plan_allocate_nothing_and_are_those_of_the_plan()
    {
        List<(RodProblem Problem, double Allowance, double Mark, RodSolution Solution)> rods = [];
        for (int index = 0; rods.Count < Count; index++)
        {
            RodCase drawn = RandomRods.Draw(index);
            Rod rod = drawn.ToRod();
            RodRequest request = drawn.ToRequest();
            RodPlan plan = RodPlanner.Plan(rod, request);
            if (plan.Solution is { } solution)
            {
                RodProblem problem = RodProblem.Of(
                    rod, request, plan.InnerRequired.Required.Millimeters, plan.OuterRequired!.Required.Millimeters);
                rods.Add((problem, drawn.Allowance.Mm, drawn.Mark.Mm, solution));
            }
        }

        double[] insertions = new double[Count];
        Solve();
        long before = GC.GetAllocatedBytesForCurrentThread();
        Solve();
        long after = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(0, after - before);
        Assert.Equal(rods.Select(rod => rod.Solution.Inner.Insertion.Millimeters), insertions);

        void Solve()
        {
            int next = 0;
            foreach ((RodProblem wanted, double allowance, double mark, _) in rods)
            {
                SettingProblem problem = wanted.Setting;
                if (problem.Conflicts().Count == 0)
                {
                    Cuts least = problem.LeastCuts();
                    (Cuts cuts, _, _) = CutRounding.Recommended(problem, least, allowance, mark);
                    insertions[next++] = new SolutionFigures(wanted.Rod, problem, least, cuts).Setting.Inner;
                }
            }
        }
    }

    [Fact]
    public void Toe_from_length_and_back_allocates_nothing()
    {
        SteeringGeometry wheel = SteeringGeometry.FromArm(
            CarSide.Left, Length.FromMillimeters(152), JointPlace.BehindAxle, Angle.Zero, Length.FromMillimeters(400));
        double warm = There(wheel);
        long before = GC.GetAllocatedBytesForCurrentThread();
        double again = There(wheel);
        long after = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(0, after - before);
        Assert.Equal(warm, again);
        Assert.Equal(400.0 * Count + 0.01 * Count * (Count - 1) / 2, again, 6);
    }

    private static double There(SteeringGeometry wheel)
    {
        double sum = 0;
        for (int i = 0; i < Count; i++)
        {
            Angle toe = Toe.FromLength(wheel, Length.FromMillimeters(400 + 0.01 * i)).Toe!.Value;
            sum += Toe.LengthFor(wheel, toe).Length!.Value.Millimeters;
        }

        return sum;
    }
}
