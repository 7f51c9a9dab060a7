using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Planning;

/// <summary>A change that makes a worked rod buildable, with its size in millimeters.</summary>
internal readonly record struct WorkedChange(ChangeKind Kind, RodSide? End, double By);

/// <summary>A worked rod that cannot be built, and everything that alone makes it buildable.</summary>
internal sealed record RemedyExample(string Name, RodJob Job, params WorkedChange[] Changes);

/// <summary>
/// The worked rods as failing variants. K is what insertions and cuts add up to, c1 + c2 + S less the target (axial, where an end is
/// bent). Where both pitches are the same and the hands are not, half of an adjustment goes into each end, so that an insertion at the
/// target is bounded from below by lead + mouth + required + longer / 2 and from above by depth - shorter / 2.
/// </summary>
internal static class RemedyExamples
{
    private static readonly JointCase s_rack = new()
    {
        Thread = new ThreadCase(false, 14, 1.5, Hand.Right),
        CenterToTip = Dim.OfMm(250),
        ThreadLength = Dim.OfMm(60),
        Nut = Dim.OfMm(8),
        Depth = Dim.OfMm(35),
        Bore = Bore.Closed,
        Countersink = Dim.OfMm(0.75),
    };

    public static IReadOnlyList<RemedyExample> All { get; } =
    [
        // K = 215.9 + 66.675 + 177.8 - 365.125 = 95.25. Inner: at most 50.8 - 3.175 / 2 = 49.2125 in the bore. Outer: at most
        // 44.45 - 9.525 - 1.5875 = 33.3375 for its nut. Together 82.55, 12.7 too little. The inner end may be cut by that, the sleeve may
        // be shorter, the rod longer. The outer nut forbids to cut the outer end; with 12.7 more of thread the outer insertion may be
        // 46.0375, less than its bore. Leaving the nut out gives 9.525, and a greater insertion into no bore: not enough.
        new(
            "inch parts that must not be cut",
            new RodJob(Uncuttable(CheckCases.Inch.Rod), Dim.OfMm(20), Dim.OfMm(20), OneJoint: false),
            new(ChangeKind.Cut, RodSide.Inner, 12.7),
            new(ChangeKind.ShorterSleeve, null, 12.7),
            new(ChangeKind.Chase, RodSide.Outer, 12.7),
            new(ChangeKind.LongerTarget, null, 12.7)),

        // K = 150 + 70 + 120 - 262 = 78. Both nuts: 45 - 8 - 1 = 36 and 42 - 8 - 1 = 33 for insertion and cut, 69 in all: 9 too little,
        // whatever is cut. A sleeve of 111 has room for 50 + 50. The bores leave 120 - 50 - 1 = 69 to each insertion, so either
        // thread may be chased by 9. A nut left out gives 8 only.
        new(
            "no room for the nuts",
            new RodJob(CheckCases.NoRoomForNuts.Rod, Dim.OfMm(9), Dim.OfMm(10), OneJoint: false),
            new(ChangeKind.ShorterSleeve, null, 9),
            new(ChangeKind.Chase, RodSide.Inner, 9),
            new(ChangeKind.Chase, RodSide.Outer, 9),
            new(ChangeKind.LongerTarget, null, 9)),

        // K = 190 + 80 + 90 - 262 = 98, the tips leave 90 - 3 - 3 = 84: 14 too little. A sleeve of any other length moves both alike. The
        // outer end may be cut by 48 - 8 - 1.5 - 27.75 = 10.75 only before its nut is in the way; chased it could be cut, but must not be.
        // Less adjustment toward shorter gives 3 to the tips.
        new(
            "tips meet, no cut allowed",
            new RodJob(Uncuttable(CheckCases.TipsMeet.Rod), default, Dim.OfMm(20), OneJoint: false),
            new(ChangeKind.Cut, RodSide.Inner, 14),
            new(ChangeKind.LongerTarget, null, 14)),

        // K = 190 + 80 + 90 - 330 = 30. Either end must be in by 1.5 + 0.75 + 24 + 1.5 = 27.75, together 55.5: 25.5 too much.
        new(
            "too long",
            new RodJob(CheckCases.TooLong.Rod, Dim.OfMm(20), Dim.OfMm(20), OneJoint: false),
            new(ChangeKind.LongerSleeve, null, 25.5),
            new(ChangeKind.ShorterTarget, null, 25.5)),

        // The same 4.5 longer than what just fits, 304.5; no adjustment at all would leave 3 of it: 1.5 more is missing. With strengths
        // of 600 MPa in 600 MPa strength asks for less than 16 mm on M16, so 8 mm can be spared at either end: 4.5 will do.
        new(
            "a little too long, strengths known",
            new RodJob(
                OfSteel(CheckCases.TooLong.Rod) with { Target = Dim.OfMm(309) },
                default,
                default,
                OneJoint: false),
            new(ChangeKind.LongerSleeve, null, 4.5),
            new(ChangeKind.ShorterTarget, null, 4.5),
            new(ChangeKind.LessEngagement, RodSide.Inner, 4.5),
            new(ChangeKind.LessEngagement, RodSide.Outer, 4.5)),

        // One bent end, O = 16: axial 381.664774 at 382 and 376.660324 at 377. Insertion and cut of the inner end come to 45 less its share
        // of the way to 377 (bore), those of the outer end to 41.275 - 9.525 less its own (nut): together 76.75 less the whole way. So
        // 200 + 66.675 + 200 less the axial length at the shortest may be at most 76.75, but is 90.014676: 13.264676 too much. Axial
        // 389.925 at the shortest is a length of 390.253130, 13.253130 more than 377.
        new(
            "one bent end that must not be cut",
            new RodJob(Uncuttable(CheckCases.Bent.Rod), default, default, OneJoint: false),
            new(ChangeKind.Cut, RodSide.Inner, 13.264676),
            new(ChangeKind.ShorterSleeve, null, 13.264676),
            new(ChangeKind.LongerTarget, null, 13.253130)),

        // Both ends bent, square to each other: O = 20. The ends must be in by 29.25 and 26.25 at the longest, 504, which is axial
        // 503.603018: the parts are 200 + 150 + 200 long, 9.103018 too little. Axial 494.5 is a length of 494.904284, 9.095716 less
        // than 504.
        new(
            "both ends bent, too long",
            new RodJob(CheckCases.BothBentSquare.Rod with { Target = Dim.OfMm(500) }, Dim.OfMm(10), Dim.OfMm(10), OneJoint: false),
            new(ChangeKind.LongerSleeve, null, 9.103018),
            new(ChangeKind.ShorterTarget, null, 9.095716)),

        // 2.0 and 1.5 of the same hand: 4 mm and 3 mm of insertion for each millimeter of length. With an adjustment of a each way
        // 30 + 3 a <= s1 <= 45 - 4 a (outer nut room, inner bore), so a <= 15 / 7 = 2.142857: 0.857143 less than 3. Toward longer
        // alone 30 + 3 x l <= 45 - 4 x 3 = 33 for l <= 1; toward shorter alone 30 + 9 <= 45 - 4 k for k <= 1.5, 27 + 12 <= 43.75 - 3 k for
        // k <= 1.58333, and 27 + 12 <= 45 - 4 k again for 1.5. The nut of the outer end left out gives s1 >= 22 + 3 a; the inner thread,
        // 27 + 4 a <= 45 - 4 a, still allows 2.25 only.
        new(
            "same hand, too much adjustment",
            new RodJob(
                CheckCases.SameHand.Rod with { Shorter = Dim.OfMm(3), Longer = Dim.OfMm(3) }, default, default, OneJoint: false),
            new(ChangeKind.LessShorter, null, 1.5),
            new(ChangeKind.LessLonger, null, 2),
            new(ChangeKind.LessAdjustment, null, 6.0 / 7)),

        // Nothing but to do without: a sleeve of the same hand and pitch at both ends turns without any change of length.
        new(
            "same hand, same pitch",
            new RodJob(
                CheckCases.SameHand.Rod.WithInner(inner => inner with { Thread = CheckCases.SameHand.Rod.Outer.Thread }),
                default,
                default,
                OneJoint: false),
            new WorkedChange(ChangeKind.LessAdjustment, null, 1)),

        // K = 190 + 80 + 120 - 336 = 54. Either end must be in by 26.25 + longer / 2: 52.5 + longer <= 54, longer at most 1.5.
        new(
            "open inner bore, too long",
            new RodJob(CheckCases.OpenInnerBore.Rod with { Target = Dim.OfMm(336) }, Dim.OfMm(20), Dim.OfMm(20), OneJoint: false),
            new(ChangeKind.LongerSleeve, null, 1.5),
            new(ChangeKind.LessLonger, null, 1.5),
            new(ChangeKind.LessAdjustment, null, 1.5),
            new(ChangeKind.ShorterTarget, null, 1.5)),

        // One threaded joint, c = 250 and b = 60: s + x = 250 + 60 - 270 = 40, but s is at most 35 - 3 = 32 in the bore. Insertion and cut
        // may be 60 - 8 - 3 = 49. The outer end's thread is 35 deep, so its ball may be 8 nearer. Less adjustment gives 3.
        new(
            "rack, must not be cut",
            new RodJob(Rack(target: 270, adjust: 3), Dim.OfMm(20), default, OneJoint: true),
            new(ChangeKind.Cut, RodSide.Inner, 8),
            new(ChangeKind.ShorterOuterEnd, null, 8),
            new(ChangeKind.LongerTarget, null, 8)),

        // s = 250 + 60 - 286 = 24, and must be 1.5 + 0.75 + 21 + 3 = 26.25: 2.25 too little.
        new(
            "rack, too long",
            new RodJob(Rack(target: 286, adjust: 3), Dim.OfMm(20), default, OneJoint: true),
            new(ChangeKind.LongerOuterEnd, null, 2.25),
            new(ChangeKind.LessLonger, null, 2.25),
            new(ChangeKind.LessAdjustment, null, 2.25),
            new(ChangeKind.ShorterTarget, null, 2.25)),
    ];

    private static RodCase Uncuttable(RodCase rod) => rod.WithInner(inner => inner with { MaxCut = default });

    private static RodCase OfSteel(RodCase rod) =>
        rod.WithInner(inner => inner with { TensileMpa = 600 }).WithOuter(outer => outer with { TensileMpa = 600 }) with
        {
            SleeveKind = MaterialKind.Steel,
            SleeveTensileMpa = 600,
        };

    private static RodCase Rack(double target, double adjust) => new()
    {
        Inner = s_rack,
        Outer = s_rack with { Depth = Dim.OfMm(8) },
        SleeveLength = Dim.OfMm(60),
        Target = Dim.OfMm(target),
        Shorter = Dim.OfMm(adjust),
        Longer = Dim.OfMm(adjust),
    };
}
