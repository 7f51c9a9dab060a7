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
        return mismatch.Fit?.Outcome switch
        {
            FitOutcome.GoesInLoose =>
                $"{text}; it would go all the way in loose and hold next to nothing, so never use the two together",
            FitOutcome.StartsAndBinds => $"{text}; it would start and then bind, so do not force it",
            _ => text,
        };
    }

    /// <summary>The sentence for an end and anything with an internal thread.</summary>
    public static string Of(
        string maleId, ThreadDesignation male, string female, ThreadDesignation femaleThread, ThreadDifference difference)
    {
        string differ = $"{Names.Of(difference)} {(BitOperations.IsPow2((int)difference) ? "differs" : "differ")}";
        return $"{maleId} ({ThreadText.Format(male)}) does not go into {female} ({ThreadText.Format(femaleThread)}): {differ}";
    }
}
