using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;

namespace TieRodCalc.Tests.Planning;

/// <summary>Each warning of a plan of toe, exactly where its comment says.</summary>
public class ToeWarningTests
{
    private const double Mm = 0.00001;

    private static readonly ToeWarningCode[] s_ofRods =
    [
        ToeWarningCode.PresentLengthPlanned, ToeWarningCode.SettingFromPlan, ToeWarningCode.NotBuildable, ToeWarningCode.CutNotKnown,
        ToeWarningCode.NotLocked,
    ];

    /// <summary>A rod of each kind, and what is warned of it alone.</summary>
    public static TheoryData<string, ToeWarningCode[]> Rods => new()
    {
        { "planned", [ToeWarningCode.SettingFromPlan, ToeWarningCode.PresentLengthPlanned] },
        { "measured", [ToeWarningCode.SettingFromPlan] },
        { "not buildable", [ToeWarningCode.NotBuildable] },
        { "one nut", [ToeWarningCode.SettingFromPlan] },
        { "no nuts", [ToeWarningCode.SettingFromPlan, ToeWarningCode.NotLocked] },
        { "a clamp for a nut", [ToeWarningCode.SettingFromPlan] },
        { "an end is turned", [ToeWarningCode.SettingFromPlan] },
        { "one joint", [] },
        { "one joint planned", [ToeWarningCode.PresentLengthPlanned] },
        { "one joint without nut", [ToeWarningCode.NotLocked] },
        { "one joint with a clamp", [] },
        { "one joint that may be cut", [ToeWarningCode.CutNotKnown] },
    };

    [Theory]
    [MemberData(nameof(Rods))]
    public void A_rod_has_the_warnings_of_its_kind(string name, ToeWarningCode[] expected)
    {
        ToeRod rod = Rod(name);
        foreach (CarSide side in Enum.GetValues<CarSide>())
        {
            ToeRod plain = ToeCars.Twin.OnCar(CarSide.Left) with { PresentMeasured = true };
            ToeRequest request = rod.LeftAlone(0) with { Share = ToeShare.BothRods };
            ToePlan plan = ToePlanner.Plan(request with
            {
                Left = side == CarSide.Left ? rod : plain,
                Right = side == CarSide.Right ? rod : plain,
            });
            Assert.Equal(expected.Order(), plan.Warnings.Where(warning => warning.Side == side).Select(warning => warning.Code).Order());
            Assert.All(plan.Warnings, warning => Assert.Contains(warning.Code, s_ofRods));
            Assert.All(plan.Warnings, warning => Assert.True(warning is { End: null, Value: null, Side: not null }));
        }
    }

    [Fact]
    public void A_rod_that_is_not_turned_is_warned_of_only_where_nothing_locks_it_or_it_is_past_a_limit()
    {
        ToeRequest request = (ToeCars.Twin.OnCar(CarSide.Left) with { PresentMeasured = true }).LeftAlone(0);
        ToePlan plan = ToePlanner.Plan(request with { Right = Rod("no nuts") });
        Assert.Equal(
            [ToeWarningCode.NotLocked], plan.Warnings.Where(warning => warning.Side == CarSide.Right).Select(warning => warning.Code));
        ToePlan past = ToePlanner.Plan(request with
        {
            Right = ToeCars.Twin.OnCar(CarSide.Right) with { Present = ToeCars.Twin.Target.ToLength() + UnitsNet.Length.FromMillimeters(20) },
        });
        Assert.Equal(
            [ToeWarningCode.StaysPastALimit], past.Warnings.Where(warning => warning.Side == CarSide.Right).Select(warning => warning.Code));
        Assert.False(past.Holds);
    }

