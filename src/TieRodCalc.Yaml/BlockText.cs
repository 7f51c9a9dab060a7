using System.Globalization;
using System.Text;
using TieRodCalc.Yaml.Binding;

namespace TieRodCalc.Yaml;

/// <summary>The text of a part or job file in block style, as a person would write it and edit it later: one key a line.</summary>
/// <remarks>
/// Values are written as they are given, in quotes where YAML would read something else; what they mean is the reader's to
/// say. <c>new BlockText().Open("sleeves").Item().Field("length", "8 in")</c> is a list with one item.
/// </remarks>
public sealed class BlockText
{
    private const int Indent = 2;

    private readonly StringBuilder _text = new();
    private int _depth;
    private int _line;
    private bool _beginsItem;

    /// <summary>Where the value that was written last begins: line and column, both counted from 1, its quotes included.</summary>
    public (int Line, int Column) LastValue { get; private set; }

    /// <summary>A line for who reads the file.</summary>
    /// <exception cref="ArgumentNullException">There is no text.</exception>
    public BlockText Comment(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Line($"# {text}");
    }

    /// <summary>A key with its value.</summary>
    /// <param name="key">The key, one of those that the reader knows.</param>
    /// <param name="value">The value, on one line.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public BlockText Field(string key, string value)
    {
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(value);
        Line($"{key}: {Scalars.Written(value)}");
        LastValue = (_line, (_depth * Indent) + key.Length + 3);
        return this;
    }

    /// <summary>An item of a list that is a single value.</summary>
    /// <param name="value">The value, on one line.</param>
    /// <exception cref="ArgumentNullException">There is no value.</exception>
    public BlockText Entry(string value)
    {
        ArgumentNullException.ThrowIfNull(value);
        Line($"- {Scalars.Written(value)}");
        LastValue = (_line, (_depth * Indent) + 3);
        return this;
    }

    /// <summary>A key whose value, a map or a list, follows until it is closed.</summary>
    /// <exception cref="ArgumentNullException">There is no key.</exception>
    public BlockText Open(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        Line($"{key}:");
        _depth++;
        return this;
    }

    /// <summary>An item of a list whose keys follow until it is closed.</summary>
    public BlockText Item()
    {
        _depth++;
        _beginsItem = true;
        return this;
    }

    /// <summary>Ends what was opened last.</summary>
    /// <exception cref="InvalidOperationException">Nothing is open.</exception>
    public BlockText Close()
    {
        if (_depth == 0)
        {
            throw new InvalidOperationException("Nothing is open.");
        }

        _depth--;
        _beginsItem = false;
        return this;
    }

    /// <summary>The text, each line ended.</summary>
    public override string ToString() => _text.ToString();

    private BlockText Line(string line)
    {
        int indent = (_depth * Indent) - (_beginsItem ? Indent : 0);
        string dash = _beginsItem ? "- " : string.Empty;
        _beginsItem = false;
        _line++;
        _text.Append(' ', indent).Append(CultureInfo.InvariantCulture, $"{dash}{line}\n");
        return this;
    }
}
