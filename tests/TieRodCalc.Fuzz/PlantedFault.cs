using TieRodCalc.Text;

namespace TieRodCalc.Fuzz;

/// <summary>
/// A reader with a fault of its own, to see that the fuzzer finds one: it takes it for granted that a dimension can be read where its
/// nominal value and its tolerance can, and has forgotten that the tolerance may be the larger one.
/// </summary>
internal static class PlantedFault
{
    /// <summary>Reads a dimension.</summary>
    public static bool Read(string text)
    {
        int sign = text.IndexOf('\u00B1', StringComparison.Ordinal);
        bool halves = sign >= 0
            && LengthText.ParseExact(text[..sign]).Fault is null && LengthText.ParseExact(text[(sign + 1)..]).Fault is null;
        return halves ? LengthText.Parse(text).Value.Nominal.Millimeters > 0 : LengthText.Parse(text).Fault is null;
    }
}
