using UnitsNet;

namespace TieRodCalc.Threads;

/// <summary>Form, nominal diameter and pitch of a thread; what must agree, with the hand, for two parts to go together.</summary>
public sealed record ThreadSize
{
    private ThreadSize(ThreadForm form, double diameterMm, double pitchMm)
    {
        if (!double.IsFinite(diameterMm) || !(pitchMm > 0) || pitchMm >= diameterMm)
        {
            throw new ArgumentException("A thread needs a diameter above zero and a pitch above zero and below the diameter.");
        }

        Form = form;
        DiameterMm = diameterMm;
        PitchMm = pitchMm;
    }

    /// <summary>The system the thread belongs to.</summary>
    public ThreadForm Form { get; }

    /// <summary>Nominal (basic major) diameter.</summary>
    public Length Diameter => Length.FromMillimeters(DiameterMm);

    /// <summary>Pitch: the advance of one turn of a single-start thread.</summary>
    public Length Pitch => Length.FromMillimeters(PitchMm);

    /// <summary>Basic pitch diameter: <c>D2 = D - 0.6495 P</c> (ISO 724, ASME B1.1).</summary>
    public Length PitchDiameter => Length.FromMillimeters(ThreadProfile.PitchDiameter(DiameterMm, PitchMm));

    /// <summary>Basic minor diameter: <c>D1 = D - 1.0825 P</c> (ISO 724, ASME B1.1).</summary>
    public Length MinorDiameter => Length.FromMillimeters(ThreadProfile.MinorDiameter(DiameterMm, PitchMm));

    /// <summary>
    /// Tensile stress area of the external thread. Unified: <c>pi/4 (D - 0.9743 P)^2</c> (ASME B1.1). Metric:
    /// <c>pi/4 (D - 0.9382 P)^2</c> (ISO 898-1).
    /// </summary>
    public Area StressArea => Area.FromSquareMillimeters(ThreadProfile.StressArea(Form, DiameterMm, PitchMm));

    internal double DiameterMm { get; }

    internal double PitchMm { get; }

    /// <summary>Same form, diameter and pitch, the latter within the comparison constant.</summary>
    internal bool Matches(ThreadSize other) => Form == other.Form
        && Math.Abs(DiameterMm - other.DiameterMm) <= Millimeters.Negligible
        && Math.Abs(PitchMm - other.PitchMm) <= Millimeters.Negligible;

    /// <summary>A Unified thread.</summary>
    /// <param name="diameter">Nominal diameter, above zero.</param>
    /// <param name="threadsPerInch">Threads per inch, above zero; the pitch is 1 in divided by it.</param>
    /// <exception cref="ArgumentException">A value is not finite or out of range, or the pitch is not below the diameter.</exception>
    public static ThreadSize Unified(Length diameter, double threadsPerInch) =>
        new(ThreadForm.Unified, Millimeters.Of(diameter), Millimeters.Inch / threadsPerInch);

    /// <summary>An ISO metric thread.</summary>
    /// <param name="diameter">Nominal diameter, above zero.</param>
    /// <param name="pitch">Pitch, above zero and below the diameter.</param>
    /// <exception cref="ArgumentException">A value is not finite or out of range, or the pitch is not below the diameter.</exception>
    public static ThreadSize Metric(Length diameter, Length pitch) =>
        new(ThreadForm.Metric, Millimeters.Of(diameter), Millimeters.Of(pitch));
}
