namespace TieRodCalc.Tests.Threads;

/// <summary>Where the printed limit of a Unified thread is not ours, and why.</summary>
internal static class PrintedUnifiedExceptions
{
    /// <summary>The printed tolerances are those of an engagement of one diameter; a test holds that.</summary>
    public const string OneDiameter = "1-14 UNS, once a fine thread, keeps the tolerances of one";

    /// <summary>The printed tolerances are those of a neighboring diameter; a test holds that.</summary>
    public const string Group = "the table has the tolerances of a group of diameters";

    private const string NoNeighbor =
        "0.0046 and 0.0041 in, a digit less than the formula gives; each from one place alone, the first recalled with doubt";

    private const string NearHalf = "the tolerance is within 0.000001 in of a half of the last digit; the table, recalled here, goes the other way";

    private const string Allowance = "0.300 Td2 is 0.001650 in; the table has 0.0016, and with it all four limits of the class";

    private static readonly (string Reason, string[] Names)[] Lists =
    [
        (NearHalf, ["7/16-20 UNF-1A pitch least"]),
        (Allowance, [.. Whole("5/8-11 UNC-1A"), .. Whole("5/8-11 UNC-2A")]),
        (NoNeighbor, ["11/16-16 UN-3B pitch most", "15/16-12 UN-3A pitch least"]),
        (OneDiameter,
        [
            .. Whole("1-14 UNS-1A"), .. Whole("1-14 UNS-2A"), "1-14 UNS-3A pitch least",
            "1-14 UNS-1B pitch most", "1-14 UNS-2B pitch most", "1-14 UNS-3B pitch most",
        ]),
        (Group,
        [
            "11/16-16 UN-2B pitch most", "11/16-24 UNEF-2B pitch most",
            "15/16-12 UN-2A pitch least", "15/16-12 UN-2B pitch most",
            "15/16-16 UN-2B pitch most", "15/16-16 UN-3B pitch most",
            "2 3/8-20 UN-2A pitch least", "2 3/8-20 UN-3B pitch most",
            "5 3/4-10 UNS-2A pitch least", "5 3/4-10 UNS-2B pitch most",
            .. Whole("5 3/4-14 UNS-2A"), "5 3/4-14 UNS-2B pitch most",
            "5 3/4-12 UN-2A pitch least", "5 3/4-12 UN-2B pitch most", "5 3/4-12 UN-3A pitch least",
            "5 3/4-16 UN-2B pitch most", "5 3/4-16 UN-3A pitch least", "5 3/4-16 UN-3B pitch most",
        ]),
    ];

    /// <summary>The reason for each limit.</summary>
    public static IReadOnlyDictionary<string, string> Reasons { get; } =
        Lists.SelectMany(list => list.Names.Select(name => (name, list.Reason))).ToDictionary(pair => pair.name, pair => pair.Reason);

    private static IEnumerable<string> Whole(string thread) =>
        new[] { "allowance", "major most", "major least", "pitch most", "pitch least" }.Select(limit => $"{thread} {limit}");
}
