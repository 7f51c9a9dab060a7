namespace TieRodCalc.Threads;

/// <summary>A tolerance class taken apart: grade and position of the pitch diameter and of the crest.</summary>
/// <param name="PitchGrade">Unified: the number of the class, 1 to 3. Metric: the grade of the pitch diameter.</param>
/// <param name="PitchPosition">Unified: <c>A</c> or <c>B</c>. Metric: the position of the pitch diameter.</param>
/// <param name="CrestGrade">As for the pitch diameter, of the major diameter outside and of the minor diameter inside.</param>
/// <param name="CrestPosition">As for the pitch diameter.</param>
internal readonly record struct ToleranceClass(int PitchGrade, char PitchPosition, int CrestGrade, char CrestPosition)
{
    /// <summary>A class as the standard writes it; null where it is none of the form, or of the other gender.</summary>
    public static ToleranceClass? Read(ThreadForm form, ThreadGender gender, string text)
    {
        string positions = (form, gender) switch
        {
            (ThreadForm.Unified, ThreadGender.External) => "A",
            (ThreadForm.Unified, _) => "B",
            (_, ThreadGender.External) => "efgh",
            _ => "GH",
        };
        bool twice = form == ThreadForm.Metric && text.Length == 4;
        if (!(twice || text.Length == 2) || !Fits(text, 0) || (twice && !Fits(text, 2)))
        {
            return null;
        }

        int crest = twice ? 2 : 0;
        return new(text[0] - '0', text[1], text[crest] - '0', text[crest + 1]);

        bool Fits(string written, int at) =>
            char.IsAsciiDigit(written[at]) && positions.Contains(written[at + 1], StringComparison.Ordinal);
    }

    /// <summary>The class that is taken where none is said: 2A and 2B (ASME B1.1), 6g and 6H (ISO 965-1).</summary>
    public static string Usual(ThreadForm form, ThreadGender gender) => (form, gender) switch
    {
        (ThreadForm.Unified, ThreadGender.External) => "2A",
        (ThreadForm.Unified, _) => "2B",
        (_, ThreadGender.External) => "6g",
        _ => "6H",
    };
}
