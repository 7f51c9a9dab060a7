using TieRodCalc.Parts;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>One move in the making: how the rod turns, where it stands, and the wheel.</summary>
internal sealed class ToeMoving
{
    /// <summary>The sleeve is turned by eighths of a turn: finer is not counted by eye (common practice, no source).</summary>
    private const double SleeveStep = 0.125;

    private const double WholeTurn = 1;
    private const double HalfTurn = 0.5;

    private readonly CarSide _side;
    private readonly ToeRod _rod;
    private readonly Angle _now;
    private readonly RodPlan? _plan;
    private readonly RodDimensions _dimensions;
    private readonly Turning _turning;
    private readonly TurnedPart _part;
    private readonly Motion _motion;
    private readonly double _step;
    private readonly bool _hexagon;
    private readonly double _axial;
    private readonly Setting? _setting;
    private readonly bool _differs;

    public ToeMoving(CarSide side, ToeRod rod, Angle now)
    {
        _side = side;
        _rod = rod;
        _now = now;
        RodParts parts = rod.Rod.Parts;
        PlanRules rules = rod.Request.Rules;
        _dimensions = RodDimensions.Nominal(
            parts,
            JointNeeds.Of(parts, RodSide.Inner, rules).RequiredMm,
            parts.OneJoint ? 0 : JointNeeds.Of(parts, RodSide.Outer, rules).RequiredMm,
            Millimeters.Of(rules.TipGap));

        _plan = parts.OneJoint ? null : RodPlanner.Plan(rod.Rod, rod.Request);
        double present = Millimeters.Positive(rod.Present, nameof(rod));
        if (!(present > _dimensions.Offset + Millimeters.Negligible))
        {
            throw new ArgumentException("The present length must be above the offset of the bent ends.", nameof(rod));
        }

        _turning = new Turning(_dimensions);
        (_part, _step) = Turned();
        _motion = _part == TurnedPart.Sleeve ? _turning.Motion : Motion.OfEnd(ThreadOfEnd, _dimensions.Inner.Pitch);
        _hexagon = _part == TurnedPart.Sleeve && parts.Sleeve?.Outside?.Shape == OutsideShape.Hexagon;
        _axial = _dimensions.Axial(present);
        Setting? setting = parts.OneJoint ? SettingOfOneJoint() : SettingOfPlan();
        _differs = setting is { } expected && Differs(expected, rod.Built);
        _setting = _differs ? null : setting;
    }

    /// <summary>
    /// The joint whose insertion changes where an end is turned in place of the sleeve: with one threaded joint that one, whichever
    /// end is turned.
    /// </summary>
    private RodSide ThreadOfEnd => _dimensions.OneJoint || _part == TurnedPart.InnerEnd ? RodSide.Inner : RodSide.Outer;

    /// <summary>The move to a toe of the wheel; null stands for one that no wheel can have.</summary>
    public ToeMove To(Angle? want)
    {
        ToeAnswer reach = Toe.FromLength(_rod.Steering, _rod.Present);
        ToeMove move = new()
        {
            Side = _side,
            Outcome = MoveOutcome.OutOfReach,
            Plan = _plan,
            Now = _now,
            Want = want,
            Present = _rod.Present,
            SteeringReach = new LengthSpan(reach.Shortest, reach.Longest),
            Part = _part,
            Lengthens = Lengthens,
            Step = _step,
            BuiltDiffers = _differs,
            SteeringUnlikely = !(_rod.Steering.Turned(_rod.Present) ?? _rod.Steering).IsLikely,
            PastALimit = _setting is { } now && Misses(now),
            Shorter = TravelFrom(_setting, 0, longer: false),
            Longer = TravelFrom(_setting, 0, longer: true),
        };
        if (_rod.Steering.Turned(_rod.Present)?.Aligned(_now, _rod.Camber) is not { } wheel)
        {
            return move with { Outcome = reach.Outcome == ToeOutcome.InLine ? MoveOutcome.InLine : MoveOutcome.PresentOutOfReach };
        }

        MoveCurve curve = new(wheel, _dimensions.Offset, _axial, _motion.AxialPerTurn);
        RodLengthAnswer answer = want is { } toe ? Toe.LengthFor(wheel, toe) : default;
        move = move with { Curve = curve, ToePerStep = curve.ToeAt(_step) - _now };
        return answer switch
        {
            { Length: { } wanted } when Millimeters.Of(wanted) > _dimensions.Offset + Millimeters.Negligible =>
                Counted(move, curve, wanted),
            { Outcome: ToeOutcome.InLine } => move with { Outcome = MoveOutcome.InLine },
            _ => move,
        };
    }

