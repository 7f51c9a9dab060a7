using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>A rod in millimeters and what is wanted of it: all that its limits depend on.</summary>
/// <param name="Rod">The dimensions.</param>
/// <param name="Target">Wanted length, ball center to ball center.</param>
/// <param name="Shorter">How much shorter it must adjust.</param>
/// <param name="Longer">How much longer it must adjust.</param>
internal readonly record struct RodProblem(RodDimensions Rod, double Target, double Shorter, double Longer)
{
    /// <summary>What turning does.</summary>
    public Turning Turning => new(Rod);

    /// <summary>Axial length at the target.</summary>
    public double Axial => Rod.Axial(Target);

    /// <summary>How much of axial length the shorter wish takes.</summary>
    public double AxialShorter => Axial - Rod.Axial(Target - Shorter);

    /// <summary>How much of axial length the longer wish takes.</summary>
    public double AxialLonger => Rod.Axial(Target + Longer) - Axial;

    /// <summary>Whether the wanted adjustment can be had by turning at all.</summary>
    public bool Adjusts => Turning.Adjusts || AxialShorter + AxialLonger <= Millimeters.Negligible;

    /// <summary>The limits as inequalities.</summary>
    public SettingProblem Setting => new(this);

    /// <summary>The problem of a rod and a request.</summary>
    /// <exception cref="ArgumentException">
    /// A length of the request is negative or not finite, or the shortest wanted length is not above the offset of the bent ends.
    /// </exception>
    public static RodProblem Of(Rod rod, RodRequest request, double innerRequired, double outerRequired)
    {
        double target = Millimeters.Positive(request.Target, nameof(request));
        double shorter = Millimeters.NotNegative(request.Shorter, nameof(request));
        if (!rod.CanHave(UnitsNet.Length.FromMillimeters(target - shorter)))
        {
            throw new ArgumentException("The shortest wanted length must be above the offset of the bent ends.", nameof(request));
        }

        return new(
            RodDimensions.Nominal(
                rod.Parts, innerRequired, outerRequired, Millimeters.NotNegative(request.Rules.TipGap, nameof(request))),
            target,
            shorter,
            Millimeters.NotNegative(request.Longer, nameof(request)));
    }
}
