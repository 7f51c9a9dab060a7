using TieRodCalc.Rods;

namespace TieRodCalc.Planning;

/// <summary>
/// The figures of a plan with its cuts, in doubles of millimeters: what <see cref="RodSolution"/> says in quantities. Nothing is
/// allocated.
/// </summary>
internal readonly struct SolutionFigures
{
    /// <summary>Works the figures out.</summary>
    /// <param name="rod">The dimensions.</param>
    /// <param name="problem">The limits, for the target and the wanted adjustment.</param>
    /// <param name="least">The least cuts.</param>
    /// <param name="cuts">The recommended cuts.</param>
    /// <exception cref="InvalidOperationException">A limit does not hold: a fault of this program.</exception>
    public SolutionFigures(in RodDimensions rod, in SettingProblem problem, Cuts least, Cuts cuts)
    {
        Insertions = problem.InnerInsertions(cuts);
        Setting = Middle(problem, Insertions, cuts);
        LeastCutSetting = Middle(problem, problem.InnerInsertions(least), least);
        Most = new(problem.CutWindow(RodSide.Inner, cuts.Outer).High, problem.CutWindow(RodSide.Outer, cuts.Inner).High);
        Motion motion = problem.Motion;
        Setting shortest = Setting.Moved(motion, -problem.AxialShorter);
        Setting longest = Setting.Moved(motion, problem.AxialLonger);
        WorstMargin = Checked(rod, shortest, longest);
        Reach = ReachOf(rod, cuts)!.Value;
        Shorter = Way.Of(rod, motion, problem.Axial, Setting, longer: false);
        Longer = Way.Of(rod, motion, problem.Axial, Setting, longer: true);
        Inner = new(rod[RodSide.Inner], Setting.Inner, cuts.Inner, shortest.Inner, longest.Inner);
        Outer = new(rod[RodSide.Outer], Setting.Outer, cuts.Outer, shortest.Outer, longest.Outer);
    }

    /// <summary>What the insertion of the inner end may be at the target.</summary>
    public Interval Insertions { get; }

    /// <summary>The setting: the middle of that.</summary>
    public Setting Setting { get; }

    /// <summary>The same with the least cuts.</summary>
    public Setting LeastCutSetting { get; }

    /// <summary>The most that each end may be cut, the other one cut as recommended.</summary>
    public Cuts Most { get; }

    /// <summary>The smallest slack of a limit over the wanted adjustment, that of the cuts not counted.</summary>
    public double WorstMargin { get; }

    /// <summary>Shortest and longest length, the wanted adjustment not kept.</summary>
    public Interval Reach { get; }

    /// <summary>Adjustment toward shorter.</summary>
    public Way Shorter { get; }

    /// <summary>Adjustment toward longer.</summary>
    public Way Longer { get; }

    /// <summary>The inner joint.</summary>
    public JointFigures Inner { get; }

    /// <summary>The outer joint; nothing where the rod has one joint only.</summary>
    public JointFigures Outer { get; }

    /// <summary>Reach over all settings and starts with the given cuts, the wanted adjustment not kept; null where there is none.</summary>
    public static Interval? ReachOf(in RodDimensions rod, Cuts cuts)
    {
        // Without an adjustment to keep, the insertions are free between their limits.
        double least = 0;
        double most = 0;
        for (RodSide side = RodSide.Inner; side <= RodSide.Outer; side++)
        {
            ref readonly JointDimensions joint = ref rod[side];
            Interval insertions = new(joint.Least.At, Math.Min(rod.Deepest(side).At, joint.ThreadForInsertion - cuts[side]));
            if (insertions.IsEmpty || joint.Required - (joint.Depth - joint.Mouth) > Millimeters.Negligible)
            {
                return null;
            }

            least += insertions.Low;
            most += insertions.High;
        }

        Interval sum = new(least, Math.Min(most, rod.Sleeve - rod.TipGap));
        double stretched = rod.Stretched - cuts.Total;
        return sum.IsEmpty ? null : new Interval(rod.Length(stretched - sum.High), rod.Length(stretched - sum.Low));
    }

    private static Setting Middle(in SettingProblem problem, Interval insertions, Cuts cuts)
    {
        double inner = insertions.Middle;
        return new(inner, problem.Sum - cuts.Total - inner, cuts);
    }

    /// <summary>
    /// Holds the cuts and the setting against the definitions of the limits, at both ends of the adjustment. Intervals may be inverted
    /// by the comparison constant, so a limit may be missed by that and by what doubles lose.
    /// </summary>
    /// <returns>The smallest slack of a limit, that of the cuts not counted.</returns>
    private static double Checked(in RodDimensions rod, in Setting shortest, in Setting longest)
    {
        double margin = Math.Min(SlackOf(rod, shortest), SlackOf(rod, longest));
        double worst = Math.Min(margin, LimitSlack.OfCuts(rod, shortest.Cuts.Inner, shortest.Cuts.Outer));
        return worst >= -Setting.Lost
            ? margin
            : throw new InvalidOperationException($"The recommended cut misses a limit by {-worst} mm.");
    }

    private static double SlackOf(in RodDimensions rod, in Setting setting) =>
        LimitSlack.OfSetting(rod, setting.Inner, setting.Outer, setting.Cuts.Inner, setting.Cuts.Outer);
}

/// <summary>One joint at the setting and over the wanted adjustment, in millimeters.</summary>
internal readonly struct JointFigures(
    in JointDimensions joint, double insertion, double cut, double atShortest, double atLongest)
{
    /// <summary>Thread outside the sleeve's face.</summary>
    public double Showing { get; } = joint.Showing(insertion, cut);

    /// <summary>Full-form thread on full-form thread.</summary>
    public double Engaged { get; } = joint.Engaged(insertion, cut);

    /// <summary>The least of it over the wanted adjustment.</summary>
    public double EngagedLeast { get; } = Math.Min(joint.Engaged(atShortest, cut), joint.Engaged(atLongest, cut));

    /// <summary>Thread left outside the nut.</summary>
    public double NutRoom { get; } = joint.NutRoom(insertion, cut);

    /// <summary>The least of it over the wanted adjustment.</summary>
    public double NutRoomLeast { get; } = joint.NutRoom(Math.Max(atShortest, atLongest), cut);
}
