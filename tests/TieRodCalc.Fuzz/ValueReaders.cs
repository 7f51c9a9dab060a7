using TieRodCalc.Text;

namespace TieRodCalc.Fuzz;

/// <summary>The readers of single values: a finite value, or a fault that lies inside the text.</summary>
internal static class ValueReaders
{
    /// <summary>The three readers of lengths.</summary>
    public static bool Length(string text) =>
        Read(text, LengthText.Parse) | Read(text, LengthText.ParseExact) | Read(text, LengthText.ParseSigned);

    /// <summary>All others but that of threads.</summary>
    public static bool Others(string text) =>
        Read(text, ValueText.ParseStress) | Read(text, ValueText.ParseForce) | Read(text, ValueText.ParseAngle)
        | Read(text, ValueText.ParseMass) | Read(text, ValueText.ParsePrice) | Read(text, ValueText.ParseOutside)
        | Read(text, ValueText.ParseEngagement) | Read(text, ValueText.ParseToe);

    /// <summary>Reads a text with one of them.</summary>
    public static bool Read<T>(string text, Func<string, Parsed<T>> read)
    {
        Parsed<T> parsed = read(text);
        if (parsed.Fault is not { } fault)
        {
            Finite.Check(parsed.Value, typeof(T).Name);
            return true;
        }

        Finding.Unless(
            fault is { Offset: >= 0, Length: >= 0 } && fault.Offset <= text.Length && fault.Length <= text.Length - fault.Offset,
            $"the fault at {fault.Offset}, {fault.Length} long, is outside of the text of {text.Length}: {fault.Message}");
        Finding.Unless(fault.Message.Length > 0 && !fault.Message.Any(char.IsControl), $"the message cannot be shown: {fault.Message}");
        return false;
    }
}
