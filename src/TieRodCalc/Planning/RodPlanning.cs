using TieRodCalc.Parts;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Planning;

/// <summary>One plan in the making: the numbers that its steps share.</summary>
internal sealed class RodPlanning
{
    private readonly Rod _rod;
    private readonly RodRequest _request;
    private readonly JointNeeds _inner;
    private readonly JointNeeds? _outer;
    private readonly RodProblem _wanted;
    private readonly RodDimensions _dimensions;
    private readonly Turning _turning;
    private readonly double _mark;
    private readonly double _allowance;
    private readonly double _target;
    private readonly double _axial;
    private readonly double _axialShorter;
    private readonly double _axialLonger;
    private readonly SettingProblem _problem;

    public RodPlanning(Rod rod, RodRequest request)
    {
        _rod = rod;
        _request = request;
        PlanRules rules = request.Rules;
        _mark = Millimeters.Positive(rules.Mark, nameof(request));
        _allowance = Millimeters.NotNegative(rules.Allowance, nameof(request));
        if (rules.Load is { } load && !(double.IsFinite(load.Newtons) && load.Newtons > 0))
        {
            throw new ArgumentException("The load must be finite and above zero.", nameof(request));
        }

        _inner = JointNeeds.Of(rod.Parts, RodSide.Inner, rules);
        _outer = rod.Parts.OneJoint ? null : JointNeeds.Of(rod.Parts, RodSide.Outer, rules);
        _wanted = RodProblem.Of(rod, request, _inner.RequiredMm, _outer?.RequiredMm ?? 0);
        _dimensions = _wanted.Rod;
        _turning = _wanted.Turning;
        _target = _wanted.Target;
        _axial = _wanted.Axial;
        _axialShorter = _wanted.AxialShorter;
        _axialLonger = _wanted.AxialLonger;
        _problem = _wanted.Setting;
    }

    public RodPlan Plan()
    {
        bool adjusts = _wanted.Adjusts;
        List<BindingLimit> binding = _problem.Conflicts();
        RodSolution? solution = adjusts && binding.Count == 0 ? Solve() : null;
        LengthSpan? uncutReach = Reach(default);
        return new RodPlan
        {
            Verdict = solution switch
            {
                null => Verdict.NotBuildable,
                { InnerCut: { IsNeeded: true } } or { OuterCut: { IsNeeded: true } } => Verdict.BuildableAfterCutting,
                _ => Verdict.Buildable,
            },
            Locking = _rod.Locking,
            Target = Mm(_target),
            Axial = Mm(_axial),
            UncutReach = uncutReach,
            InnerRequired = _inner.Required,
            OuterRequired = _outer?.Required,
            Solution = solution,
            Binding = binding,
            MoreCutWouldHelp = adjusts && binding.Count > 0
                && (_wanted with { Rod = _dimensions.CutFreely() }).Setting.Conflicts().Count == 0,
            Warnings = PlanWarnings.Of(
                _rod, _request, _turning, solution, uncutReach is null, _outer is null ? [_inner] : [_inner, _outer]),
        };
    }

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private RodSolution Solve()
    {
        Cuts least = _problem.LeastCuts();
        WorstCaseSearch worst = new(
            _wanted,
            new ToleranceBox(_rod.Parts, _wanted, (side, across) => JointNeeds.RequiredAt(_rod.Parts, side, _request.Rules, across)),
            _mark);
        (Cuts cuts, bool innerOnMark, bool outerOnMark) = Recommended(least, worst);
        Interval span = _problem.InnerInsertions(cuts);
        double inner = span.Middle;
        double outer = _problem.Sum - cuts.Total - inner;
        double leastInner = _problem.InnerInsertions(least).Middle;
        Setting setting = new(inner, outer, cuts);
        double margin = WorstMargin(setting);
        TurnEffects effects = new(_request, _dimensions, _turning, _target, _axial);
        return new RodSolution
        {
            Reach = Reach(cuts)!,
            WorstMargin = Mm(margin),
            WorstCase = worst.Of(cuts),
            InnerCut = Advice(RodSide.Inner, least, cuts, innerOnMark),
            OuterCut = Advice(RodSide.Outer, least, cuts, outerOnMark),
            Inner = Joint(_inner, inner, cuts.Inner, span),
            Outer = _outer is null
                ? null
                : Joint(_outer, outer, cuts.Outer, new Interval(inner + outer - span.High, inner + outer - span.Low)),
            TipGap = _outer is null ? null : Mm(_dimensions.Sleeve - inner - outer),
            Shorter = Travel.Of(_dimensions, _turning.Motion, _axial, setting, longer: false),
            Longer = Travel.Of(_dimensions, _turning.Motion, _axial, setting, longer: true),
            Lengthens = _turning.Adjusts ? _turning.Lengthens : null,
            PerTurn = effects.Of(1),
            PerHalfTurn = effects.Of(0.5),
            PerFlat = _rod.Parts.Sleeve?.Outside?.Shape == OutsideShape.Hexagon ? effects.Of(1.0 / Outside.FlatsOfHexagon) : null,
            Start = StartProcedure.Of(_dimensions, _turning, inner, outer, cuts),
            LeastCutSetting = new Insertions(Mm(leastInner), _outer is null ? null : Mm(_problem.Sum - least.Total - leastInner)),
            StartStep = _turning.Adjusts && _outer is not null ? Mm(_turning.StartStep * (_rod.Parts.StartsByHalves ? 0.5 : 1)) : null,
        };
    }

