using System.Globalization;
using System.Xml.Linq;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>One rod's page of a bench sheet.</summary>
internal sealed class SheetSection(PlannedRod planned, Job job, int index)
{
    /// <summary>Half of the page, for an end that is cut.</summary>
    private const double HalfWidth = 360;

    private readonly RodPlan _plan = planned.Plan;
    private readonly RodParts _parts = planned.Rod.Parts;
    private readonly LengthDisplay _unit = job.Units;
    private readonly PlanSentences _sentences = new(job.Units, planned.Rod.Parts.OneJoint);

    /// <summary>The page.</summary>
    public XElement Make()
    {
        string id = $"rod-{(index + 1).ToString(CultureInfo.InvariantCulture)}";
        List<XElement> content = [Head(id), .. Headlines(), .. Drawing()];
        content.AddRange(_plan.Solution is { } made ? Made(made) : NotMade());
        content.AddRange(Mind());
        return Html.Classed(
            "section", $"rod {SheetHeight.Density(content)}".TrimEnd(), new XAttribute("aria-labelledby", id), content);
    }

    private string Both(Length length, LengthRounding rounding = LengthRounding.Nearest) =>
        Page.Whole(LengthFormat.Both(length, _unit, rounding));

    private XElement Head(string id)
    {
        string name = job.Name ?? "Tie rods";
        string verdict = Names.Of(_plan.Verdict).ToUpperInvariant();
        string with = planned.With is null ? string.Empty : $", WITH {planned.With}";
        XElement title = Html.Element("h2", new XAttribute("id", id), $"Rod {planned.Name}: {verdict}{with}{planned.But}");
        string wanted = $"Wanted: {Both(planned.Request.Target)} center to center, "
            + $"{Short(planned.Request.Shorter)} shorter and {Short(planned.Request.Longer)} longer.";
        return Html.Classed(
            "div",
            "head",
            Html.Element(
                "div",
                index == 0 ? Html.Element("h1", name) : Html.Classed("p", "job", name),
                title,
                Html.Element("p", wanted),
                planned.WithText is { } changed ? Html.Element("p", $"Changed, by the least that works: {changed}") : null),
            Html.Classed(
                "div",
                "sign",
                Html.Element("p", "made by ", Html.Line("made by")),
                Html.Element("p", "checked by ", Html.Line("checked by")),
                Html.Element("p", "date ", Html.Line("date"))));
    }

    private string Short(Length length, LengthRounding rounding = LengthRounding.Nearest) =>
        Page.Whole(LengthFormat.Decimal(length, _unit, rounding));

    private IEnumerable<XElement> Headlines()
    {
        if (_plan.Solution is null)
        {
            yield return Html.Classed("p", "headline", $"{RemedySentences.Reason(planned.Rod, _plan)} {PlanSentences.DoNotCut}");
        }

        foreach (PlanWarning headline in planned.Warnings.Where(PlanText.IsHeadline))
        {
            yield return Html.Classed("p", "headline", _sentences.Of(headline));
        }

        foreach (SwingCheck swing in planned.Swing.Where(swing => swing.RunsOut))
        {
            yield return Html.Classed("p", "headline", $"Swing, {Names.Of(swing.End)} joint: {new BumpSentences(_unit).Of(swing)}.");
        }
    }

    private IEnumerable<XElement> Drawing()
    {
        string id = $"rod{index.ToString(CultureInfo.InvariantCulture)}";
        yield return RodPicture.Of(planned, _unit, id, titled: false);
        if (_plan.Solution is not null)
        {
            yield return Html.Classed("p", "key", string.Join("; ", All().Select(measure => $"{measure.Letter} {measure.Words}")));
        }
    }

    private IEnumerable<XElement> Made(RodSolution made)
    {
        SheetTables tables = new(_parts, _unit);
        string id = $"rod{index.ToString(CultureInfo.InvariantCulture)}";
        XElement[] cuts = [.. PlanPicture.OfCuts(planned, _unit, id, HalfWidth).Zip(planned.Cuts, (picture, each) => Block(
            $"Cut {Both(each.Cut.Recommended)} off the {Names.Of(each.Side)} end",
            picture))];

        XElement parts = Block("Measure the parts first; if one is off, plan again", tables.Parts());
        IEnumerable<Measure> toCuts = planned.Cuts.SelectMany(each => RodMeasures.Of(each).Where(CutPicture.IsNeeded));
        IEnumerable<Measure> outside = All().Where(measure => measure.FromOutside);
        XElement work = Block("Measure the work", tables.Work(toCuts.Concat(outside)), Html.Element("p", Engaged(made)));
        XElement turn = Block(
            $"What a turn of the {Turned} does, and how far it goes",
            made.Lengthens is null
                ? [Turns(made)]
                :
                [
                    Turns(made),
                    Html.Element("p", $"shorter {Adjusts(made.Shorter)}"),
                    Html.Element("p", $"longer {Adjusts(made.Longer)}"),
                ]);

        // Columns of about the same height.
        XElement[] Column(params XElement[] blocks) => blocks;
        XElement[] bump = [.. Bump()];
        (XElement[] left, XElement[] right) = (cuts.Length, bump.Length) switch
        {
            (0, _) => (Column(parts), Column([work, turn, .. bump])),
            (1, 0) => (Column(parts, turn), Column(cuts[0], work)),
            (1, _) => (Column([parts, .. bump]), Column(cuts[0], work, turn)),
            _ => (Column([parts, turn, .. bump]), Column(cuts[0], cuts[1], work)),
        };
        yield return Html.Classed("div", "two", Html.Element("div", left), Html.Element("div", right));
        yield return Html.Element("h3", "Do it in this order");
        yield return Html.Classed(
            "ul",
            "steps",
            new SheetSteps(planned, _unit).Of(made).Select(step => Html.Element("li", Html.Box(), Page.WithWholeBrackets(step))));
    }

