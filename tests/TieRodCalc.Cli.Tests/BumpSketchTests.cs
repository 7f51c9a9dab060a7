using System.Text.Json;
using static TieRodCalc.Cli.Tests.BumpJobs;

namespace TieRodCalc.Cli.Tests;

/// <summary>Table and drawing in characters: every reading has its row, at the height of its travel, and its sign where its toe is.</summary>
public sealed class BumpSketchTests
{
    private const int Zero = Label + Half;
    private const int Label = 2 + 17;
    private const int Half = 28;

    /// <summary>Even and uneven travels, more than there are rows for, one side alone, one reading, no toe at all.</summary>
    public static TheoryData<string, int> Jobs => new()
    {
        { Height, 0 },
        { Corner, 0 },
        { Of([120, 80, 20, -40, -100]), 0 },
        { Of([25, 10, -30]), 0 },
        { Of([50, 25, 0.5, -50]), 0 },
        { Of([70, 65, 10, -15, -16, -70]), 0 },
        { Of([30, 60]), 0 },
        { Of([-40]), 1 },
        { Of([.. Enumerable.Range(-20, 41).Where(step => step != 0).Select(step => step * 4.0)]), 0 },
        { Unread + Bump(Sheet(0, 0)), 0 },
    };

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Every_travel_has_one_row_with_its_reading_in_its_place(string job, int status)
    {
        JsonElement[] points = Points(job, status);
        double most = Drawn(job, status, out Dictionary<string, string> rows);
        Assert.Equal(points.Length, rows.Count);
        foreach (JsonElement point in points)
        {
            double toe = point.Number("at_gauge_mm");
            string row = rows[Travel(point.Number("travel_mm"))];
            Assert.Equal(Zero + (most == 0 ? 0 : (int)Math.Round(toe / most * Half, MidpointRounding.AwayFromZero)), row.IndexOf('o', Label));
            Assert.Equal(row.IndexOf('o', Label), row.LastIndexOf('o'));
        }
    }

    [Fact]
    public void Rows_stand_as_far_apart_as_the_travels()
    {
        string[] labels = [.. Lines(Of([120, 80, 20, -40, -100]), 0).Select(line => line.Length < 19 ? line.Trim() : line[2..19].Trim())];

        // The least gap is 20 mm, from 20 mm to ride height.
        Assert.Equal(
            ["120.00 mm bump", "", "80.00 mm bump", "", "", "20.00 mm bump", "ride height", "", "40.00 mm droop", "", "", "100.00 mm droop"],
            labels);
    }

    [Fact]
    public void The_fitted_and_the_changed_curve_stand_beside_where_they_differ()
    {
        Drawn(Height, 0, out Dictionary<string, string> rows);
        Assert.Equal(Zero, rows["120.00 mm bump"].IndexOf('x'));
        Assert.Equal(Zero, rows["120.00 mm droop"].IndexOf('x'));
        Assert.Contains("o measured   + two terms   x with the change", Printed(Height), StringComparison.Ordinal);

        Assert.Contains("  o measured\n", Printed(Of([-40]), 1), StringComparison.Ordinal);
        Assert.Contains("  o measured   + two terms\n", Printed(Job(1, Rod)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_table_tells_each_step_as_the_wheel_goes_away_from_ride_height()
    {
        // Toe-in grows in bump and toe-out in droop: the sheet of a joint that stands too low.
        string[] table = Table(Height);
        Assert.Equal("120.00 mm bump  2.139 mm toe-in   0.482 deg  5.137 mm   0.453 mm toe-in *", Marked(table[0]));
        Assert.StartsWith("120.00 mm droop ", table[^1], StringComparison.Ordinal);
        Assert.All(table[..3], line => Assert.Contains("0.453 mm toe-in", line, StringComparison.Ordinal));
        Assert.All(table[4..], line => Assert.Contains("0.453 mm toe-out", line, StringComparison.Ordinal));
        Assert.Single(table, line => line.EndsWith(" *", StringComparison.Ordinal));

        // Toe-out both ways: a rod too short.
        string[] bent = Table(TooShort);
        Assert.All(bent.Where((_, index) => index != 3), line => Assert.EndsWith("toe-out", line.TrimEnd(' ', '*'), StringComparison.Ordinal));

        static string Marked(string line) => line.EndsWith('*') ? line : line + " *";
    }

    [Fact]
    public void A_step_back_toward_where_it_came_from_is_told_by_its_own_direction()
    {
        // In bump first toe-in, then toward toe-out, though the wheel still points in.
        string[] table = Table(Unread + Bump(Sheet(2e-4, -3e-6, travels: [100, 50, -50])));
        Assert.Contains("mm toe-in ", table[0], StringComparison.Ordinal);
        Assert.EndsWith("toe-out", table[0].TrimEnd(' ', '*'), StringComparison.Ordinal);
    }

    [Fact]
    public void Columns_stay_apart_where_the_numbers_are_wide()
    {
        string[] table = Table(Of([400, 200, -200, -400], 1.1e-3), 0);
        Assert.All(table, line => Assert.True(PlanPage.Joined(line).Split("mm").Length is 3 or 4 or 5, line));
        Assert.All(table, line => Assert.DoesNotMatch("toe-(in|out)[0-9]", line));
    }

    [Fact]
    public void Without_plates_there_is_no_column_for_them()
    {
        string job = Height.With("  plates: 610 mm\n", string.Empty);
        Assert.DoesNotContain("at plates", Printed(job), StringComparison.Ordinal);
        Assert.Contains("at plates", Printed(Height), StringComparison.Ordinal);
    }

    private static string Of(double[] travels, double slope = 7e-5) => Unread + Bump(Sheet(slope, 0, travels: travels));

    private static JsonElement[] Points(string job, int status) => [.. Side(job, status).GetProperty("sheets")[0].GetProperty("points").EnumerateArray()];

    private static string[] Table(string job, int status = 0) =>
    [
        .. Printed(job, status).Split('\n').SkipWhile(line => !line.StartsWith("  travel  ", StringComparison.Ordinal)).Skip(1)
            .TakeWhile(line => line.Length > 0).Select(line => line.Trim()),
    ];

    private static string[] Lines(string job, int status) =>
    [
        .. Printed(job, status).Split('\n').SkipWhile(line => line != "Toe over travel, at the gauge").Skip(2)
            .TakeWhile(line => !line.StartsWith("  o measured", StringComparison.Ordinal)),
    ];

    /// <summary>The greatest toe drawn, and the rows by their travels.</summary>
    private static double Drawn(string job, int status, out Dictionary<string, string> rows)
    {
        JsonElement side = Side(job, status);
        rows = Lines(job, status).Where(line => line.Length > 19 && line[2..19].Trim().Length > 0)
            .ToDictionary(line => line[2..19].Trim(), line => line);
        double most = Points(job, status).Max(point => Math.Abs(point.Number("at_gauge_mm")));
        string head = Printed(job, status).Split('\n').SkipWhile(line => line != "Toe over travel, at the gauge").ElementAt(1);
        Assert.Equal(Zero, head.IndexOf(" 0 ", StringComparison.Ordinal) + 1);
        double named = double.Parse(PlanPage.Joined(head).Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.True(named >= most - 0.0006 && side.GetProperty("sheets").GetArrayLength() > 0);
        return Math.Abs(named - most) < 0.0006 ? most : named;
    }

    private static string Travel(double mm) => mm == 0 ? "ride height"
        : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Math.Abs(mm):0.00} mm {(mm > 0 ? "bump" : "droop")}");
}
