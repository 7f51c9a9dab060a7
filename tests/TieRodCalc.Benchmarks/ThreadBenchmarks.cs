using BenchmarkDotNet.Attributes;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Benchmarks;

/// <summary>
/// All limits of size of a pair of threads and the engagement that its strengths ask for: the kernel beside the bare formulas in
/// doubles, written out for 5/8-18 UNF-2A in 2B alone, without classes, series, tables or what bounds them.
/// </summary>
[MemoryDiagnoser]
public class ThreadBenchmarks
{
    private const double Male = 827;
    private const double Female = 310;
    private const double Width = 1.6;

    private readonly ThreadMember _unifiedMale = Member(Unified(), ThreadGender.External);
    private readonly ThreadMember _unifiedFemale = Member(Unified(), ThreadGender.Internal);
    private readonly ThreadMember _metricMale = Member(Metric(), ThreadGender.External);
    private readonly ThreadMember _metricFemale = Member(Metric(), ThreadGender.Internal);
    private readonly double _diameter = 0.625;
    private readonly double _threads = 18;

    /// <summary>The bare formulas.</summary>
    [Benchmark(Baseline = true)]
    public double BareFormulas()
    {
        double D = _diameter;
        double n = _threads;
        double P = 1 / n;
        double cube = Math.Cbrt(P);
        double Td2 = 0.0015 * Math.Cbrt(D) + 0.0015 * Math.Sqrt(D) + 0.015 * cube * cube;
        double es = 0.3 * Td2;
        double Ds_max = D - es;
        double Ds_min = Ds_max - 0.06 * cube * cube;
        double E = D - 0.649519052838329 * P;
        double Es_max = E - es;
        double Es_min = Es_max - Td2;
        double En_max = E + 1.3 * Td2;
        double K = D - 1.08253175473055 * P;
        double Ks_max = K - es;
        double Kn_max = K + 0.25 * P - 0.4 * P * P;
        double At = Math.PI / 4 * (D - 0.9743 * P) * (D - 0.9743 * P);
        double As = Math.PI * n * Kn_max * (0.5 * P + 0.577350269189626 * (Es_min - Kn_max));
        double An = Math.PI * n * Ds_min * (0.5 * P + 0.577350269189626 * (Ds_min - En_max));
        double J = As * Male / (An * Female);
        double Rs = 1 / J;
        double C1 = -Width * Width + 3.8 * Width - 2.61;
        double C3 = 0.728 + Rs * (1.769 + Rs * (-2.896 + Rs * 1.296));
        double required = 2 * At / As * Math.Max(1 / (C1 * 0.897), J / (C1 * C3));
        return required + Ds_max + Es_max + Ks_max;
    }

    /// <summary>The kernel on a Unified pair.</summary>
    [Benchmark]
    public double UnifiedPair() => Required(_unifiedMale, _unifiedFemale);

    /// <summary>The kernel on a metric pair: tables in place of formulas.</summary>
    [Benchmark]
    public double MetricPair() => Required(_metricMale, _metricFemale);

    /// <summary>Limits as the tables print them, both members.</summary>
    [Benchmark]
    public double PrintedLimits() => _unifiedMale.Printed!.Value.PitchLeast + _unifiedFemale.Printed!.Value.PitchMost;

    private static double Required(in ThreadMember male, in ThreadMember female)
    {
        SizeLimits external = male.Exact!.Value;
        SizeLimits @internal = female.Exact!.Value;
        var strength = PairStrength.Of(male, external, @internal);
        double ratio = strength.Ratio(Male, Female);
        return strength.RequiredEngagement(ratio, StripFactors.Of(Width, slit: false, ratio));
    }

    private static ThreadMember Member(ThreadSize size, ThreadGender gender) =>
        new ThreadDesignation(size, Hand.Right).Member(gender, out _)!.Value;

    private static ThreadSize Unified() => ThreadSize.Unified(Length.FromInches(0.625), 18);

    private static ThreadSize Metric() => ThreadSize.Metric(Length.FromMillimeters(18), Length.FromMillimeters(1.5));
}
