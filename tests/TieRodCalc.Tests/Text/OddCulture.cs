using System.Globalization;

namespace TieRodCalc.Tests.Text;

/// <summary>A culture in which every sign of a number is another one, so that a machine without any cultures has one that differs.</summary>
internal static class OddCulture
{
    public static CultureInfo Made { get; } = Make();

    private static CultureInfo Make()
    {
        CultureInfo made = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        made.NumberFormat.NumberDecimalSeparator = "d";
        made.NumberFormat.NumberGroupSeparator = ".";
        made.NumberFormat.NegativeSign = "minus ";
        made.NumberFormat.PositiveSign = "plus ";
        made.NumberFormat.NaNSymbol = "nothing";
        made.NumberFormat.NumberDecimalDigits = 7;
        made.NumberFormat.PercentSymbol = "pc";
        made.DateTimeFormat.ShortDatePattern = "yyyy dd MM";
        return made;
    }
}
