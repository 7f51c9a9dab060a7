using System.Xml.Linq;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Cli.Rendering;

/// <summary>The drawing of one rod: words above, toe over turns below them.</summary>
internal sealed class ToePanel
{
    public const int Height = 470;

    private const double Left = 84;
    private const double Right = 624;
    private const double Top = 132;
    private const double Bottom = 396;
    private const int LineHeight = 19;
    private const int Samples = 120;
    private const double NameWidth = 540;

    /// <summary>How much further than the adjustment the picture goes on either side.</summary>
    private const double Margin = 0.07;

    /// <summary>What is shown at least, so that a rod that stands at its limit has room beside it.</summary>
    private const double LeastTurns = 0.5;

    /// <summary>What is shown each way where no limits are known.</summary>
    private const double UnknownTurns = 2;

    private readonly ToeMove _move;
    private readonly JobToe _toe;
    private readonly LengthDisplay _unit;
    private readonly Scale _across;
    private readonly Scale _up;

    public ToePanel(ToeMove move, string rod, JobToe toe, LengthDisplay unit)
    {
        (_move, _toe, _unit) = (move, toe, unit);
        string wheel = toe.OneRodTurns is null ? $"{Names.Of(move.Side)} wheel" : "both wheels";
        Words = [$"{wheel}, rod {Svg.Shortened(rod, NameWidth)}", .. Marks().Select(mark => mark.Words), .. Remarks()];
        (double least, double most) = Turns();
        _across = new Scale(least, most, Left, Right);
        double[] toes = [.. Enumerable.Range(0, Samples + 1).Select(At).Select(turns => Degrees(turns)).OfType<double>(), 0];
        double pad = Math.Max(0.05, (toes.Max() - toes.Min()) * 0.08);
        _up = new Scale(toes.Min() - pad, toes.Max() + pad, Bottom, Top);
    }

    /// <summary>What the drawing says, in words.</summary>
    public IReadOnlyList<string> Words { get; }

    private double Shortest => _move.Shorter is { } shorter ? -shorter.Turns : double.NegativeInfinity;

    private double Longest => _move.Longer is { } longer ? longer.Turns : double.PositiveInfinity;

    public IEnumerable<XElement> Draw()
    {
        yield return Svg.Element(
            "path", [("d", $"M20 2 H{ToePicture.Width - 20}"), ("stroke", "black"), ("stroke-width", "0.5")]);
        yield return Svg.Label(20, LineHeight + 4, Words[0]);
        int line = 2;
        foreach (Mark mark in Marks())
        {
            yield return Symbol(mark.Kind, 28, (line * LineHeight) + 3);
            yield return Svg.Label(42, (line++ * LineHeight) + 8, mark.Words);
        }

        if (_move.ToeAt(0) is null)
        {
            foreach (string remark in Remarks())
            {
                yield return Svg.Label(42, (line++ * LineHeight) + 8, remark);
            }

            yield break;
        }

        foreach (XElement element in Limits().Concat(Axes()).Concat(Curve()).Concat(MarksOnCurve()))
        {
            yield return element;
        }
    }

    private (double Least, double Most) Turns()
    {
        double wanted = _move.ExactTurns ?? 0;
        double least = Math.Min(double.IsFinite(Shortest) ? Shortest : -UnknownTurns, Math.Min(wanted, _move.Turns ?? 0));
        double most = Math.Max(double.IsFinite(Longest) ? Longest : UnknownTurns, Math.Max(wanted, _move.Turns ?? 0));
        double pad = Math.Max((most - least) * Margin, (LeastTurns - (most - least)) / 2);
        return (least - pad, most + pad);
    }

    private double At(int sample) => _across.From + ((_across.To - _across.From) * sample / Samples);

    private double? Degrees(double turns) => _move.ToeAt(turns)?.Degrees;

