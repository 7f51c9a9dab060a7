using System.Xml.Linq;
using TieRodCalc.Text;

namespace TieRodCalc.Cli.Rendering;

/// <summary>What a drawing's scale is, with a bar to hold a rule to.</summary>
internal sealed class ScaleBar(LengthDisplay unit)
{
    private const double Longest = 110;
    private const int NoteSize = 12;
    private const double Inch = 25.4;

    private static readonly (double Mm, string Words)[] s_inches =
    [
        (Inch / 8, "1/8 in"), (Inch / 4, "1/4 in"), (Inch / 2, "1/2 in"), (Inch, "1 in"), (2 * Inch, "2 in"), (4 * Inch, "4 in"),
        (10 * Inch, "10 in"), (20 * Inch, "20 in"), (100 * Inch, "100 in"),
    ];

    private static readonly (double Mm, string Words)[] s_millimeters =
    [
        (2, "2 mm"), (5, "5 mm"), (10, "10 mm"), (20, "20 mm"), (50, "50 mm"), (100, "100 mm"), (200, "200 mm"), (500, "500 mm"),
        (2000, "2000 mm"),
    ];

    /// <summary>The bar at the foot of a drawing, with a note beside it.</summary>
    public IEnumerable<XElement> Draw(PaperScale paper, double height, string note)
    {
        (double Mm, string Words)[] bars = unit == LengthDisplay.Inch ? s_inches : s_millimeters;
        (double mm, string words) = bars.Last(bar => bar.Mm * paper.Units <= Longest || bar == bars[0]);
        double length = mm * paper.Units;
        yield return Svg.Path($"M2 {Svg.Number(height - 12)} v10 M2 {Svg.Number(height - 7)} h{Svg.Number(length)} m0 -5 v10", 1.2);
        XElement label = Svg.Label(length + 10, height - 3, Svg.Shortened($"{words}, scale {paper}. {note}".TrimEnd(), (RodPicture.Width - length - 12) * Svg.FontSize / NoteSize));
        label.SetAttributeValue("font-size", NoteSize);
        yield return label;
    }
}
