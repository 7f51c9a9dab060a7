using System.Globalization;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>How a rod like one that was measured is made of new parts.</summary>
internal sealed class SpareText(Page page, LengthDisplay unit)
{
    public void Add(SpareRod spare)
    {
        page.Heading("A spare like the one built, from new uncut parts");
        page.Row("ball to ball", Both(spare.Length));
        AddEnd(RodSide.Inner, spare.Inner);
        if (spare.Outer is { } outer)
        {
            AddEnd(RodSide.Outer, outer);
        }

        StartProcedure start = spare.Start;
        string alone = $"{Turns(start.AloneTurns)} turns from flush, until {Both(start.ShowingBeforeSecond)} of its thread shows";
        page.Row("to start", start switch
        {
            { SleeveTurns: { } sleeve } => $"{Names.Of(start.First)} end by itself {alone}; start the other end; then the sleeve "
                + $"{Turns(sleeve)} turns {Names.Of(start.SleeveDirection!.Value)}, seen from the inner end outward",
            { EndTurns: { } turns } => $"the sleeve onto the inner end {alone}; then the outer end itself {Turns(turns)} turns",
            _ => $"the inner end into the outer end {alone}",
        });
    }

    private static string Turns(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private string Both(Length length) => Page.Whole(LengthFormat.Both(length, unit));

    private void AddEnd(RodSide side, SpareEnd end)
    {
        string cut = Millimeters(end.Cut) > 0
            ? $"cut {Both(end.Cut)} off the tip, at {Both(end.MarkFromCenter)} from the ball center along the thread axis"
                + (end.StraightFromCenter is { } straight ? $", or {Both(straight)} straight across the bend" : string.Empty)
            : "no cut";
        page.Row($"{Names.Of(side)} end", $"{cut}; {Both(end.Insertion)} inserted, {Both(end.Showing)} of thread showing");
    }

    private static double Millimeters(Length length) => Math.Round(length.Millimeters, 6);
}
