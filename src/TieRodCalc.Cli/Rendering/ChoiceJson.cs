using System.Text.Json;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Rendering;

/// <summary>A choice from catalogs as another program reads it.</summary>
internal static class ChoiceJson
{
    /// <summary>The JSON of a job's choices.</summary>
    public static string Of(Job job, IReadOnlyList<(JobRod Rod, RodChoices Choices)> chosen, IReadOnlyList<Problem> notes)
    {
        ChoiceDocument document = new(
            1,
            job.Name,
            [
                .. chosen.Select(rod => new ChosenRodJson(
                    rod.Rod.Name,
                    rod.Choices.Combinations,
                    rod.Choices.WithoutClocking,
                    rod.Choices.WithoutNut,
                    [.. rod.Choices.Found.Select(Found)])),
            ],
            NoteJson.Of(notes));
        return JsonSerializer.Serialize(document, PlanJson.Shapes.ChoiceDocument) + "\n";
    }

    private static FoundJson Found(RodChoice choice)
    {
        RodParts parts = choice.Rod.Parts;
        return new FoundJson(
            parts.Inner.Info.Id,
            parts.Sleeve?.Info.Id,
            (parts.Outer?.Info ?? parts.Socket!.Info).Id,
            new NutsJson(parts.InnerNut?.Info.Id, parts.OuterNut?.Info.Id),
            Names.Of(choice.Plan.Verdict),
            Names.Of(choice.Plan.Locking),
            choice.Plan.GivesWayUnderLoad,
            JsonNumber.Mm(choice.WorstMargin),
            JsonNumber.Mm(choice.LeastCut),
            Names.Of(choice.Plan.Solution!.WorstCase.Verdict),
            choice.Price is { } price ? new PriceJson(price.Amount, price.Currency) : null,
            JsonNumber.Of(choice.Mass?.Kilograms));
    }
}

internal sealed record ChoiceDocument(
    int Tierodcalc, string? Job, IReadOnlyList<ChosenRodJson> Rods, IReadOnlyList<NoteJson> Notes);

internal sealed record ChosenRodJson(string Name, long Combinations, long WithoutClocking, long WithoutNut, IReadOnlyList<FoundJson> Found);

internal sealed record FoundJson(
    string Inner,
    string? Sleeve,
    string Outer,
    NutsJson Nuts,
    string Verdict,
    string Locked,
    bool GivesWayUnderLoad,
    double WorstMarginMm,
    double LeastCutMm,
    string WorstCase,
    PriceJson? Price,
    double? MassKg);

internal sealed record NutsJson(string? Inner, string? Outer);

internal sealed record PriceJson(decimal Amount, string Currency);
