using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>Finds the changes that the newest sheet asks for, with what has been changed since counted as done.</summary>
/// <param name="curve">The newest sheet.</param>
/// <param name="terms">Its two terms.</param>
/// <param name="effect">What changes do.</param>
/// <param name="length">The rod's length at that sheet.</param>
/// <param name="now">How far the outer joint has been raised since, and the rod's length now.</param>
/// <param name="shim">What changes are rounded to.</param>
internal sealed class BumpAdvisor(
    BumpCurve curve, ToeTerms terms, ToeSensitivity effect, double length, (double Raised, double Length) now, double shim)
{
    /// <summary>The uncertainty that is told is so many standard errors: about 95 percent.</summary>
    private const double Coverage = 2;

    /// <summary>
    /// Height and length together: <c>S (raise, longer) = -(slope, curvature)</c>; null where no finite length does.
    /// </summary>
    public BumpAdvice? Both()
    {
        (double a, double b) = (effect.SlopePerRaise, effect.SlopePerLonger);
        (double c, double d) = (effect.CurvaturePerRaise, effect.CurvaturePerLonger);
        double determinant = a * d - b * c;
        double[] raise = Weights((slope, curvature) => -(d * slope - b * curvature) / determinant);
        double[] longer = Weights((slope, curvature) => -(a * curvature - c * slope) / determinant);
        return Advice(raise, longer, curve.Toe);
    }

    /// <summary>The height alone, by least squares over the measured travel.</summary>
    public BumpAdvice? HeightAlone() =>
        Advice(Alone(travel => effect.Adds(travel, 1, 0)), null, With(0, LongerOf(now.Length)));

    /// <summary>The length alone, by least squares over the measured travel.</summary>
    public BumpAdvice? LengthAlone() => Advice(null, Alone(travel => effect.Adds(travel, 0, 1)), With(now.Raised, 0));

    private double[] Weights(Func<double, double, double> of) => [.. terms.SlopeWeights.Zip(terms.CurvatureWeights, of)];

    private double[] Alone(Func<double, double> effectAt)
    {
        double[] effects = [.. curve.Travel.Select(effectAt)];
        double squares = effects.Sum(each => each * each);
        return [.. effects.Select(each => -each / squares)];
    }

    /// <summary>The toes with a change made.</summary>
    private double[] With(double raise, double longer) =>
        [.. curve.Travel.Zip(curve.Toe, (travel, toe) => toe + effect.Adds(travel, raise, longer))];

    /// <summary>The advice whose two changes are sums of toes with weights; null where no rod of a finite length does it.</summary>
    private BumpAdvice? Advice(double[]? raiseWeights, double[]? longerWeights, double[] toes)
    {
        double raise = raiseWeights is null ? now.Raised : ToeTerms.Dot(raiseWeights, toes);
        double wanted = longerWeights is null ? now.Length : LengthFor(ToeTerms.Dot(longerWeights, toes));
        if (!(wanted > 0) || !double.IsFinite(wanted))
        {
            return null;
        }

        BumpChange exact = Change(raise - now.Raised, wanted - now.Length);
        BumpChange? uncertainty = curve.Noise is { } resolution
            ? Change(
                Error(raiseWeights, Noise(resolution)), Error(longerWeights, Noise(resolution)) * wanted * wanted / (length * length))
            : null;
        BumpChange rounded = Rounded(exact, uncertainty);
        double roundedLength = now.Length + Millimeters.Of(rounded.RodLonger);
        BumpPoint[] predicted = Predicted(raise, wanted);
        BumpPoint[] roundedPredicted = Predicted(now.Raised + Millimeters.Of(rounded.OuterRaised), roundedLength);
        return new BumpAdvice
        {
            Change = exact,
            Uncertainty = uncertainty,
            WantedLength = Length.FromMillimeters(wanted),
            Predicted = predicted,
            PredictedWorst = Worst(predicted),
            Rounded = rounded,
            RoundedLength = Length.FromMillimeters(roundedLength),
            RoundedPredicted = roundedPredicted,
            RoundedWorst = Worst(roundedPredicted),
        };
    }

    private static BumpChange Change(double raise, double longer) =>
        new(Length.FromMillimeters(raise), Length.FromMillimeters(longer));

    private static Length Worst(BumpPoint[] points) =>
        Length.FromMillimeters(Math.Abs(BumpSteer.StepsOf(points).Worst.PerInch.Millimeters));

    /// <summary>The length that counts as so much longer, <c>L^2 (1/L - 1/L')</c>.</summary>
    private double LengthFor(double longer) => 1 / (1 / length - longer / (length * length));

    private double LongerOf(double other) => length * length * (1 / length - 1 / other);

    /// <summary>
    /// Of a reading: that of the indicators, or what the readings themselves show about a smooth curve where that is more.
    /// </summary>
    private double Noise(double resolution) => Math.Max(resolution, terms.ScatterAbout(curve) ?? 0);

    private double Error(double[]? weights, double noise) => weights is null ? 0 : Coverage * curve.ErrorOf(weights, noise);

    private BumpChange Rounded(BumpChange exact, BumpChange? uncertainty)
    {
        double Of(Length change, Length? error) =>
            error is { } most && Math.Abs(Millimeters.Of(change)) <= Millimeters.Of(most)
                ? 0
                : Math.Round(Millimeters.Of(change) / shim, MidpointRounding.AwayFromZero) * shim;
        return Change(Of(exact.OuterRaised, uncertainty?.OuterRaised), Of(exact.RodLonger, uncertainty?.RodLonger));
    }

    private BumpPoint[] Predicted(double raise, double newLength) =>
        BumpReadout.PointsOf(curve, With(raise, LongerOf(newLength)));
}
