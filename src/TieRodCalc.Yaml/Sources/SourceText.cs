namespace TieRodCalc.Yaml.Sources;

/// <summary>The text of one file, with its lines.</summary>
/// <remarks>
/// Lines end where the YAML parser ends them (CR, LF, CR LF, NEL, LS, PS), and columns count UTF-16 code units, so that a
/// column always indexes the line that is shown.
/// </remarks>
/// <param name="name">The file as it was named.</param>
/// <param name="text">Its text, without a byte order mark.</param>
internal sealed class SourceText(string name, string text)
{
    private static readonly string LineBreaks = "\r\n\u0085\u2028\u2029";

    private List<int>? _lineStarts;
    private int _shownLine = -1;
    private string _shownText = string.Empty;

    /// <summary>The file as it was named.</summary>
    public string Name => name;

    /// <summary>The text.</summary>
    public string Text => text;

    /// <summary>The line, from 1, that an offset lies on.</summary>
    public int LineOf(int offset)
    {
        int found = (_lineStarts ??= FindLines()).BinarySearch(offset);
        return found >= 0 ? found + 1 : ~found;
    }

    /// <summary>A problem at a stretch of the text; a stretch over several lines is marked on its first.</summary>
    public Problem At(TextSpan span, string message, string? suggestion = null)
    {
        if (span.Start < 0 || text.Length == 0)
        {
            return new Problem(name, 0, 0, 0, message, null, suggestion);
        }

        int start = span.Start < text.Length ? span.Start : EndOfContent();
        int line = LineOf(start);
        int lineStart = _lineStarts![line - 1];
        string shown = Line(line);
        int length = Math.Max(1, Math.Min(span.End, lineStart + shown.Length) - start);
        return new Problem(name, line, start - lineStart + 1, length, message, shown, suggestion);
    }

    /// <summary>The place behind the last character that is not blank, where something is missing at the end of a file.</summary>
    private int EndOfContent() => text.AsSpan().TrimEnd().Length;

    private string Line(int line)
    {
        if (line != _shownLine)
        {
            ReadOnlySpan<char> rest = text.AsSpan(_lineStarts![line - 1]);
            int end = rest.IndexOfAny(LineBreaks);
            _shownText = (end < 0 ? rest : rest[..end]).ToString();
            _shownLine = line;
        }

        return _shownText;
    }

    private List<int> FindLines()
    {
        List<int> starts = [0];
        int at = 0;
        while (text.AsSpan(at).IndexOfAny(LineBreaks) is var found and >= 0)
        {
            at += found;
            at += text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n' ? 2 : 1;
            starts.Add(at);
        }

        return starts;
    }
}
