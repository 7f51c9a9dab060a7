namespace TieRodCalc.Browser.Self;

/// <summary>A page that one check must refuse.</summary>
/// <param name="Check">The check.</param>
/// <param name="Fault">What was done to the good page.</param>
/// <param name="Old">What stood there.</param>
/// <param name="New">What stands there now.</param>
internal sealed record BrokenPage(string Check, string Fault, string Old, string New)
{
    /// <summary>The good page with this fault in it.</summary>
    public string Of(string good) => good.Contains(Old, StringComparison.Ordinal)
        ? good.Replace(Old, New, StringComparison.Ordinal)
        : throw new InvalidOperationException($"the good page has no {Old}");
}
