namespace TieRodCalc.Planning;

/// <summary>A closed interval; empty where its low end is above its high end.</summary>
internal readonly record struct Interval(double Low, double High)
{
    public double Middle => Low + (High - Low) / 2;

    public bool IsEmpty => Low > High + Millimeters.Negligible;

    /// <summary>What is left from a value up.</summary>
    public Interval From(double low) => this with { Low = Math.Max(Low, low) };

    /// <summary>What is left up to a value.</summary>
    public Interval To(double high) => this with { High = Math.Min(High, high) };
}
