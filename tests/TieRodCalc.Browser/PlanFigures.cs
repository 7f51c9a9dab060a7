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
/// <param name="Heading">Its name and the verdict.</param>
/// <param name="Figures">Its figures.</param>
/// <param name="Drawn">Lengths that are drawn, in millimeters, each under the name that the drawing gives it.</param>
internal sealed record RodFigures(string Heading, IReadOnlyList<Figure> Figures, ILookup<string, double> Drawn);

/// <summary>What has to stand on the pages of a job, from what <c>plan --json</c> says of it.</summary>
internal sealed class PlanFigures
{
    /// <summary>Numbers in the plan's text are rounded to six decimals: a half may have been more or less.</summary>
    private const double Rounding = 5e-7;

    // The letters under which a sheet draws and lists lengths.
    private static readonly (string Side, string Mark, string Off)[] s_cutLetters = [("inner", "K", "L"), ("outer", "P", "Q")];

    private static readonly (string Side, string Showing, string Inserted, string Engaged)[] s_jointLetters =
        [("inner", "B", "C", "D"), ("outer", "H", "G", "F")];

    private readonly LengthDisplay _unit;

    private PlanFigures(JsonElement plan, LengthDisplay unit)
    {
        _unit = unit;
        Rods =
        [
            .. plan.GetProperty("rods").EnumerateArray().Select(rod => new RodFigures(
                $"Rod {Json.Text(rod, "name")}: {Json.Text(rod, "verdict")}", [.. Of(rod)], DrawnLengths.Of(rod))),
        ];
    }

    /// <summary>The rods in the order of the job.</summary>
    public IReadOnlyList<RodFigures> Rods { get; }

    /// <param name="plan">What <c>plan --json</c> printed.</param>
    /// <param name="unit">The job's unit.</param>
    public static PlanFigures Of(JsonElement plan, LengthDisplay unit) => new(plan, unit);

    private IEnumerable<Figure> Of(JsonElement rod) => Json.Has(rod, "joints", out JsonElement joints)
        ?
        [
            Length("A", "center to center", rod.GetProperty("length"), "target_mm"),
            .. Cuts(rod.GetProperty("cut")),
            .. Joints(joints),
            .. Starting(rod.GetProperty("start")),

            // Where turning changes nothing, there is nothing to adjust.
            .. Json.Has(rod, "lengthens", out _) ? Adjustment(rod.GetProperty("adjust")) : [],
            .. Turning(rod),
        ]
        : rod.GetProperty("binding").EnumerateArray().Select(binding =>
            Length("misses by", $"what {Json.Text(binding, "limit")} misses by", binding, "missed_by_mm"));

    private IEnumerable<Figure> Cuts(JsonElement cuts)
    {
        foreach ((string side, string mark, string off) in s_cutLetters)
        {
            if (Json.Has(cuts, side, out JsonElement cut) && Json.Number(cut, "recommended_mm") > 0)
            {
                yield return Length("CUT", $"{side} cut", cut, "recommended_mm");
                yield return Length(off, $"{side} cut in the drawing", cut, "recommended_mm");
                yield return Length(mark, $"{side} mark from the center", cut, "mark_from_center_mm");
                yield return Length("at least", $"{side} least cut", cut, "least_mm", LengthRounding.Up);
                yield return Length("at most", $"{side} most cut", cut, "most_mm", LengthRounding.Down);
            }
        }
    }

    private IEnumerable<Figure> Joints(JsonElement joints)
    {
        foreach ((string side, string showing, string inserted, string engaged) in s_jointLetters)
        {
            if (Json.Has(joints, side, out JsonElement joint))
            {
                yield return Length(showing, $"{side} thread showing", joint, "showing_mm");
                yield return Length(inserted, $"{side} insertion", joint, "insertion_mm");
                yield return Length(engaged, $"{side} engaged", joint, "engaged_mm", LengthRounding.Down);
                yield return Length(side, $"{side} engaged at least", joint, "engaged_least_mm", LengthRounding.Down);
                yield return Length("required", $"{side} engagement required", joint, "required_mm", LengthRounding.Up);
            }
        }
    }

    private IEnumerable<Figure> Starting(JsonElement start)
    {
        foreach (string turns in (string[])["alone_turns", "then_sleeve_turns", "then_end_turns"])
        {
            if (Json.Has(start, turns, out JsonElement value) && Turns(value) is { } figure)
            {
                yield return new Figure(turns, [figure]);
            }
        }

        if (Turns(start.GetProperty("alone_turns")) is not null)
        {
            yield return Length("until", "showing before the second end", start, "showing_before_second_mm");
        }
    }

    /// <summary>Null where nothing is to be turned.</summary>
    private static string? Turns(JsonElement value) =>
        Number(value.GetDouble(), "0.0") is var figure && figure != "0.0" ? figure + " turns" : null;

    private IEnumerable<Figure> Adjustment(JsonElement adjust)
    {
        foreach (string way in (string[])["shorter", "longer"])
        {
            yield return Length(way, $"adjusts {way}", adjust, $"{way}_mm", LengthRounding.Down);

            // Down: nobody is promised a part of a turn that is not there.
            double turns = Math.Floor((Json.Number(adjust, $"{way}_turns") * 100) + 1e-4) / 100;
            yield return new Figure($"turns {way}", [Number(turns, "0.00") + " turns"]);
        }
    }

    private IEnumerable<Figure> Turning(JsonElement rod)
    {
        // Where flats can be counted, nobody needs halves.
        (string Key, string Words) part = Json.Has(rod, "per_flat", out _) ? ("per_flat", "one flat") : ("per_half_turn", "half a turn");
        foreach ((string key, string words) in ((string, string)[])[("per_turn", "one turn"), part])
        {
            if (!Json.Has(rod, key, out JsonElement effect))
            {
                continue;
            }

            yield return Length(words, $"length of {words}", effect, "length_mm");
            if (Json.Has(effect, "toe_deg", out JsonElement toe))
            {
                double degrees = toe.GetDouble();
                yield return new Figure($"toe of {words}", [Number(Math.Abs(degrees), "0.000") + (degrees >= 0 ? " deg in" : " deg out")]);
            }

            if (Json.Has(effect, "toe_at_plates_mm", out JsonElement plates))
            {
                yield return new Figure($"toe at the plates of {words}", Spellings(Math.Abs(plates.GetDouble())));
            }
        }
    }

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    /// <summary>The words or the letter before a length set it apart from another one as long.</summary>
    private Figure Length(string before, string name, JsonElement element, string key, LengthRounding rounding = LengthRounding.Nearest) =>
        new(name, [.. Spellings(Json.Number(element, key), rounding).Select(spelling => $"{before} {spelling}")]);

    private string[] Spellings(double mm, LengthRounding rounding = LengthRounding.Nearest) =>
    [
        .. ((double[])[mm, mm - Rounding, mm + Rounding])
            .Select(each => LengthFormat.Decimal(UnitsNet.Length.FromMillimeters(each), _unit, rounding)).Distinct(),
    ];
}