    /// <summary>What is marked on the curve, with its words.</summary>
    private IEnumerable<Mark> Marks()
    {
        if (_move.ToeAt(0) is null)
        {
            yield break;
        }

        string now = _move.PastALimit ? "now, PAST A LIMIT" : "now";
        yield return new Mark(MarkKind.Now, 0, $"{now}: {ToeFormat.Of(_move.Now)}{Length(_move.Now)}");
        if (_move is { ExactTurns: { } exact, Want: { } want })
        {
            yield return new Mark(MarkKind.Wanted, exact, $"wanted: {ToeFormat.Of(want)}{Length(want)}");
        }

        if (_move is { After: { } after, Turns: { } turns, Direction: { } direction })
        {
            yield return new Mark(
                MarkKind.After, turns, $"after {ToeFormat.Turns(turns)} {Names.Of(direction)}: {ToeFormat.Of(after)}{Length(after)}");
        }
        else if (_move.Refusal is { ReachableToe: { } reachable, ReachableTurns: not 0 } refusal)
        {
            yield return new Mark(
                MarkKind.After,
                refusal.ReachableTurns,
                $"as far as it goes, {ToeFormat.Turns(refusal.ReachableTurns)} {Names.Of(_move.Direction!.Value)}: "
                    + ToeFormat.Of(reachable));
        }
    }

    private string Length(Angle toe) => _toe.Gauge is { } gauge
        ? $", {LengthFormat.Decimal(Toe.AtPlates(toe, gauge.Width).Abs(), _unit)} at the {Names.Of(gauge.Place)}"
        : string.Empty;

    private IEnumerable<string> Remarks()
    {
        if (_move.ToeAt(0) is null)
        {
            yield return "There is no such rod: the steering as given cannot have it.";
        }
        else if (_move.Wanted is null)
        {
            yield return "No rod length gives the wanted toe.";
        }

        if (_move is { Shorter: { } shorter, Longer: { } longer })
        {
            yield return $"Shorter it ends at {Limit(shorter)}, longer at {Limit(longer)}.";
        }
        else
        {
            yield return "Limits not checked.";
        }
    }

    private static string Limit(Travel travel) => travel.EndsAt is { } limit ? Names.Of(limit, travel.End) : "nothing";

    /// <summary>What lies beyond a limit is hatched; the limits are named above, each on its side.</summary>
    private IEnumerable<XElement> Limits()
    {
        if (_move is not { Shorter: { } shorter, Longer: { } longer })
        {
            yield return Svg.Label((Left + Right) / 2, Top - 8, "limits not checked", "middle");
            yield break;
        }

        double from = _across.At(Shortest);
        double to = _across.At(Longest);
        yield return Closed(Left, from);
        yield return Closed(to, Right);
        yield return Svg.Path($"M{N(from)} {N(Top)} V{N(Bottom)} M{N(to)} {N(Top)} V{N(Bottom)}", 1.6);
        yield return Svg.Label(Left, Top - 8, Limit(shorter));
        yield return Svg.Label(Right, Top - 8, Limit(longer), "end");
    }

    private static XElement Closed(double from, double to) => Svg.Element(
        "rect", [("x", N(from)), ("y", N(Top)), ("width", N(to - from)), ("height", N(Bottom - Top)), ("fill", "url(#closed)")]);

    private IEnumerable<XElement> Axes()
    {
        yield return Svg.Path($"M{N(Left)} {N(Top)} H{N(Right)} V{N(Bottom)} H{N(Left)} Z", 1);
        yield return Svg.Path($"M{N(Left)} {N(_up.At(0))} H{N(Right)}", 0.7, "2 3");
        foreach (double turns in _across.Ticks(Scale.Eighths, 11))
        {
            yield return Svg.Path($"M{N(_across.At(turns))} {N(Bottom)} v6", 1);
            string sign = turns < 0 ? "−" : string.Empty;
            yield return Svg.Label(_across.At(turns), Bottom + 20, sign + ToeFormat.Turns(turns).Split(" turn")[0], "middle");
        }

        foreach (double degrees in _up.Ticks(Scale.Decimals, 8))
        {
            yield return Svg.Path($"M{N(Left)} {N(_up.At(degrees))} h-6", 1);
            yield return Svg.Label(Left - 9, _up.At(degrees) + 5, Plain(degrees), "end");
        }

        string part = Names.Of(_move.Part);
        yield return Svg.Label(
            (Left + Right) / 2, Bottom + 40, $"turns of the {part} from where it is; to the right the rod gets longer:", "middle");
        yield return Svg.Label(
            (Left + Right) / 2, Bottom + 58, $"{Names.Of(_move.Lengthens)}, {ToeSentences.SeenFrom(_move.Part)}", "middle");
        string whose = _toe.OneRodTurns is null ? "the wheel" : "the wheel that turns";
        yield return Turned(22, $"toe of {whose} in deg; above 0 toe-in");
        if (_toe.Gauge is { } gauge)
        {
            string unit = _unit == LengthDisplay.Inch ? "inches" : "mm";
            foreach ((double degrees, double value) in LengthTicks(gauge))
            {
                yield return Svg.Path($"M{N(Right)} {N(_up.At(degrees))} h6", 1);
                yield return Svg.Label(Right + 9, _up.At(degrees) + 5, Plain(value));
            }

            yield return Turned(ToePicture.Width - 14, $"the same in {unit}, at the {Names.Of(gauge.Place)}");
        }
    }

