using Google.OrTools.LinearSolver;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>One limit at one end and one point of the wanted adjustment: a row of the programme. The target is the point "any".</summary>
internal readonly record struct LimitRow(Limit Limit, RodSide? End, AdjustmentPoint At);

/// <summary>
/// The plan of a rod as a linear programme. Unknown are the two cuts, the insertions at the target, at the shortest and at
/// the longest wanted length, and by how much all limits are loosened together. Every limit is a row at each of the three
/// lengths; further rows say that the insertions give the target and that turning the sleeve moves them.
/// </summary>
internal sealed class LinearProgram : IDisposable
{
    /// <summary>Keeps limits that meet exactly from being missed by the last bits of a double.</summary>
    private const double LastBits = 1e-10;

    /// <summary>All coefficients are one, so there is nothing to scale, and a corner is exact to the last bits.</summary>
    private const string Parameters =
        "use_scaling:false use_preprocessing:false primal_feasibility_tolerance:1e-9 dual_feasibility_tolerance:1e-9";

    private const double Free = double.PositiveInfinity;

    private static readonly RodSide[] s_sides = [RodSide.Inner, RodSide.Outer];
    private static readonly AdjustmentPoint[] s_points = [AdjustmentPoint.Any, AdjustmentPoint.Shortest, AdjustmentPoint.Longest];

    private readonly Solver _solver = Solver.CreateSolver("GLOP");
    private readonly Dictionary<RodSide, Variable> _cut = [];
    private readonly Dictionary<(RodSide Side, AdjustmentPoint At), Variable> _insertion = [];
    private readonly Dictionary<(RodSide Side, AdjustmentPoint At), Constraint> _turning = [];
    private readonly Dictionary<LimitRow, Constraint> _limits = [];
    private readonly Dictionary<RodSide, Constraint> _depths = [];
    private readonly Variable _loosening;
    private readonly Constraint _axial;
    private readonly Constraint _total;
    private RodCase? _rod;

    public LinearProgram()
    {
        if (!_solver.SetSolverSpecificParametersAsString(Parameters))
        {
            throw new InvalidOperationException("The solver does not know its parameters.");
        }

        _loosening = _solver.MakeNumVar(0, Free, "loosening");
        foreach (RodSide side in s_sides)
        {
            _cut[side] = _solver.MakeNumVar(0, Free, $"cut {side}");
            foreach (AdjustmentPoint at in s_points)
            {
                _insertion[(side, at)] = _solver.MakeNumVar(-Free, Free, $"insertion {side} {at}");
                AddLimits(side, at);
            }

            _turning[(side, AdjustmentPoint.Shortest)] =
                Row((_insertion[(side, AdjustmentPoint.Shortest)], 1), (_insertion[(side, AdjustmentPoint.Any)], -1));
            _turning[(side, AdjustmentPoint.Longest)] =
                Row((_insertion[(side, AdjustmentPoint.Longest)], 1), (_insertion[(side, AdjustmentPoint.Any)], -1));
            _limits[new(Limit.Cut, side, AdjustmentPoint.Any)] = Row((_cut[side], 1), (_loosening, -1));
            _depths[side] = Row((_loosening, 1));
        }

        foreach (AdjustmentPoint at in s_points)
        {
            _limits[new(Limit.Tips, null, at)] =
                Row((_insertion[(RodSide.Inner, at)], 1), (_insertion[(RodSide.Outer, at)], 1), (_loosening, -1));
        }

        _total = Row((_cut[RodSide.Inner], 1), (_cut[RodSide.Outer], 1));
        _axial = Row(
            (_cut[RodSide.Inner], 1),
            (_cut[RodSide.Outer], 1),
            (_insertion[(RodSide.Inner, AdjustmentPoint.Any)], 1),
            (_insertion[(RodSide.Outer, AdjustmentPoint.Any)], 1));
    }

    public void Dispose() => _solver.Dispose();

    /// <summary>Takes a rod in.</summary>
    /// <param name="rod">The rod.</param>
    /// <param name="loosened">By how much a limit is loosened, infinite where it is left out; null: nothing is.</param>
    /// <param name="loosenedAll">By how much every limit is loosened in the questions that follow.</param>
    public void Load(RodCase rod, Func<LimitRow, double>? loosened = null, double loosenedAll = 0)
    {
        _rod = rod;
        foreach ((LimitRow row, Constraint constraint) in _limits)
        {
            SetLimit(rod, row, constraint, loosened?.Invoke(row) ?? 0);
        }

        foreach (RodSide side in s_sides)
        {
            JointCase joint = rod.Joint(side);
            double more = loosened?.Invoke(new(Limit.Engagement, side, AdjustmentPoint.Any)) ?? 0;
            _depths[side].SetBounds(rod.RequiredMm(joint) - (joint.Depth.Mm - joint.CountersinkMm) - more, Free);
        }

        _total.SetBounds(-Free, Free);
        FixTarget();
        Pin(null);
        _loosening.SetBounds(loosenedAll + LastBits, loosenedAll + LastBits);
    }

