namespace TieRodCalc.Steering;

/// <summary>
/// Toe over travel as <c>slope z + curvature z^2 / 2</c>, zero at ride height, by least squares; radians and millimeters.
/// </summary>
/// <param name="Slope">First derivative at ride height.</param>
/// <param name="Curvature">Second derivative at ride height.</param>
/// <param name="SlopeWeights">What each toe contributes to the slope.</param>
/// <param name="CurvatureWeights">What each toe contributes to the curvature.</param>
internal sealed record ToeTerms(double Slope, double Curvature, double[] SlopeWeights, double[] CurvatureWeights)
{
    /// <summary>The terms of a curve, or null where two readings apart from ride height are not there.</summary>
    public static ToeTerms? Of(BumpCurve curve)
    {
        if (curve.Travel.Length < 2)
        {
            return null;
        }

        double[] z = curve.Travel;
        double linear = z.Sum(each => each * each);
        double mixed = z.Sum(each => each * each * each) / 2;
        double square = z.Sum(each => each * each * each * each) / 4;
        double determinant = linear * square - mixed * mixed;
        double[] slope = [.. z.Select(each => (square * each - mixed * each * each / 2) / determinant)];
        double[] curvature = [.. z.Select(each => (linear * each * each / 2 - mixed * each) / determinant)];
        return new ToeTerms(Dot(slope, curve.Toe), Dot(curvature, curve.Toe), slope, curvature);
    }

    /// <summary>The toe at a travel.</summary>
    public double At(double travel) => Slope * travel + Curvature * travel * travel / 2;

    public static double Dot(double[] weights, double[] values) => weights.Zip(values, (weight, value) => weight * value).Sum();

    /// <summary>
    /// What the two terms leave of the readings of a curve: root of the mean square, at the gauge; and that of the readings.
    /// </summary>
    public (double Left, double All) Misses(BumpCurve curve)
    {
        double[] left = [.. curve.Travel.Select((z, index) => curve.Toe[index] - At(z))];
        double Mean(double[] toes) => curve.Spacing * Math.Sqrt(toes.Sum(toe => toe * toe) / toes.Length);
        return (Mean(left), Mean(curve.Toe));
    }

    /// <summary>
    /// How far the readings of a curve lie from a smooth one, a cubic through ride height: root of the mean square, at the gauge.
    /// Null where fewer than four readings leave nothing to tell.
    /// </summary>
    public double? ScatterAbout(BumpCurve curve)
    {
        int free = curve.Travel.Length - 3;
        if (free < 1)
        {
            return null;
        }

        // What is left of the toes and of the cubes of travel once both are fitted by two terms; then the one by the other.
        double[] cubes = [.. curve.Travel.Select(z => z * z * z)];
        (double slope, double curvature) = (Dot(SlopeWeights, cubes), Dot(CurvatureWeights, cubes));
        double[] cubesLeft = [.. curve.Travel.Select((z, index) => cubes[index] - slope * z - curvature * z * z / 2)];
        double[] toesLeft = [.. curve.Travel.Select((z, index) => curve.Toe[index] - At(z))];
        double third = Dot(cubesLeft, toesLeft) / Dot(cubesLeft, cubesLeft);
        double sum = toesLeft.Zip(cubesLeft, (toe, cube) => toe - third * cube).Sum(left => left * left);
        return curve.Spacing * Math.Sqrt(sum / free);
    }
}
