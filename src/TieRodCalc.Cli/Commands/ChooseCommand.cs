using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Commands;

/// <summary><c>choose JOB</c>: which parts of the catalogs reach the length.</summary>
internal static class ChooseCommand
{
    private const int UsualTop = 10;

    /// <summary>So many are found and planned in a moment; a longer list is read by nobody.</summary>
    private const int MostTop = 10_000;

    private static readonly Dictionary<string, ChoiceOrder> s_orders = new(StringComparer.Ordinal)
    {
        ["best"] = ChoiceOrder.Best,
        ["margin"] = ChoiceOrder.Margin,
        ["price"] = ChoiceOrder.Price,
        ["mass"] = ChoiceOrder.Mass,
        ["cut"] = ChoiceOrder.Cut,
    };

    public static Command Make(Terminal terminal)
    {
        JobSource source = new();
        Option<int> top = new("--top")
        {
            Description = $"How many are listed, from 1 to {MostTop}; {UsualTop} unless said.",
            HelpName = "N",
            DefaultValueFactory = _ => UsualTop,
            CustomParser = ReadTop,
        };
        Option<string> sort = new("--sort")
        {
            Description = "The order: best (no cut, all joints locked, most margin or least cut), margin, price, mass or cut; "
                + "best unless said.",
            HelpName = "KEY",
            DefaultValueFactory = _ => "best",
        };
        sort.CompletionSources.Add([.. s_orders.Keys]);
        sort.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: var written }] && !s_orders.ContainsKey(written))
            {
                result.AddError(
                    $"there is no order '{written}'; --sort takes {string.Join(", ", s_orders.Keys)}."
                        + Suggestion.Of(written, s_orders.Keys));
            }
        });
        Command command = source.AddTo(new Command(
            "choose",
            "Choose the parts of a rod from catalogs, best first.\n"
            + "Parts left open in the job ('any', a list of ids, a filter by thread) are filled, with the thinnest jam nuts that fit.\n"
            + "Example: tierodcalc choose catalog-samples/jobs/car-27-choose.yaml --top 5"));
        command.Add(top);
        command.Add(sort);
        command.SetAction(parsed => Run(source, s_orders[parsed.GetValue(sort)!], parsed.GetValue(top), parsed, terminal));
        return command;
    }

    private static int ReadTop(ArgumentResult result)
    {
        string written = result.Tokens.Count == 1 ? result.Tokens[0].Value : string.Empty;
        if (int.TryParse(written, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count is >= 1 and <= MostTop)
        {
            return count;
        }

        result.AddError($"--top takes a whole number from 1 to {MostTop}, not '{written}'.");
        return UsualTop;
    }

    private static int Run(JobSource source, ChoiceOrder order, int top, ParseResult parsed, Terminal terminal)
    {
        if (source.Read(parsed, terminal, planned: false) is not { } read)
        {
            return ExitStatus.WrongInput;
        }

        Job job = read.Reading.Value!;
        List<(JobRod Rod, RodChoices Choices)> chosen =
        [
            .. read.Rods.Select(rod => (rod, RodChooser.Choose(rod.Candidates!, rod.Request!, order, top))),
        ];
        bool holds = chosen.TrueForAll(rod => rod.Choices.Found.Any(
            choice => choice.Rod.Locking != Locking.None && !choice.Plan.GivesWayUnderLoad));
        int? notWritten = terminal.Write(source.WantsJson(parsed)
            ? ChoiceJson.Of(job, chosen, read.Reading.Notes)
            : ChoiceText.Of(job, chosen, order, read.Reading.Notes));
        return notWritten ?? (holds ? ExitStatus.Holds : ExitStatus.DoesNotHold);
    }
}
