using System.Globalization;
using TieRodCalc.Planning;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The parts of a plan that say how much engagement is required, and what the joints carry.</summary>
internal sealed class StrengthText(Page page, LengthDisplay unit, bool oneJoint)
{
    /// <summary>What each joint is required to have: the rule, the job's own and strength, and which decides.</summary>
    public void AddRequired(RodPlan plan)
    {
        page.Heading("How much engagement is required");
        AddRequired("inner joint", plan.InnerRequired);
        if (plan.OuterRequired is { } outer)
        {
            AddRequired("outer joint", outer);
        }
    }

    /// <summary>What a joint carries at its least engagement.</summary>
    public void AddStrength(JointStrength strength)
    {
        if (strength.Loads is { } loads)
        {
            page.Row("  gives way, pulled", Female($"{First(loads)}; the sleeve's own section is not counted"));
        }
        else if (strength.Breaks is { } breaks)
        {
            page.Row("  the end breaks at", $"{Down(breaks)}, pulled; when the threads strip is not known");
        }

        if (strength.Load is { } load)
        {
            AddLoad(load);
        }
    }

    /// <summary>What decides the required engagement, in brackets behind it.</summary>
    public static string Governs(RequiredEngagement required) => required.GovernedBy switch
    {
        EngagementSource.Job => "set by the job",
        EngagementSource.Strength => "by strength",
        _ => $"{Number(required.RuleDiameters, "0.##")} diameters",
    };

    private void AddRequired(string name, RequiredEngagement required)
    {
        string rule = $"{Number(required.RuleDiameters, "0.##")} diameters";
        string would = $"; the rule, {rule}, would be {Up(required.Rule)}";
        page.Row(name, Up(required.Required) + required.GovernedBy switch
        {
            EngagementSource.Rule => $": the rule, {rule}",
            EngagementSource.Job => $": set by the job{would}",
            _ => $": BY STRENGTH{(required.Job is { } job ? $"; the job sets {Up(job)}" : would)}",
        });
        page.Row("  strength asks for", required.Strength is { } strength
            ? Female($"{Up(strength.Required)}; {Weaker(strength)}")
            : "not checked");
    }

    /// <summary>With one threaded joint the outer end is what a sleeve is elsewhere.</summary>
    private string Female(string text) => oneJoint ? text.Replace("sleeve", "outer end", StringComparison.Ordinal) : text;

    private static string Weaker(StrengthEngagement strength)
    {
        string weaker = strength.StrengthRatio > 1 ? "the sleeve's thread is the weaker one" : "the end's thread is the weaker one";
        string wall = strength.Dilation is < 1 and { } dilation ? $"; the wall dilates, C1 = {Number(dilation, "0.00")}" : string.Empty;
        return $"{weaker}, J = {Number(strength.StrengthRatio, "0.00")}{wall}";
    }

    private void AddLoad(JointLoad load)
    {
        string arm = Page.Whole(LengthFormat.Decimal(load.Arm, unit));
        string bending = load.Arm > Length.Zero
            ? $" and {LoadFormat.Of(load.Bending, unit)} of bending, {arm} off the line of the balls"
            : string.Empty;
        page.Row("  under the load", $"{LoadFormat.Of(load.Load, unit)}: {LoadFormat.Of(load.Axial, unit)} of pull{bending}");
        page.Row("    factors", $"{Factor(load.BreakingFactor)} against breaking, {Factor(load.MaleStripFactor)} and "
            + $"{Factor(load.FemaleStripFactor)} against stripping of the end's and {Female("the sleeve's")} thread");
    }

    private string First(PairLoads loads) => loads.First switch
    {
        GivesWay.MaleBreaks =>
            $"the end breaks first, at {Down(loads.Tensile)}; its thread strips at {Down(loads.MaleStrip)}, the sleeve's at "
                + Down(loads.FemaleStrip),
        GivesWay.MaleStrips =>
            $"the end's thread STRIPS first, at {Down(loads.MaleStrip)}; the sleeve's strips at {Down(loads.FemaleStrip)}, the end "
                + $"breaks at {Down(loads.Tensile)}",
        _ =>
            $"the sleeve's thread STRIPS first, at {Down(loads.FemaleStrip)}; the end's strips at {Down(loads.MaleStrip)}, the end "
                + $"breaks at {Down(loads.Tensile)}",
    };

    private string Down(Force force) => Page.Whole(LoadFormat.Of(force, unit, LengthRounding.Down));

    private string Up(Length length) => Page.Whole(LengthFormat.Both(length, unit, LengthRounding.Up));

    /// <summary>A factor is never shown larger than it is.</summary>
    private static string Factor(double? factor) =>
        factor is { } known ? Number(Math.Floor(known * 100 + 1e-9) / 100, "0.00") : "not known";

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
