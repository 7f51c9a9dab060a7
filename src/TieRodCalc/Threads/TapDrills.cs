using System.Collections.Immutable;
using UnitsNet;

namespace TieRodCalc.Threads;

/// <summary>The drills of one system for the hole of an internal thread.</summary>
/// <param name="Within">Those inside the limits of the minor diameter, the smallest first; may be none.</param>
/// <param name="Nearest">The one nearest to the limits; the first of those within where there are any.</param>
public sealed record DrillChoice(IReadOnlyList<Length> Within, Length Nearest);

/// <summary>The drills for the hole of an internal thread: a hole inside the limits of its minor diameter.</summary>
/// <param name="SixtyFourths">In sixty-fourths of an inch.</param>
/// <param name="Tenths">In tenths of a millimeter.</param>
public sealed record TapDrills(DrillChoice SixtyFourths, DrillChoice Tenths)
{
    /// <summary>Sixty-fourths in an inch, and tenths in a millimeter.</summary>
    private const double SixtyFourth = Millimeters.Inch / 64;

    private const double Tenth = 0.1;

    /// <summary>The drills for an internal thread.</summary>
    /// <exception cref="ArgumentException">The limits are those of an external thread.</exception>
    public static TapDrills Of(ThreadLimits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        if (limits.Gender != ThreadGender.Internal)
        {
            throw new ArgumentException("A drill is for an internal thread.", nameof(limits));
        }

        double least = limits.Printed.MinorLeast;
        double most = limits.Printed.MinorMost;
        return new(Choose(least, most, SixtyFourth), Choose(least, most, Tenth));
    }

    private static DrillChoice Choose(double least, double most, double step)
    {
        int first = (int)Math.Ceiling((least - Millimeters.Negligible) / step);
        int last = (int)Math.Floor((most + Millimeters.Negligible) / step);
        ImmutableArray<Length> within =
            [.. Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(count => Length.FromMillimeters(count * step))];

        // None within: `first` is the next drill above the limits, and `last` the next one below.
        bool above = first * step - most <= least - last * step || last < 1;
        return new(within, within.Length > 0 || above ? Length.FromMillimeters(first * step) : Length.FromMillimeters(last * step));
    }
}
