using TieRodCalc.Parts;
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

    /// <summary>The travel in bump that counts, or null: the measured one, 50 mm without readings.</summary>
    public Length? Bump { get; init; }

    /// <summary>The travel in droop that counts, or null: the measured one, 50 mm without readings.</summary>
    public Length? Droop { get; init; }

    /// <summary>How far the steering moves the inner joint each way; zero where it is not known.</summary>
    public Length Steer { get; init; }

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

/// <summary>The swing of the joint at one end of a rod, held against what it allows.</summary>
/// <param name="End">The end.</param>
/// <param name="Allowed">What the joint allows each way.</param>
/// <param name="Most">The greatest swing over travel and steering, and where; null where the corner does not reach everywhere.</param>
public sealed record SwingCheck(RodSide End, Angle Allowed, JointSwing? Most)
{
    /// <summary>How small an angle counts as none, degrees.</summary>
    private const double Negligible = 1e-6;

    /// <summary>By how much the swing is more than allowed; zero where it is not, null where it is not known.</summary>
    public Angle? MissedBy => Most is { } most
        ? Angle.FromDegrees(Holds ? 0 : most.Most.Degrees - Allowed.Degrees)
        : null;

    /// <summary>Whether the joint stays inside what it allows.</summary>
    public bool Holds => Most is { } most && most.Most.Degrees <= Allowed.Degrees + Negligible;
}

/// <summary>What the points of a corner say of its rod.</summary>
public sealed record CornerReview
{
    private const int EachWay = 4;
    private static readonly Length s_usualTravel = Length.FromMillimeters(50);

    /// <summary>The travel in bump that counts.</summary>
    public required Length Bump { get; init; }

    /// <summary>The travel in droop that counts.</summary>
    public required Length Droop { get; init; }

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

    /// <summary>What the joints of the rod swing, where their ends say what they allow and how their studs stand.</summary>
    public required IReadOnlyList<SwingCheck> Swing { get; init; }

    /// <summary>Ends that say what their joint allows, and not how its stud stands.</summary>
    public required IReadOnlyList<RodSide> SwingWithoutStud { get; init; }

    /// <summary>Whether the corner reaches its travel, and the joints stay inside what they allow.</summary>
    public bool Holds => Now is not null && Swing.All(check => check.Holds);

    /// <summary>Reviews a corner.</summary>
    /// <exception cref="ArgumentException">A travel, the steering or the spacing is negative or not finite.</exception>
    public static CornerReview Of(CornerReviewRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        Length bump = request.Bump ?? Reached(request, +1);
        Length droop = request.Droop ?? Reached(request, -1);
        Length[] travels = request.Measured is { } sheet
            ? [.. sheet.Points.Select(point => point.Travel)]
            : [.. Enumerable.Range(-EachWay, 2 * EachWay + 1).Select(step => step / (double)EachWay * (step < 0 ? droop : bump))];
        CornerBest? best = CornerOptimum.Find(request.Corner, droop, bump, request.Moves);
        (List<SwingCheck> swing, List<RodSide> without) = SwingOf(request, droop, bump);
        return new CornerReview
        {
            Bump = bump,
            Droop = droop,
            Now = Curve(request.Corner, travels, request.Spacing),
            WithAdvice = request.Advice is { IsNone: false } advice
                && request.Corner.Moved(new JointMoves(advice.OuterRaised, Length.Zero, advice.RodLonger)) is { } advised
                    ? Curve(advised, travels, request.Spacing)
                    : null,
            Best = best?.Moves,
            WithBest = best is null ? null : Curve(best.Corner, travels, request.Spacing),
            BestRodLonger = best?.Corner.RodLength - request.Corner.RodLength,
            Swing = swing,
            SwingWithoutStud = without,
        };
    }

    /// <summary>The measured travel on one side of ride height; the usual one where there is none.</summary>
    private static Length Reached(CornerReviewRequest request, int side)
    {
        double most = request.Measured?.Points.Max(point => side * Millimeters.Of(point.Travel)) ?? 0;
        return most > 0 ? Length.FromMillimeters(most) : request.Measured is null ? s_usualTravel : Length.Zero;
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

    private static (List<SwingCheck> Checks, List<RodSide> WithoutStud) SwingOf(CornerReviewRequest request, Length droop, Length bump)
    {
        List<SwingCheck> checks = [];
        List<RodSide> without = [];
        SwingRange range = new(droop, bump, request.Steer);
        foreach (RodSide end in request.Rod is null ? [] : new[] { RodSide.Inner, RodSide.Outer })
        {
            RodParts parts = request.Rod!.Parts;
            ThreadedEnd? threaded = end == RodSide.Inner ? parts.Inner : parts.Outer;
            if ((threaded?.Swing ?? (end == RodSide.Outer ? parts.Socket?.Swing : null)) is not { } allowed)
            {
                continue;
            }

            if ((threaded?.Stud ?? (end == RodSide.Outer ? parts.Socket?.Stud : null)) is not { } stud)
            {
                without.Add(end);
                continue;
            }

            StudAxis axis = stud switch
            {
                StudDirection.Vertical => StudAxis.Vertical,
                StudDirection.AlongAxle => StudAxis.AlongAxle,
                _ => StudAxis.AlongCar,
            };
            checks.Add(new SwingCheck(end, allowed, end == RodSide.Inner
                ? Swings.OfInner(request.Corner, axis, range)
                : Swings.OfOuter(request.Corner, axis, range)));
        }

        return (checks, without);
    }
}
