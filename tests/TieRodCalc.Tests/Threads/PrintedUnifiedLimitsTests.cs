using System.Globalization;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Threads;

/// <summary>Limits of Unified threads against the printed ones, to the last digit.</summary>
public class PrintedUnifiedLimitsTests
{
    private static readonly string[] External = ["allowance", "major most", "major least", "pitch most", "pitch least"];
    private static readonly string[] Internal = ["minor least", "minor most", "pitch least", "pitch most", "major least"];

    private static readonly Dictionary<string, string> Printed = new()
    {
        [nameof(PrintedUnifiedRows.Recalled)] = PrintedUnifiedRows.Recalled,
        [nameof(PrintedUnifiedRows.ReadOnPage1755)] = PrintedUnifiedRows.ReadOnPage1755,
        [nameof(PrintedUnifiedRows.ReadOnPage1762)] = PrintedUnifiedRows.ReadOnPage1762,
        [nameof(PrintedUnifiedRows.ReadInSixteenths)] = PrintedUnifiedRows.ReadInSixteenths,
        [nameof(PrintedUnifiedRows.ReadInNumberSizes)] = PrintedUnifiedRows.ReadInNumberSizes,
    };

    public static TheoryData<string> Tables => [.. Printed.Keys];

    /// <summary>The printed limits that are not ours, each with its reason.</summary>
    internal static IEnumerable<(string Reason, PrintedLimit Limit)> Exceptions =>
        from limit in All.DistinctBy(limit => limit.Name)
        where PrintedUnifiedExceptions.Reasons.ContainsKey(limit.Name)
        select (PrintedUnifiedExceptions.Reasons[limit.Name], limit);

    private static IEnumerable<PrintedLimit> All => Printed.Values.SelectMany(Limits);

    [Theory]
    [MemberData(nameof(Tables))]
    public void Limits_are_the_printed_ones(string table)
    {
        string faults = PrintedLimit.Faults(Limits(Printed[table]), PrintedUnifiedExceptions.Reasons);
        Assert.True(faults.Length == 0, faults);
    }

    [Fact]
    public void The_tables_have_all_their_values()
    {
        Assert.Equal(1170, All.Count());
        Assert.Equal(177, Limits(PrintedUnifiedRows.Recalled).Count(limit => limit.Printed.Confirmed));
        Assert.Equal(51, All.DistinctBy(limit => limit.Name[..limit.Name.LastIndexOf('-')]).Count());
        Assert.Subset(All.Select(limit => limit.Name).ToHashSet(), PrintedUnifiedExceptions.Reasons.Keys.ToHashSet());
    }

    [Fact]
    public void An_exception_is_off_by_a_few_of_the_last_digit() => Assert.All(
        All.Where(limit => PrintedUnifiedExceptions.Reasons.ContainsKey(limit.Name)),
        limit => Assert.InRange(Math.Abs((double)limit.Printed.Value - limit.Ours), 0, 0.000601));

    /// <summary>The reason of the exceptions of 1-14, held: of the fine series it has the printed limits.</summary>
    [Fact]
    public void The_tolerances_of_1_14_are_those_of_one_diameter() => Assert.Equal(
        Named(PrintedUnifiedExceptions.OneDiameter).Select(limit => (double)limit.Printed.Value),
        Named(PrintedUnifiedExceptions.OneDiameter).Select(limit => Renamed(limit.Name, "1-14 UNS", "1-14 UNF").Ours),
        (printed, ours) => Math.Abs(printed - ours) < 1e-7);

    /// <summary>The reason of the exceptions of groups, held: the printed tolerance of the pitch diameter is that of a neighbor.</summary>
    [Theory]
    [InlineData("11/16-16 UN-2B pitch most", "5/8-16 UN", 0.6469)]
    [InlineData("11/16-24 UNEF-2B pitch most", "5/8-24 UNEF", 0.6604)]
    [InlineData("15/16-12 UN-2A pitch least", "1-12 UN", 0.8817)]
    [InlineData("15/16-12 UN-2B pitch most", "1-12 UN", 0.8834)]
    [InlineData("15/16-16 UN-2B pitch most", "1-16 UN", 0.8969)]
    [InlineData("15/16-16 UN-3B pitch most", "1-16 UN", 0.8969)]
    [InlineData("2 3/8-20 UN-2A pitch least", "2 1/2-20 UN", 2.3410)]
    [InlineData("2 3/8-20 UN-3B pitch most", "2 1/2-20 UN", 2.3425)]
    [InlineData("5 3/4-10 UNS-2A pitch least", "6-10 UNS", 5.6828)]
    [InlineData("5 3/4-10 UNS-2B pitch most", "6-10 UNS", 5.6850)]
    [InlineData("5 3/4-14 UNS-2A pitch least", "6-14 UNS", 5.7016)]
    [InlineData("5 3/4-14 UNS-2B pitch most", "6-14 UNS", 5.7036)]
    [InlineData("5 3/4-12 UN-2A pitch least", "6-12 UN", 5.6938)]
    [InlineData("5 3/4-12 UN-2B pitch most", "6-12 UN", 5.6959)]
    [InlineData("5 3/4-12 UN-3A pitch least", "6-12 UN", 5.6959)]
    [InlineData("5 3/4-16 UN-2B pitch most", "6-16 UN", 5.7094)]
    [InlineData("5 3/4-16 UN-3A pitch least", "6-16 UN", 5.7094)]
    [InlineData("5 3/4-16 UN-3B pitch most", "6-16 UN", 5.7094)]
    public void The_tolerance_of_a_group_is_that_of_a_neighbor(string name, string neighbor, double otherLimit)
    {
        PrintedLimit printed = Named(PrintedUnifiedExceptions.Group).Single(limit => limit.Name == name);
        string[] words = name.Split('-')[^1].Split(' ');
        ThreadGender gender = words[0][1] == 'A' ? ThreadGender.External : ThreadGender.Internal;
        DiameterLimits ours = ThreadLimits.Of(Read(neighbor, words[0]), gender)!.Pitch;
        Assert.Equal(Math.Abs((double)printed.Printed.Value - otherLimit), (ours.Most!.Value - ours.Least!.Value).Inches, 1e-7);
    }

