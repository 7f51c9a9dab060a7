namespace TieRodCalc.Steering;

/// <summary>
/// What a millimeter of change does to slope and curvature of the toe: of the outer joint raised, and of the rod longer. A length
/// <c>L'</c> in place of <c>L</c> counts as <c>L^2 (1/L - 1/L')</c>: for small changes the difference of the two.
/// </summary>
/// <remarks>
/// Computed: with <c>r</c> what the rod gets longer by for a radian of toe-in, raising changes the slope by <c>-1/(L r)</c>, length
/// the curvature by <c>1/(L^2 r)</c>. Sheets before and after a change measure it. The two are weighed by least squares, each by how
/// well it is known, so what was measured replaces what was computed where it is the better known.
/// </remarks>
internal sealed class ToeSensitivity
{
    /// <summary>
    /// How well the computed ones are known, as standard errors relative to the computed slope or curvature: from the
    /// spread over random corners, see docs/bump.md.
    /// </summary>
    internal const double OwnSpread = 0.3;

    internal const double SlopeByLength = 0.02;

    internal const double CurvatureByRaising = 1;

    /// <summary>Beyond so many standard errors two sheets contradict each other.</summary>
    private const double Contradiction = 3;

    private readonly Row _slope;
    private readonly Row _curvature;

    private ToeSensitivity(Row slope, Row curvature) => (_slope, _curvature) = (slope, curvature);

    public double SlopePerRaise => _slope.Raise;

    public double SlopePerLonger => _slope.Longer;

    public double CurvaturePerRaise => _curvature.Raise;

    public double CurvaturePerLonger => _curvature.Longer;

    /// <summary>As computed from the length of the rod and what it gets longer by for a radian of toe-in.</summary>
    public static ToeSensitivity Computed(double length, double perToe)
    {
        double slope = -1 / (length * perToe);
        double curvature = 1 / (length * length * perToe);
        return new ToeSensitivity(
            Row.Of(slope, 0, OwnSpread * slope, SlopeByLength * slope),
            Row.Of(0, curvature, CurvatureByRaising * curvature, OwnSpread * curvature));
    }

    /// <summary>The same with two sheets more, before and after a change; null where they contradict what is known.</summary>
    public ToeSensitivity? Learned(SheetPair pair) => Contradicts(pair, sense: 1)
        ? null
        : new ToeSensitivity(
            _slope.Learned(pair.Change, pair.After.Slope - pair.Before.Slope, pair.SlopeError),
            _curvature.Learned(pair.Change, pair.After.Curvature - pair.Before.Curvature, pair.CurvatureError));

    /// <summary>
    /// Whether two sheets that contradict what is known would not, had the indicators of the second one grown the other way.
    /// </summary>
    public bool WouldAgreeReversed(SheetPair pair) => !Contradicts(pair, sense: -1);

    /// <summary>The toe that a change adds at a travel.</summary>
    public double Adds(double travel, double raise, double longer) =>
        (SlopePerRaise * raise + SlopePerLonger * longer) * travel
        + (CurvaturePerRaise * raise + CurvaturePerLonger * longer) * travel * travel / 2;

    private bool Contradicts(SheetPair pair, int sense) =>
        !_slope.Explains(pair.Change, sense * pair.After.Slope - pair.Before.Slope, pair.SlopeError)
        || !_curvature.Explains(pair.Change, sense * pair.After.Curvature - pair.Before.Curvature, pair.CurvatureError);

    /// <summary>
    /// Two sheets in a row, with what was changed between them, and the standard errors of the differences of their terms.
    /// </summary>
    internal readonly record struct SheetPair(
        ToeTerms Before, ToeTerms After, (double Raise, double Longer) Change, double SlopeError, double CurvatureError);

    /// <summary>Two sensitivities with their variances and covariance.</summary>
    private readonly record struct Row(double Raise, double Longer, double RaiseVariance, double Covariance, double LongerVariance)
    {
        public static Row Of(double raise, double longer, double raiseError, double longerError) =>
            new(raise, longer, raiseError * raiseError, 0, longerError * longerError);

        public bool Explains((double Raise, double Longer) change, double seen, double error) =>
            Math.Abs(seen - Foreseen(change)) <= Contradiction * Math.Sqrt(Variance(change) + error * error);

        /// <summary>Least squares of what was known and what was seen (one step of a recursive estimate).</summary>
        public Row Learned((double Raise, double Longer) change, double seen, double error)
        {
            double raise = RaiseVariance * change.Raise + Covariance * change.Longer;
            double longer = Covariance * change.Raise + LongerVariance * change.Longer;
            double variance = Variance(change) + error * error;
            if (!(variance > 0))
            {
                return this;
            }

            double missed = (seen - Foreseen(change)) / variance;
            return new Row(
                Raise + raise * missed,
                Longer + longer * missed,
                RaiseVariance - raise * raise / variance,
                Covariance - raise * longer / variance,
                LongerVariance - longer * longer / variance);
        }

        private double Foreseen((double Raise, double Longer) change) => Raise * change.Raise + Longer * change.Longer;

        private double Variance((double Raise, double Longer) change) => RaiseVariance * change.Raise * change.Raise
            + 2 * Covariance * change.Raise * change.Longer + LongerVariance * change.Longer * change.Longer;
    }
}