    /// <summary>
    /// The twin's nut has 50 - 32 - 8 = 10 mm of room at 256 mm and a pitch of 1.5 mm; a turn takes 1.5 mm of it. With a bore of 60 mm it
    /// may come down to nothing.
    /// </summary>
    [Theory]
    [InlineData(-15, 2.5, false)]
    [InlineData(-16.5, 1.75, false)]
    [InlineData(-17.25, 1.375, true)]
    [InlineData(-19.5, 0.25, true)]
    [InlineData(-20.25, -0.125, false)]
    public void Less_than_a_pitch_of_room_for_the_nut_is_told_where_the_move_is_made(double longer, double room, bool told)
    {
        RodCase rod = ToeCars.Twin.WithInner(Deep).WithOuter(Deep);
        ToePlan plan = ToePlanner.Plan(rod.OnCar(CarSide.Left).LeftAlone(longer));
        ToeWarning[] warnings = [.. plan.Warnings.Where(warning => warning.Code == ToeWarningCode.LittleRoomForTheNut)];
        Assert.Equal(told ? [RodSide.Inner, RodSide.Outer] : [], warnings.Select(warning => warning.End!.Value));
        Assert.All(warnings, warning => Assert.Equal(CarSide.Left, warning.Side));
        Assert.All(warnings, warning => Assert.Equal(room, warning.Value!.Value.Millimeters, Mm));
        Assert.Equal(room < 0, plan.Moves[0].Outcome == MoveOutcome.Refused);

        static JointCase Deep(JointCase joint) => joint with { Depth = Dim.OfMm(60) };
    }

    [Fact]
    public void Exactly_a_pitch_of_room_is_enough_and_no_nut_needs_none()
    {
        // 16.5 mm are 5 1/2 turns, 8.25 mm; from 10.25 mm of room at 256.5 mm that leaves 2 mm, with a nut of 8.5 mm 1.5 mm.
        RodCase rod = ToeCars.Twin.WithInner(Deep).WithOuter(joint => Deep(joint) with { Nut = null });
        ToePlan exact = ToePlanner.Plan(rod.OnCar(CarSide.Left, 256.5).LeftAlone(-16.5));
        Assert.Equal(1.5, exact.Moves[0].Joints[0].NutRoom.Millimeters, Mm);
        Assert.DoesNotContain(exact.Warnings, warning => warning.Code == ToeWarningCode.LittleRoomForTheNut);
        ToePlan less = ToePlanner.Plan(rod.OnCar(CarSide.Left, 256.5).LeftAlone(-16.875));
        Assert.Equal(RodSide.Inner, Assert.Single(less.Warnings, warning => warning.Code == ToeWarningCode.LittleRoomForTheNut).End);

        static JointCase Deep(JointCase joint) => joint with { Depth = Dim.OfMm(60), Nut = Dim.OfMm(8.5) };
    }

    [Theory]
    [InlineData(ToeShare.BothRods, false, null, null)]
    [InlineData(ToeShare.LeftOnly, false, ToeWarningCode.SteeringWheelLeavesCenter, null)]
    [InlineData(ToeShare.RightOnly, false, ToeWarningCode.SteeringWheelLeavesCenter, null)]
    [InlineData(ToeShare.LeftOnly, true, ToeWarningCode.WheelHeld, CarSide.Right)]
    [InlineData(ToeShare.RightOnly, true, ToeWarningCode.WheelHeld, CarSide.Left)]
    public void One_rod_that_makes_up_the_whole_change_is_told(ToeShare share, bool oneRod, ToeWarningCode? code, CarSide? side)
    {
        foreach (bool halves in (bool[])[false, true])
        {
            ToePlan plan = ToePlanner.Plan(ToeCars.Demo.Car(ToeCars.Total(-0.125), ToeCars.Total(0.0625), share) with
            {
                OneRod = oneRod,
                OnlyTotalMeasured = halves,
            });
            ToeWarning[] expected =
            [
                .. halves ? [new ToeWarning(ToeWarningCode.HalvesAssumed)] : Array.Empty<ToeWarning>(),
                .. code is { } told ? [new ToeWarning(told, side)] : Array.Empty<ToeWarning>(),
            ];
            Assert.Equal(expected, plan.Warnings.Where(warning => !s_ofRods.Contains(warning.Code)));
        }
    }

