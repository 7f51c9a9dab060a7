using TieRodCalc.Parts;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>One check of a made-up rod.</summary>
internal sealed class BuiltCheck
{
    private readonly Rod _rod;
    private readonly RodRequest _request;
    private readonly BuiltReadings _readings;
    private readonly JointNeeds[] _needs;
    private readonly RodProblem _wanted;
    private readonly RodDimensions _dimensions;
    private readonly Motion _motion;
    private readonly double _mark;
    private readonly BuiltEnd _inner;
    private readonly BuiltEnd _outer;
    private readonly double? _present;

    public BuiltCheck(Rod rod, RodRequest request, BuiltReadings readings)
    {
        _rod = rod;
        _request = request;
        _readings = readings;
        RodParts parts = rod.Parts;
        _needs = [.. parts.Joints.Select(side => JointNeeds.Of(parts, side, request.Rules))];
        _wanted = RodProblem.Of(rod, request, _needs[0].RequiredMm, parts.OneJoint ? 0 : _needs[1].RequiredMm);
        _dimensions = _wanted.Rod;
        _motion = _wanted.Turning.Motion;
        _mark = Millimeters.Positive(request.Rules.Mark, nameof(request));
        if (readings.CenterToCenter is { } measured && !rod.CanHave(measured.Nominal))
        {
            throw new ArgumentException("The measured length must be above the offset of the bent ends.", nameof(readings));
        }

        _inner = BuiltEnd.Of(parts.Inner, readings.Inner);
        _outer = parts.OneJoint ? new BuiltEnd(0, 0) : BuiltEnd.Of(parts.Outer!, readings.Outer);
        if (readings.CenterToCenter is { } length)
        {
            // The thread showing that was not read follows from the other one and the length.
            double rest = _dimensions.Axial(length.Mm) - Beyond(0, 0);
            _inner = _inner with { Showing = _inner.Showing ?? rest - _outer.Showing };
            _outer = _outer with { Showing = _outer.Showing ?? rest - _inner.Showing };
        }

        _present = readings.CenterToCenter?.Mm ?? (_inner.Showing is { } inside && _outer.Showing is { } outside
            ? _dimensions.Length(Beyond(inside, outside))
            : null);
    }

    public BuiltRod Check()
    {
        Setting? setting = Setting();
        BindingLimit[] binding = [.. Missed(setting)];
        List<Contradiction> contradictions = [.. Contradictions()];
        bool known = setting is not null && contradictions.TrueForAll(contradiction => contradiction.Kind == ContradictionKind.Bore);
        bool stands = Array.TrueForAll(binding, limit => limit.At != AdjustmentPoint.Present);
        return new BuiltRod
        {
            Verdict = !known ? Verdict.NotChecked
                : binding.Length > 0 || !_wanted.Adjusts ? Verdict.NotBuildable
                : Verdict.Buildable,
            Locking = _rod.Locking,
            Present = Mm(_present),
            Inner = Joint(_needs[0], _inner, setting),
            Outer = _dimensions.OneJoint ? null : Joint(_needs[1], _outer, setting),
            Contradictions = contradictions,
            Binding = binding,
            Shorter = setting is { } from ? Travel.Of(_dimensions, _motion, Axial, from, longer: false) : null,
            Longer = setting is { } at ? Travel.Of(_dimensions, _motion, Axial, at, longer: true) : null,
            Spare = known && stands && setting is { } made ? Spare(made) : null,
            Warnings = PlanWarnings.OfBuilt(
                _rod, _request, TolerancesStated, known && binding.Length == 0 ? MayMiss(setting!.Value) : 0, _needs),
            Readings = new BuiltReadings
            {
                CenterToCenter = _readings.CenterToCenter ?? Measured(_present),
                Inner = Filled(_readings.Inner, _inner),
                Outer = _dimensions.OneJoint ? default : Filled(_readings.Outer, _outer),
            },
        };
    }

    /// <summary>
    /// Axial length as the rod stands: by the thread showing of both ends where both are known, since a caliper reads it finer than a
    /// tape the length.
    /// </summary>
    private double Axial => _inner.Showing is { } inside && _outer.Showing is { } outside
        ? Beyond(inside, outside)
        : _dimensions.Axial(_present!.Value);

