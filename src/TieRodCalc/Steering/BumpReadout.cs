using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>One reading of bump sheets.</summary>
internal sealed class BumpReadout
{
    /// <summary>Wheels are about so wide, millimeters; a gauge beyond it is another one than the limits hold for. Our own choice.</summary>
    private const double NarrowGauge = 150;

    private const double WideGauge = 450;

    /// <summary>Readings scatter where they miss a smooth curve by so many times what the indicators explain. Our own choice.</summary>
    private const double Scatter = 3;

    /// <summary>Where the resolution is not known, they scatter where they miss it by so much of their own size. Our own choice.</summary>
    private const double RoughScatter = 0.1;

    /// <summary>Two terms that leave more than this of the readings do not explain them. Our own choice.</summary>
    private const double MostLeft = 0.5;

    private readonly BumpRequest _request;
    private readonly BumpCurve[] _curves;
    private readonly ToeTerms?[] _terms;
    private readonly List<BumpWarning> _warnings = [];

    public BumpReadout(BumpRequest request)
    {
        _request = request;
        _curves = [.. request.Sheets.Select(sheet => new BumpCurve(sheet))];
        _terms = [.. _curves.Select(ToeTerms.Of)];
    }

    private BumpCurve Newest => _curves[^1];

    public BumpFindings Findings()
    {
        BumpSheetFindings[] sheets = [.. _request.Sheets.Select((sheet, index) => OfSheet(sheet, _curves[index], _terms[index]))];
        WarnOfReadings(sheets[^1]);
        BumpFindings found = new()
        {
            Sheets = sheets,
            Rod = _request.Wheel?.RodLength,
            Both = null,
            HeightAlone = null,
            LengthAlone = null,
            Measured = null,
            Warnings = _warnings,
        };
        if (_request.Wheel is not { } wheel)
        {
            Warn(BumpWarningCode.WheelNotGiven);
            return found;
        }

        if (wheel.InLine)
        {
            Warn(BumpWarningCode.RodInLine);
            return found;
        }

        bool unclear = _warnings.Exists(warning => warning.Code is BumpWarningCode.ReadingsScatter or BumpWarningCode.TwoTermsMiss);
        return _terms[^1] is { } terms && !unclear ? Advised(found, terms, wheel) : found;
    }

    private BumpSheetFindings OfSheet(BumpSheet sheet, BumpCurve curve, ToeTerms? terms)
    {
        BumpPoint[] points = PointsOf(curve, curve.Toe);
        (BumpStep[] steps, BumpStep worst) = BumpSteer.StepsOf(points);
        return new BumpSheetFindings
        {
            Sheet = sheet,
            Points = points,
            Steps = steps,
            Worst = worst,
            Limits = _request.Limits.At(sheet.Spacing),
            Grade = _request.Limits.At(sheet.Spacing).Of(worst.PerInch),
            SlopePerMm = terms?.Slope,
            CurvaturePerMm2 = terms?.Curvature,
            Fitted = terms is null ? [] : PointsOf(curve, [.. curve.Travel.Select(terms.At)]),
        };
    }

    /// <summary>Toes at the travels of a curve as points, ride height among them.</summary>
    internal static BumpPoint[] PointsOf(BumpCurve curve, double[] toes) =>
    [
        .. curve.Travel.Zip(toes, (travel, toe) => new BumpPoint(
            Length.FromMillimeters(travel), Angle.FromRadians(toe), Length.FromMillimeters(curve.Spacing * Math.Sin(toe))))
            .Append(default)
            .OrderBy(point => point.Travel.Millimeters),
    ];

    private void Warn(BumpWarningCode code, double? value = null, int? sheet = null) =>
        _warnings.Add(new BumpWarning(code, value is { } length ? Length.FromMillimeters(length) : null, sheet));

    private void WarnOfReadings(BumpSheetFindings newest)
    {
        int count = Newest.Travel.Length;
        if (count < 2)
        {
            Warn(BumpWarningCode.TooFewReadings);
        }
        else if (count == 2)
        {
            Warn(BumpWarningCode.NothingToCheckBy);
        }

        if (count >= 2 && (Newest.Travel[0] > 0 || Newest.Travel[^1] < 0))
        {
            Warn(BumpWarningCode.OneSided);
        }

        if (Newest.Noise is null)
        {
            Warn(BumpWarningCode.ResolutionNotGiven);
        }

        if (_terms[^1] is { } terms && newest.Grade != BumpGrade.VeryGood)
        {
            (double left, double all) = terms.Misses(Newest);
            if (terms.ScatterAbout(Newest) is { } scatter && scatter > (Scatter * Newest.Noise ?? RoughScatter * all))
            {
                Warn(BumpWarningCode.ReadingsScatter, scatter);
            }
            else if (left > Math.Max(MostLeft * all, Scatter * (Newest.Noise ?? 0)))
            {
                Warn(BumpWarningCode.TwoTermsMiss, left);
            }
        }

        if (_request.Limits.Spacing is null && Newest.Spacing is < NarrowGauge or > WideGauge)
        {
            Warn(BumpWarningCode.GaugeUnusual, Newest.Spacing);
        }
    }