    /// <summary>By how much all limits must be loosened together to hold over the whole adjustment; zero where they hold.</summary>
    public double LeastLoosening(CutPair? pinned)
    {
        (double low, double high) = (_loosening.Lb(), _loosening.Ub());
        _loosening.SetBounds(0, Free);
        Pin(pinned);
        double? least = Solve(false, (_loosening, 1)) ? _loosening.SolutionValue() : null;
        _loosening.SetBounds(low, high);
        return least ?? Free;
    }

    /// <summary>The least total cut, most of it from the inner end, and the limits that press on it; null where no cut works.</summary>
    public (CutPair Cut, IReadOnlyList<Limit> Pressing)? LeastCut()
    {
        Pin(null);
        if (!Solve(false, (_cut[RodSide.Inner], 1), (_cut[RodSide.Outer], 1)))
        {
            return null;
        }

        double total = _cut[RodSide.Inner].SolutionValue() + _cut[RodSide.Outer].SolutionValue();
        Limit[] pressing =
            [.. _limits.Where(pair => Math.Abs(pair.Value.DualValue()) > Millimeters.Negligible).Select(pair => pair.Key.Limit).Distinct()];
        _total.SetBounds(-Free, total + LastBits);
        double inner = Extreme(true, (_cut[RodSide.Inner], 1)) ?? throw new InvalidOperationException($"No split of the cut.\n{_rod}");
        _total.SetBounds(-Free, Free);
        return (new CutPair(inner, Math.Max(0, total - inner)), pressing);
    }

    /// <summary>Whether some cuts of at most a total work.</summary>
    public bool WorksWithin(double total)
    {
        Pin(null);
        return Solve(false, (_cut[RodSide.Inner], 1), (_cut[RodSide.Outer], 1))
            && _cut[RodSide.Inner].SolutionValue() + _cut[RodSide.Outer].SolutionValue() <= total;
    }

    /// <summary>The axial lengths of all settings with these cuts, no adjustment reserved; null where there is no setting.</summary>
    public Span? AxialSpan(CutPair cut)
    {
        Pin(cut);
        _axial.SetBounds(-Free, Free);
        SetTurning(0, 0);
        (Variable, double)[] insertions =
            [(_insertion[(RodSide.Inner, AdjustmentPoint.Any)], 1), (_insertion[(RodSide.Outer, AdjustmentPoint.Any)], 1)];
        double faces = LimitTable.Axial(_rod!, cut, default);
        Span? span = Extreme(true, insertions) is { } most && Extreme(false, insertions) is { } least
            ? new Span(faces - most, faces - least)
            : null;
        FixTarget();
        return span;
    }

    /// <summary>The inner insertions at the target that these cuts allow, the adjustment kept; null where there is none.</summary>
    public Span? InnerInsertionSpan(CutPair cut)
    {
        Pin(cut);
        Variable insertion = _insertion[(RodSide.Inner, AdjustmentPoint.Any)];
        return Extreme(false, (insertion, 1)) is { } low && Extreme(true, (insertion, 1)) is { } high ? new Span(low, high) : null;
    }

    /// <summary>The least and most cut of one end that work while the other end is cut by an amount; null where none does.</summary>
    public Span? CutSpan(RodSide side, double otherCut)
    {
        Pin(null);
        _cut[side == RodSide.Inner ? RodSide.Outer : RodSide.Inner].SetBounds(otherCut, otherCut);
        return Extreme(false, (_cut[side], 1)) is { } low && Extreme(true, (_cut[side], 1)) is { } high ? new Span(low, high) : null;
    }

    private void AddLimits(RodSide side, AdjustmentPoint at)
    {
        Variable insertion = _insertion[(side, at)];
        foreach (Limit atLeast in (Limit[])[Limit.Engagement, Limit.Witness, Limit.Clamp])
        {
            _limits[new(atLeast, side, at)] = Row((insertion, 1), (_loosening, 1));
        }

        foreach (Limit atMost in (Limit[])[Limit.ClosedBore, Limit.FarThread])
        {
            _limits[new(atMost, side, at)] = Row((insertion, 1), (_loosening, -1));
        }

        _limits[new(Limit.NutRoom, side, at)] = Row((insertion, 1), (_cut[side], 1), (_loosening, -1));
    }

