using TieRodCalc.Text;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Threads;

/// <summary>Limits of metric threads against the printed ones, to the last digit.</summary>
public class PrintedMetricLimitsTests
{
    private const string FromPitchDiameter =
        "the chart subtracts 0.433013 P from the rounded pitch diameter; ours is D1 of ISO 724, 2.459, less the deviation";

    /// <summary>Where a printed limit is not ours, and why.</summary>
    private static readonly Dictionary<string, string> Exceptions = new()
    {
        ["M3x0.5-6g minor most"] = FromPitchDiameter,
    };

    private static readonly string[] External = ["deviation", "major most", "major least", "pitch most", "pitch least", "minor most"];
    private static readonly string[] Internal = ["minor least", "minor most", "pitch least", "pitch most", "major least"];

    private static readonly Dictionary<string, string> Printed = new()
    {
        [nameof(PrintedMetricRows.External6g)] = PrintedMetricRows.External6g,
        [nameof(PrintedMetricRows.Internal6H)] = PrintedMetricRows.Internal6H,
        [nameof(PrintedMetricRows.External4g6g)] = PrintedMetricRows.External4g6g,
        [nameof(PrintedMetricRows.SmallExternal6g)] = PrintedMetricRows.SmallExternal6g,
        [nameof(PrintedMetricRows.FinePitches)] = PrintedMetricRows.FinePitches,
    };

    public static TheoryData<string> Tables => [.. Printed.Keys];

    /// <summary>The printed limits that are not ours, each with its reason.</summary>
    internal static IEnumerable<(string Reason, PrintedLimit Limit)> Differing =>
        from limit in All
        where Exceptions.ContainsKey(limit.Name)
        select (Exceptions[limit.Name], limit);

    private static IEnumerable<PrintedLimit> All => Printed.Values.SelectMany(Limits);

    [Theory]
    [MemberData(nameof(Tables))]
    public void Limits_are_the_printed_ones(string table)
    {
        string faults = PrintedLimit.Faults(Limits(Printed[table]), Exceptions);
        Assert.True(faults.Length == 0, faults);
    }

    [Fact]
    public void The_tables_have_all_their_values()
    {
        Assert.Equal(334, All.Count());
        Assert.Equal(212, All.Count(limit => limit.Printed.Confirmed));
        Assert.Equal(29, All.DistinctBy(limit => limit.Name.Split('-')[0]).Count());
        Assert.Subset(All.Select(limit => limit.Name).ToHashSet(), Exceptions.Keys.ToHashSet());
    }

    private static IEnumerable<PrintedLimit> Limits(string table) =>
        from row in PrintedValue.Rows(table)
        from limit in Of(row[0][0], row[1])
        select limit;

    private static IEnumerable<PrintedLimit> Of(string name, string[] cells)
    {
        ThreadGender gender = char.IsAsciiLetterLower(name[^1]) ? ThreadGender.External : ThreadGender.Internal;
        ThreadDesignation thread = ThreadText.Parse(name).Value;
        ThreadLimits limits = ThreadLimits.Of(thread, gender)!;
        Length?[] ours = gender == ThreadGender.External
            ? [thread.Size.Diameter - (limits.Major.Most ?? Length.Zero), limits.Major.Most, limits.Major.Least,
                limits.Pitch.Most, limits.Pitch.Least, limits.Minor.Most]
            : [limits.Minor.Least, limits.Minor.Most, limits.Pitch.Least, limits.Pitch.Most, limits.Major.Least];
        string[] names = gender == ThreadGender.External ? External : Internal;
        for (int n = 0; n < names.Length; n++)
        {
            if (PrintedValue.Read(cells[n]) is { } printed)
            {
                yield return new($"{name} {names[n]}", printed, ours[n]!.Value.Millimeters);
            }
        }
    }
}
