using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Reads <c>bump</c> of a job's rules: where the grades of bump steer begin.</summary>
internal static class BumpRules
{
    /// <summary>The limits; the usual ones as far as the job is silent.</summary>
    public static BumpLimits Read(MapReader? rules)
    {
        BumpLimits usual = BumpLimits.Usual;
        if (rules?.Map("bump", Keys.BumpRules) is not { } map)
        {
            return usual;
        }

        BumpLimits read = new(
            map.Exact("very_good", Least.AboveZero) ?? usual.VeryGood,
            map.Exact("felt", Least.AboveZero) ?? usual.Felt,
            map.Exact("strongly_felt", Least.AboveZero) ?? usual.StronglyFelt,
            map.Exact("spacing", Least.AboveZero));
        CheckOrder(map, ("very_good", read.VeryGood), ("felt", read.Felt));
        CheckOrder(map, ("felt", read.Felt), ("strongly_felt", read.StronglyFelt));
        return read;
    }

    private static void CheckOrder(MapReader map, (string Key, Length Value) less, (string Key, Length Value) more)
    {
        if (less.Value.Millimeters < more.Value.Millimeters)
        {
            return;
        }

        // At least one of them is said: the usual ones stand in order.
        (string at, string must, (string Key, Length Value) other) =
            map.Has(more.Key) ? (more.Key, "above", less) : (less.Key, "below", more);
        string unsaid = map.Has(other.Key) ? string.Empty : ", where the job says no other";
        map.Findings.Problem(
            map.SpanOf(at), $"'{at}' must lie {must} '{other.Key}', {LengthFormat.Decimal(other.Value, LengthDisplay.Inch)}{unsaid}");
    }
}