    private ToeMove Counted(ToeMove move, MoveCurve curve, Length wanted)
    {
        double exact = curve.TurnsTo(Millimeters.Of(wanted));
        double turns = Unsigned(Math.Round(exact / _step, MidpointRounding.AwayFromZero) * _step);
        MoveRefusal? refusal = Refusal(move, curve, turns);
        Angle? after = refusal is null ? curve.ToeAt(turns) : null;
        if (refusal is null && after is null)
        {
            return move;
        }

        Setting? then = refusal is null && _setting is { } now ? After(now, turns) : null;
        return move with
        {
            Outcome = refusal is not null ? MoveOutcome.Refused : _setting is null ? MoveOutcome.NotChecked : MoveOutcome.Holds,
            Wanted = wanted,
            ExactTurns = exact,
            Turns = turns,
            Flats = Flats(turns),
            ExactFlats = Flats(exact),
            Direction = Direction(turns),
            Refusal = refusal,
            After = after,
            ShorterAfter = TravelFrom(then, turns, longer: false),
            LongerAfter = TravelFrom(then, turns, longer: true),
            Joints = then is { } setting ? Joints(setting) : [],
        };
    }

    private (TurnedPart Part, double Step) Turned()
    {
        RodParts parts = _rod.Rod.Parts;
        bool inner = parts.Inner.TurnsByHalves;
        bool outer = parts.Outer?.TurnsByHalves ?? parts.Socket!.Joint == JointKind.RodEnd;
        if (!_dimensions.OneJoint && _turning.Adjusts)
        {
            return (TurnedPart.Sleeve, SleeveStep);
        }

        // The end that may be turned by halves gives the finer steps; of two alike the outer one is the nearer to the hand.
        return inner && !outer ? (TurnedPart.InnerEnd, HalfTurn) : (TurnedPart.OuterEnd, outer ? HalfTurn : WholeTurn);
    }

    /// <summary>The planned setting, moved by the sleeve to the present length; null where the plan has none.</summary>
    private Setting? SettingOfPlan()
    {
        if (_plan!.Solution is not { } solution)
        {
            return null;
        }

        Cuts cuts = new(Recommended(solution.InnerCut), Recommended(solution.OuterCut));
        double longer = _axial - _dimensions.Axial(Millimeters.Of(_rod.Request.Target));
        Setting planned = new(Millimeters.Of(solution.Inner.Insertion), Millimeters.Of(solution.Outer?.Insertion ?? default), cuts);
        return planned.Moved(_motion, longer);
    }

    /// <summary>One joint has one insertion for a length, once it is known what was cut off.</summary>
    private Setting? SettingOfOneJoint() =>
        _dimensions.Inner.MostCut <= Millimeters.Negligible ? new Setting(_dimensions.Stretched - _axial, 0, default)
        : _rod.Built?.Inner.Cut is { } cut ? new Setting(_dimensions.Stretched - _axial - cut.Mm, 0, new Cuts(cut.Mm, 0))
        : null;

    /// <summary>Whether what was measured is not what the setting has, by more than a measurement may miss.</summary>
    private bool Differs(Setting setting, BuiltReadings? built)
    {
        const double Misread = 1;
        bool Apart(Measured? read, double has) => read is { } value && !(Math.Abs(value.Mm - has) <= Misread + value.PlusMinusMm);
        double Showing(RodSide side) => _dimensions[side].Showing(setting[side], setting.Cuts[side]);
        bool At(RodSide side) =>
            Apart(built.At(side).Showing, Showing(side)) || Apart(built.At(side).Cut, setting.Cuts[side])
            || Apart(built.At(side).Depth, setting[side]);
        return built is not null && _rod.Rod.Parts.Joints.Any(At);
    }

