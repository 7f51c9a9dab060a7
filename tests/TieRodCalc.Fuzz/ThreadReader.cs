using TieRodCalc.Text;
using TieRodCalc.Threads;

namespace TieRodCalc.Fuzz;

/// <summary>The reader of threads, and what the command tells of those that it has read.</summary>
internal static class ThreadReader
{
    /// <summary>Reads a designation as either gender and as none.</summary>
    public static bool Read(string text)
    {
        _ = ValueReaders.Read(text, male => ThreadText.Parse(male, ThreadGender.External));
        _ = ValueReaders.Read(text, female => ThreadText.Parse(female, ThreadGender.Internal));
        if (!ValueReaders.Read(text, any => ThreadText.Parse(any)))
        {
            return false;
        }

        ThreadDesignation thread = ThreadText.Parse(text).Value;
        string written = ThreadText.Format(thread);
        Parsed<ThreadDesignation> again = ThreadText.Parse(written);
        Finding.Unless(
            again.Fault is null && ThreadText.Format(again.Value) == written, $"{written} does not read as what it was written from");
        InProcess.Run([], "thread", written, "--json");
        InProcess.Run([], "thread", written);
        return true;
    }
}
