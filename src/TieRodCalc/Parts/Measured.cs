using UnitsNet;

namespace TieRodCalc.Parts;

/// <summary>A dimension as it was measured or drawn: a nominal value and what it may be off either way.</summary>
public readonly record struct Measured
{
    /// <summary>Makes a dimension.</summary>
    /// <param name="nominal">Nominal value, zero or more.</param>
    /// <param name="plusMinus">What it may be off, each way; zero or more, zero where nothing was said.</param>
    /// <exception cref="ArgumentException">A value is negative, infinite or not a number.</exception>
    public Measured(Length nominal, Length plusMinus)
    {
        Mm = Millimeters.NotNegative(nominal, nameof(nominal));
        PlusMinusMm = Millimeters.NotNegative(plusMinus, nameof(plusMinus));
    }

    /// <summary>Makes a dimension for which no tolerance was said.</summary>
    /// <param name="nominal">Nominal value, zero or more.</param>
    /// <exception cref="ArgumentException">The value is negative, infinite or not a number.</exception>
    public Measured(Length nominal)
        : this(nominal, Length.Zero)
    {
    }

    /// <summary>Nominal value.</summary>
    public Length Nominal => Length.FromMillimeters(Mm);

    /// <summary>What the dimension may be off, each way; zero where nothing was said.</summary>
    public Length PlusMinus => Length.FromMillimeters(PlusMinusMm);

    internal double Mm { get; }

    internal double PlusMinusMm { get; }
}