    private IEnumerable<(double Degrees, double Value)> LengthTicks(ToeGauge gauge)
    {
        double Value(double degrees) => Toe.AtPlates(Angle.FromDegrees(degrees), gauge.Width).As(_unit == LengthDisplay.Inch
            ? UnitsNet.Units.LengthUnit.Inch
            : UnitsNet.Units.LengthUnit.Millimeter);
        double width = gauge.Width.As(_unit == LengthDisplay.Inch ? UnitsNet.Units.LengthUnit.Inch : UnitsNet.Units.LengthUnit.Millimeter);
        Scale lengths = new(Value(Math.Max(-89, _up.From)), Value(Math.Min(89, _up.To)), Bottom, Top);
        return lengths.Ticks(Scale.Decimals, 8).Select(value => (Math.Asin(value / width) * 180 / Math.PI, value));
    }

    private static XElement Turned(double x, string text)
    {
        double y = (Top + Bottom) / 2;
        XElement label = Svg.Label(x, y, text, "middle");
        label.SetAttributeValue("transform", $"rotate(-90 {N(x)} {N(y)})");
        return label;
    }

    /// <summary>Solid between the limits, dashed beyond them; a thin line with a dot at each step where only steps can be had.</summary>
    private IEnumerable<XElement> Curve()
    {
        bool steps = _move.Part != TurnedPart.Sleeve;
        double least = Math.Max(Shortest, _across.From);
        double most = Math.Min(Longest, _across.To);
        yield return Line(least, most, steps ? 0.8 : 2.2, null);
        yield return Line(_across.From, least, 1.2, "5 5");
        yield return Line(most, _across.To, 1.2, "5 5");
        for (double step = Math.Ceiling(least / _move.Step) * _move.Step; steps && step <= most; step += _move.Step)
        {
            yield return Circle(step, 2.5, "black");
        }
    }

    private XElement Line(double from, double to, double stroke, string? dashes)
    {
        List<string> points = [];
        for (int sample = 0; sample <= Samples && to > from; sample++)
        {
            double turns = from + ((to - from) * sample / Samples);
            if (Degrees(turns) is { } degrees)
            {
                points.Add($"{(points.Count == 0 ? 'M' : 'L')}{N(_across.At(turns))} {N(_up.At(degrees))}");
            }
        }

        return Svg.Path(points.Count == 0 ? "M0 0" : string.Join(' ', points), stroke, dashes);
    }

    private IEnumerable<XElement> MarksOnCurve() =>
        from mark in Marks()
        let degrees = Degrees(mark.Turns)
        where degrees is not null
        orderby mark.Kind
        select Symbol(mark.Kind, _across.At(mark.Turns), _up.At(degrees.Value));

    private XElement Circle(double turns, double radius, string fill) =>
        Circle(_across.At(turns), _up.At(Degrees(turns) ?? 0), radius, fill);

    private static XElement Circle(double x, double y, double radius, string fill) => Svg.Element(
        "circle",
        [("cx", N(x)), ("cy", N(y)), ("r", N(radius)), ("fill", fill), ("stroke", "black"), ("stroke-width", "1.6")]);

    private static XElement Symbol(MarkKind kind, double x, double y) => kind switch
    {
        MarkKind.Now => Circle(x, y, 4, "black"),
        MarkKind.Wanted => Circle(x, y, 7, "none"),
        _ => Svg.Path($"M{N(x - 8)} {N(y - 8)} h16 v16 h-16 Z", 1.6),
    };

    private static string Plain(double value) => Svg.Number(value).Replace('-', '−');

    private static string N(double value) => Svg.Number(value);

    private enum MarkKind
    {
        Now,
        Wanted,
        After,
    }

    private readonly record struct Mark(MarkKind Kind, double Turns, string Words);
}