    private BumpFindings Advised(BumpFindings found, ToeTerms terms, SteeringGeometry wheel)
    {
        double now = wheel.LengthMm;
        (double raised, double longer) = InMillimeters(_request.Sheets[^1].Then);
        if (!(now - longer > 0))
        {
            Warn(BumpWarningCode.WheelNotGiven);
            return found;
        }

        BumpAdvisor advisor = new(
            Newest,
            terms,
            Learn(wheel, now - longer, out MeasuredEffect? measured),
            now - longer,
            (raised, now),
            Millimeters.Of(_request.Shim));
        BumpAdvice? both = advisor.Both();
        if (both is null)
        {
            Warn(BumpWarningCode.NoLengthDoes);
        }
        else
        {
            WarnOf(both, now);
        }

        return found with
        {
            Both = both,
            HeightAlone = advisor.HeightAlone(),
            LengthAlone = advisor.LengthAlone(),
            Measured = measured,
        };
    }

    private void WarnOf(BumpAdvice both, double length)
    {
        (double raise, double longer) = InMillimeters(both.Change);
        if (both.Uncertainty is { } uncertainty)
        {
            (double raiseError, double longerError) = InMillimeters(uncertainty);
            if (Math.Abs(raise) <= raiseError)
            {
                Warn(BumpWarningCode.HeightNotTold, raiseError);
            }

            if (Math.Abs(longer) <= longerError)
            {
                Warn(BumpWarningCode.LengthNotTold, longerError);
            }
        }

        if (Math.Max(Math.Abs(raise), Math.Abs(longer)) > length / 4)
        {
            Warn(BumpWarningCode.FarChange);
        }
    }

    /// <summary>What the changes between the sheets taught, starting from what is computed for the newest sheet's rod.</summary>
    private ToeSensitivity Learn(SteeringGeometry wheel, double newest, out MeasuredEffect? measured)
    {
        ToeSensitivity computed = ToeSensitivity.Computed(newest, wheel.LengthPerToe);
        ToeSensitivity known = computed;
        int pairs = 0;
        double[] lengths = LengthsBefore(newest);
        for (int index = 0; index + 1 < _curves.Length; index++)
        {
            if (PairAt(index, lengths, newest) is not { } pair)
            {
                continue;
            }

            if (known.Learned(pair) is { } learned)
            {
                known = learned;
                pairs += pair.Change == default ? 0 : 1;
            }
            else
            {
                bool reversed = known.WouldAgreeReversed(pair);
                Warn(reversed ? BumpWarningCode.SheetsContradictSense : BumpWarningCode.SheetsContradict, sheet: index + 1);
            }
        }

        measured = pairs == 0 ? null : new MeasuredEffect(
            known.SlopePerRaise / computed.SlopePerRaise, known.CurvaturePerLonger / computed.CurvaturePerLonger, pairs);
        return known;
    }

    /// <summary>The rod's length at each sheet.</summary>
    private double[] LengthsBefore(double newest)
    {
        double[] lengths = new double[_curves.Length];
        lengths[^1] = newest;
        for (int index = lengths.Length - 2; index >= 0; index--)
        {
            lengths[index] = lengths[index + 1] - Millimeters.Of(_request.Sheets[index].Then.RodLonger);
        }

        return lengths;
    }

    /// <summary>A sheet and the next one; null where one has no terms, or the noise of one is not known.</summary>
    private ToeSensitivity.SheetPair? PairAt(int index, double[] lengths, double newest)
    {
        if (_terms[index] is not { } before || _terms[index + 1] is not { } after
            || _curves[index].Noise is not { } noise || _curves[index + 1].Noise is not { } later
            || !(lengths[index] > 0 && lengths[index + 1] > 0))
        {
            return null;
        }

        double Error(Func<ToeTerms, double[]> weights) => Math.Sqrt(
            Square(_curves[index].ErrorOf(weights(before), noise)) + Square(_curves[index + 1].ErrorOf(weights(after), later)));

        // Counted as changes of the newest sheet's rod: on a longer one the same height turns the rod by less.
        double raised = Millimeters.Of(_request.Sheets[index].Then.OuterRaised) * newest / lengths[index + 1];
        double longer = newest * newest * (1 / lengths[index] - 1 / lengths[index + 1]);
        return new(
            before,
            after,
            (raised, longer),
            Error(terms => terms.SlopeWeights),
            Error(terms => terms.CurvatureWeights));
    }

    private static (double Raised, double Longer) InMillimeters(BumpChange change) =>
        (Millimeters.Of(change.OuterRaised), Millimeters.Of(change.RodLonger));

    private static double Square(double value) => value * value;
}
