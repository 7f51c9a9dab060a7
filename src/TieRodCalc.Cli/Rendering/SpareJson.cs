using TieRodCalc.Planning;
using TieRodCalc.Text;

namespace TieRodCalc.Cli.Rendering;

/// <summary>How a rod like one that was measured is made of new parts, as another program reads it.</summary>
internal sealed record SpareJson(double LengthMm, SpareEndJson Inner, SpareEndJson? Outer, StartJson Start)
{
    public static SpareJson? Of(SpareRod? spare) => spare is null
        ? null
        : new(
            JsonNumber.Mm(spare.Length),
            SpareEndJson.Of(spare.Inner),
            spare.Outer is { } outer ? SpareEndJson.Of(outer) : null,
            StartJson.Of(spare.Start));
}

internal sealed record SpareEndJson(double CutMm, double MarkFromCenterMm, double ThreadLeftMm, double InsertionMm, double ShowingMm)
{
    public static SpareEndJson Of(SpareEnd end) => new(
        JsonNumber.Mm(end.Cut),
        JsonNumber.Mm(end.MarkFromCenter),
        JsonNumber.Mm(end.ThreadLeft),
        JsonNumber.Mm(end.Insertion),
        JsonNumber.Mm(end.Showing));
}
