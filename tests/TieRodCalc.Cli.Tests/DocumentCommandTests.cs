using System.Text.RegularExpressions;

namespace TieRodCalc.Cli.Tests;

/// <summary>Every command line of README and docs, in blocks and within sentences, is one that the program takes.</summary>
public sealed partial class DocumentCommandTests
{
    private const string Sample = "catalog-samples/jobs/car-27.yaml";

    /// <summary>What a reader puts in place of a word in capitals, and of the files that a short example speaks of.</summary>
    private static readonly (string Pattern, string Word)[] s_places =
    [
        (@"(?<=(-o|--record|--picture) )FILE(\.\w+)?", "written"),
        (@"(?<=--with )(NAME|REMEDY)", "longer-sleeve"),
        (@"(?<=--rod )NAME", "left"),
        (@"(?<=^choose )JOB", "catalog-samples/jobs/car-27-choose.yaml"),
        (@"(?<=^bump )JOB", "catalog-samples/jobs/car-27-bump.yaml"),
        (@"(?<=^asbuilt )JOB", "catalog-samples/jobs/car-27-built.yaml"),
        (@"JOB(?=.*--with)", "catalog-samples/jobs/car-27-short-sleeve.yaml"),
        (@"\b(JOB|FILE)\b…?", Sample),
        (@"(?<= )job\.yaml", Sample),
        (@"(?<= )parts\.yaml", "catalog-samples/parts/pinewater.yaml"),
        (@"DESIGNATION", "M18x1.5"),
        (@"SHELL", "bash"),
        (@"^COMMAND", "plan"),
        (@"~/\S*/", string.Empty),
    ];

    [Theory]
    [MemberData(nameof(Documents.Each), MemberType = typeof(Documents))]
    public void Every_command_line_is_understood(string document)
    {
        using DocumentFolder folder = new();
        string answers = folder.Read("docs/new-left-rod.txt");
        foreach ((string written, int? due) in Commands(Documents.Lines(document)).Distinct())
        {
            string command = s_places.Aggregate(written, (text, place) => Regex.Replace(text, place.Pattern, place.Word));
            bool overwrites = Writes().IsMatch(command) && !command.Contains("--force", StringComparison.Ordinal);
            command = overwrites ? WordBeforeFiles().Replace(command, "$1 --force", 1) : command;
            (int status, string shown) = folder.Run(command, answers);
            Assert.True(
                due is { } only ? status == only : status is 0 or 1,
                $"{document}: tierodcalc {written}\nrun as: {command}\nstatus {status}\n{shown}");
        }
    }

    [Fact]
    public void Command_lines_are_found_in_blocks_and_in_sentences()
    {
        string[] lines =
        [
            "Ask `tierodcalc plan JOB`, or `tierodcalc check",
            "FILE` <!-- status 2 -->, or `source <(tierodcalc completion bash)`.",
            "<!-- status 1 -->",
            "<!-- output: toe JOB -->",
            "```",
            "$ tierodcalc toe JOB",
            "ROD left",
            "dotnet run --project src/TieRodCalc.Cli -- plan JOB",
            "tierodcalc completion powershell | Out-String",
            "```",
        ];
        Assert.Equal(
            [
                ("toe JOB", 1), ("plan JOB", null), ("completion powershell", null),
                ("plan JOB", null), ("check FILE", 2), ("completion bash", null),
            ],
            Commands(lines));
    }

    /// <summary>The command lines of a document, those in blocks first, each with the exit status that a comment says is due.</summary>
    private static List<(string Command, int? Due)> Commands(string[] lines)
    {
        List<(string, int?)> commands = [];
        string prose = string.Empty;
        string comment = string.Empty;
        foreach ((string line, bool fenced) in Documents.Fences(lines))
        {
            if (fenced && Line().Match(line) is { Success: true } match)
            {
                commands.Add((match.Groups["command"].Value.Trim(), Due(comment)));
                comment = string.Empty;
            }

            bool marker = line.StartsWith("<!--", StringComparison.Ordinal);
            comment = fenced ? comment : marker ? comment + line : string.Empty;
            prose += fenced ? "\n" : $"{line} ";
        }

        foreach (Match span in Span().Matches(prose))
        {
            commands.AddRange(Inside().Matches(span.Groups["span"].Value)
                .Select(match => (match.Groups["command"].Value.Trim(), Due(span.Groups["comment"].Value))));
        }

        return commands;
    }

    private static int? Due(string comment) =>
        Status().Match(comment) is { Success: true } match ? match.Groups["status"].Value[0] - '0' : null;

    [GeneratedRegex(@"^(\$ )?(tierodcalc|dotnet run --project src/TieRodCalc\.Cli --) (?<command>[^|]+)")]
    private static partial Regex Line();

    [GeneratedRegex(@"`(?<span>[^`]+)`(?<comment> ?<!-- status \d -->)?")]
    private static partial Regex Span();

    [GeneratedRegex(@"(?<=^|\(|: )tierodcalc (?<command>[^)|\\]+)")]
    private static partial Regex Inside();

    [GeneratedRegex(@"<!-- .*status (?<status>\d) ")]
    private static partial Regex Status();

    [GeneratedRegex(@"(^| )(-o|--record|--picture) |^new\b(?! --help)")]
    private static partial Regex Writes();

    [GeneratedRegex(@"^(\S+)")]
    private static partial Regex WordBeforeFiles();
}
