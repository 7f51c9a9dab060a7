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
        string female = mismatch.Female switch
        {
            FemalePart.JamNut => $"nut {mismatch.FemaleId}",
            FemalePart.Socket => $"the socket of {mismatch.FemaleId}",
            _ => $"sleeve {mismatch.FemaleId}",
        };
        string differ = $"{Names.Of(mismatch.Difference)} {(BitOperations.IsPow2((int)mismatch.Difference) ? "differs" : "differ")}";
        string text = $"{mismatch.MaleId} ({ThreadText.Format(mismatch.MaleThread)}) does not go into {female} "
            + $"({ThreadText.Format(mismatch.FemaleThread)}): {differ}";
        return mismatch.Fit?.Outcome switch
        {
            FitOutcome.GoesInLoose =>
                $"{text}; it would go all the way in loose and hold next to nothing, so never use the two together",
            FitOutcome.StartsAndBinds => $"{text}; it would start and then bind, so do not force it",
            _ => text,
        };
    }
}
