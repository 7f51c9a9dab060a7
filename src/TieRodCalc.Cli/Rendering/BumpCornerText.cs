using TieRodCalc.Planning;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>What the points of a corner say, as a person reads it.</summary>
internal sealed class BumpCornerText(Page page, LengthDisplay unit)
{
    private readonly BumpSentences _sentences = new(unit);

    public void Add(BumpSide side)
    {
        if (side.Review is not { } review)
        {
            return;
        }

        page.Heading($"By the points of the corner, {_sentences.Travel(review.Bump)} to {_sentences.Travel(-review.Droop)}");
        if (review.Now is not { } now)
        {
            page.Point("THE CORNER DOES NOT REACH THAT TRAVEL: its parts come apart, so a point or the travel is wrong.");
        }
        else
        {
            page.Row("computed, worst", _sentences.PerInch(now.Worst));
            if (side.Findings is { } findings)
            {
                page.Drawing(Compared(findings.Newest.Points, now.Points));
            }

            if (review.WithAdvice is { } advised)
            {
                page.Row("the change above", $"worst {_sentences.PerInch(advised.Worst)} by the points");
            }

            AddBest(review);
        }

        foreach (SwingCheck swing in review.Swing)
        {
            AddSwing(swing);
        }
    }

    private void AddBest(CornerReview review)
    {
        if (review is not { Best: { } best, WithBest: { } curve, BestRodLonger: { } longer })
        {
            return;
        }

        string[] moves =
        [
            .. new[]
            {
                Move("outer joint", best.OuterRaised, "up", "down"),
                Move("inner joint", best.InnerRaised, "up", "down"),
                Move("inner joint along the rod", best.RodLonger, "away from the wheel", "toward the wheel"),
            }.OfType<string>(),
        ];
        page.Row("least toe change", moves.Length == 0
            ? "as it is, within the moves allowed"
            : $"{string.Join("; ", moves)}; rod {LengthFormat.Both(longer.Abs(), unit)} {(longer < Length.Zero ? "shorter" : "longer")}");
        page.Row("then, worst", $"{_sentences.PerInch(curve.Worst)} by the points");
    }

    private string? Move(string what, Length by, string more, string less) => LengthFormat.Fine(by.Abs(), unit) is var size
        && size.AsSpan().IndexOfAnyInRange('1', '9') < 0
            ? null
            : $"{what} {LengthFormat.Both(by.Abs(), unit)} {(by > Length.Zero ? more : less)}";

    private void AddSwing(SwingCheck swing)
    {
        string label = $"swing, {Names.Of(swing.End)} joint";
        string allowed = $"{ToeFormat.Degrees(swing.Allowed)} allowed each way";
        page.Row(label, swing.Most is not { } most ? $"NOT KNOWN, the corner does not reach its travel; {allowed}"
            : $"{ToeFormat.Degrees(most.Most)} at {_sentences.Travel(most.Travel)}{Steered(most)}; {allowed}"
                + (swing.Holds ? string.Empty
                    : $": RUNS OUT OF SWING by {ToeFormat.Degrees(swing.MissedBy!.Value)}; a joint that does so bends its shank"));
    }

    private string Steered(JointSwing most) => most.Steer.Value == 0 ? string.Empty
        : $", inner joint steered {LengthFormat.Decimal(most.Steer.Abs(), unit)} to the {(most.Steer > Length.Zero ? "left" : "right")}";

    /// <summary>Measured and computed readings side by side.</summary>
    private IEnumerable<string> Compared(IReadOnlyList<BumpPoint> measured, IReadOnlyList<BumpPoint> computed)
    {
        yield return Row("travel", "measured", "by the points");
        foreach ((BumpPoint read, BumpPoint point) in measured.Zip(computed).Reverse())
        {
            yield return Row(_sentences.Travel(read.Travel), _sentences.AtGauge(read.AtGauge), _sentences.AtGauge(point.AtGauge));
        }
    }

    private static string Row(string travel, string measured, string computed) =>
        (travel.PadRight(17) + measured.PadRight(21) + computed).TrimEnd();
}
