using System.Text;

namespace TieRodCalc.Cli.Tests;

/// <summary>Invented jobs whose rods have names that a shell must quote.</summary>
internal static class CompletionJobs
{
    public const string Fitting = "365.125 mm";
    public const string TooLong = "600 mm";

    /// <summary>Names with blanks, quotes, umlauts and what else means something to a shell.</summary>
    public static string[] Names =>
        ["left", "left front", "it's \"odd\" $HOME `x` !1", "Öse hinten", "a:b=c", @"back\slash", "*?[x]{y,z}~#&;|<>()", "--with", "'",
            "\""];

    public static string WithRods(IEnumerable<string> names, string length = Fitting)
    {
        int rods = CheckJobs.W1.IndexOf("  - {name: w1", StringComparison.Ordinal);
        StringBuilder job = new(CheckJobs.W1[..rods]);
        foreach (string name in names)
        {
            job.Append(Rod(name, length));
        }

        return job.ToString();
    }

    public static string Rod(string name, string length)
    {
        string written = name.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal);
        return CheckJobs.W1[CheckJobs.W1.IndexOf("  - {name: w1", StringComparison.Ordinal)..]
            .With("w1", $"\"{written}\"").With(Fitting, length) + "\n";
    }
}
