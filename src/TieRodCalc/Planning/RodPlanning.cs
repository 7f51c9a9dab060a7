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
    private readonly SettingProblem _problem;
    private readonly double _mark;
    private readonly double _allowance;

    public RodPlanning(Rod rod, RodRequest request)
    {
        _rod = rod;
        _request = request;
        PlanRules rules = request.Rules;
        _mark = Millimeters.Positive(rules.Mark, nameof(request));
        _allowance = Millimeters.NotNegative(rules.Allowance, nameof(request));
        if (rules.Load is { Newtons: <= 0 })
        {
            throw new ArgumentException("The load must be above zero.", nameof(request));
        }

        _inner = JointNeeds.Of(rod.Parts, RodSide.Inner, rules);
        _outer = rod.Parts.OneJoint ? null : JointNeeds.Of(rod.Parts, RodSide.Outer, rules);
        _wanted = RodProblem.Of(rod, request, _inner.RequiredMm, _outer?.RequiredMm ?? 0);
        _dimensions = _wanted.Rod;
        _problem = _wanted.Setting;
    }

    public RodPlan Plan()
    {
        bool adjusts = _problem.Adjusts;
        IReadOnlyList<BindingLimit> binding = _problem.Conflicts();
        RodSolution? solution = adjusts && binding.Count == 0 ? Solve() : null;
        LengthSpan? uncutReach = SolutionFigures.ReachOf(_dimensions, default) is { } reach ? Span(reach) : null;
        return new RodPlan
        {
            Verdict = solution switch
            {
                null => Verdict.NotBuildable,
                { InnerCut: { IsNeeded: true } } or { OuterCut: { IsNeeded: true } } => Verdict.BuildableAfterCutting,
                _ => Verdict.Buildable,
            },
            Locking = _rod.Locking,
            Target = Mm(_wanted.Target),
            Axial = Mm(_problem.Axial),
            UncutReach = uncutReach,
            InnerRequired = _inner.Required,
            OuterRequired = _outer?.Required,
            Solution = solution,
            Binding = binding,
            MoreCutWouldHelp = adjusts && binding.Count > 0
                && (_wanted with { Rod = _dimensions.CutFreely() }).Setting.Conflicts().Count == 0,
            Warnings = PlanWarnings.Of(
                _rod, _request, _problem.Turning, solution, uncutReach is null, _outer is null ? [_inner] : [_inner, _outer]),
        };
    }

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static LengthSpan Span(Interval interval) => new(Mm(interval.Low), Mm(interval.High));

    private RodSolution Solve()
    {
        Cuts least = _problem.LeastCuts();
        WorstCaseSearch worst = new(
            _wanted,
            new ToleranceBox(_rod.Parts, _wanted, (side, across) => JointNeeds.RequiredAt(_rod.Parts, side, _request.Rules, across)),
            _mark);
        (Cuts cuts, bool innerOnMark, bool outerOnMark) = Recommended(least, worst);
        SolutionFigures figures = new(_dimensions, _problem, least, cuts);
        Turning turning = _problem.Turning;
        (double inner, double outer) = (figures.Setting.Inner, figures.Setting.Outer);
        Interval span = figures.Insertions;
        TurnEffects effects = new(_request, _dimensions, turning, _wanted.Target, _problem.Axial);
        return new RodSolution
        {
            Reach = Span(figures.Reach),
            WorstMargin = Mm(figures.WorstMargin),
            WorstCase = worst.Of(cuts),
            InnerCut = Advice(RodSide.Inner, least, cuts, figures.Most, innerOnMark),
            OuterCut = Advice(RodSide.Outer, least, cuts, figures.Most, outerOnMark),
            Inner = Joint(_inner, figures.Inner, inner, cuts.Inner, span),
            Outer = _outer is null
                ? null
                : Joint(_outer, figures.Outer, outer, cuts.Outer, new Interval(inner + outer - span.High, inner + outer - span.Low)),
            TipGap = _outer is null ? null : Mm(_dimensions.Sleeve - inner - outer),
            Shorter = Travel.Of(figures.Shorter),
            Longer = Travel.Of(figures.Longer),
            Lengthens = turning.Adjusts ? turning.Lengthens : null,
            PerTurn = effects.Of(1),
            PerHalfTurn = effects.Of(0.5),
            PerFlat = _rod.Parts.Sleeve?.Outside?.Shape == OutsideShape.Hexagon ? effects.Of(1.0 / Outside.FlatsOfHexagon) : null,
            Start = StartProcedure.Of(_dimensions, turning, inner, outer, cuts),
            LeastCutSetting = new Insertions(
                Mm(figures.LeastCutSetting.Inner), _outer is null ? null : Mm(figures.LeastCutSetting.Outer)),
            StartStep = turning.Adjusts && _outer is not null ? Mm(turning.StartStep * (_rod.Parts.StartsByHalves ? 0.5 : 1)) : null,
        };
    }

    /// <summary>
    /// The cut by the rules, or a safe one near it where tolerances are stated, something has to be cut and a safe cut exists.
    /// </summary>
    private (Cuts Cuts, bool InnerOnMark, bool OuterOnMark) Recommended(Cuts least, WorstCaseSearch worst)
    {
        (Cuts ruled, bool innerOnMark, bool outerOnMark) = CutRounding.Recommended(_problem, least, _allowance, _mark);
        return worst.TolerancesStated && ruled.Total > 0 && worst.Safer(ruled) is { } safer
            ? (safer, CutRounding.IsOnMark(safer.Inner, _mark), CutRounding.IsOnMark(safer.Outer, _mark))
            : (ruled, innerOnMark, outerOnMark);
    }

    private CutAdvice? Advice(RodSide side, Cuts least, Cuts cuts, Cuts most, bool onMark)
    {
        ref readonly JointDimensions joint = ref _dimensions[side];
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
            Mm(most[side]),
            Mm(cut),
            Mm(fromCenter),
            Mm(joint.ThreadLength - cut),
            end.IsBent ? Mm(Math.Sqrt(fromCenter * fromCenter + end.Offset.Mm * end.Offset.Mm)) : null,
            onMark);
    }

    private JointPlan Joint(JointNeeds needs, in JointFigures figures, double insertion, double cut, Interval span)
    {
        RodSide side = needs.Side;
        ref readonly JointDimensions joint = ref _dimensions[side];
        Length engagedLeast = Mm(figures.EngagedLeast);
        double arm = LoadCheck.Arm(_rod.Parts, side, joint.CenterToTip - cut - insertion, _problem.Axial);
        return new JointPlan
        {
            Insertion = Mm(insertion),
            InsertionSpan = Span(span),
            Showing = Mm(figures.Showing),
            Engaged = Mm(figures.Engaged),
            EngagedLeast = engagedLeast,
            Required = needs.Required,
            Strength = LoadCheck.Of(needs.Materials, engagedLeast, arm, _request.Rules.Load),
            NutRoom = Mm(figures.NutRoom),
            NutRoomLeast = Mm(figures.NutRoomLeast),
            NutLoosens = _rod.Parts.NutAt(side) is null ? null : joint.NutLoosens,
            WitnessProves = _rod.Parts.HoleAt(side).Witness is { } witness
                ? Mm(Math.Max(0, Math.Min(joint.Depth, witness.Mm) - joint.Mouth))
                : null,
        };
    }
}
