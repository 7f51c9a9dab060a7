using TieRodCalc.Planning;
using TieRodCalc.Text;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The swing of a joint in JSON, a limit like the others.</summary>
internal sealed record SwingJson(
    string Limit, string End, double AllowedDeg, double? MostDeg, double? AtTravelMm, double? AtSteerMm, double? MissedByDeg)
{
    public static SwingJson[] Of(IReadOnlyList<SwingCheck> checks) =>
    [
        .. checks.Select(swing => new SwingJson(
            "swing",
            Names.Of(swing.End),
            JsonNumber.Of(swing.Allowed.Degrees),
            JsonNumber.Of(swing.Most?.Most.Degrees),
            JsonNumber.Mm(swing.Most?.Travel),
            JsonNumber.Mm(swing.Most?.Steer),
            JsonNumber.Of(swing.MissedBy?.Degrees))),
    ];
}
