using System.Text;

namespace TieRodCalc.Cli.Dialog;

/// <summary>Short names made of what people write.</summary>
internal static class Slug
{
    /// <summary>More would be a long name for a file.</summary>
    private const int Longest = 40;

    /// <summary>Small letters and digits, and hyphens in place of everything between them; a digit's point may stay.</summary>
    public static string Of(string text, char keep = '-')
    {
        StringBuilder slug = new();
        foreach (char character in text)
        {
            bool kept = char.IsLetterOrDigit(character) || (character == keep && slug.Length > 0);
            if (kept)
            {
                slug.Append(char.ToLowerInvariant(character));
            }
            else if (slug.Length > 0 && slug[^1] != '-')
            {
                slug.Append('-');
            }
        }

        string whole = slug.ToString().Trim('-');
        if (whole.Length <= Longest)
        {
            return whole;
        }

        int end = whole.LastIndexOf('-', Longest);
        return whole[..(end > 0 ? end : Longest)];
    }
}
