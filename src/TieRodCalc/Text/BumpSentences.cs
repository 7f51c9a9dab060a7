using System.Globalization;
using TieRodCalc.Planning;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>What bump sheets say, in sentences.</summary>
/// <param name="unit">The unit that lengths are shown in first.</param>
public sealed class BumpSentences(LengthDisplay unit)
{
    /// <summary>Once for all: what a change of the height may be done by instead.</summary>
    public static string OrTheInner =>
        "Lowering the inner joint does what raising the outer one does, and raising it what lowering does; it comes nearer to what "
        + "is computed, since it leaves the upright as it is.";

    /// <summary>A warning.</summary>
    public string Of(BumpWarning warning)
    {
        ArgumentNullException.ThrowIfNull(warning);
        string value = warning.Value is { } length ? LengthFormat.Decimal(length, unit) : string.Empty;
        string sheet = (warning.Sheet ?? 0).ToString(CultureInfo.InvariantCulture);
        string next = ((warning.Sheet ?? 0) + 1).ToString(CultureInfo.InvariantCulture);
        return warning.Code switch
        {
            BumpWarningCode.TooFewReadings =>
                "One reading cannot tell a wrong height from a wrong length: read at least one travel in bump and one in droop, "
                    + "better two each.",
            BumpWarningCode.NothingToCheckBy =>
                "Two readings are matched exactly by one height and one length, so nothing checks them: a slip in one of them is not seen. "
                + "Read two travels more.",
            BumpWarningCode.OneSided =>
                "All readings are on one side of ride height: the other side is not known, and height and length are told apart poorly.",
            BumpWarningCode.ResolutionNotGiven =>
                "The gauge has no resolution: what the changes may be off by, and whether sheets agree with each other, was not "
                    + "checked. Write "
                + "resolution: 0.001 in, say, in 'gauge'.",
            BumpWarningCode.ReadingsScatter =>
                $"The readings do not lie on a smooth curve: they miss one by {value} at the gauge, which the indicators do not explain. "
                + "Look for play, a slipped plate or a slip of the pen, and read again.",
            BumpWarningCode.TwoTermsMiss =>
                $"A wrong height and a wrong length do not explain these readings: fitted, they leave {value} at the gauge, more than "
                    + "half of what "
                + "was read. Look for a slip of the pen, a wrong sign or something loose, and read again with more steps.",
            BumpWarningCode.HeightNotTold =>
                $"Height: the readings cannot tell this change from none (± {value}); the joint stays where it is.",
            BumpWarningCode.LengthNotTold =>
                $"Length: the readings cannot tell this change from none (± {value}); the rod keeps its length. More travel, or a finer "
                + "indicator, would tell.",
            BumpWarningCode.NoLengthDoes =>
                "No rod of any length swings as the outer joint would have to go: its path bends the other way. Another place of the "
                    + "joints has "
                + "to be found.",
            BumpWarningCode.FarChange =>
                "The change is more than a quarter of the rod. So far the reading cannot be trusted: check the readings and the "
                    + "gauge; if they are right, "
                + "go a part of the way, and read again.",
            BumpWarningCode.WheelNotGiven =>
                "Height and length are not told: that needs the steering of this wheel ('arm' and 'joint', or points) and a rod of "
                    + "this side with "
                + "its length.",
            BumpWarningCode.RodInLine =>
                "Height and length are not told: the rod is in line with the steer axis.",
            BumpWarningCode.SheetsContradict =>
                $"Sheets {sheet} and {next} contradict each other: what was changed between them does not explain how they differ. "
                    + "One of them, or "
                + "what was written down as changed, is wrong. Nothing was taken from this pair.",
            BumpWarningCode.SheetsContradictSense =>
                $"Sheets {sheet} and {next} contradict each other, and would not if the indicators had grown the other way in sheet "
                    + $"{next}: see "
                + "'grows'. Nothing was taken from this pair.",
            BumpWarningCode.GaugeUnusual =>
                $"The limits of the grade are for a gauge of about a wheel's width; this one is {value} wide, and the same toe reads "
                    + "more on a wide "
                + "one. Give the spacing that the limits hold for: rules: {bump: {spacing: 10 in}}.",
            _ => throw new ArgumentOutOfRangeException(nameof(warning)),
        };
    }

    /// <summary>A travel: <c>1.000 in bump</c>, <c>ride height</c>.</summary>
    public string Travel(Length travel) => Math.Abs(Millimeters.Of(travel)) <= Millimeters.Negligible ? "ride height"
        : $"{LengthFormat.Decimal(travel.Abs(), unit)} {(travel > Length.Zero ? "bump" : "droop")}";

    /// <summary>A toe at the gauge: <c>0.019 in toe-out</c>.</summary>
    public string AtGauge(Length toe)
    {
        string size = LengthFormat.Fine(toe.Abs(), unit);
        return size + Direction(size, toe.Value);
    }

    /// <summary>The same of a toe change per inch of travel, without a direction.</summary>
    public string PerInch(Length perInch) => $"{LengthFormat.Fine(perInch.Abs(), unit)} per inch";

