namespace TieRodCalc.Parts;

/// <summary>A price. Currencies are never added together.</summary>
/// <param name="Amount">The amount, zero or more.</param>
/// <param name="Currency">The currency as three capital letters (ISO 4217).</param>
public sealed record Price(decimal Amount, string Currency);
