using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Tests.Files;

/// <summary>Everything that the commands compute from a job: plans, remedies, checks, turns, bump sheets, corners and choices.</summary>
internal sealed record WholeComputation
{
    private const int Top = 3;

    public required Job Job { get; init; }

    public required IReadOnlyList<RodPlan> Plans { get; init; }

    public required IReadOnlyList<Remedy> Remedies { get; init; }

    public required IReadOnlyList<SwingCheck> Swing { get; init; }

    public required IReadOnlyList<BuiltRod> Built { get; init; }

    public required IReadOnlyList<ToePlan> Toes { get; init; }

    public required IReadOnlyList<BumpFindings> Bumps { get; init; }

    public required IReadOnlyList<RodRelength> Relengths { get; init; }

    public required IReadOnlyList<CornerReview> Corners { get; init; }

    public required IReadOnlyList<RodChoices> Choices { get; init; }

    /// <summary>The build record of the rods whose parts are named.</summary>
    public required string Record { get; init; }

    /// <summary>Computes everything.</summary>
    /// <param name="job">The job.</param>
    /// <param name="order">The order of what is chosen from catalogs.</param>
    /// <param name="corners">
    /// Whether the corners are reviewed, which searches their best points and takes a hundred times as long as the rest.
    /// </param>
    public static WholeComputation Of(Job job, ChoiceOrder order, bool corners)
    {
        JobRod[] named = [.. job.Rods.Where(rod => rod is { Rod: not null, Request: not null, NotPlanned: null })];
        BuiltRod[] built = [.. named.Select(rod => AsBuilt.Check(rod.Rod!, rod.Request!, rod.Built ?? new BuiltReadings()))];
        List<BumpFindings> bumps = [];
        List<RodRelength> relengths = [];
        List<CornerReview> reviews = [];
        foreach (CarSide side in new[] { CarSide.Left, CarSide.Right })
        {
            Review(job, side, bumps, relengths, corners ? reviews : null);
        }

        return new WholeComputation
        {
            Job = job,
            Plans = [.. named.Select(rod => RodPlanner.Plan(rod.Rod!, rod.Request!))],
            Remedies = [.. named.SelectMany(rod => RodRemedies.Of(rod.Rod!, rod.Request!))],
            Swing = [.. named.SelectMany(rod => SwingOf(job, rod))],
            Built = built,
            Toes = [.. Enum.GetValues<ToeShare>().Select(share => ToeOf(job, share)).OfType<ToePlan>()],
            Bumps = bumps,
            Relengths = relengths,
            Corners = reviews,
            Choices = [.. job.Rods.Select(rod => RodChooser.Choose(rod.Candidates!, rod.Request!, order, Top))],
            Record = JobWriter.Record(job, [.. named.Zip(built, (rod, check) => (rod, check.Readings))]),
        };
    }

    private static IReadOnlyList<SwingCheck> SwingOf(Job job, JobRod rod) =>
        job.Corners.FirstOrDefault(corner => corner.Side == rod.Side) is { Geometry: { } geometry } corner
            ? SwingCheck.Of(rod.Rod!, geometry, RangeOf(job, corner))
            : [];

    private static SwingRange RangeOf(Job job, JobCorner corner)
    {
        BumpSheet? newest = job.Bump.LastOrDefault(sheet => sheet.Side == corner.Side)?.Sheet;
        double[] travels = [.. newest?.Readings.Select(reading => reading.Travel.Millimeters) ?? []];
        Length Measured(int sign) =>
            Length.FromMillimeters(travels.Length == 0 ? 50 : travels.Max(travel => Math.Max(0, sign * travel)));
        return new SwingRange(corner.DroopTravel ?? Measured(-1), corner.BumpTravel ?? Measured(+1), corner.Steer ?? Length.Zero);
    }

    /// <summary>The turns for the wanted toe; null where the job does not say enough or the rods are not plain.</summary>
    private static ToePlan? ToeOf(Job job, ToeShare share)
    {
        if (job.Toe is not { } toe || (toe.OneRodTurns is not null && share != ToeShare.BothRods))
        {
            return null;
        }

        ToeRod? Chosen(CarSide side)
        {
            JobRod[] found = [.. job.Rods.Where(rod => toe.OneRodTurns is not null || rod.Side == side)];
            return found.Length == 1 ? found[0].OnCar : null;
        }

        ToeRequest request = new()
        {
            Now = toe.NowOfWheels,
            Want = toe.WantOfWheels,
            OnlyTotalMeasured = toe.Now.Total is not null,
            OneRod = toe.OneRodTurns is not null,
            Share = toe.OneRodTurns switch { CarSide.Left => ToeShare.LeftOnly, CarSide.Right => ToeShare.RightOnly, _ => share },
            Left = toe.OneRodTurns is CarSide.Right ? null : Chosen(CarSide.Left),
            Right = toe.OneRodTurns is CarSide.Left ? null : Chosen(CarSide.Right),
        };
        bool enough = (request.Share == ToeShare.RightOnly || request.Left is not null)
            && (request.Share == ToeShare.LeftOnly || request.Right is not null);
        return enough ? ToePlanner.Plan(request) : null;
    }

    private static void Review(
        Job job, CarSide side, List<BumpFindings> bumps, List<RodRelength> relengths, List<CornerReview>? corners)
    {
        BumpSheet[] sheets = [.. job.Bump.Where(sheet => sheet.Side == side).Select(sheet => sheet.Sheet)];
        JobCorner? corner = job.Corners.FirstOrDefault(each => each.Side == side);
        JobRod[] rods = [.. job.Rods.Where(rod => rod.Side == side)];
        if ((sheets.Length == 0 && corner is null) || rods.Length > 1)
        {
            return;
        }

        JobRod? rod = rods.SingleOrDefault();
        Length? present = rod?.Built?.CenterToCenter?.Nominal ?? rod?.Request?.Target;
        SteeringGeometry? wheel = job.OneRod
            ? null
            : corner?.Geometry?.Steering ?? (present is { } length ? job.WheelOf(side, length) : null);
        BumpFindings? findings = sheets.Length == 0 ? null : BumpSteer.Read(new BumpRequest
        {
            Sheets = sheets,
            Limits = job.BumpLimits,
            Wheel = present is { } now ? wheel?.Turned(now) ?? wheel : wheel,
            Shim = job.Units == LengthDisplay.Inch ? Length.FromInches(0.03125) : Length.FromMillimeters(0.5),
        });
        bumps.AddRange(new[] { findings }.OfType<BumpFindings>());
        relengths.AddRange(new[] { findings?.Both, findings?.LengthAlone }
            .Where(advice => advice is { Rounded.RodLonger.Value: not 0 } && rod is { Rod: not null, Request: not null })
            .Select(advice => RodRelength.Of(rod!.Rod!, rod.Request!, rod.Built, advice!.RoundedLength))
            .OfType<RodRelength>());
        if (corner?.Geometry is { } geometry)
        {
            corners?.Add(CornerReview.Of(new CornerReviewRequest
            {
                Corner = geometry,
                Measured = findings?.Newest,
                Spacing = findings?.Newest.Sheet.Spacing ?? job.BumpLimits.Spacing ?? Length.FromInches(10),
                Range = RangeOf(job, corner),
                Moves = corner.Moves ?? MoveLimits.Usual,
                Advice = findings?.AdviceOf(findings.Work)?.Rounded,
                Rod = rod?.Rod,
            }));
        }
    }
}
