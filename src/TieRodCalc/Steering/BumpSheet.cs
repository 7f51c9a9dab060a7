using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>When the indicators of a bump gauge were set to zero.</summary>
public enum IndicatorZero
{
    /// <summary>Once, at ride height: the readings accumulate.</summary>
    Once,

    /// <summary>At every step, counted outward from ride height: the readings add up.</summary>
    EachStep,
}

/// <summary>Which way the readings of the indicators grow.</summary>
public enum IndicatorSense
{
    /// <summary>Where the plate moves outward.</summary>
    Outward,

    /// <summary>Where the plate moves inward.</summary>
    Inward,
}

/// <summary>What the two indicators of a bump gauge read at a travel of the wheel.</summary>
/// <param name="Travel">How far the wheel is above ride height; in droop negative, never zero.</param>
/// <param name="Front">The front indicator.</param>
/// <param name="Rear">The rear indicator.</param>
public readonly record struct BumpReading(Length Travel, Length Front, Length Rear);

/// <summary>What was changed at a rod's joints.</summary>
/// <param name="OuterRaised">The outer joint was raised by so much, or the inner one lowered; negative: the other way.</param>
/// <param name="RodLonger">The rod was made longer by so much, its inner joint moved along the rod with it; negative: shorter.</param>
public readonly record struct BumpChange(Length OuterRaised, Length RodLonger)
{
    /// <summary>Whether nothing is changed.</summary>
    public bool IsNone => OuterRaised.Value == 0 && RodLonger.Value == 0;

    /// <summary>Whether another change is of the same things, by as much or not: of the height, of the length, or of both.</summary>
    public bool ChangesTheSameAs(BumpChange other) =>
        OuterRaised.Value == 0 == (other.OuterRaised.Value == 0) && RodLonger.Value == 0 == (other.RodLonger.Value == 0);
}

/// <summary>
/// A bump sheet: a plate at the wheel, two indicators on it, and what they read as the wheel is moved through its travel.
/// </summary>
/// <remarks>
/// With <c>b</c> the change of the rear reading less that of the front one, readings growing outward, and <c>W</c> the spacing of the
/// indicators, the toe relative to ride height is <c>asin(b / W)</c>, toe-in positive.
/// </remarks>
public sealed record BumpSheet
{
    /// <summary>Beyond this the plate would stand at 30 degrees to where it was: sine of the angle. Our own choice.</summary>
    private const double MostSine = 0.5;

    /// <summary>Distance of the two indicators, above zero.</summary>
    public required Length Spacing { get; init; }

    /// <summary>When they were zeroed.</summary>
    public required IndicatorZero Zeroed { get; init; }

    /// <summary>Which way they grow.</summary>
    public required IndicatorSense Grows { get; init; }

    /// <summary>The least that an indicator shows, above zero; a reading may be off by it. Null where it was not said.</summary>
    public Length? Resolution { get; init; }

    /// <summary>The readings, one a travel, in any order; ride height, where both are zero, is not among them.</summary>
    public required IReadOnlyList<BumpReading> Readings { get; init; }

    /// <summary>What was changed after this sheet was read.</summary>
    public BumpChange Then { get; init; }

    /// <summary>
    /// The first reading that no wheel gives, or null: at a travel of zero, at one that is there already, or beyond 30 degrees.
    /// </summary>
    public int? FirstWrong
    {
        get
        {
            double[] openings = new BumpCurve(this).OpeningsAsListed;
            for (int index = 0; index < Readings.Count; index++)
            {
                double travel = Millimeters.Of(Readings[index].Travel);
                if (!(Math.Abs(travel) > Millimeters.Negligible)
                    || !(Math.Abs(openings[index]) <= MostSine * Millimeters.Of(Spacing))
                    || Readings.Take(index).Any(other => Math.Abs(Millimeters.Of(other.Travel) - travel) <= Millimeters.Negligible))
                {
                    return index;
                }
            }

            return null;
        }
    }
}
