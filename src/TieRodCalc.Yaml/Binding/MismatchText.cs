using System.Numerics;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Threads;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Says why two threads do not go together.</summary>
internal static class MismatchText
{
    /// <summary>The sentence for an end and its sleeve or nut.</summary>
    public static string Of(ThreadMismatch mismatch)
    {
        string female = mismatch.Female == FemalePart.JamNut ? "nut" : "sleeve";
        string text = Of(
            mismatch.MaleId, mismatch.MaleThread, $"{female} {mismatch.FemaleId}", mismatch.FemaleThread, mismatch.Difference);
        return mismatch.MayStart
            ? $"{text}; the two would start in one another and then bind or hold next to nothing, so do not force them"
            : text;
    }

    /// <summary>The sentence for an end and anything with an internal thread.</summary>
    public static string Of(
        string maleId, ThreadDesignation male, string female, ThreadDesignation femaleThread, ThreadDifference difference)
    {
        string differ = $"{Names.Of(difference)} {(BitOperations.IsPow2((int)difference) ? "differs" : "differ")}";
        return $"{maleId} ({ThreadText.Format(male)}) does not go into {female} ({ThreadText.Format(femaleThread)}): {differ}";
    }
}
