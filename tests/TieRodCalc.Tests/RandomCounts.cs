using System.Globalization;

namespace TieRodCalc.Tests;

/// <summary>How many random cases the tests draw, and from which seed: the one place that says so.</summary>
internal static class RandomCounts
{
    /// <summary>Environment variable that replaces the number of rods, for runs that repeat the tests many times.</summary>
    public const string Variable = "TIERODCALC_RANDOM_COUNT";

    /// <summary>Environment variable that replaces the number of mutated files alone.</summary>
    public const string MutatedFilesVariable = "TIERODCALC_MUTATED_FILES";

    /// <summary>Seed of every draw.</summary>
    public const int Seed = 271_828;

    /// <summary>The same seed as the property attributes take it.</summary>
    public const string Replay = "(271828,4711)";

    /// <summary>Random texts for each reader of values; attributes take a constant only.</summary>
    public const int Texts = 2_000;

    private const int DefaultRods = 20_000;

    /// <summary>Random rods.</summary>
    public static int Rods { get; } = Said(Variable) ?? DefaultRods;

    /// <summary>Random steering geometries: as many as rods.</summary>
    public static int Geometries => Rods;

    /// <summary>Random pairs of threads: a tenth of the rods.</summary>
    public static int Pairs => Math.Max(50, Rods / 10);

    /// <summary>Jobs that cannot be built, whose remedies are worked out: a quarter of the rods.</summary>
    public static int FailingJobs => Math.Max(10, Rods / 4);

    /// <summary>Rods with tolerances: a tenth of the rods.</summary>
    public static int TolerancedRods => Math.Max(30, Rods / 10);

    /// <summary>Random double-wishbone corners: a tenth of the rods.</summary>
    public static int Corners => Math.Max(20, Rods / 10);

    /// <summary>Random corners that are read with a bump gauge and corrected: a fortieth of the rods.</summary>
    public static int BumpCorners => Math.Max(200, Rods / 40);

    /// <summary>Random bump sheets: a tenth of the rods.</summary>
    public static int BumpSheets => Math.Max(200, Rods / 10);

    /// <summary>Random small catalogs: one for every forty rods.</summary>
    public static int Catalogs => Math.Max(8, Rods / 40);

    /// <summary>Random larger catalogs: one for every fifty small ones.</summary>
    public static int LargeCatalogs => Math.Max(1, Catalogs / 50);

    /// <summary>Spoiled part and job files: three for every twenty rods.</summary>
    public static int Files => Math.Max(200, Rods * 3 / 20);

    /// <summary>Mutated part and job files that are read and computed: five for every two rods.</summary>
    public static int MutatedFiles { get; } = Said(MutatedFilesVariable) ?? Math.Max(2_000, Rods * 5 / 2);

    /// <summary>Random corners whose best moves are searched: one for every four hundred rods.</summary>
    public static int SearchedCorners => Math.Max(4, Rods / 400);

    /// <summary>Random corners whose joints' swing is taken: one for every thousand rods.</summary>
    public static int SwungCorners => Math.Max(10, Rods / 1_000);

    /// <summary>What a test prints so that its draw can be repeated.</summary>
    public static string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{Rods} rods, {Geometries} geometries, {Corners} corners, {Texts} texts, {Files} files, {Catalogs} catalogs, "
        + $"{MutatedFiles} mutated files, {FailingJobs} failing jobs, {TolerancedRods} rods with tolerances, "
        + $"seed {Seed} (number of rods: {Variable})");

    /// <summary>The source of random numbers of one case.</summary>
    public static Random For(int index) => new(unchecked(Seed * 31 + index * 7_919));

    private static int? Said(string variable) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), NumberStyles.None, CultureInfo.InvariantCulture, out int count)
            ? count
            : null;
}