    private bool TolerancesStated => new ToleranceBox(
            _rod.Parts, _wanted, (side, across) => JointNeeds.RequiredAt(_rod.Parts, side, _request.Rules, across)).All.Count > 0
        || BuiltEnd.Stated(_readings.CenterToCenter) + _rod.Parts.Joints.Sum(Unsure) > 0;

    /// <summary>How far the axial length of the parts may be off by their tolerances.</summary>
    private double PartsStated => (_rod.Parts.Sleeve?.Length ?? _rod.Parts.Socket!.CenterToFace).PlusMinusMm + _rod.Parts.Joints
        .Select(_rod.Parts.EndAt).Sum(end => end.CenterToTip.PlusMinusMm + end.ThreadLength.PlusMinusMm);

    /// <summary>How far the axial length may be off by the tolerance of the length that was read.</summary>
    private double LengthStated => _readings.CenterToCenter is { } length
        ? length.Mm / _dimensions.Axial(length.Mm) * length.PlusMinusMm
        : 0;

    /// <summary>How much shorter along the axis the rod may have to be turned from where it is.</summary>
    private double Shorter => Math.Max(0, Axial - _dimensions.Axial(_wanted.Target - _wanted.Shorter));

    /// <summary>How much longer along the axis the rod may have to be turned from where it is.</summary>
    private double Longer => Math.Max(0, _dimensions.Axial(_wanted.Target + _wanted.Longer) - Axial);

    private static Length? Mm(double? value) => value is { } known ? Length.FromMillimeters(known) : null;

    private static Measured? Measured(double? value) => value is { } known
        ? new Measured(Length.FromMillimeters(Math.Max(0, known)))
        : null;

    private static EndReadings Filled(EndReadings read, BuiltEnd end) =>
        read with { Showing = read.Showing ?? Measured(end.Showing), Cut = read.Cut ?? Measured(end.Cut) };

    /// <summary>Axial length of the parts as so much thread shows: <c>(c1 - t1 + showing1) + (c2 - t2 + showing2) + S</c>.</summary>
    private double Beyond(double innerShowing, double outerShowing) => _dimensions.Stretched
        - _dimensions.Inner.ThreadLength - _dimensions.Outer.ThreadLength + innerShowing + outerShowing;

    private Setting? Setting() => _present is not null
        && _inner.Insertion(_dimensions.Inner.ThreadLength) is { } inner && _outer.Insertion(_dimensions.Outer.ThreadLength) is { } outer
        ? new Setting(inner, outer, new Cuts(_inner.Cut!.Value, _outer.Cut!.Value))
        : null;

    private IEnumerable<Contradiction> Contradictions()
    {
        foreach (RodSide side in _rod.Parts.Joints)
        {
            if (BuiltEnd.Contradicts(_rod.Parts.EndAt(side), side, _readings.At(side), _mark) is { } contradiction)
            {
                yield return contradiction;
            }

            JointDimensions joint = _dimensions[side];
            double past = (side == RodSide.Inner ? _inner : _outer).Insertion(joint.ThreadLength) - joint.Depth ?? 0;
            if (joint.ClosedBore && past > Unsure(side) + _rod.Parts.HoleAt(side).Depth.PlusMinusMm + _mark + Millimeters.Negligible)
            {
                yield return new(ContradictionKind.Bore, side, Length.FromMillimeters(past));
            }
        }

        if (_readings.CenterToCenter is not { } length)
        {
            yield break;
        }

        BuiltEnd[] own = [.. _rod.Parts.Joints.Select(Own)];
        double stated = PartsStated + LengthStated + _rod.Parts.Joints.Sum(side => Read(side, BuiltEnd.Stated));
        double allowed = PartsStated + length.Mm / _dimensions.Axial(length.Mm) * BuiltEnd.Allowed(length, _mark / 2)
            + _rod.Parts.Joints.Sum(side => Read(side, reading => BuiltEnd.Allowed(reading, _mark / 2)));
        double apart = 0;
        RodSide? missing = null;
        if (own.All(end => end.Showing is not null))
        {
            apart = Math.Abs(_dimensions.Axial(length.Mm) - Beyond(own[0].Showing!.Value, own.Length > 1 ? own[1].Showing!.Value : 0));
        }
        else
        {
            // What has to show at the ends that were not read, for the length to come out, is no less than nothing and no more than
            // their whole thread.
            double shows = _dimensions.Axial(length.Mm) - Beyond(own[0].Showing ?? 0, own.Length > 1 ? own[1].Showing ?? 0 : 0);
            double whole = _rod.Parts.Joints.Where((_, i) => own[i].Showing is null).Sum(side => _dimensions[side].ThreadLength);
            missing = own.Count(end => end.Showing is null) == 1
                ? _rod.Parts.Joints[Array.FindIndex(own, end => end.Showing is null)]
                : null;
            apart = Math.Max(0, Math.Max(-shows, shows - whole));
        }

        if (apart > allowed + Millimeters.Negligible)
        {
            yield return new(ContradictionKind.Length, missing, Length.FromMillimeters(apart - stated));
        }
    }

