using TieRodCalc.Text;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The valid name that was most likely meant, as a sentence at the end of a message.</summary>
internal static class Suggestion
{
    /// <summary>The sentence for the nearest of some names; empty where none is near.</summary>
    public static string Of(string written, IEnumerable<string> names) => Sentence(Nearest.Of(written, names));

    /// <summary>The sentence for a name; empty where there is none.</summary>
    public static string Sentence(string? nearest) => nearest is null ? string.Empty : $" Did you mean '{nearest}'?";
}
