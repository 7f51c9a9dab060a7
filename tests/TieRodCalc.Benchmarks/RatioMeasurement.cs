namespace TieRodCalc.Benchmarks;

/// <summary>The ratios of plan and toe to their forms by hand, where the machine is too busy for benchmarks.</summary>
internal static class RatioMeasurement
{
    private const int RoundsOfEach = 200;
    private const int PlanCalls = 10;
    private const int ToeCalls = 20_000;

    public static void Run()
    {
        PlanBenchmarks plan = new();
        double[] plans = Rounds.Best(
            RoundsOfEach, Many(PlanCalls, plan.ByHand), Many(PlanCalls, plan.Kernel), () => plan.Plan());
        Rounds.Print($"plan by hand {plans[0] * 1e6 / PlanCalls / PlanSample.Count:0} ns");
        double kernel = Rounds.Allocated(() => plan.Kernel()) / PlanSample.Count;
        double whole = Rounds.Allocated(() => plan.Plan()) / PlanSample.Count;
        Rounds.Print($"plan, kernel: {plans[1] / plans[0]:0.00} times that, {kernel:0.0} KiB each");
        Rounds.Print($"plan, public: {plans[2] / plans[0] * PlanCalls:0} times that, {whole:0.0} KiB each");

        ToeBenchmarks toe = new();
        double[] toes = Rounds.Best(
            RoundsOfEach,
            Many(ToeCalls, toe.BareToe),
            Many(ToeCalls, toe.ToeFromLength),
            Many(ToeCalls, toe.BareLength),
            Many(ToeCalls, toe.LengthForToe));
        Rounds.Print($"bare toe from length {toes[0] * 1e6 / ToeCalls:0.0} ns, bare length for toe {toes[2] * 1e6 / ToeCalls:0.0} ns");
        Rounds.Print($"toe from length: {toes[1] / toes[0]:0.00} times the bare one");
        Rounds.Print($"length for toe: {toes[3] / toes[2]:0.00} times the bare one");
    }

    /// <summary>A round is long enough for the clock of the processor, which counts microseconds.</summary>
    private static Action Many(int calls, Func<double> one) => () =>
    {
        double sum = 0;
        for (int i = 0; i < calls; i++)
        {
            sum += one();
        }

        GC.KeepAlive(sum);
    };
}