    /// <summary>What stays together in the columns of the page.</summary>
    private static XElement Block(string heading, params XElement[] content) =>
        Html.Classed("div", "block", Html.Element("h3", heading), content);

    /// <summary>Toe over travel, where the job has readings of the rod's wheel.</summary>
    private IEnumerable<XElement> Bump()
    {
        JobRod rod = job.Rods.First(each => each.Name == planned.Name);
        if (rod.Side is { } side && BumpReport.OfSide(job, side, rod) is { Findings: not null } found)
        {
            (XElement picture, string words) = BumpPicture.OfSide(found, _unit);
            yield return Block($"Bump sheet, {Names.Of(side)} wheel", picture, Html.Classed("p", "key", words));
        }
    }

    private string Turned => _parts.OneJoint ? "inner end" : "sleeve";

    private IEnumerable<Measure> All() => RodMeasures.Of(planned, RodLayout.Of(planned.Rod, planned.Request, _plan))
        .OrderBy(measure => measure.Letter, StringComparer.Ordinal);

    private string Engaged(RodSolution made)
    {
        string Of(RodSide side, JointPlan joint) => $"{Names.Of(side)} {Short(joint.EngagedLeast, LengthRounding.Down)}, required "
            + Short(joint.Required.Required, LengthRounding.Up);
        string inner = Of(RodSide.Inner, made.Inner);
        string both = made.Outer is { } outer ? $"{inner}; {Of(RodSide.Outer, outer)}" : inner;
        return $"Engaged at least, over the wanted adjustment: {both}.";
    }

    private XElement Turns(RodSolution made)
    {
        if (made is not { PerTurn: { } turn, PerHalfTurn: { } half, Lengthens: { } lengthens })
        {
            return Html.Element("p", "It does not change the length: same hand and same pitch at both ends.");
        }

        List<(string Words, TurnEffect Effect)> rows = [("one turn", turn)];
        if (made.PerFlat is { } flat)
        {
            rows.Add(("one flat", flat));
        }
        else
        {
            rows.Add(("half a turn", half));
        }

        string whose = planned.Request.ToeOfBothWheels ? "both wheels" : "this wheel";
        bool toe = turn.Toe is not null;
        bool plates = turn.ToeAtPlates is not null;
        IEnumerable<string?> heads = ["", "longer by", toe ? $"toe of {whose}" : null, plates ? "at the plates" : null];
        return Html.Element(
            "div",
            Html.Element("p", $"{Names.Of(lengthens)}, seen from the inner end outward, lengthens."),
            SheetTables.Table(
                [.. heads.OfType<string>()],
                rows.Select(row => new object?[]
                {
                    Html.Element("th", new XAttribute("scope", "row"), row.Words),
                    SheetTables.Number(Short(row.Effect.Length)),
                    toe ? SheetTables.Number(Toe(row.Effect.Toe!.Value)) : null,
                    plates ? SheetTables.Number(Short(row.Effect.ToeAtPlates!.Value.Abs())) : null,
                })));
    }

    private static string Toe(Angle toe) =>
        $"{Math.Abs(toe.Degrees).ToString("0.000", CultureInfo.InvariantCulture)} deg {(toe.Degrees >= 0 ? "in" : "out")}";

    private string Adjusts(Travel travel) =>
        $"{Short(travel.Length, LengthRounding.Down)}, {PlanText.Turns(travel)} turns, {PlanSentences.Of(travel)}";

    private IEnumerable<XElement> NotMade()
    {
        const int MostShown = 6;
        yield return Html.Element("h3", "What is in the way");
        yield return Html.Points(_plan.Binding.Select(_sentences.Of)
            .Concat(from warning in _plan.Warnings
                    where warning.Code == WarningCode.SleeveCannotAdjust
                    select _sentences.Of(warning)));
        if (planned.Remedies.Count > 0)
        {
            RemedySentences sentences = new(_unit);
            bool pairs = planned.Remedies[0].Changes.Count > 1;
            yield return Html.Element("h3", $"What would make it buildable, {(pairs ? "two changes together" : "each by itself")}");
            yield return Html.Points(planned.Remedies.Take(MostShown).Select(remedy =>
                $"{Names.Of(remedy)}: {sentences.Of(remedy)} Then {RemedySentences.Verdict(remedy)}."));
            int more = planned.Remedies.Count - MostShown;
            yield return Html.Element("p", $"{(more > 0 ? $"And {more} more; the plan lists them. " : string.Empty)}These sizes are the "
                + "least that work, with nothing to spare.");
        }

        yield return Html.Element("h3", "Measure the parts: is one of them not as it was typed in?");
        yield return Html.Classed("div", "narrow", new SheetTables(_parts, _unit).Parts());
        foreach (XElement block in Bump())
        {
            yield return block;
        }
    }

    private IEnumerable<XElement> Mind()
    {
        List<string> mind = [];
        if (_plan.Solution is { } made)
        {
            mind.Add($"Worst case: {new WorstCaseSentences(_unit).Of(made.WorstCase)}");
        }

        mind.AddRange(PlanText.Remarks(planned, _sentences));
        yield return Html.Classed(
            "div",
            "small",
            Html.Element("h3", "Mind, and what was assumed or not checked"),
            Html.Points(mind),
            Html.Element("h3", "Cautions"),
            Html.Points(Cautions.All.Append(Cautions.NotChecked)));
    }
}
