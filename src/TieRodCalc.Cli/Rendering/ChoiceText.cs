using System.Globalization;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>A choice from catalogs as a person reads it.</summary>
internal static class ChoiceText
{
    /// <summary>The text of a job's choices.</summary>
    public static string Of(
        Job job, IReadOnlyList<(JobRod Rod, RodChoices Choices)> chosen, ChoiceOrder order, IReadOnlyList<Problem> notes)
    {
        Page page = new();
        if (job.Name is { } name)
        {
            page.Sentence(name, indent: 0);
        }

        foreach ((JobRod rod, RodChoices choices) in chosen)
        {
            Add(page, rod, choices, order, job.Units);
        }

        PageEnd.Add(page, notes);
        return page.ToString();
    }

    private static void Add(Page page, JobRod rod, RodChoices choices, ChoiceOrder order, LengthDisplay unit)
    {
        RodRequest request = rod.Request!;
        string Both(Length length, LengthRounding rounding = LengthRounding.Nearest) =>
            Page.Whole(LengthFormat.Both(length, unit, rounding));
        int count = choices.Found.Count;
        page.Heading($"ROD {rod.Name}: {(count == 0 ? "NOTHING FOUND" : count == 1 ? "ONE FOUND" : $"THE FIRST {count}")}");
        page
            .Row("wanted length", $"{Both(request.Target)} center to center")
            .Row("wanted adjustment", $"{Both(request.Shorter)} shorter, {Both(request.Longer)} longer")
            .Row("combinations", $"{choices.Combinations.ToString(CultureInfo.InvariantCulture)} whose threads match");
        if (choices.WithoutClocking > 0)
        {
            page.Row(
                "left out",
                $"{choices.WithoutClocking.ToString(CultureInfo.InvariantCulture)} with two bent ends: the job says no 'clocking'");
        }

        if (choices.WithoutNut > 0)
        {
            page.Row(
                "left out",
                $"{choices.WithoutNut.ToString(CultureInfo.InvariantCulture)} whose ends a nut that the job names does not fit");
        }

        if (count == 0)
        {
            page.Sentence(choices.Combinations == 0
                ? "No parts whose threads match are left to choose from."
                : "No combination reaches the length with the wanted adjustment, cut or not. Ask plan for one of them what would help.");
            return;
        }

        page.Row("order", Order(order));
        for (int i = 0; i < count; i++)
        {
            RodChoice choice = choices.Found[i];
            RodParts parts = choice.Rod.Parts;
            string ids = string.Join(" + ", new[] { parts.Inner.Info, parts.Sleeve?.Info, parts.Outer?.Info ?? parts.Socket!.Info }
                .OfType<PartInfo>().Select(info => info.Id));
            string cut = choice.Plan.Verdict == Verdict.Buildable
                ? "no cut"
                : $"cut {Both(choice.LeastCut, LengthRounding.Up)} at least";
            string margin = $"worst margin {Both(choice.WorstMargin, LengthRounding.Down)}";
            string[] more =
            [
                cut,
                margin,
                Nuts(parts),
                choice.Rod.AllLocked ? "locked" : choice.Rod.Locking == Locking.None ? "NOTHING LOCKS IT" : "ONE JOINT IS NOT LOCKED",
                choice.Plan.GivesWayUnderLoad ? "GIVES WAY UNDER THE LOAD" : string.Empty,
                choice.Plan.Solution!.WorstCase.Verdict == Verdict.NotBuildable ? "holds only at nominal dimensions" : string.Empty,
                choice.Price is { } price
                    ? $"{price.Amount.ToString("0.00", CultureInfo.InvariantCulture)} {price.Currency}"
                    : "price not known",
                choice.Mass is { } mass
                    ? $"{mass.Kilograms.ToString("0.00", CultureInfo.InvariantCulture)} kg"
                    : "mass not known",
            ];
            page.Sentence($"{(i + 1).ToString(CultureInfo.InvariantCulture)}. {ids}", hang: 3);
            page.Sentence(string.Join("; ", more.Where(text => text.Length > 0)), indent: 5);
        }

        page.Sentence(
            "The worst margin is the smallest slack of any limit over the whole adjustment. Write the ids of the rod that you take into "
            + "the job, and ask plan for it.");
    }

    private static string Nuts(RodParts parts) => (parts.InnerNut, parts.OuterNut) switch
    {
        ({ } inner, { } outer) => $"nuts {inner.Info.Id} and {outer.Info.Id}",
        ({ } inner, null) when parts.OneJoint => $"nut {inner.Info.Id}",
        ({ } inner, null) => $"nut {inner.Info.Id} inside, none outside",
        (null, { } outer) => $"no nut inside, {outer.Info.Id} outside",
        _ => "no nut",
    };

    private static string Order(ChoiceOrder order) => order switch
    {
        ChoiceOrder.Margin => "greatest worst margin first",
        ChoiceOrder.Price => "cheapest first, each currency by itself",
        ChoiceOrder.Mass => "lightest first",
        ChoiceOrder.Cut => "least cut first",
        _ => "no cut first, then all joints locked, then most margin or least cut",
    };
}