    /// <summary>Where the grades begin, and the gauge that they hold for.</summary>
    /// <param name="limits">The limits at the spacing of the gauge.</param>
    /// <param name="spacing">The spacing of the gauge.</param>
    public string Of(BumpLimits limits, Length spacing)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return $"under {Bare(limits.VeryGood)} very good, then fair, from {Bare(limits.Felt)} felt by the driver, above "
            + $"{Bare(limits.StronglyFelt)} "
            + $"strongly felt; {(unit == LengthDisplay.Inch ? "in" : "mm")} per inch of travel at a gauge "
            + $"{LengthFormat.Decimal(spacing, unit)} wide";
    }

    /// <summary>Which way the wheel steers itself: <c>toe-out in bump, toe-in in droop</c>.</summary>
    public string Trend(IReadOnlyList<BumpPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        string[] sides =
        [
            .. from bump in (bool[])[true, false]
               let side = points.Where(point => bump ? point.Travel > Length.Zero : point.Travel < Length.Zero).ToArray()
               where side.Length > 0
               select $"{Way(bump ? side : side.Reverse())} in {(bump ? "bump" : "droop")}",
        ];
        return string.Join(", ", sides);
    }

    /// <summary>The way of points outward from ride height: where it turns, one after the other.</summary>
    private string Way(IEnumerable<BumpPoint> outward)
    {
        List<string> ways = [];
        foreach (BumpPoint point in outward)
        {
            string way = Direction(LengthFormat.Fine(point.AtGauge.Abs(), unit), point.AtGauge.Value).TrimStart();
            if (way.Length > 0 && (ways.Count == 0 || ways[^1] != way))
            {
                ways.Add(way);
            }
        }

        return ways.Count switch { 0 => "no toe change", <= 2 => string.Join(" then ", ways), _ => "toe-in and toe-out" };
    }

    /// <summary>What is to be done, the rounded change: <c>raise the outer joint 5/32 in and make the rod 1/2 in longer</c>.</summary>
    public string Task(BumpChange change)
    {
        (double raise, double longer) = (Millimeters.Of(change.OuterRaised), Millimeters.Of(change.RodLonger));
        string[] parts =
        [
            .. new[]
            {
                raise == 0 ? null : $"{(raise > 0 ? "raise" : "lower")} the outer joint {Size(change.OuterRaised)}",
                longer == 0 ? null : $"make the rod {Size(change.RodLonger)} {(longer > 0 ? "longer" : "shorter")}",
            }.OfType<string>(),
        ];
        return parts.Length == 0 ? "leave height and length as they are" : string.Join(" and ", parts);
    }

    /// <summary>What was changed: <c>outer joint raised 2.00 mm; rod 1.00 mm longer</c>.</summary>
    public string Then(BumpChange change)
    {
        string height = change.OuterRaised.Value == 0 ? string.Empty
            : $"outer joint {(change.OuterRaised.Value > 0 ? "raised" : "lowered")} {LengthFormat.Both(change.OuterRaised.Abs(), unit)}";
        string length = change.RodLonger.Value == 0 ? string.Empty
            : $"rod {LengthFormat.Both(change.RodLonger.Abs(), unit)} {(change.RodLonger.Value > 0 ? "longer" : "shorter")}";
        return height.Length > 0 && length.Length > 0 ? $"{height}; {length}" : height + length;
    }

    /// <summary>A change of the height with its uncertainty.</summary>
    public string Height(BumpAdvice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return $"{LengthFormat.Both(advice.Change.OuterRaised.Abs(), unit)} {(advice.Change.OuterRaised < Length.Zero ? "down" : "up")}"
            + PlusMinus(advice.Uncertainty?.OuterRaised);
    }

    /// <summary>A change of the length with its uncertainty.</summary>
    public string Longer(BumpAdvice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return $"{LengthFormat.Both(advice.Change.RodLonger.Abs(), unit)} {(advice.Change.RodLonger < Length.Zero ? "shorter" : "longer")}"
            + PlusMinus(advice.Uncertainty?.RodLonger);
    }

    /// <summary>What a joint swings and may.</summary>
    public string Of(SwingCheck swing)
    {
        ArgumentNullException.ThrowIfNull(swing);
        string allowed = $"{ToeFormat.Degrees(swing.Allowed)} allowed each way";
        if (swing.Most is not { } most)
        {
            return swing.StudKnown
                ? $"NOT KNOWN, the corner does not reach its travel or steering; {allowed}"
                : $"not checked, its end does not say how the stud stands ('stud'); {allowed}";
        }

        string steered = Millimeters.Of(most.Steer) == 0
            ? string.Empty
            : $", inner joint steered {LengthFormat.Decimal(most.Steer.Abs(), unit)} to the "
                + $"{(most.Steer > Length.Zero ? "left" : "right")}";
        string passed = swing.Holds
            ? string.Empty
            : $": RUNS OUT OF SWING by {ToeFormat.Degrees(swing.MissedBy!.Value)}; a joint that does so bends its shank";
        return $"{ToeFormat.Degrees(most.Most)} at {Travel(most.Travel)}{steered}; {allowed}{passed}";
    }

    private string Size(Length change) => unit == LengthDisplay.Inch
        ? LengthFormat.Fraction(change.Abs())
        : LengthFormat.Decimal(change.Abs(), unit);

    private string PlusMinus(Length? uncertainty) =>
        uncertainty is { } known ? $", ± {LengthFormat.Decimal(known, unit, LengthRounding.Up)}" : ", uncertainty not known";

    private string Bare(Length value) => LengthFormat.Decimal(value, unit).Split(' ')[0];

    private static string Direction(string size, double toe) =>
        size.AsSpan().IndexOfAnyInRange('1', '9') < 0 ? string.Empty : toe > 0 ? " toe-in" : " toe-out";
}