    /// <summary>What is known of an end by its own readings alone.</summary>
    private BuiltEnd Own(RodSide side) => BuiltEnd.Of(_rod.Parts.EndAt(side), _readings.At(side));

    /// <summary>What counts of the readings that an end's thread showing follows from: of cut and depth where it was not read.</summary>
    private double Read(RodSide side, Func<Measured?, double> of) => _readings.At(side) is { Showing: { } showing }
        ? of(showing)
        : of(_readings.At(side).Depth) + of(_readings.At(side).Cut);

    /// <summary>
    /// The limits that are missed as the rod stands, or else over the wanted adjustment; the room of a nut also where the cut is not
    /// known, since it does not depend on it.
    /// </summary>
    private IEnumerable<BindingLimit> Missed(Setting? setting)
    {
        if (_inner.Showing is not { } inside || _outer.Showing is not { } outside)
        {
            yield break;
        }

        Setting at = setting ?? new Setting(_dimensions.Inner.ThreadLength - inside, _dimensions.Outer.ThreadLength - outside, default);
        (Limit Limit, RodSide? End, double Slack)[] now = [.. Slacks(at)];
        (Limit Limit, RodSide? End, double Slack)[] shortest = [.. Slacks(at.Moved(_motion, -Shorter))];
        (Limit Limit, RodSide? End, double Slack)[] longest = [.. Slacks(at.Moved(_motion, Longer))];
        for (int i = 0; i < now.Length; i++)
        {
            if (setting is null && now[i].Limit != Limit.NutRoom)
            {
                continue;
            }

            (double slack, AdjustmentPoint point) = now[i].Slack < -Planning.Setting.Lost ? (now[i].Slack, AdjustmentPoint.Present)
                : shortest[i].Slack <= longest[i].Slack ? (shortest[i].Slack, AdjustmentPoint.Shortest)
                : (longest[i].Slack, AdjustmentPoint.Longest);
            if (slack < -Planning.Setting.Lost)
            {
                yield return new(now[i].Limit, now[i].End, point, Length.FromMillimeters(-slack));
            }
        }
    }

    private IEnumerable<(Limit Limit, RodSide? End, double Slack)> Slacks(Setting at) =>
        LimitSlack.Each(_dimensions, at.Inner, at.Outer, at.Cuts.Inner, at.Cuts.Outer);

