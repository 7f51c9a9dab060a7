using TieRodCalc.Text;
using TieRodCalc.Threads;

namespace TieRodCalc.Fuzz;

/// <summary>
/// A reader with a fault of its own, to see that the fuzzer finds one: it reads all threads but a left-hand one whose pitch is not said
/// and whose class is one of two grades, such as M18-5g6g LH. No first input is one; the branches of the reader of threads lead there.
/// </summary>
internal static class PlantedFault
{
    private static readonly int s_twoGrades = "5g6g".Length;

    /// <summary>Reads a designation.</summary>
    public static bool Read(string text)
    {
        if (ThreadText.Parse(text) is not { Fault: null, Value: var thread })
        {
            return false;
        }

        Finding.Unless(
            thread is not { Hand: Hand.Left, CoarsePitchAssumed: true } || thread.ToleranceClass?.Length != s_twoGrades,
            "the planted fault was found");
        return true;
    }
}