    /// <summary>
    /// The cut by the rules, or a safe one near it where tolerances are stated, something has to be cut and a safe cut exists.
    /// </summary>
    private (Cuts Cuts, bool InnerOnMark, bool OuterOnMark) Recommended(Cuts least, WorstCaseSearch worst)
    {
        (double inner, bool innerOnMark) =
            CutRounding.Recommended(_problem.CutWindow(RodSide.Inner, least.Outer), _allowance, _mark);
        (double outer, bool outerOnMark) =
            CutRounding.Recommended(_problem.CutWindow(RodSide.Outer, inner), _allowance, _mark);
        Cuts ruled = new(inner, outer);
        return worst.TolerancesStated && ruled.Total > 0 && worst.Safer(ruled) is { } safer
            ? (safer, CutRounding.IsOnMark(safer.Inner, _mark), CutRounding.IsOnMark(safer.Outer, _mark))
            : (ruled, innerOnMark, outerOnMark);
    }

    private CutAdvice? Advice(RodSide side, Cuts least, Cuts cuts, bool onMark)
    {
        JointDimensions joint = _dimensions[side];
        if (joint.MostCut <= Millimeters.Negligible)
        {
            return null;
        }

        double cut = cuts[side];
        if (cut <= 0)
        {
            return CutAdvice.None;
        }

        double fromCenter = joint.CenterToTip - cut;
        ThreadedEnd end = _rod.Parts.EndAt(side);
        return new CutAdvice(
            Mm(least[side]),
            Mm(_problem.CutWindow(side, cuts[RodDimensions.Other(side)]).High),
            Mm(cut),
            Mm(fromCenter),
            Mm(joint.ThreadLength - cut),
            end.IsBent ? Mm(Math.Sqrt(fromCenter * fromCenter + end.Offset.Mm * end.Offset.Mm)) : null,
            onMark);
    }

    private JointPlan Joint(JointNeeds needs, double insertion, double cut, Interval span)
    {
        RodSide side = needs.Side;
        JointDimensions joint = _dimensions[side];
        double share = _turning.Share(side);
        double atShortest = insertion - share * _axialShorter;
        double atLongest = insertion + share * _axialLonger;
        Length engagedLeast = Mm(Math.Min(joint.Engaged(atShortest, cut), joint.Engaged(atLongest, cut)));
        double arm = LoadCheck.Arm(_rod.Parts, side, joint.CenterToTip - cut - insertion, _axial);
        return new JointPlan
        {
            Insertion = Mm(insertion),
            InsertionSpan = new LengthSpan(Mm(span.Low), Mm(span.High)),
            Showing = Mm(joint.Showing(insertion, cut)),
            Engaged = Mm(joint.Engaged(insertion, cut)),
            EngagedLeast = engagedLeast,
            Required = needs.Required,
            Strength = LoadCheck.Of(needs.Materials, engagedLeast, arm, _request.Rules.Load),
            NutRoom = Mm(joint.NutRoom(insertion, cut)),
            NutRoomLeast = Mm(joint.NutRoom(Math.Max(atShortest, atLongest), cut)),
            NutLoosens = _rod.Parts.NutAt(side) is null ? null : joint.NutLoosens,
            WitnessProves = _rod.Parts.HoleAt(side).Witness is { } witness
                ? Mm(Math.Max(0, Math.Min(joint.Depth, witness.Mm) - joint.Mouth))
                : null,
        };
    }

    /// <summary>Reach over all settings and starts with the given cuts, the wanted adjustment not kept; null where there is none.</summary>
    private LengthSpan? Reach(Cuts cuts)
    {
        // Without an adjustment to keep, the insertions are free between their limits.
        SettingProblem still = new(_dimensions, _turning, _axial, shorter: 0, longer: 0);
        double least = 0;
        double most = 0;
        foreach (RodSide side in (ReadOnlySpan<RodSide>)[RodSide.Inner, RodSide.Outer])
        {
            EndRoom end = still[side];
            Interval insertions = new(end.Least, Math.Min(end.Deepest, end.Thread - cuts[side]));
            if (insertions.IsEmpty || end.ThreadTooShallow > Millimeters.Negligible)
            {
                return null;
            }

            least += insertions.Low;
            most += insertions.High;
        }

        Interval sum = new(least, Math.Min(most, still.TipRoom));
        double stretched = _dimensions.Stretched - cuts.Total;
        return sum.IsEmpty
            ? null
            : new LengthSpan(Mm(_dimensions.Length(stretched - sum.High)), Mm(_dimensions.Length(stretched - sum.Low)));
    }

    /// <summary>
    /// Holds the recommended cuts and the setting against the definitions of the limits, at both ends of the adjustment.
    /// Intervals may be inverted by the comparison constant, so a limit may be missed by that and by what doubles lose.
    /// </summary>
    /// <returns>The smallest slack of a limit, that of the cuts not counted.</returns>
    /// <exception cref="InvalidOperationException">A limit does not hold: a fault of this program.</exception>
    private double WorstMargin(Setting setting)
    {
        double worst = LimitSlack.OfCuts(_dimensions, setting.Cuts.Inner, setting.Cuts.Outer);
        double margin = double.PositiveInfinity;
        foreach (double axial in (ReadOnlySpan<double>)[-_axialShorter, _axialLonger])
        {
            Setting moved = setting.Moved(_turning.Motion, axial);
            margin = Math.Min(margin, LimitSlack.OfSetting(_dimensions, moved.Inner, moved.Outer, moved.Cuts.Inner, moved.Cuts.Outer));
        }

        worst = Math.Min(worst, margin);
        return worst >= -Setting.Lost
            ? margin
            : throw new InvalidOperationException($"The recommended cut misses a limit by {-worst} mm.");
    }
}
