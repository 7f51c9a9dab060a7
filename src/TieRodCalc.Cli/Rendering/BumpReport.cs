using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>What <c>bump</c> has to tell.</summary>
internal sealed record BumpReport(Job Job, IReadOnlyList<BumpSide> Sides, IReadOnlyList<Problem> Notes)
{
    /// <summary>Whether the readings suffice and what they ask for can be made.</summary>
    public bool Holds => Sides.All(side => side.Holds);

    /// <summary>
    /// What one side has to tell: its sheets, the rod on it, and its corner; null where the job has neither sheets nor corner.
    /// </summary>
    /// <param name="job">The job.</param>
    /// <param name="side">The side.</param>
    /// <param name="rod">The rod of that side, or null.</param>
    public static BumpSide? OfSide(Job job, CarSide side, JobRod? rod)
    {
        BumpSheet[] sheets = [.. job.Bump.Where(sheet => sheet.Side == side).Select(sheet => sheet.Sheet)];
        JobCorner? corner = job.Corners.FirstOrDefault(each => each.Side == side);
        if (sheets.Length == 0 && corner is null)
        {
            return null;
        }

        Length? present = rod?.Built?.CenterToCenter?.Nominal ?? rod?.Request?.Target;
        SteeringGeometry? points = corner?.Geometry?.Steering;
        SteeringGeometry? wheel = job.OneRod ? null : points ?? (present is { } length ? job.WheelOf(side, length) : null);
        SteeringGeometry? made = wheel is null ? null : present is { } now ? wheel.Turned(now) ?? wheel : wheel;
        BumpFindings? findings = sheets.Length == 0 ? null : BumpSteer.Read(new BumpRequest
        {
            Sheets = sheets,
            Limits = job.BumpLimits,
            Wheel = made,
            Shim = job.Units == Text.LengthDisplay.Inch ? Length.FromInches(0.03125) : Length.FromMillimeters(0.5),
        });
        return new BumpSide(side, findings, rod, corner)
        {
            Present = made?.RodLength ?? present,
            PointsApart = wheel is not null && made is not null ? (wheel.RodLength - made.RodLength).Abs() : Length.Zero,
            OneRod = job.OneRod,
            ForBoth = Relength(rod, findings?.Both),
            ForLengthAlone = Relength(rod, findings?.LengthAlone),
            Review = ReviewOf(job, corner, rod, findings),
        };
    }

    /// <summary>
    /// The plan of the rod with the length that an advice asks for; null where none is asked for or the parts are not named.
    /// </summary>
    private static RodRelength? Relength(JobRod? rod, BumpAdvice? advice) =>
        rod is { Rod: { } parts, Request: { } request } && advice is { Rounded.RodLonger.Value: not 0 }
            ? RodRelength.Of(parts, request, rod.Built, advice.RoundedLength)
            : null;

    private static CornerReview? ReviewOf(Job job, JobCorner? corner, JobRod? rod, BumpFindings? findings)
    {
        if (corner?.Geometry is not { } geometry)
        {
            return null;
        }

        BumpSheetFindings? newest = findings?.Newest;
        return CornerReview.Of(new CornerReviewRequest
        {
            Corner = geometry,
            Measured = newest,
            Spacing = newest?.Sheet.Spacing ?? job.BumpLimits.Spacing ?? Length.FromInches(10),
            Range = CornerUse.RangeOf(job, corner),
            Moves = corner.Moves ?? MoveLimits.Usual,
            Advice = findings?.AdviceOf(findings.Work)?.Rounded,
            Rod = rod?.Rod,
        });
    }
}

/// <summary>What one side has to tell.</summary>
/// <param name="Side">The side.</param>
/// <param name="Findings">What its sheets say, or null where it has none.</param>
/// <param name="Rod">The rod of the side, or null.</param>
/// <param name="Corner">The corner's points, or null.</param>
internal sealed record BumpSide(CarSide Side, BumpFindings? Findings, JobRod? Rod, JobCorner? Corner)
{
    /// <summary>Length of the rod now, or null where it is not known.</summary>
    public Length? Present { get; init; }

    /// <summary>How much the points of the joints are further apart than the rod is long, or nearer.</summary>
    public Length PointsApart { get; init; }

    /// <summary>Whether one rod joins both wheels, so that it is not what steers them in bump.</summary>
    public bool OneRod { get; init; }

    /// <summary>The rod with the length of the change of both, or null.</summary>
    public RodRelength? ForBoth { get; init; }

    /// <summary>The rod with the length of the change of the length alone, or null.</summary>
    public RodRelength? ForLengthAlone { get; init; }

    /// <summary>What the corner's points say, or null.</summary>
    public CornerReview? Review { get; init; }

    /// <summary>
    /// Whether readings and points tell another toe at some travel: by more than a quarter of the greater one (our own choice) and more
    /// than the indicators explain.
    /// </summary>
    /// <param name="most">By how much at most, at the gauge.</param>
    public bool PointsDisagree(out Length most)
    {
        most = Length.Zero;
        if (Findings is not { Newest: { } newest } || Review is not { Now: { } now })
        {
            return false;
        }

        (double apart, double size) = newest.Points.Zip(now.Points)
            .Select(pair => (
                Math.Abs(pair.First.AtGauge.Millimeters - pair.Second.AtGauge.Millimeters),
                Math.Max(Math.Abs(pair.First.AtGauge.Millimeters), Math.Abs(pair.Second.AtGauge.Millimeters))))
            .Aggregate((one, other) => (Math.Max(one.Item1, other.Item1), Math.Max(one.Item2, other.Item2)));
        most = Length.FromMillimeters(apart);
        return apart > (size / 4) + (4 * (newest.Sheet.Resolution?.Millimeters ?? 0));
    }

    /// <summary>Whether the points of the joints do not belong to the rod as it is.</summary>
    public bool PointsOfAnotherRod => PointsApart.Millimeters > 1;

    /// <summary>What is to be done.</summary>
    public BumpWork Work => Findings?.Work ?? BumpWork.Nothing;

    /// <summary>The advice that is to be followed, or null.</summary>
    public BumpAdvice? Advice => Findings?.AdviceOf(Work);

    /// <summary>The rod for it; null where its length stays or its parts are not known.</summary>
    public RodRelength? ForWork => Work switch { BumpWork.Both => ForBoth, BumpWork.Length => ForLengthAlone, _ => null };

    /// <summary>Whether the readings suffice and what they ask for can be made.</summary>
    public bool Holds => Findings is not { Suffices: false }
        && (Advice is not { Rounded.RodLonger.Value: not 0 } || Rod?.Rod is null || ForWork is { Holds: true })
        && Review is not { Holds: false }
        && !PointsDisagree(out _)
        && !PointsOfAnotherRod
        && Corner is not { Missing: not null };
}
