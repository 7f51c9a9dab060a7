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

        page.Heading($"By the points of the corner, {_sentences.Travel(review.Range.Bump)} to {_sentences.Travel(-review.Range.Droop)}");
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
            page.Row($"swing, {Names.Of(swing.End)} joint", _sentences.Of(swing));
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
