using System.Globalization;
using UnitsNet;

namespace TieRodCalc.Text;

/// <summary>Toe and turns as a person sees them, the same in every culture; halves are rounded away from zero.</summary>
public static class ToeFormat
{
    private const int SixtyFourths = 64;

    /// <summary>A toe as an angle: <c>0.149 deg toe-out</c>; without a direction where it rounds to zero.</summary>
    public static string Of(Angle toe) => Degrees(toe) + Direction(Math.Round(toe.Degrees, 3, MidpointRounding.AwayFromZero));

    /// <summary>A toe as a length: <c>0.125 in (1/8, 3.18 mm) toe-out</c>; without a direction where it rounds to zero.</summary>
    /// <param name="toe">The toe, behind less in front.</param>
    /// <param name="unit">The unit that comes first.</param>
    public static string Of(Length toe, LengthDisplay unit) => LengthFormat.Both(toe.Abs(), unit) + Direction(InUnit(toe, unit));

    /// <summary>The size of a change of toe, without a direction: <c>0.286 deg</c>.</summary>
    public static string Degrees(Angle angle) => Math.Abs(angle.Degrees).ToString("0.000", CultureInfo.InvariantCulture) + " deg";

    /// <summary>How a toe differs from the wanted one: <c>0.050 deg more toe-in than wanted</c>, or <c>as wanted</c>.</summary>
    /// <param name="leftOver">Wanted less reached.</param>
    public static string LeftOver(Angle leftOver) =>
        Than(Degrees(leftOver), -Math.Round(leftOver.Degrees, 3, MidpointRounding.AwayFromZero));

    /// <summary>The same of a length.</summary>
    /// <param name="leftOver">Wanted less reached.</param>
    /// <param name="unit">The unit that comes first.</param>
    public static string LeftOver(Length leftOver, LengthDisplay unit) =>
        Than(LengthFormat.Both(leftOver.Abs(), unit), -InUnit(leftOver, unit));

    /// <summary>Counted turns, in lowest terms: <c>1/4 turn</c>, <c>1 3/8 turns</c>.</summary>
    /// <param name="turns">A multiple of a sixty-fourth; its sign is not shown.</param>
    public static string Turns(double turns) => Counted(turns, "turn");

    /// <summary>Flats, in lowest terms: <c>1 1/2 flats</c>.</summary>
    /// <param name="flats">A multiple of a sixty-fourth; its sign is not shown.</param>
    public static string Flats(double flats) => Counted(flats, "flat");

    /// <summary>Turns that are left, in decimals, never more than there are: <c>2.85 turns</c>.</summary>
    public static string Left(double turns) => Exact(Math.Floor(Math.Abs(turns) * 100 + 1e-4) / 100);

    /// <summary>Turns in decimals: <c>0.20 turns</c>.</summary>
    public static string Exact(double turns) => Math.Abs(turns).ToString("0.00", CultureInfo.InvariantCulture) + " turns";

    /// <summary>Flats in decimals: <c>1.2 flats</c>.</summary>
    public static string ExactFlats(double flats) => Math.Abs(flats).ToString("0.0", CultureInfo.InvariantCulture) + " flats";

    private static double InUnit(Length toe, LengthDisplay unit) => unit == LengthDisplay.Inch
        ? Math.Round(toe.Inches, 3, MidpointRounding.AwayFromZero)
        : Math.Round(toe.Millimeters, 2, MidpointRounding.AwayFromZero);

    private static string Direction(double toe) => toe > 0 ? " toe-in" : toe < 0 ? " toe-out" : string.Empty;

    private static string Than(string size, double more) =>
        more > 0 ? $"{size} more toe-in than wanted" : more < 0 ? $"{size} more toe-out than wanted" : "as wanted";

    private static string Counted(double count, string noun)
    {
        long sixtyFourths = (long)Math.Round(Math.Abs(count) * SixtyFourths, MidpointRounding.AwayFromZero);
        return $"{LengthFormat.Reduced(sixtyFourths)} {noun}{(sixtyFourths is > 0 and <= SixtyFourths ? string.Empty : "s")}";
    }
}
