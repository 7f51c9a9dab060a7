using System.Globalization;
using System.Text.Json;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Browser;

/// <summary>One figure of a plan as a sheet may print it.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Spellings">How it may be spelled; one of them is enough.</param>
internal sealed record Figure(string Name, IReadOnlyList<string> Spellings);

/// <summary>What has to stand on the page of one rod.</summary>
/// <param name="Name">The rod's name.</param>
/// <param name="Figures">Its figures.</param>
/// <param name="Drawn">Lengths that are drawn, in millimeters, each under the name that the drawing gives it.</param>
internal sealed record RodFigures(string Name, IReadOnlyList<Figure> Figures, ILookup<string, double> Drawn);

/// <summary>What has to stand on the pages of a job, from what <c>plan --json</c> says of it.</summary>
internal sealed class PlanFigures
{
    /// <summary>Numbers in the plan's text are rounded to six decimals: a half may have been more or less.</summary>
    private const double Rounding = 5e-7;

    private readonly LengthDisplay _unit;

    private PlanFigures(JsonElement plan, LengthDisplay unit)
    {
        _unit = unit;
        Rods =
        [
            .. plan.GetProperty("rods").EnumerateArray().Select(rod => new RodFigures(Json.Text(rod, "name"), [.. Of(rod)], DrawnLengths.Of(rod))),
        ];
    }

    /// <summary>The rods in the order of the job.</summary>
    public IReadOnlyList<RodFigures> Rods { get; }

    /// <param name="plan">What <c>plan --json</c> printed.</param>
    /// <param name="unit">The job's unit.</param>
    public static PlanFigures Of(JsonElement plan, LengthDisplay unit) => new(plan, unit);

    private IEnumerable<Figure> Of(JsonElement rod)
    {
        yield return new Figure("verdict", [Json.Text(rod, "verdict")]);
        IEnumerable<Figure> rest = Json.Has(rod, "joints", out JsonElement joints)
            ?
            [
                .. Cuts(rod.GetProperty("cut")),
                .. Joints(joints),
                .. Starting(rod.GetProperty("start")),
                .. Adjustment(rod),
                .. Turning(rod),
            ]
            : rod.GetProperty("binding").EnumerateArray().Select(binding =>
                Length($"{Json.Text(binding, "limit")} misses by", binding, "missed_by_mm"));
        foreach (Figure figure in rest)
        {
            yield return figure;
        }
    }

    private IEnumerable<Figure> Cuts(JsonElement cuts)
    {
        foreach (string side in Json.Sides)
        {
            if (Json.Has(cuts, side, out JsonElement cut) && cut.GetProperty("recommended_mm").GetDouble() > 0)
            {
                yield return Length($"{side} cut", cut, "recommended_mm");
                yield return Length($"{side} mark from the center", cut, "mark_from_center_mm");
                yield return Length($"{side} most cut", cut, "most_mm", LengthRounding.Down);
            }
        }
    }

    private IEnumerable<Figure> Joints(JsonElement joints)
    {
        foreach (string side in Json.Sides)
        {
            if (Json.Has(joints, side, out JsonElement joint))
            {
                yield return Length($"{side} thread showing", joint, "showing_mm");
                yield return Length($"{side} insertion", joint, "insertion_mm");
                yield return Length($"{side} engaged", joint, "engaged_mm", LengthRounding.Down);
                yield return Length($"{side} engagement required", joint, "required_mm", LengthRounding.Up);
            }
        }
    }

    private IEnumerable<Figure> Starting(JsonElement start)
    {
        yield return Length("showing before the second end", start, "showing_before_second_mm");
        foreach (string turns in (string[])["alone_turns", "then_sleeve_turns", "then_end_turns"])
        {
            if (Json.Has(start, turns, out JsonElement value))
            {
                yield return new Figure(turns, [Number(value.GetDouble(), "0.0") + " turns"]);
            }
        }
    }

    private IEnumerable<Figure> Adjustment(JsonElement rod)
    {
        JsonElement adjust = rod.GetProperty("adjust");
        foreach (string way in (string[])["shorter", "longer"])
        {
            yield return Length($"adjusts {way}", adjust, $"{way}_mm", LengthRounding.Down);
            double turns = adjust.GetProperty($"{way}_turns").GetDouble();

            // Down: nobody is promised a part of a turn that is not there.
            yield return new Figure($"turns {way}", [Number(Math.Floor((turns * 100) + 1e-4) / 100, "0.00") + " turns"]);
        }

        yield return Length("length", rod.GetProperty("length"), "target_mm");
    }

    private IEnumerable<Figure> Turning(JsonElement rod)
    {
        foreach (string turn in (string[])["per_turn", "per_flat"])
        {
            if (!Json.Has(rod, turn, out JsonElement effect))
            {
                continue;
            }

            yield return Length($"{turn} length", effect, "length_mm");
            if (Json.Has(effect, "toe_deg", out JsonElement toe))
            {
                double degrees = toe.GetDouble();
                yield return new Figure($"{turn} toe", [Number(Math.Abs(degrees), "0.000") + (degrees >= 0 ? " deg in" : " deg out")]);
            }

            if (Json.Has(effect, "toe_at_plates_mm", out JsonElement plates))
            {
                yield return new Figure($"{turn} toe at the plates", Spellings(Math.Abs(plates.GetDouble())));
            }
        }
    }

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private Figure Length(string name, JsonElement element, string key, LengthRounding rounding = LengthRounding.Nearest) =>
        new(name, Spellings(element.GetProperty(key).GetDouble(), rounding));

    private string[] Spellings(double mm, LengthRounding rounding = LengthRounding.Nearest) =>
    [
        .. ((double[])[mm, mm - Rounding, mm + Rounding])
            .Select(each => LengthFormat.Decimal(UnitsNet.Length.FromMillimeters(each), _unit, rounding)).Distinct(),
    ];
}
