namespace TieRodCalc.Text;

/// <summary>A number as it was written, without a sign: a decimal, a fraction, or a whole number and a fraction.</summary>
/// <param name="Value">The number; of a fraction (whole * denominator + numerator) / denominator.</param>
/// <param name="Exact">A decimal without loss; 0 for a fraction.</param>
/// <param name="IsFraction">Whether it was written with a fraction.</param>
/// <param name="Text">How it was written, in one spelling: <c>8 15/16</c>.</param>
/// <param name="Offset">Where it begins.</param>
/// <param name="End">Where the next character stands.</param>
internal readonly record struct WrittenNumber(double Value, decimal Exact, bool IsFraction, string Text, int Offset, int End)
{
    /// <summary>The fault at this number.</summary>
    public ParseFault Fault(string message) => new(Offset, End - Offset, message);

    /// <summary>The fault right behind this number, where something is missing.</summary>
    public ParseFault FaultBehind(string message) => new(End, 0, message);
}
