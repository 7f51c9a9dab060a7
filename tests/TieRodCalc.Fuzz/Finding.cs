namespace TieRodCalc.Fuzz;

/// <summary>Something that must hold of every input and does not: to the fuzzer, a crash.</summary>
internal sealed class Finding(string message) : Exception(message)
{
    /// <summary>Ends the run of this input where a condition does not hold.</summary>
    public static void Unless(bool holds, string message)
    {
        if (!holds)
        {
            throw new Finding(message);
        }
    }
}