    /// <summary>
    /// Minor diameters of 2B on both sides of 0.138 in, from which three decimals are printed. ASME B1.1, from memory, unconfirmed.
    /// </summary>
    [Theory]
    [InlineData("0.112-40 UNC", 0.0849, 0.0939)]
    [InlineData("0.125-40 UNC", 0.0979, 0.1062)]
    [InlineData("0.138-32 UNC", 0.104, 0.114)]
    [InlineData("0.164-32 UNC", 0.130, 0.139)]
    [InlineData("0.190-24 UNC", 0.145, 0.156)]
    [InlineData("0.190-32 UNF", 0.156, 0.164)]
    [InlineData("0.216-24 UNC", 0.171, 0.181)]
    public void Minor_diameters_of_number_sizes_are_the_printed_ones(string size, double least, double most)
    {
        DiameterLimits minor = ThreadLimits.Of(Read(size, "2B"), ThreadGender.Internal)!.Minor;
        Assert.Equal(least, minor.Least!.Value.Inches, 1e-7);
        Assert.Equal(most, minor.Most!.Value.Inches, 1e-7);
    }

    private static IEnumerable<PrintedLimit> Named(string reason) =>
        All.Where(limit => PrintedUnifiedExceptions.Reasons.GetValueOrDefault(limit.Name) == reason);

    /// <summary>Our limit of the same name of another thread.</summary>
    private static PrintedLimit Renamed(string name, string size, string other)
    {
        string[] words = name[(size.Length + 1)..].Split(' ', 2);
        return Of(other, [words[0], "0", "0", "0", "0", "0"]).Single(limit => limit.Name == $"{other}-{words[0]} {words[1]}");
    }

    /// <summary>The limits of a table; the printed allowance is what the basic diameter is above the most major diameter.</summary>
    private static IEnumerable<PrintedLimit> Limits(string table) =>
        from row in PrintedValue.Rows(table)
        let size = string.Join(' ', row[0])
        from part in row.Skip(1)
        from limit in Of(size, part)
        select limit;

    private static IEnumerable<PrintedLimit> Of(string size, string[] part)
    {
        string name = size + "-" + part[0];
        ThreadGender gender = part[0][1] == 'A' ? ThreadGender.External : ThreadGender.Internal;
        ThreadDesignation thread = Read(size, part[0]);
        ThreadLimits limits = ThreadLimits.Of(thread, gender)!;
        double allowance = Math.Round(thread.Size.Diameter.Inches + 1e-9, 4, MidpointRounding.AwayFromZero)
            - (limits.Major.Most?.Inches ?? double.NaN);
        Length?[] ours = gender == ThreadGender.External
            ? [Length.FromInches(allowance), limits.Major.Most, limits.Major.Least, limits.Pitch.Most, limits.Pitch.Least]
            : [limits.Minor.Least, limits.Minor.Most, limits.Pitch.Least, limits.Pitch.Most, limits.Major.Least];
        string[] names = gender == ThreadGender.External ? External : Internal;
        for (int n = 0; n < names.Length; n++)
        {
            yield return new($"{name} {names[n]}", PrintedValue.Read(part[n + 1])!.Value, ours[n]!.Value.Inches);
        }
    }

    /// <summary>A thread as the table writes it; the text reader of the library ends at 150 mm.</summary>
    private static ThreadDesignation Read(string size, string toleranceClass)
    {
        string[] words = size.Split(' ', '-');
        double diameter = words[..^2].Sum(word => word.Split('/').Select(Number).Aggregate((above, below) => above / below));
        return new(ThreadSize.Unified(Length.FromInches(diameter), Number(words[^2])), Hand.Right)
        {
            Series = Enum.Parse<UnifiedSeries>(words[^1], ignoreCase: true),
            ToleranceClass = toleranceClass,
        };
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
