using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>A point of a curve of toe over travel.</summary>
/// <param name="Travel">Travel of the wheel, in bump positive.</param>
/// <param name="Toe">Toe relative to ride height, toe-in positive.</param>
/// <param name="AtGauge">The same at the gauge: rear reading less front reading.</param>
public readonly record struct BumpPoint(Length Travel, Angle Toe, Length AtGauge);

/// <summary>A step from one travel to the next higher one.</summary>
/// <param name="From">The lower travel.</param>
/// <param name="To">The higher travel.</param>
/// <param name="ToeChange">Toe at the higher travel less toe at the lower one, toe-in positive.</param>
/// <param name="AtGauge">The same at the gauge.</param>
/// <param name="PerInch">The same at the gauge per inch of travel.</param>
public readonly record struct BumpStep(Length From, Length To, Angle ToeChange, Length AtGauge, Length PerInch);

/// <summary>What one sheet says by itself.</summary>
public sealed record BumpSheetFindings
{
    /// <summary>The sheet.</summary>
    public required BumpSheet Sheet { get; init; }

    /// <summary>The measured points from the lowest travel to the highest, ride height among them.</summary>
    public required IReadOnlyList<BumpPoint> Points { get; init; }

    /// <summary>The steps between them.</summary>
    public required IReadOnlyList<BumpStep> Steps { get; init; }

    /// <summary>The step with the greatest toe change per inch.</summary>
    public required BumpStep Worst { get; init; }

    /// <summary>The limits of the grade at the spacing of this gauge.</summary>
    public required BumpLimits Limits { get; init; }

    /// <summary>The grade of the worst step.</summary>
    public required BumpGrade Grade { get; init; }

    /// <summary>Change of toe with travel at ride height, radians a millimeter; null where fewer than two readings are there.</summary>
    public required double? SlopePerMm { get; init; }

    /// <summary>Its own change with travel, radians a square millimeter; null likewise.</summary>
    public required double? CurvaturePerMm2 { get; init; }

    /// <summary>The measured point at a travel, or null where there is none.</summary>
    public BumpPoint? At(Length travel) =>
        Points.Where(point => Millimeters.Of(point.Travel) == Millimeters.Of(travel)).Select(point => (BumpPoint?)point).FirstOrDefault();

    /// <summary>The curve of these two terms at the measured travels; empty where there are none.</summary>
    public required IReadOnlyList<BumpPoint> Fitted { get; init; }
}

/// <summary>A change of a rod's joints, and what it promises. Each counts from the rod as it is now.</summary>
public sealed record BumpAdvice
{
    /// <summary>The exact change.</summary>
    public required BumpChange Change { get; init; }

    /// <summary>What the change may be off by, from the resolution of the indicators; null where that is not known.</summary>
    public required BumpChange? Uncertainty { get; init; }

    /// <summary>The length of the rod with the exact change.</summary>
    public required Length WantedLength { get; init; }

    /// <summary>The curve with the exact change, at the travels of the sheet.</summary>
    public required IReadOnlyList<BumpPoint> Predicted { get; init; }

    /// <summary>The greatest toe change at the gauge per inch of travel with the exact change, its sign left out.</summary>
    public required Length PredictedWorst { get; init; }

    /// <summary>
    /// The change rounded to what can be done. What the readings cannot tell from nothing is left at zero.
    /// </summary>
    public required BumpChange Rounded { get; init; }

    /// <summary>The length of the rod with the rounded change.</summary>
    public required Length RoundedLength { get; init; }

    /// <summary>The curve with the rounded change.</summary>
    public required IReadOnlyList<BumpPoint> RoundedPredicted { get; init; }

    /// <summary>The greatest toe change at the gauge per inch of travel with the rounded change.</summary>
    public required Length RoundedWorst { get; init; }
}

/// <summary>How much a change does, as sheets before and after changes have measured it, in parts of what is computed.</summary>
/// <param name="Raising">The outer joint raised: of the slope.</param>
/// <param name="Length">The rod longer: of the curvature.</param>
/// <param name="Sheets">How many pairs of sheets measured it.</param>
public sealed record MeasuredEffect(double Raising, double Length, int Sheets);

/// <summary>Which of the two is to be changed.</summary>
public enum BumpWork
{
    /// <summary>Nothing.</summary>
    Nothing,

    /// <summary>The height of a joint alone.</summary>
    Height,

    /// <summary>The length of the rod alone.</summary>
    Length,

    /// <summary>Both.</summary>
    Both,
}

/// <summary>What the bump sheets of a wheel say.</summary>
public sealed record BumpFindings
{
    /// <summary>What each sheet says, oldest first.</summary>
    public required IReadOnlyList<BumpSheetFindings> Sheets { get; init; }

    /// <summary>The newest sheet.</summary>
    public BumpSheetFindings Newest => Sheets[^1];

    /// <summary>Length of the rod as it is now, or null where it is not known.</summary>
    public required Length? Rod { get; init; }

    /// <summary>Height and length changed together; null where nothing can be told.</summary>
    public required BumpAdvice? Both { get; init; }

    /// <summary>The height alone changed, as well as it does by itself; null likewise.</summary>
    public required BumpAdvice? HeightAlone { get; init; }

    /// <summary>The length alone changed; null likewise.</summary>
    public required BumpAdvice? LengthAlone { get; init; }

    /// <summary>What was measured between sheets, or null where nothing was.</summary>
    public required MeasuredEffect? Measured { get; init; }

    /// <summary>Warnings, and what cannot be told.</summary>
    public required IReadOnlyList<BumpWarning> Warnings { get; init; }

    /// <summary>
    /// The least work that does: nothing where the wheel is very good already or nothing betters it that the readings can tell; the
    /// height alone where that makes it very good; else the length alone where that does; else both.
    /// </summary>
    public BumpWork Work =>
        Newest.Grade == BumpGrade.VeryGood ? BumpWork.Nothing
        : MakesVeryGood(HeightAlone) ? BumpWork.Height
        : MakesVeryGood(LengthAlone) ? BumpWork.Length
        : Betters(Both) && Both!.Rounded is { OuterRaised.Value: not 0, RodLonger.Value: not 0 } ? BumpWork.Both
        : (Betters(HeightAlone), Betters(LengthAlone)) switch
        {
            (true, true) => HeightAlone!.RoundedWorst <= LengthAlone!.RoundedWorst ? BumpWork.Height : BumpWork.Length,
            (true, false) => BumpWork.Height,
            (false, true) => BumpWork.Length,
            _ => BumpWork.Nothing,
        };

    /// <summary>The advice of a work; null where there is none.</summary>
    public BumpAdvice? AdviceOf(BumpWork work) => work switch
    {
        BumpWork.Height => HeightAlone,
        BumpWork.Length => LengthAlone,
        BumpWork.Both => Both,
        _ => null,
    };

    /// <summary>Whether an advice, rounded, leaves less than there is.</summary>
    public bool Betters(BumpAdvice? advice) =>
        advice is { Rounded.IsNone: false } && advice.RoundedWorst < Newest.Worst.PerInch.Abs();

    private bool MakesVeryGood(BumpAdvice? advice) =>
        Betters(advice) && Newest.Limits.Of(advice!.RoundedWorst) == BumpGrade.VeryGood;

    /// <summary>Whether the readings suffice for an advice and do not contradict each other.</summary>
    public bool Suffices => Both is not null && Warnings.All(warning => warning.Code is not
        (BumpWarningCode.SheetsContradict or BumpWarningCode.SheetsContradictSense));
}
