using TieRodCalc.Rods;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>What is asked of the points of a corner.</summary>
public sealed record CornerReviewRequest
{
    /// <summary>The corner at ride height.</summary>
    public required CornerGeometry Corner { get; init; }

    /// <summary>The newest bump sheet, or null where there is none.</summary>
    public BumpSheetFindings? Measured { get; init; }

    /// <summary>Spacing of the indicators of a bump gauge, above zero.</summary>
    public required Length Spacing { get; init; }

    /// <summary>The travel and the steering that count.</summary>
    public required SwingRange Range { get; init; }

    /// <summary>How far the joints may be moved.</summary>
    public required MoveLimits Moves { get; init; }

    /// <summary>A change that the readings advise, or null.</summary>
    public BumpChange? Advice { get; init; }

    /// <summary>The rod, whose ends say what their joints allow; null where it is not known.</summary>
    public Rod? Rod { get; init; }
}

/// <summary>Toe over travel of a corner, computed from its points.</summary>
/// <param name="Points">At the travels of the sheet, or evenly over the travel that counts; ride height among them.</param>
/// <param name="Worst">The greatest toe change at the gauge per inch of travel between them, its sign left out.</param>
public sealed record CornerCurve(IReadOnlyList<BumpPoint> Points, Length Worst);

/// <summary>What the points of a corner say of its rod.</summary>
public sealed record CornerReview
{
    private const int EachWay = 4;

    /// <summary>The travel and the steering that count.</summary>
    public required SwingRange Range { get; init; }

    /// <summary>The curve as the corner is; null where its parts do not reach the travel.</summary>
    public required CornerCurve? Now { get; init; }

    /// <summary>The curve with the change that the readings advise; null where there is none, or it leaves no corner.</summary>
    public required CornerCurve? WithAdvice { get; init; }

    /// <summary>The moves that make the toe change least within the limits; null where the parts do not reach the travel.</summary>
    public required JointMoves? Best { get; init; }

    /// <summary>The curve with them; null likewise.</summary>
    public required CornerCurve? WithBest { get; init; }

    /// <summary>By how much the rod is longer with them, ball center to ball center; negative: shorter. Null likewise.</summary>
    public required Length? BestRodLonger { get; init; }

    /// <summary>What the joints of the rod swing, where their ends say what they allow.</summary>
    public required IReadOnlyList<SwingCheck> Swing { get; init; }

    /// <summary>Whether the corner reaches its travel, and the joints stay inside what they allow.</summary>
    public bool Holds => Now is not null && Swing.All(check => check.Passes);

    /// <summary>Reviews a corner.</summary>
    /// <exception cref="ArgumentException">A travel, the steering or the spacing is negative or not finite.</exception>
    public static CornerReview Of(CornerReviewRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        (Length droop, Length bump, _) = request.Range;
        Length[] travels = request.Measured is { } sheet
            ? [.. sheet.Points.Select(point => point.Travel)]
            : [.. Enumerable.Range(-EachWay, 2 * EachWay + 1).Select(step => step / (double)EachWay * (step < 0 ? droop : bump))];
        CornerBest? best = CornerOptimum.Find(request.Corner, droop, bump, request.Moves);
        return new CornerReview
        {
            Range = request.Range,
            Now = Curve(request.Corner, travels, request.Spacing),
            WithAdvice = request.Advice is { IsNone: false } advice
                && request.Corner.Moved(new JointMoves(advice.OuterRaised, Length.Zero, advice.RodLonger)) is { } advised
                    ? Curve(advised, travels, request.Spacing)
                    : null,
            Best = best?.Moves,
            WithBest = best is null ? null : Curve(best.Corner, travels, request.Spacing),
            BestRodLonger = best?.Corner.RodLength - request.Corner.RodLength,
            Swing = request.Rod is { } rod ? SwingCheck.Of(rod, request.Corner, request.Range) : [],
        };
    }

    private static CornerCurve? Curve(CornerGeometry corner, Length[] travels, Length spacing)
    {
        CornerPath path = new(corner);
        List<BumpPoint> points = [];
        foreach (Length travel in travels)
        {
            double toe = corner.ToeChange(path, Millimeters.Of(travel));
            if (!double.IsFinite(toe))
            {
                return null;
            }

            Angle angle = Angle.FromRadians(toe);
            points.Add(new BumpPoint(travel, angle, Toe.AtPlates(angle, spacing)));
        }

        return points.Count < 2 ? null
            : new CornerCurve(points, Length.FromMillimeters(Math.Abs(Millimeters.Of(BumpSteer.StepsOf(points).Worst.PerInch))));
    }
}
