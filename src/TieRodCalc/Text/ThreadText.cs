using TieRodCalc.Threads;

namespace TieRodCalc.Text;

/// <summary>Thread designations as the standards write them.</summary>
public static class ThreadText
{
    /// <summary>A designation; where a gender is given, a class of the other gender is a fault.</summary>
    public static Parsed<ThreadDesignation> Parse(string text, ThreadGender? gender = null) => throw new NotImplementedException();

    /// <summary>The designation in the standard's spelling, LH added to a left-hand thread.</summary>
    public static string Format(ThreadDesignation thread) => throw new NotImplementedException();
}
