using TieRodCalc.Threads;

namespace TieRodCalc.Text;

/// <summary>Reads what follows the size of a thread: series, class and hand, each with a hyphen or a space before it.</summary>
internal static class ThreadTailReader
{
    public static Parsed<ThreadDesignation> Read(TextCursor cursor, WrittenThreadSize size, ThreadGender? gender)
    {
        Parsed<UnifiedSeries?> series = ReadSeries(cursor, size);
        if (series.Fault is { } fault)
        {
            return new(fault);
        }

        return ThreadClassReader.Read(cursor, size.Size.Form, gender).Then(tolerance => ReadHand(cursor, size).Then(
            hand => cursor.AtEnd(
                new ThreadDesignation(size.Size, hand)
                {
                    Series = series.Value,
                    ToleranceClass = tolerance,
                    CoarsePitchAssumed = size.CoarsePitchAssumed,
                },
                "the hand")));
    }

    /// <summary>The token behind the hyphen that may stand between the parts of a designation.</summary>
    public static Token Part(TextCursor cursor) => cursor.Current.Is("-") ? cursor.Ahead(1) : cursor.Current;

    public static void TakeHyphen(TextCursor cursor) => cursor.TakeIf("-");

    private static Parsed<UnifiedSeries?> ReadSeries(TextCursor cursor, WrittenThreadSize size)
    {
        Token token = Part(cursor);
        if (size.Size.Form != ThreadForm.Unified || token.Kind != TokenKind.Word || IsHand(token))
        {
            return new((UnifiedSeries?)null);
        }

        if (SeriesNames.Find(token) is not { } series)
        {
            return new(TextCursor.FaultAt(token, $"expected a series ({SeriesNames.All}), a class such as 2A or LH, found {token.Shown}"));
        }

        if (Contradiction(size, series) is { } message)
        {
            return new(TextCursor.FaultAt(token, message));
        }

        TakeHyphen(cursor);
        cursor.Take();
        return new((UnifiedSeries?)series);
    }

    /// <summary>UNC, UNF and UNEF have one pitch for a diameter; UN and UNS may be anything.</summary>
    private static string? Contradiction(WrittenThreadSize size, UnifiedSeries series)
    {
        double diameter = size.Size.DiameterMm;
        if (series is UnifiedSeries.Un or UnifiedSeries.Uns || StandardThreads.ThreadsPerInch(diameter, series) == size.ThreadsPerInch)
        {
            return null;
        }

        string name = SeriesNames.NameOf(series);
        string right = StandardThreads.SeriesOf(diameter, size.ThreadsPerInch) is { } other
            ? $"it is {SeriesNames.NameOf(other)}"
            : "it is UN or UNS";
        string has = StandardThreads.ThreadsPerInch(diameter, series) is { } threads
            ? $"{name} has {ThreadSizeFormat.Trimmed(threads)} threads per inch there"
            : $"{name} does not have that diameter";
        return $"{size.Text} is not {name}, {right}; {has}";
    }

    private static Parsed<Hand> ReadHand(TextCursor cursor, WrittenThreadSize size)
    {
        Token token = Part(cursor);
        if (IsHand(token))
        {
            TakeHyphen(cursor);
            cursor.Take();
            return new(token.Is("LH") ? Hand.Left : Hand.Right);
        }

        if (token.Kind == TokenKind.End && token != cursor.Current)
        {
            return new(TextCursor.FaultAt(token, "expected a class or LH behind the hyphen, found the end"));
        }

        return token.Kind == TokenKind.End ? new(Hand.Right) : new(TextCursor.FaultAt(token, Unexpected(token, size)));
    }

    private static string Unexpected(Token token, WrittenThreadSize size)
    {
        string expected = size.Size.Form == ThreadForm.Metric
            ? size.CoarsePitchAssumed ? "x and the pitch, a class such as 6g, LH or RH" : "a class such as 6g, LH or RH"
            : $"a series ({SeriesNames.All}), a class such as 2A, LH or RH";
        return $"expected the end or {expected}, in this order, found {token.Shown}";
    }

    private static bool IsHand(Token token) => token.Is("LH") || token.Is("RH");
}
