using System.Text;

namespace TieRodCalc.Cli.Commands;

/// <summary>A command line of bash taken apart at the cursor, its quotes removed; nothing in it is carried out.</summary>
/// <param name="Before">The words between the program's name and the one that is being written.</param>
/// <param name="Word">The word that is being written, up to the cursor.</param>
/// <param name="After">The words after it.</param>
/// <param name="Kept">How many characters of that word bash keeps, since a break or a quote stands behind them.</param>
/// <param name="OpenQuote">The quote that is open at the cursor, or a NUL.</param>
internal sealed record BashLine(string[] Before, string Word, string[] After, int Kept, char OpenQuote)
{
    /// <summary>Characters that mean something to bash outside of quotes.</summary>
    private const string Special = " \t\\'\"`$&|;<>()*?[]{}!#~";

    /// <summary>Characters that mean something to bash inside of double quotes.</summary>
    private const string SpecialWhenQuoted = "\\\"`$!";

    /// <summary>Takes a line apart.</summary>
    /// <param name="before">The line before the cursor, the program's name included.</param>
    /// <param name="after">The line after it.</param>
    /// <param name="breaks">The characters at which bash breaks a word further.</param>
    public static BashLine Of(string before, string after, string breaks)
    {
        List<string> words = [];
        StringBuilder word = new();
        bool within = false;
        char quote = '\0';
        int kept = 0;
        Take(before);
        string written = word.ToString();
        int count = words.Count;
        (int keptThen, char open) = (kept, quote);
        bool cursorWithin = within;
        Take(after);
        End();

        return new(
            [.. words.Take(count).Skip(1)],
            written,
            [.. words.Skip(cursorWithin ? count + 1 : count)],
            keptThen,
            open);

        void Take(string line)
        {
            for (int i = 0; i < line.Length; i++)
            {
                char character = line[i];
                if (quote == '\0' && IsBlank(character))
                {
                    End();
                    continue;
                }

                within = true;
                bool last = i + 1 == line.Length;
                if (character == '\\' && quote != '\'' && (quote == '\0' || (!last && SpecialWhenQuoted.Contains(line[i + 1]))))
                {
                    word.Append(last ? string.Empty : line[++i].ToString());
                }
                else if (character is '\'' or '"' && (quote == '\0' || quote == character))
                {
                    quote = quote == '\0' ? character : '\0';
                    kept = word.Length;
                }
                else
                {
                    word.Append(character);
                    kept = quote == '\0' && breaks.Contains(character) ? word.Length : kept;
                }
            }
        }

        void End()
        {
            if (within)
            {
                words.Add(word.ToString());
            }

            word.Clear();
            (within, quote, kept) = (false, '\0', 0);
        }
    }

    /// <summary>What bash is to put in for a word that begins with what is written: the rest from where it breaks, quoted.</summary>
    public string Quote(string word)
    {
        string rest = word[Math.Min(Kept, word.Length)..];
        StringBuilder quoted = new();
        foreach (char character in rest)
        {
            quoted.Append(OpenQuote switch
            {
                '\'' => character == '\'' ? "'\\''" : character.ToString(),
                '"' => SpecialWhenQuoted.Contains(character) ? $"\\{character}" : character.ToString(),
                _ => Special.Contains(character) ? $"\\{character}" : character.ToString(),
            });
        }

        return quoted.ToString();
    }

    private static bool IsBlank(char character) => character is ' ' or '\t' or '\n';
}
