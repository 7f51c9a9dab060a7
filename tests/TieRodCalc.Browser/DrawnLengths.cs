using System.Text.Json;

namespace TieRodCalc.Browser;

/// <summary>Which lengths of a plan a drawing has to show, under the names that it gives them in its data.</summary>
internal static class DrawnLengths
{
    /// <summary>Under this name stands what is missing of a rod that cannot be built; not all of it has a place to be drawn at.</summary>
    public const string Missing = "missing";

    public static ILookup<string, double> Of(JsonElement rod) =>
        (Json.Has(rod, "joints", out JsonElement joints) ? All(rod, joints) : Lacking(rod))
            .ToLookup(each => each.Name, each => each.Millimeters);

    /// <summary>Of these a drawing may leave out some; what it shows has to be right.</summary>
    public static IReadOnlyList<string> Optional { get; } = [Missing, "thread-left"];

    /// <summary>The name under which the black part of a joint is compared, too.</summary>
    public static string Engaged(string side) => $"engaged-{side}";

    private static IEnumerable<(string Name, double Millimeters)> Lacking(JsonElement rod) =>
        rod.GetProperty("binding").EnumerateArray().Select(binding => (Missing, Json.Number(binding, "missed_by_mm")));

    private static IEnumerable<(string Name, double Millimeters)> All(JsonElement rod, JsonElement joints)
    {
        yield return ("center-to-center", Json.Number(rod.GetProperty("length"), "target_mm"));
        if (Json.Has(rod, "tip_gap_mm", out JsonElement gap))
        {
            yield return ("tip-gap", gap.GetDouble());
        }

        foreach (string side in Json.Sides)
        {
            if (Json.Has(joints, side, out JsonElement joint))
            {
                yield return ($"showing-{side}", Json.Number(joint, "showing_mm"));
                yield return ($"inserted-{side}", Json.Number(joint, "insertion_mm"));
                yield return (Engaged(side), Json.Number(joint, "engaged_mm"));
            }

            if (Json.Has(rod.GetProperty("cut"), side, out JsonElement cut) && Json.Number(cut, "recommended_mm") > 0)
            {
                yield return ("cut", Json.Number(cut, "recommended_mm"));
                yield return ("mark-from-center", Json.Number(cut, "mark_from_center_mm"));
                yield return ("thread-left", Json.Number(cut, "thread_left_mm"));
            }
        }
    }
}
