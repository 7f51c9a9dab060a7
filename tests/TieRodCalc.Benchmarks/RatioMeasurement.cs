namespace TieRodCalc.Benchmarks;

/// <summary>The ratios of plan and toe to their forms by hand, where the machine is too busy for benchmarks.</summary>
internal static class RatioMeasurement
{
    private const int Count = 2_000;
    private const int ToeCalls = 500;

    public static void Run()
    {
        PlanBenchmarks plan = new();
        double[] plans = Rounds.Best(Count, () => plan.ByHand(), () => plan.Kernel());
        double[] publicPlans = Rounds.Best(Count / 20, () => plan.ByHand(), () => plan.Plan());
        Rounds.Print($"plan by hand {plans[0] * 1e6 / PlanSample.Count:0} ns");
        double kernel = Rounds.Allocated(() => plan.Kernel()) / PlanSample.Count;
        double whole = Rounds.Allocated(() => plan.Plan()) / PlanSample.Count;
        Rounds.Print($"plan, kernel: {plans[1] / plans[0]:0.00} times that, {kernel:0.0} KiB each");
        Rounds.Print($"plan, public: {publicPlans[1] / publicPlans[0]:0.0} times that, {whole:0.0} KiB each");

        ToeBenchmarks toe = new();
        double[] toes = Rounds.Best(
            Count, Many(toe.BareToe), Many(toe.ToeFromLength), Many(toe.BareLength), Many(toe.LengthForToe));
        Rounds.Print($"bare toe from length {toes[0] * 1e6 / ToeCalls:0.0} ns, bare length for toe {toes[2] * 1e6 / ToeCalls:0.0} ns");
        Rounds.Print($"toe from length: {toes[1] / toes[0]:0.00} times the bare one");
        Rounds.Print($"length for toe: {toes[3] / toes[2]:0.00} times the bare one");
    }

    private static Action Many(Func<double> one) => () =>
    {
        double sum = 0;
        for (int i = 0; i < ToeCalls; i++)
        {
            sum += one();
        }

        GC.KeepAlive(sum);
    };
}
