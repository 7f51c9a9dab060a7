using System.Globalization;

namespace TieRodCalc.Cli.Rendering;

/// <summary>How large a drawing stands on paper: the largest of the usual scales at which it fits.</summary>
/// <param name="PaperPerMm">Millimeters of paper to one of the part.</param>
internal readonly record struct PaperScale(double PaperPerMm)
{
    /// <summary>
    /// Enlargements and reductions of ISO 5455 (from memory), the steps between them that the standard lets one take, and half steps.
    /// </summary>
    private static readonly double[] s_steps = [5, 2, 1, 1 / 1.5, 1 / 2.0, 1 / 2.5, 1 / 3.0, 1 / 4.0, 1 / 5.0, 1 / 6.0, 1 / 7.5, 1 / 10.0];

    /// <summary>Units of a drawing to the millimeter of the part.</summary>
    public double Units => PaperPerMm * Svg.UnitsPerMm;

    /// <summary>The scale in words: <c>1 : 2.5</c>.</summary>
    public override string ToString()
    {
        string times = Math.Max(PaperPerMm, 1 / PaperPerMm).ToString("0.##", CultureInfo.InvariantCulture);
        return PaperPerMm >= 1 ? $"{times} : 1" : $"1 : {times}";
    }

    /// <summary>The scale at which so many millimeters fit into so many units of a drawing, across and upward.</summary>
    public static PaperScale For((double Millimeters, double Units) across, (double Millimeters, double Units) upward)
    {
        double power = 1;
        while (true)
        {
            foreach (double step in s_steps)
            {
                PaperScale scale = new(step * power);
                if (across.Millimeters * scale.Units <= across.Units && upward.Millimeters * scale.Units <= upward.Units)
                {
                    return scale;
                }
            }

            power /= 10;
        }
    }
}
