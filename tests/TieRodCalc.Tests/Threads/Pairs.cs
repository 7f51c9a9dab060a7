using TieRodCalc.Text;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Threads;

/// <summary>Threads and pairs of threads as a designation says them.</summary>
internal static class Pairs
{
    /// <summary>A thread.</summary>
    public static ThreadDesignation Thread(string text) => ThreadText.Parse(text).Value;

    /// <summary>A male and a female thread.</summary>
    public static ThreadedPair Pair(string male, string female) => ThreadedPair.Of(Thread(male), Thread(female))!;

    /// <summary>The member of a thread.</summary>
    public static ThreadMember Member(string text, ThreadGender gender) => Thread(text).Member(gender, out _)!.Value;

    /// <summary>The areas of a pair at limits that are not rounded.</summary>
    public static PairStrength Strength(string male, string female)
    {
        ThreadMember external = Member(male, ThreadGender.External);
        return PairStrength.Of(external, external.Exact!.Value, Member(female, ThreadGender.Internal).Exact!.Value);
    }
}
