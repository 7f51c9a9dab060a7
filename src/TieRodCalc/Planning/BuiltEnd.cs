using TieRodCalc.Parts;
using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>What the readings of one end say, in millimeters; null what they do not say.</summary>
/// <param name="Showing">Thread outside the face.</param>
/// <param name="Cut">What was cut off.</param>
internal readonly record struct BuiltEnd(double? Showing, double? Cut)
{
    /// <summary>How far the tip is past the face, where both are known.</summary>
    public double? Insertion(double thread) => thread - Cut - Showing;

    /// <summary>
    /// The readings of one end put together: <c>s = (t - x) - showing</c>. What is typed comes first, then what follows from a depth
    /// reading; an end that must not be cut was not.
    /// </summary>
    public static BuiltEnd Of(ThreadedEnd end, EndReadings readings)
    {
        double thread = end.ThreadLength.Mm;
        double? depth = readings.Depth?.Mm;
        double? cut = readings.Cut?.Mm;
        double? showing = readings.Showing?.Mm;
        if (cut is null && depth is { } read && showing is { } seen)
        {
            cut = Math.Max(0, thread - seen - read);
        }

        cut ??= end.MaxCut.Mm <= Millimeters.Negligible ? 0 : null;
        return new(showing ?? thread - cut - depth, cut);
    }

    /// <summary>
    /// By how much thread showing, cut and depth, all three known, miss the thread that the end has, beyond what is stated; null where
    /// they go together. Unsaid, a reading is good to half a mark and a cut to one mark.
    /// </summary>
    public static Contradiction? Contradicts(ThreadedEnd end, RodSide side, EndReadings readings, double mark)
    {
        double thread = end.ThreadLength.Mm;
        bool uncut = readings.Cut is null && end.MaxCut.Mm <= Millimeters.Negligible;
        double cut = readings.Cut?.Mm ?? 0;
        double stated = end.ThreadLength.PlusMinusMm + Stated(readings.Showing) + Stated(readings.Cut) + Stated(readings.Depth);
        double allowed = end.ThreadLength.PlusMinusMm + Allowed(readings.Showing, mark / 2) + Allowed(readings.Depth, mark / 2)
            + Allowed(readings.Cut, mark);
        if (readings is { Showing: { } seen, Depth: { } depth })
        {
            // Without a typed cut the depth says it; it cannot be less than nothing.
            double apart = seen.Mm + depth.Mm + cut - thread;
            double missed = readings.Cut is null && !uncut ? Math.Max(0, apart) : Math.Abs(apart);
            return missed > allowed + Millimeters.Negligible ? Of(ContradictionKind.End, missed) : null;
        }

        double over = (readings.Showing?.Mm ?? readings.Depth?.Mm ?? 0) + cut - thread;
        return over > allowed + Millimeters.Negligible ? Of(ContradictionKind.Showing, over) : null;

        Contradiction Of(ContradictionKind kind, double missed) => new(kind, side, UnitsNet.Length.FromMillimeters(missed - stated));
    }

    /// <summary>The tolerance of a reading, or what it is good to where none is stated; nothing where it was not read.</summary>
    public static double Allowed(Measured? reading, double unsaid) =>
        reading is { } read ? read.PlusMinusMm > 0 ? read.PlusMinusMm : unsaid : 0;

    /// <summary>The tolerance that is stated.</summary>
    public static double Stated(Measured? reading) => reading?.PlusMinusMm ?? 0;
}
