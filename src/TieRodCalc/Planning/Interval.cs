namespace TieRodCalc.Planning;

/// <summary>A closed interval; empty where its low end is above its high end.</summary>
internal readonly record struct Interval(double Low, double High)
{
    public double Middle => Low + (High - Low) / 2;

    public bool IsEmpty => Low > High + Millimeters.Negligible;
}
