using System.Globalization;
using TieRodCalc.Cli.Commands;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The part of a thread's page that says how much engagement it needs, and what it holds then.</summary>
internal sealed class EngagementPage(Page page, ThreadReport report)
{
    private readonly ThreadSize _size = report.Question.External.Thread.Size;
    private readonly LengthDisplay _unit = ThreadSentences.UnitOf(report.Question.External.Thread);

    public void Add()
    {
        page.Heading("Required engagement, full thread on full thread");
        if (report.Engagement is { } engagement)
        {
            AddLengths(engagement);
        }

        ThreadSentences sentences = new(_unit);
        foreach (ThreadWarning warning in report.Warnings.Where(warning => !ThreadPage.IsOfThread(warning.Code)))
        {
            page.Point(sentences.Of(warning));
        }

        AddLoads();
    }

    private void AddLengths(RequiredEngagement engagement)
    {
        page
            .Row("by the rule", Engaged(engagement.Rule))
            .Row("by strength", engagement.Strength is { } found ? Engaged(found.Required) : "not checked")
            .Row("REQUIRED", $"{Engaged(engagement.Required)}; {ThreadSentences.OfGoverning(engagement)}");
        AddStrengths();
        if (engagement.Strength is { } strength)
        {
            page.Row("J", $"{Number(strength.StrengthRatio, "0.000")}: {ThreadSentences.OfRatio(strength.StrengthRatio)}");
        }

        if (report.Question.Outside is { } outside)
        {
            page
                .Row("outside of the female", Described(outside))
                .Row("C1, the wall widens", Factor(report.Dilation));
            if (engagement.Strength is { } bending)
            {
                page
                    .Row("C2, male thread bends", Factor(bending.MaleBending))
                    .Row("C3, female thread bends", Factor(bending.FemaleBending));
            }
        }
    }

    private void AddStrengths()
    {
        if (report.Question.MaleTensile is { } male)
        {
            page.Row("male tensile", Strength(male));
        }

        if (report.Question.FemaleTensile is { } female)
        {
            page.Row("female tensile", Strength(female));
        }
    }

    private void AddLoads()
    {
        if (report.Tensile is not { } tensile)
        {
            return;
        }

        page
            .Heading(report.Loads is null ? "Load that breaks the male" : "Loads at which it gives way, at the required engagement")
            .Row(
                Names.Of(GivesWay.MaleBreaks),
                Load(tensile) + (ByTheSmallerArea(tensile) ? $", {ThreadSentences.OfSmallerArea}" : string.Empty));
        if (report.Loads is { } loads)
        {
            page
                .Row(Names.Of(GivesWay.MaleStrips), Load(loads.MaleStrip))
                .Row(Names.Of(GivesWay.FemaleStrips), Load(loads.FemaleStrip))
                .Row("first", Names.Of(loads.First));
        }

        page.Sentence(ThreadSentences.NotInLoads);
    }

    private bool ByTheSmallerArea(Force tensile)
    {
        const double Same = 1 - 1e-9;
        return tensile.Newtons < report.Question.MaleTensile!.Value.Megapascals * _size.StressArea.SquareMillimeters * Same;
    }

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private static string Factor(double? factor) => factor is { } known ? Number(known, "0.000") : "not computed";

    private string Strength(Pressure strength) => LoadFormat.Of(strength, _unit);

    /// <summary>What it bears, never shown as more.</summary>
    private string Load(Force load) => LoadFormat.Of(load, _unit, LengthRounding.Down);

    /// <summary>What is needed, never shown as less: a length, in diameters and in turns.</summary>
    private string Engaged(Length length) =>
        $"{Page.Whole(LengthFormat.Both(length, _unit, LengthRounding.Up))}, "
            + $"{Page.Whole($"{Up(length / _size.Diameter, 2)} diameters")}, {Page.Whole($"{Up(length / _size.Pitch, 1)} turns")}";

    private static string Up(double value, int decimals)
    {
        const double Noise = 1e-6;
        double scale = Math.Pow(10, decimals);
        return Number(Math.Ceiling(value * scale - Noise) / scale, decimals == 1 ? "0.0" : "0.00");
    }

    private string Described(Outside outside)
    {
        string across = LengthFormat.Both(outside.Across.Nominal, _unit);
        return outside.Shape == OutsideShape.Hexagon
            ? $"hexagon, {across} across flats"
            : $"round, {across}; counts as {LengthFormat.Decimal(outside.WidthInStrength, _unit, LengthRounding.Down)} wide";
    }
}
