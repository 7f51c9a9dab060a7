using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Threads;

namespace TieRodCalc.Text;

/// <summary>The one name that each limit, verdict, end and direction has, in the output and in the files.</summary>
public static class Names
{
    /// <summary>Name of a limit.</summary>
    public static string Of(Limit limit) => limit switch
    {
        Limit.Engagement => "engagement",
        Limit.NutRoom => "nut room",
        Limit.ClosedBore => "closed bore",
        Limit.FarThread => "far thread",
        Limit.Tips => "tips",
        Limit.Witness => "witness",
        Limit.Clamp => "clamp",
        Limit.Cut => "cut",
        _ => throw new ArgumentOutOfRangeException(nameof(limit)),
    };

    /// <summary>Name of a limit with the end that it belongs to: <c>closed bore of the inner end</c>; the tips have none.</summary>
    public static string Of(Limit limit, RodSide? end) => end is { } side ? $"{Of(limit)} of the {Of(side)} end" : Of(limit);

    /// <summary>Name of a side of a rod.</summary>
    public static string Of(RodSide side) => side == RodSide.Inner ? "inner" : "outer";

    /// <summary>Name of a verdict.</summary>
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Buildable => "buildable",
        Verdict.BuildableAfterCutting => "buildable after cutting",
        Verdict.NotBuildable => "not buildable",
        Verdict.NotChecked => "not checked",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict)),
    };

    /// <summary>Name of what is locked.</summary>
    public static string Of(Locking locking) => locking switch
    {
        Locking.None => "none",
        Locking.Inner => "inner",
        Locking.Outer => "outer",
        Locking.Both => "both",
        _ => throw new ArgumentOutOfRangeException(nameof(locking)),
    };

    /// <summary>Name of a direction of turning.</summary>
    public static string Of(TurnDirection direction) =>
        direction == TurnDirection.Clockwise ? "clockwise" : "counterclockwise";

    /// <summary>Name of a point of the wanted adjustment.</summary>
    public static string Of(AdjustmentPoint point) => point switch
    {
        AdjustmentPoint.Shortest => "shortest",
        AdjustmentPoint.Longest => "longest",
        AdjustmentPoint.Any => "any",
        AdjustmentPoint.Present => "present",
        _ => throw new ArgumentOutOfRangeException(nameof(point)),
    };

    /// <summary>Name of what decides the required engagement.</summary>
    public static string Of(EngagementSource source) => source switch
    {
        EngagementSource.Rule => "rule",
        EngagementSource.Job => "job",
        EngagementSource.Strength => "strength",
        _ => throw new ArgumentOutOfRangeException(nameof(source)),
    };

    /// <summary>Name of a hand.</summary>
    public static string Of(Hand hand) => hand == Hand.Left ? "left-hand" : "right-hand";

    /// <summary>What differs between two threads, as a list in words.</summary>
    public static string Of(ThreadDifference difference)
    {
        List<string> words = [];
        void Add(ThreadDifference flag, string word)
        {
            if (difference.HasFlag(flag))
            {
                words.Add(word);
            }
        }

        Add(ThreadDifference.Hand, "hand");
        Add(ThreadDifference.Diameter, "diameter");
        Add(ThreadDifference.Pitch, "pitch");
        Add(ThreadDifference.Form, "form");
        return words.Count <= 1 ? string.Concat(words) : $"{string.Join(", ", words[..^1])} and {words[^1]}";
    }

    /// <summary>The code of a warning: lower-case words joined by hyphens.</summary>
    public static string Of(WarningCode code) => code switch
    {
        WarningCode.NotLocked => "not-locked",
        WarningCode.OneJointLocked => "one-joint-locked",
        WarningCode.SleeveCannotAdjust => "sleeve-cannot-adjust",
        WarningCode.SetByTheEnd => "set-by-the-end",
        WarningCode.SocketTakenAsClosed => "socket-taken-as-closed",
        WarningCode.StartMayNotMatch => "start-may-not-match",
        WarningCode.LittleCutToSpare => "little-cut-to-spare",
        WarningCode.CutOffTheMarks => "cut-off-the-marks",
        WarningCode.LittleRoomForTheNut => "little-room-for-the-nut",
        WarningCode.EngagementBelowRule => "engagement-below-rule",
        WarningCode.SteelAssumed => "steel-assumed",
        WarningCode.StrengthNotChecked => "strength-not-checked",
        WarningCode.StrengthGoverns => "strength-governs",
        WarningCode.OutsideUnknown => "outside-unknown",
        WarningCode.SleeveTooThin => "sleeve-too-thin",
        WarningCode.SleeveSlit => "sleeve-slit",
        WarningCode.BendingBeyondRange => "bending-beyond-range",
        WarningCode.SpecialThread => "special-thread",
        WarningCode.BeyondTables => "beyond-tables",
        WarningCode.GivesWayUnderLoad => "gives-way-under-load",
        WarningCode.LoadNotChecked => "load-not-checked",
        WarningCode.LoadLeavesOut => "load-leaves-out",
        WarningCode.NominalTrusted => "nominal-trusted",
        WarningCode.HoldsOnlyAtNominal => "holds-only-at-nominal",
        WarningCode.NoRemedy => "no-remedy",
        WarningCode.NoUncutReach => "no-uncut-reach",
        WarningCode.ClassAssumed => "class-assumed",
        WarningCode.CoarsePitchAssumed => "coarse-pitch-assumed",
        WarningCode.LeadAssumed => "lead-assumed",
        WarningCode.CountersinkAssumed => "countersink-assumed",
        WarningCode.ToeNotComputed => "toe-not-computed",
        WarningCode.ToeOutOfReach => "toe-out-of-reach",
        WarningCode.PlatesNotGiven => "plates-not-given",
        _ => throw new ArgumentOutOfRangeException(nameof(code)),
    };

    /// <summary>The id by which a remedy is asked for: lower-case words joined by hyphens, two changes by a plus sign.</summary>
    public static string Of(Remedy remedy)
    {
        ArgumentNullException.ThrowIfNull(remedy);
        return string.Join('+', remedy.Changes.Select(change =>
            $"{IdOf(change.Kind)}{(change.End is { } end ? $"-{Of(end)}" : string.Empty)}"));
    }

    /// <summary>Name of what a change changes.</summary>
    public static string Of(ChangeKind kind) => kind switch
    {
        ChangeKind.Cut => "cut",
        ChangeKind.ShorterSleeve or ChangeKind.LongerSleeve => "sleeve length",
        ChangeKind.ShorterOuterEnd or ChangeKind.LongerOuterEnd => "center to face",
        ChangeKind.Chase => "thread length",
        ChangeKind.LessShorter => "adjustment shorter",
        ChangeKind.LessLonger => "adjustment longer",
        ChangeKind.LessAdjustment => "adjustment",
        ChangeKind.ShorterTarget or ChangeKind.LongerTarget => "target length",
        ChangeKind.LessEngagement => "required engagement",
        ChangeKind.NoNut => "jam nut",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>Name of a dimension.</summary>
    public static string Of(RodDimension dimension) => dimension switch
    {
        RodDimension.CenterToTip => "center to tip",
        RodDimension.ThreadLength => "thread length",
        RodDimension.Lead => "lead",
        RodDimension.Offset => "offset",
        RodDimension.MaxCut => "max cut",
        RodDimension.Depth => "depth",
        RodDimension.Countersink => "countersink",
        RodDimension.Witness => "witness",
        RodDimension.Clamp => "clamp",
        RodDimension.Thickness => "thickness",
        RodDimension.SleeveLength => "sleeve length",
        RodDimension.CenterToFace => "center to face",
        RodDimension.Outside => "outside",
        RodDimension.Cut => "cut",
        _ => throw new ArgumentOutOfRangeException(nameof(dimension)),
    };

    /// <summary>Name of a dimension with the end that it belongs to.</summary>
    public static string Of(RodDimension dimension, RodSide? end) => end is { } side ? $"{Of(side)} {Of(dimension)}" : Of(dimension);

    /// <summary>Name of a Unified series.</summary>
    public static string Of(UnifiedSeries series) => SeriesNames.NameOf(series);

    /// <summary>Name of the member of a thread.</summary>
    public static string Of(ThreadGender gender) => gender == ThreadGender.External ? "external" : "internal";

    /// <summary>Name of the direction in which a look-alike is turned together with the thread asked about.</summary>
    public static string Of(FitDirection direction) =>
        direction == FitDirection.IntoLookAlike ? "into look-alike" : "look-alike into";

    /// <summary>Name of what happens when two threads are turned together.</summary>
    public static string Of(FitOutcome outcome) => outcome switch
    {
        FitOutcome.GoesTogether => "goes together",
        FitOutcome.DoesNotStart => "does not start",
        FitOutcome.StartsAndBinds => "starts and binds",
        FitOutcome.GoesInLoose => "goes in loose",
        _ => throw new ArgumentOutOfRangeException(nameof(outcome)),
    };

    /// <summary>Name of what gives way.</summary>
    public static string Of(GivesWay part) => part switch
    {
        GivesWay.MaleBreaks => "male breaks",
        GivesWay.MaleStrips => "male thread strips",
        GivesWay.FemaleStrips => "female thread strips",
        _ => throw new ArgumentOutOfRangeException(nameof(part)),
    };

    /// <summary>The code of a warning of threads: lower-case words joined by hyphens.</summary>
    public static string Of(ThreadWarningCode code) => code switch
    {
        ThreadWarningCode.ClassAssumed => "class-assumed",
        ThreadWarningCode.CoarsePitchAssumed => "coarse-pitch-assumed",
        ThreadWarningCode.SpecialThread => "special-thread",
        ThreadWarningCode.BeyondTables => "beyond-tables",
        ThreadWarningCode.ThreadsDoNotMatch => "threads-do-not-match",
        ThreadWarningCode.SteelAssumed => "steel-assumed",
        ThreadWarningCode.StrengthNotChecked => "strength-not-checked",
        ThreadWarningCode.ThreadsMayNotMeet => "threads-may-not-meet",
        ThreadWarningCode.OutsideUnknown => "outside-unknown",
        ThreadWarningCode.SleeveTooThin => "sleeve-too-thin",
        ThreadWarningCode.SleeveSlit => "sleeve-slit",
        ThreadWarningCode.BendingBeyondRange => "bending-beyond-range",
        _ => throw new ArgumentOutOfRangeException(nameof(code)),
    };

    /// <summary>Name of a side of the car.</summary>
    public static string Of(CarSide side) => side == CarSide.Left ? "left" : "right";

    /// <summary>Name of where toe as a length is measured.</summary>
    public static string Of(GaugePlace place) => place == GaugePlace.Plates ? "plates" : "tire";

    /// <summary>Name of what is turned.</summary>
    public static string Of(TurnedPart part) => part switch
    {
        TurnedPart.Sleeve => "sleeve",
        TurnedPart.InnerEnd => "inner end",
        TurnedPart.OuterEnd => "outer end",
        _ => throw new ArgumentOutOfRangeException(nameof(part)),
    };

    /// <summary>Name of what came of a move.</summary>
    public static string Of(MoveOutcome outcome) => outcome switch
    {
        MoveOutcome.Holds => "holds",
        MoveOutcome.Refused => "refused",
        MoveOutcome.NotChecked => "not checked",
        MoveOutcome.OutOfReach => "out of reach",
        MoveOutcome.PresentOutOfReach => "present length out of reach",
        MoveOutcome.InLine => "in line",
        _ => throw new ArgumentOutOfRangeException(nameof(outcome)),
    };

    /// <summary>The code of a warning of toe: lower-case words joined by hyphens.</summary>
    public static string Of(ToeWarningCode code) => code switch
    {
        ToeWarningCode.PresentLengthPlanned => "present-length-planned",
        ToeWarningCode.SettingFromPlan => "setting-from-plan",
        ToeWarningCode.NotBuildable => "not-buildable",
        ToeWarningCode.CutNotKnown => "cut-not-known",
        ToeWarningCode.PastALimit => "past-a-limit",
        ToeWarningCode.StaysPastALimit => "stays-past-a-limit",
        ToeWarningCode.BuiltDiffers => "built-differs",
        ToeWarningCode.SteeringUnlikely => "steering-unlikely",
        ToeWarningCode.PointsAtOtherLength => "points-at-other-length",
        ToeWarningCode.NotLocked => "not-locked",
        ToeWarningCode.LittleRoomForTheNut => "little-room-for-the-nut",
        ToeWarningCode.HalvesAssumed => "halves-assumed",
        ToeWarningCode.SteeringWheelLeavesCenter => "steering-wheel-leaves-center",
        ToeWarningCode.WheelHeld => "wheel-held",
        _ => throw new ArgumentOutOfRangeException(nameof(code)),
    };

    /// <summary>Name of how much a wheel steers itself.</summary>
    public static string Of(BumpGrade grade) => grade switch
    {
        BumpGrade.VeryGood => "very good",
        BumpGrade.Fair => "fair",
        BumpGrade.Felt => "felt by the driver",
        BumpGrade.StronglyFelt => "strongly felt",
        _ => throw new ArgumentOutOfRangeException(nameof(grade)),
    };

    /// <summary>Name of what is to be changed of a rod's joints.</summary>
    public static string Of(BumpWork work) => work switch
    {
        BumpWork.Nothing => "nothing",
        BumpWork.Height => "height",
        BumpWork.Length => "length",
        BumpWork.Both => "height and length",
        _ => throw new ArgumentOutOfRangeException(nameof(work)),
    };

    /// <summary>The code of a warning of bump sheets: lower-case words joined by hyphens.</summary>
    public static string Of(BumpWarningCode code) => code switch
    {
        BumpWarningCode.TooFewReadings => "too-few-readings",
        BumpWarningCode.NothingToCheckBy => "nothing-to-check-by",
        BumpWarningCode.OneSided => "one-sided",
        BumpWarningCode.ResolutionNotGiven => "resolution-not-given",
        BumpWarningCode.ReadingsScatter => "readings-scatter",
        BumpWarningCode.TwoTermsMiss => "two-terms-miss",
        BumpWarningCode.HeightNotTold => "height-not-told",
        BumpWarningCode.LengthNotTold => "length-not-told",
        BumpWarningCode.NoLengthDoes => "no-length-does",
        BumpWarningCode.FarChange => "far-change",
        BumpWarningCode.WheelNotGiven => "wheel-not-given",
        BumpWarningCode.RodInLine => "rod-in-line",
        BumpWarningCode.SheetsContradict => "sheets-contradict",
        BumpWarningCode.SheetsContradictSense => "sheets-contradict-sense",
        BumpWarningCode.GaugeUnusual => "gauge-unusual",
        _ => throw new ArgumentOutOfRangeException(nameof(code)),
    };

    private static string IdOf(ChangeKind kind) => kind switch
    {
        ChangeKind.Cut => "cut",
        ChangeKind.ShorterSleeve => "shorter-sleeve",
        ChangeKind.LongerSleeve => "longer-sleeve",
        ChangeKind.ShorterOuterEnd => "shorter-outer-end",
        ChangeKind.LongerOuterEnd => "longer-outer-end",
        ChangeKind.Chase => "chase",
        ChangeKind.LessShorter => "less-shorter",
        ChangeKind.LessLonger => "less-longer",
        ChangeKind.LessAdjustment => "less-adjustment",
        ChangeKind.ShorterTarget => "shorter-target",
        ChangeKind.LongerTarget => "longer-target",
        ChangeKind.LessEngagement => "less-engagement",
        ChangeKind.NoNut => "no-nut",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