    private static double Recommended(CutAdvice? cut) => cut is null ? 0 : Millimeters.Of(cut.Recommended);

    private double? Flats(double turns) => _hexagon ? Math.Abs(turns) * Outside.FlatsOfHexagon : null;

    /// <summary>An end that is turned gets longer as it unscrews: counterclockwise from its own ball with a right-hand thread.</summary>
    private TurnDirection Lengthens => _part == TurnedPart.Sleeve ? _turning.Lengthens : _dimensions.Inner.NutLoosens;

    private TurnDirection? Direction(double turns) => turns > 0 ? Lengthens
        : turns == 0 ? null
        : Lengthens == TurnDirection.Clockwise ? TurnDirection.Counterclockwise
        : TurnDirection.Clockwise;

    private Travel? TravelFrom(Setting? setting, double turns, bool longer) => setting is { } from
        ? Travel.Of(_dimensions, _motion, _axial + turns * _motion.AxialPerTurn, from, longer)
        : null;

    /// <summary>
    /// What keeps the rod from being turned so far; null where nothing does. The limits are straight lines over the turns, so that
    /// a way whose two ends keep them keeps them all along.
    /// </summary>
    private MoveRefusal? Refusal(ToeMove move, MoveCurve curve, double turns)
    {
        if (_setting is not { } now || !Misses(After(now, turns)))
        {
            return null;
        }

        (Travel onward, Travel back) = turns < 0 ? (move.Shorter!, move.Longer!) : (move.Longer!, move.Shorter!);
        Travel? obstacle = !move.PastALimit || onward.Turns == 0 ? onward : back.Turns == 0 ? back : null;
        double reachable = move.PastALimit ? 0 : Reachable(now, onward, turns < 0 ? -_step : _step);

        // Where neither way is closed, no thread of this depth engages enough, wherever the rod is turned.
        return new MoveRefusal(
            obstacle?.EndsAt ?? Limit.Engagement,
            obstacle is null ? RodSide.Inner : obstacle.End,
            reachable,
            Flats(reachable),
            curve.ToeAt(reachable));
    }

    /// <summary>The whole steps of a travel, and the one after them where it misses a limit by no more than is allowed.</summary>
    private double Reachable(Setting now, Travel onward, double step)
    {
        double steps = Math.Floor(onward.Turns / _step);
        double next = (steps + 1) * step;
        return Misses(After(now, next)) ? Unsigned(steps * step) : next;
    }

    /// <summary>A zero without the sign that it has where turns that shorten are rounded to none.</summary>
    private static double Unsigned(double turns) => turns == 0 ? 0 : turns;

    private bool Misses(Setting at) => at.WorstSlack(_dimensions) < -Setting.Lost;

    private Setting After(Setting now, double turns) => now.Moved(_motion, turns * _motion.AxialPerTurn);

    private MovedJoint[] Joints(Setting then)
    {
        MovedJoint inner = Joint(RodSide.Inner, then);
        return _dimensions.OneJoint ? [inner] : [inner, Joint(RodSide.Outer, then)];
    }

    private MovedJoint Joint(RodSide side, Setting then)
    {
        JointDimensions joint = _dimensions[side];
        double cut = then.Cuts[side];
        bool nut = _rod.Rod.Parts.NutAt(side) is not null;
        return new MovedJoint(
            side,
            Mm(joint.Showing(_setting!.Value[side], cut)),
            Mm(joint.Showing(then[side], cut)),
            Mm(joint.Engaged(then[side], cut)),
            Mm(joint.Required),
            Mm(joint.NutRoom(then[side], cut)),
            nut ? joint.NutLoosens : null,
            Mm(joint.Pitch));
    }

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
