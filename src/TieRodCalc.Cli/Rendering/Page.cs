using System.Text;

namespace TieRodCalc.Cli.Rendering;

/// <summary>Plain text laid out for a terminal of 80 columns: headings, wrapped sentences and rows of label and value.</summary>
internal sealed class Page
{
    private const int Width = 79;
    private const char NoBreak = '\u00A0';
    private const int LabelWidth = 26;
    private const int Indent = 2;
    private readonly StringBuilder _text = new();

    /// <summary>A value that is not to be broken between two lines.</summary>
    public static string Whole(string value) => value.Replace(' ', NoBreak);

    public Page Heading(string text)
    {
        _text.Append('\n');
        return Wrap(string.Empty, text, Indent);
    }

    /// <summary>A sentence, wrapped; its later lines stand <paramref name="hang"/> further in.</summary>
    public Page Sentence(string text, int indent = Indent, int hang = 0) => Wrap(new string(' ', indent), text, indent + hang);

    /// <summary>A point of a list, wrapped.</summary>
    public Page Point(string text) => Wrap("  - ", text, Indent + 2);

    /// <summary>A label with its value; the value is wrapped beside the label.</summary>
    public Page Row(string label, string value) =>
        Wrap((new string(' ', Indent) + label).PadRight(LabelWidth - 1) + " ", value, LabelWidth);

    /// <summary>Lines of a drawing, as they are.</summary>
    public Page Drawing(IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            _text.Append(line.Length == 0 ? string.Empty : new string(' ', Indent)).Append(line).Append('\n');
        }

        return this;
    }

    public override string ToString() => _text.ToString().Replace(NoBreak, ' ');

    /// <summary>Short brackets, such as the other unit beside a length, are not broken between two lines.</summary>
    public static string WithWholeBrackets(string text)
    {
        const int LongestWhole = 32;
        StringBuilder whole = new(text);
        for (int open = text.IndexOf('('); open >= 0; open = text.IndexOf('(', open + 1))
        {
            int close = text.IndexOf(')', open);
            if (close > open && close - open <= LongestWhole)
            {
                whole.Replace(' ', NoBreak, open, close - open);
            }
        }

        return whole.ToString();
    }

    private Page Wrap(string start, string text, int hang)
    {
        StringBuilder line = new(start);
        bool empty = true;
        foreach (string word in WithWholeBrackets(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!empty && line.Length + 1 + word.Length > Width)
            {
                _text.Append(line).Append('\n');
                line.Clear().Append(' ', hang);
                empty = true;
            }

            line.Append(empty ? string.Empty : " ").Append(word);
            empty = false;
        }

        _text.Append(line.ToString().TrimEnd()).Append('\n');
        return this;
    }
}