    [Fact]
    public void Random_rods_are_warned_of_exactly_where_the_comments_say()
    {
        Findings findings = new();
        Dictionary<ToeWarningCode, int> seen = [];
        foreach ((ToeCase drawn, ToePlan plan, ToeMove move) in PlannedToes.All)
        {
            ToeRodCase rod = drawn.Rod;
            bool outerFree = rod.OneJoint || rod.Rod.Outer is { Nut: null, Clamp: null };
            ToeWarning?[] expected =
            [
                rod.Rod.Inner is { Nut: null, Clamp: null } && outerFree ? new(ToeWarningCode.NotLocked, move.Side) : null,
                move.Outcome == MoveOutcome.Holds && rod.Worst(0) < -Millimeters.Negligible * 1.5 ? new(ToeWarningCode.PastALimit, move.Side) : null,
                new(ToeWarningCode.PresentLengthPlanned, move.Side),
                !rod.OneJoint && !rod.SettingKnown ? new(ToeWarningCode.NotBuildable, move.Side) : null,
                !rod.OneJoint && rod.SettingKnown ? new(ToeWarningCode.SettingFromPlan, move.Side) : null,
                rod.OneJoint && !rod.SettingKnown ? new(ToeWarningCode.CutNotKnown, move.Side) : null,
                .. rod.Joints.Where(end => move.Outcome == MoveOutcome.Holds && LittleRoom(rod, end, move.Turns!.Value))
                    .Select(end => new ToeWarning(ToeWarningCode.LittleRoomForTheNut, move.Side, end)),
            ];
            ToeWarning[] actual =
            [
                .. plan.Warnings.Where(warning => warning.Side == move.Side).Select(warning => warning with { Value = null }),
            ];
            bool same = expected.OfType<ToeWarning>().ToHashSet().SetEquals(actual);
            findings.That(drawn, same, "warnings", same ? null : string.Join(", ", actual.AsEnumerable()));
            foreach (ToeWarning warning in actual)
            {
                seen[warning.Code] = seen.GetValueOrDefault(warning.Code) + 1;
            }
        }

        findings.AssertNone();
        Assert.All(
            (ToeWarningCode[])[.. s_ofRods, ToeWarningCode.LittleRoomForTheNut],
            code => Assert.True(seen.GetValueOrDefault(code) >= RandomCounts.Rods / 500, $"{code}"));

        static bool LittleRoom(ToeRodCase rod, RodSide end, double turns)
        {
            JointCase joint = rod.Rod.Joint(end);
            double room = LimitTable.Room(joint, rod.At(turns).Of(end), rod.Cuts.Of(end));
            return joint.Nut is not null && room < joint.Thread.PitchMm - Millimeters.Negligible;
        }
    }

    private static ToeRod Rod(string name)
    {
        RodCase twin = ToeCars.Twin;
        RodCase rack = ToeCars.Rack;
        RodCase clamped = twin.WithInner(inner => inner with { Nut = null, Clamp = Dim.OfMm(20) });
        bool oneJoint = name.StartsWith("one joint", StringComparison.Ordinal);
        RodCase rod = name switch
        {
            "planned" or "measured" => twin,
            "not buildable" => twin with { Longer = Dim.OfMm(40) },
            "one nut" => twin.WithOuter(outer => outer with { Nut = null }),
            "no nuts" => twin.WithInner(inner => inner with { Nut = null }).WithOuter(outer => outer with { Nut = null }),
            "a clamp for a nut" => clamped.WithOuter(outer => outer with { Nut = null }),
            "an end is turned" => ToeCars.Rigid,
            "one joint" or "one joint planned" => rack,
            "one joint without nut" => rack.WithInner(inner => inner with { Nut = null }),
            "one joint with a clamp" => rack.WithInner(inner => inner with { Nut = null, Clamp = Dim.OfMm(20) }),
            "one joint that may be cut" => rack.WithInner(inner => inner with { MaxCut = Dim.OfMm(5) }),
            _ => throw new ArgumentException("No such rod.", nameof(name)),
        };
        return rod.OnCar(CarSide.Left, oneJoint: oneJoint) with { PresentMeasured = !name.EndsWith("planned", StringComparison.Ordinal) };
    }
}
