namespace TieRodCalc.Cli.Rendering;

/// <summary>Characters on a grid; what lies outside it is left out.</summary>
internal sealed class SketchGrid
{
    public const char Ball = '●';
    public const char Shank = '═';
    public const char Thread = '╪';
    public const char Engaged = '█';
    public const char Inserted = '░';
    public const char Scribe = '┃';
    public const char Line = '─';
    public const char Stop = '┼';
    public const char Wall = '│';

    /// <summary>What each sign becomes where a terminal has ASCII alone.</summary>
    private const string Signs = "●═╪█░┃─┼┌┐└┘│┬┴";
    private const string Ascii = "O=+#:!-|....|..";

    private readonly char[][] _rows;

    public SketchGrid(int columns, int rows) =>
        _rows = [.. Enumerable.Range(0, rows).Select(_ => Enumerable.Repeat(' ', columns).ToArray())];

    /// <summary>What the signs mean, for a line below a drawing.</summary>
    public static string Legend { get; } = $"{Shank} shank   {Thread} thread   {Engaged} engaged   {Inserted} inserted, not engaged   / solid";

    /// <summary>The text in ASCII alone as far as drawings go.</summary>
    public static string InAscii(string text) =>
        string.Concat(text.Select(sign => Signs.IndexOf(sign) is >= 0 and var index ? Ascii[index] : sign));

    public void Put(int row, int column, char sign)
    {
        if (row >= 0 && row < _rows.Length && column >= 0 && column < _rows[row].Length)
        {
            _rows[row][column] = sign;
        }
    }

    /// <summary>A row from one column to another, whichever is first.</summary>
    public void Row(int row, int from, int to, char sign)
    {
        for (int column = Math.Min(from, to); column <= Math.Max(from, to); column++)
        {
            Put(row, column, sign);
        }
    }

    /// <summary>A column from one row down to another.</summary>
    public void Column(int column, int from, int to, char sign)
    {
        for (int row = from; row <= to; row++)
        {
            Put(row, column, sign);
        }
    }

    /// <summary>A box around what it encloses; a line of another box that it meets is joined.</summary>
    public void Box(int one, int other, int top, int bottom)
    {
        (int left, int right) = (Math.Min(one, other), Math.Max(one, other));
        if (right - left > 1)
        {
            Row(top, left + 1, right - 1, '─');
            Row(bottom, left + 1, right - 1, '─');
        }

        foreach ((int row, int column, char sign) in ((int, int, char)[])
            [(top, left, '┌'), (top, right, '┐'), (bottom, left, '└'), (bottom, right, '┘')])
        {
            bool joined = column >= 0 && column < _rows[row].Length && "┌┐└┘".Contains(_rows[row][column]);
            Put(row, column, joined ? (row == top ? '┬' : '┴') : sign);
        }

        Column(left, top + 1, bottom - 1, Wall);
        Column(right, top + 1, bottom - 1, Wall);
    }

    /// <summary>The rows without blanks at their ends.</summary>
    public IEnumerable<string> Lines() => _rows.Select(row => new string(row).TrimEnd());
}