    /// <summary>The table of limits, row by row.</summary>
    private static void SetLimit(RodCase rod, LimitRow row, Constraint constraint, double more)
    {
        double sleeve = rod.SleeveLength.Mm;
        if (row.End is not { } side)
        {
            constraint.SetBounds(-Free, sleeve - rod.TipGap.Mm + more);
            return;
        }

        JointCase joint = rod.Joint(side);
        double otherDepth = (side == RodSide.Inner ? rod.Outer : rod.Inner).Depth.Mm;
        (double low, double high) = row.Limit switch
        {
            Limit.Engagement => (joint.LeadMm + joint.CountersinkMm + rod.RequiredMm(joint), Free),
            Limit.Witness => (joint.Witness is { } witness ? joint.LeadMm + witness.Mm : -Free, Free),
            Limit.Clamp => (joint.Clamp is { } clamp ? joint.LeadMm + clamp.Mm : -Free, Free),
            Limit.NutRoom => (-Free, joint.ThreadLength.Mm - joint.NutMm),
            Limit.ClosedBore => (-Free, joint.Bore == Bore.Closed ? joint.Depth.Mm : Free),
            Limit.FarThread => (-Free, joint.Bore == Bore.Open ? sleeve - otherDepth : Free),
            Limit.Cut => (-Free, joint.MaxCut.Mm),
            _ => throw new InvalidOperationException($"No row for {row.Limit}."),
        };
        constraint.SetBounds(low - more, high + more);
    }

    private void FixTarget()
    {
        RodCase rod = _rod!;
        double insertionsAndCuts = LimitTable.Axial(rod, default, default) - rod.AxialOf(rod.Target.Mm);
        _axial.SetBounds(insertionsAndCuts, insertionsAndCuts);
        SetTurning(
            LimitTable.TurnsTo(rod, rod.Target.Mm - rod.Shorter.Mm), LimitTable.TurnsTo(rod, rod.Target.Mm + rod.Longer.Mm));
    }

    /// <summary>One clockwise turn of the sleeve moves s1 by -h1 P1 and s2 by +h2 P2.</summary>
    private void SetTurning(double turnsToShortest, double turnsToLongest)
    {
        ThreadCase inner = _rod!.Inner.Thread;
        ThreadCase outer = _rod.Outer.Thread;
        foreach ((AdjustmentPoint at, double turns) in new[]
            { (AdjustmentPoint.Shortest, turnsToShortest), (AdjustmentPoint.Longest, turnsToLongest) })
        {
            double innerMove = -inner.Sign * inner.PitchMm * turns;
            double outerMove = outer.Sign * outer.PitchMm * turns;
            _turning[(RodSide.Inner, at)].SetBounds(innerMove, innerMove);
            _turning[(RodSide.Outer, at)].SetBounds(outerMove, outerMove);
        }
    }

    private void Pin(CutPair? cut)
    {
        foreach (RodSide side in s_sides)
        {
            _cut[side].SetBounds(cut?.Of(side) ?? 0, cut?.Of(side) ?? Free);
        }
    }

    private Constraint Row(params (Variable Variable, double Coefficient)[] terms)
    {
        Constraint row = _solver.MakeConstraint(-Free, Free);
        foreach ((Variable variable, double coefficient) in terms)
        {
            row.SetCoefficient(variable, coefficient);
        }

        return row;
    }

    private double? Extreme(bool greatest, params (Variable Variable, double Coefficient)[] terms) =>
        Solve(greatest, terms) ? terms.Sum(term => term.Coefficient * term.Variable.SolutionValue()) : null;

    private bool Solve(bool greatest, params (Variable Variable, double Coefficient)[] terms)
    {
        Objective objective = _solver.Objective();
        objective.Clear();
        foreach ((Variable variable, double coefficient) in terms)
        {
            objective.SetCoefficient(variable, coefficient);
        }

        objective.SetOptimizationDirection(greatest);
        Solver.ResultStatus status = _solver.Solve();
        if (status == Solver.ResultStatus.ABNORMAL)
        {
            // The corner that the question before ended in may be a bad start for this one.
            _solver.Reset();
            status = _solver.Solve();
        }

        return status switch
        {
            Solver.ResultStatus.OPTIMAL => true,
            Solver.ResultStatus.INFEASIBLE => false,
            _ => throw new InvalidOperationException($"The solver ended with {status}.\n{_rod}"),
        };
    }
}
