using TieRodCalc.Parts;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Yaml.Tree;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Reads <c>bump</c> of a job: what the indicators of a bump gauge showed.</summary>
internal static class BumpSheetBinder
{
    /// <summary>No wheel of a car travels as far; beyond it a unit or a point is wrong.</summary>
    private const double MostTravelMm = 500;

    /// <summary>No joint is moved further on one car.</summary>
    private const double MostChangeMm = 200;

    /// <summary>Travels that differ by less are the same.</summary>
    private const double SameMm = 1e-6;

    /// <summary>The sheets that could be read, in the order of the file.</summary>
    public static List<JobBumpSheet> Bind(MapReader job)
    {
        List<JobBumpSheet> sheets = [];
        foreach (Node item in job.List("bump")?.Items ?? [])
        {
            if (MapReader.OpenItem(item, "bump sheet", Keys.Sheet, job.File) is { } map && Sheet(map) is { } sheet)
            {
                sheets.Add(sheet);
            }
        }

        return sheets;
    }

    private static JobBumpSheet? Sheet(MapReader map)
    {
        CarSide? side = map.Choose("side", Choices.Side, needed: true);
        MapReader? gauge = map.Map("gauge", Keys.Gauge, needed: true);
        Measured? spacing = gauge?.Dimension("spacing", Least.AboveZero, needed: true);
        IndicatorZero? zeroed = gauge?.Choose("zeroed", Choices.Zeroed, needed: true);
        IndicatorSense? grows = gauge?.Choose("grows", Choices.Grows, needed: true);
        Length? resolution = gauge?.Exact("resolution", Least.AboveZero);
        int before = map.Findings.Count;
        List<Row> rows = Rows(map);
        bool sound = map.Findings.Count == before;
        MapReader? then = map.Map("then", Keys.Then);
        BumpChange change = new(Changed(then, "outer_raised") ?? default, Changed(then, "rod_longer") ?? default);
        if (side is null || spacing is null || zeroed is null || grows is null || rows.Count == 0)
        {
            return null;
        }

        BumpSheet sheet = new()
        {
            Spacing = spacing.Value.Nominal,
            Zeroed = zeroed.Value,
            Grows = grows.Value,
            Resolution = resolution,
            Readings = [.. rows.Select(row => row.Reading)],
            Then = change,
        };
        if (sound || zeroed == IndicatorZero.Once)
        {
            // Steps add up: with one of them missing the others say nothing.
            ReportBeyond(sheet, rows);
        }

        return new JobBumpSheet(side.Value, sheet);
    }

    private static Length? Changed(MapReader? then, string key)
    {
        Length? change = then?.Signed(key);
        if (change is not { } by || Math.Abs(by.Millimeters) <= MostChangeMm)
        {
            return change;
        }

        then!.Findings.Problem(
            then.SpanOf(key), string.Create(Wording.Invariant, $"'{key}' is out of range: it is at most {MostChangeMm} mm either way"));
        return null;
    }

    /// <summary>The readings away from ride height that could be read.</summary>
    private static List<Row> Rows(MapReader sheet)
    {
        List<Row> rows = [];
        if (sheet.List("readings", needed: true) is not { } list)
        {
            return rows;
        }

        int before = sheet.Findings.Count;
        foreach (Node item in list.Items)
        {
            if (MapReader.OpenItem(item, "reading", Keys.Reading, sheet.File) is { } map && Reading(map) is { } reading)
            {
                Add(rows, new Row(map, reading));
            }
        }

        if (rows.Count == 0 && list.Whole && sheet.Findings.Count == before)
        {
            sheet.Findings.Problem(
                list.Items.Count == 0 ? sheet.Find("readings")!.Value.Key.Span : list.Span,
                list.Items.Count == 0 ? "'readings' needs at least one reading" : "'readings' has none away from ride height");
        }

        return rows;
    }

    private static BumpReading? Reading(MapReader map)
    {
        Length? travel = map.Signed("travel", needed: true);
        Length? front = map.Signed("front", needed: true);
        Length? rear = map.Signed("rear", needed: true);
        return travel is { } at && front is { } first && rear is { } second ? new BumpReading(at, first, second) : null;
    }

    /// <summary>Adds a reading, or reports why there cannot be one at its travel. Ride height that is written out is passed over.</summary>
    private static void Add(List<Row> rows, Row row)
    {
        double travel = row.TravelMm;
        string? wrong = null;
        if (Math.Abs(travel) <= SameMm)
        {
            wrong = row.Reading is { Front.Value: 0, Rear.Value: 0 }
                ? null
                : "ride height is where the readings count from: both are zero there";
        }
        else if (Math.Abs(travel) > MostTravelMm)
        {
            wrong = string.Create(
                Wording.Invariant, $"a travel of {row.Travel} is out of range: it is at most {MostTravelMm} mm each way");
        }
        else if (rows.Find(other => Math.Abs(other.TravelMm - travel) <= SameMm) is { } first)
        {
            int line = row.Map.File.Source.LineOf(first.Map.SpanOf("travel").Start);
            wrong = string.Create(Wording.Invariant, $"there is a reading at {row.Travel} already, in line {line}");
        }
        else
        {
            rows.Add(row);
        }

        if (wrong is not null)
        {
            row.Map.Findings.Problem(row.Map.SpanOf("travel"), wrong);
        }
    }

    /// <summary>
    /// Reports the readings that no wheel gives. From ride height outward, since a step that is wrong counts in every one beyond it.
    /// </summary>
    private static void ReportBeyond(BumpSheet sheet, List<Row> rows)
    {
        List<Row> left = [.. rows.OrderBy(row => Math.Abs(row.TravelMm))];
        while (left.Count > 0 && (sheet with { Readings = [.. left.Select(row => row.Reading)] }).FirstWrong is { } wrong)
        {
            string added = sheet.Zeroed == IndicatorZero.EachStep ? ", added up from ride height," : string.Empty;
            left[wrong].Map.Findings.Problem(
                left[wrong].Map.Span,
                $"rear less front{added} is more than half of the spacing of the indicators: check the units, the decimal points and "
                    + "the signs");
            left.RemoveAt(wrong);
        }
    }

    /// <summary>A reading and where it stands.</summary>
    private sealed record Row(MapReader Map, BumpReading Reading)
    {
        public double TravelMm => Reading.Travel.Millimeters;

        /// <summary>The travel as it is written.</summary>
        public string Travel => Wording.Shown(Map.Text("travel")!.Value);
    }
}