    private BuiltJoint Joint(JointNeeds needs, BuiltEnd end, Setting? setting)
    {
        JointDimensions joint = _dimensions[needs.Side];
        double? insertion = end.Insertion(joint.ThreadLength);
        (double Low, double High) cuts = end.Cut is { } cut ? (cut, cut) : (0, joint.MostCut);
        double share = _motion[needs.Side];
        double most = _present is null ? 0 : Math.Max(-share * Shorter, share * Longer);
        double? room = end.Showing - joint.Nut;
        double unsure = Unsure(needs.Side);
        double Insertion(double cut, double off) => Math.Max(0, joint.ThreadLength - cut - end.Showing!.Value + off);
        double Engaged(double cut, double off) => joint.Engaged(Insertion(cut, off), cut);
        LengthSpan? Over(Func<double, double, double> of) => end.Showing is null
            ? null
            : new(Length.FromMillimeters(of(cuts.High, -unsure)), Length.FromMillimeters(of(cuts.Low, unsure)));
        return new BuiltJoint
        {
            Showing = Mm(end.Showing),
            Cut = Mm(end.Cut),
            Insertion = Mm(insertion),
            InsertionSpan = Over(Insertion),
            Engaged = insertion is { } s ? Mm(joint.Engaged(s, end.Cut!.Value)) : null,
            EngagedSpan = Over(Engaged),
            EngagedLeast = setting is { } at
                ? Mm(Math.Min(
                    joint.Engaged(at.Moved(_motion, -Shorter)[needs.Side], at.Cuts[needs.Side]),
                    joint.Engaged(at.Moved(_motion, Longer)[needs.Side], at.Cuts[needs.Side])))
                : null,
            Required = needs.Required,
            NutRoom = Mm(room),
            NutRoomLeast = _present is null ? null : Mm(room - most),
        };
    }

    /// <summary>
    /// How far the insertion of an end may be off, by the tolerances that are stated: of its thread and readings, or where its thread
    /// showing follows from the length of the rod, of all that this follows from.
    /// </summary>
    private double Unsure(RodSide side)
    {
        EndReadings read = _readings.At(side);
        double thread = _rod.Parts.EndAt(side).ThreadLength.PlusMinusMm;
        return BuiltEnd.Stated(read.Cut) + (Own(side).Showing is null
            ? PartsStated - thread + LengthStated
                + _rod.Parts.Joints.Where(joint => joint != side).Sum(joint => Read(joint, BuiltEnd.Stated))
            : thread + BuiltEnd.Stated(read.Showing)
                + (read is { Showing: not null, Cut: not null } ? 0 : BuiltEnd.Stated(read.Depth)));
    }

    /// <summary>By how much a limit may be missed where the insertions are off by what is stated; zero or less where none is.</summary>
    private double MayMiss(Setting setting)
    {
        double worst = double.PositiveInfinity;
        double inner = Unsure(RodSide.Inner);
        double outer = _dimensions.OneJoint ? 0 : Unsure(RodSide.Outer);
        foreach (double axial in (ReadOnlySpan<double>)[-Shorter, 0, Longer])
        {
            // Each limit needs more insertion or less, of one end or of both: all of it at once is the worst for each.
            foreach (int sign in (ReadOnlySpan<int>)[-1, 1])
            {
                Setting off = (setting with { Inner = setting.Inner + sign * inner, Outer = setting.Outer + sign * outer })
                    .Moved(_motion, axial);
                worst = Math.Min(worst, LimitSlack.OfSetting(_dimensions, off.Inner, off.Outer, off.Cuts.Inner, off.Cuts.Outer));
            }
        }

        return -worst;
    }

    private SpareRod Spare(Setting setting) => new(
        Length.FromMillimeters(_present!.Value),
        SpareEnd(RodSide.Inner, setting),
        _dimensions.OneJoint ? null : SpareEnd(RodSide.Outer, setting),
        StartProcedure.Of(_dimensions, _wanted.Turning, setting.Inner, setting.Outer, setting.Cuts));

    private SpareEnd SpareEnd(RodSide side, Setting setting)
    {
        JointDimensions joint = _dimensions[side];
        double cut = setting.Cuts[side];
        double fromCenter = joint.CenterToTip - cut;
        double offset = _rod.Parts.OffsetAt(side);
        return new(
            Length.FromMillimeters(cut),
            Length.FromMillimeters(fromCenter),
            _rod.Parts.EndAt(side).IsBent ? Length.FromMillimeters(Math.Sqrt(fromCenter * fromCenter + offset * offset)) : null,
            Length.FromMillimeters(joint.ThreadLength - cut),
            Length.FromMillimeters(setting[side]),
            Length.FromMillimeters(joint.Showing(setting[side], cut)));
    }
}
