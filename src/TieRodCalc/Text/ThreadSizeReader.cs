using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>Form, diameter and pitch as a designation begins with them.</summary>
/// <param name="Size">The size.</param>
/// <param name="ThreadsPerInch">Threads per inch as written; 0 for a metric thread.</param>
/// <param name="CoarsePitchAssumed">Whether the pitch was not written.</param>
/// <param name="Text">The size as it was written, in one spelling.</param>
internal readonly record struct WrittenThreadSize(ThreadSize Size, double ThreadsPerInch, bool CoarsePitchAssumed, string Text);

/// <summary>Reads diameter and pitch of a thread.</summary>
internal static class ThreadSizeReader
{
    /// <summary>Sixty-fourths of an inch have six decimals; more would only be noise.</summary>
    public const int MostDecimals = 6;

    private const double LeastDiameterMm = 1;
    private const double MostDiameterMm = 150;

    /// <summary>The finest pitch of ISO 261.</summary>
    private const double LeastPitchMm = 0.2;

    /// <summary>A pitch of a third of the diameter: coarser than any screw thread of either standard.</summary>
    private const double MostPitchToDiameter = 1 / 3d;

    private const string Expected =
        "a thread as M and its diameter in millimeters (M18x1.5) or its diameter in inches and threads per inch (5/8-18 UNF)";

    public static Parsed<WrittenThreadSize> Read(TextCursor cursor)
    {
        if (cursor.Current.Is("#"))
        {
            return new(cursor.FaultToEnd("number sizes are not read: write the diameter in inches, as in 0.190-32 for No. 10"));
        }

        return cursor.Current.Is("M") && cursor.Ahead(1).Kind == TokenKind.Number ? Metric(cursor) : Unified(cursor);
    }

    private static Parsed<WrittenThreadSize> Metric(TextCursor cursor)
    {
        cursor.Take();
        Parsed<WrittenNumber> diameter = NumberReader.ReadDecimal(cursor, "the diameter in millimeters").Then(CheckDiameter);
        if (diameter.Fault is { } fault)
        {
            return new(fault);
        }

        return cursor.TakeIf("x") || cursor.TakeIf("×")
            ? NumberReader.ReadDecimal(cursor, "the pitch in millimeters, as in M18x1.5").Then(pitch => MetricOf(diameter.Value, pitch))
            : Coarse(diameter.Value);
    }

    private static Parsed<WrittenThreadSize> MetricOf(WrittenNumber diameter, WrittenNumber pitch)
    {
        if ((CheckDecimals(pitch) ?? CheckPitch(pitch, pitch.Value, diameter.Value)) is { } fault)
        {
            return new(fault);
        }

        var size = ThreadSize.Metric(Length.FromMillimeters(diameter.Value), Length.FromMillimeters(pitch.Value));
        return new(new WrittenThreadSize(size, 0, false, $"M{diameter.Text}x{pitch.Text}"));
    }

    private static Parsed<WrittenThreadSize> Coarse(WrittenNumber diameter)
    {
        if (MetricSeries.CoarsePitch(diameter.Value) is not { } pitch)
        {
            return new(diameter.Fault($"ISO 261 has no coarse pitch for M{diameter.Text}: write the pitch, as in M18x1.5"));
        }

        var size = ThreadSize.Metric(Length.FromMillimeters(diameter.Value), Length.FromMillimeters(pitch));
        return new(new WrittenThreadSize(size, 0, true, $"M{diameter.Text}"));
    }

    private static Parsed<WrittenThreadSize> Unified(TextCursor cursor)
    {
        Parsed<WrittenNumber> diameter = NumberReader.Read(cursor, Expected);
        if (diameter.Fault is { } fault)
        {
            return new(fault);
        }

        if (!cursor.Current.Is("-"))
        {
            string message = $"expected - and the threads per inch, as in {diameter.Value.Text}-18, found {cursor.Current.Shown}";
            return new(TextCursor.FaultAt(cursor.Current, message));
        }

        cursor.Take();
        return NumberReader.ReadDecimal(cursor, $"the threads per inch, as in {diameter.Value.Text}-18").Then(
            threads => cursor.Current.Kind == TokenKind.Number && cursor.Ahead(1).Is("/")
                ? new(TextCursor.FaultAt(cursor.Current, "half a thread per inch is written as a decimal, 4.5"))
                : UnifiedOf(diameter.Value, threads));
    }

    private static Parsed<WrittenThreadSize> UnifiedOf(WrittenNumber diameter, WrittenNumber threads)
    {
        string text = $"{diameter.Text}-{threads.Text}";
        if (IsInteger(diameter) && StandardThreads.NumberSizeInches(diameter.Value, threads.Value) is { } inches)
        {
            string better = $"{ThreadSizeFormat.DecimalInches(inches)}-{threads.Text}";
            return new(new ParseFault(
                diameter.Offset, threads.End - diameter.Offset, $"{text} is a number size: write its diameter in inches, {better}"));
        }

        double diameterMm = Millimeters.FromInches(diameter.Value);
        ParseFault? fault = CheckDiameter(diameter, diameterMm)
            ?? CheckThreads(threads)
            ?? CheckPitch(threads, Millimeters.Inch / threads.Value, diameterMm);
        return fault is null
            ? new(new WrittenThreadSize(ThreadSize.Unified(Length.FromMillimeters(diameterMm), threads.Value), threads.Value, false, text))
            : new(fault);
    }

    private static bool IsInteger(WrittenNumber number) => !number.IsFraction && !number.Text.Contains('.');

    private static ParseFault? CheckThreads(WrittenNumber threads) => threads.Value > 0 && threads.Value * 2 % 1 == 0
        ? null
        : threads.Fault("threads per inch are a whole number or a half, as in 18 or 4.5");

    private static Parsed<WrittenNumber> CheckDiameter(WrittenNumber diameter) =>
        CheckDiameter(diameter, diameter.Value) is { } fault ? new(fault) : new(diameter);

    private static ParseFault? CheckDiameter(WrittenNumber written, double mm) => mm is >= LeastDiameterMm and <= MostDiameterMm
        ? CheckDecimals(written)
        : written.Fault("the diameter is out of range: threads from 1 mm to 150 mm (0.040 in to 5.9 in) are read");

    private static ParseFault? CheckPitch(WrittenNumber written, double mm, double diameterMm) =>
        mm >= LeastPitchMm && mm <= diameterMm * MostPitchToDiameter
            ? null
            : written.Fault("the pitch is out of range: from 0.2 mm to a third of the diameter is read");

    private static ParseFault? CheckDecimals(WrittenNumber number) => number.Exact.Scale <= MostDecimals
        ? null
        : number.Fault($"a thread's dimensions are read with at most {MostDecimals} decimals");
}
