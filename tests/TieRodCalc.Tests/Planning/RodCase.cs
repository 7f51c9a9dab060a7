using System.Globalization;
using TieRodCalc.Parts;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Planning;

/// <summary>A thread of a test case; a Unified one in inches and threads per inch, a metric one in millimeters and pitch.</summary>
internal sealed record ThreadCase(bool Unified, double Diameter, double PitchOrThreadsPerInch, Hand Hand)
{
    public double DiameterMm => Dimension.Mm;

    public double PitchMm => Unified ? Dim.OfInches(1 / PitchOrThreadsPerInch).Mm : PitchOrThreadsPerInch;

    /// <summary>+1 right-hand, -1 left-hand.</summary>
    public int Sign => Hand == Hand.Right ? 1 : -1;

    public Dim Dimension => new(Diameter, Unified);

    public override string ToString()
    {
        string hand = Hand == Hand.Right ? "RH" : "LH";
        return Unified
            ? string.Create(CultureInfo.InvariantCulture, $"{Diameter:R}-{PitchOrThreadsPerInch:R} {hand}")
            : string.Create(CultureInfo.InvariantCulture, $"M{Diameter:R}x{PitchOrThreadsPerInch:R} {hand}");
    }
}

/// <summary>The required engagement that a case asks for: null and null for the usual rule.</summary>
internal sealed record EngagementCase(double? Diameters, Dim? Length)
{
    public override string ToString() =>
        Length?.ToString() ?? string.Create(CultureInfo.InvariantCulture, $"{Diameters:R} diameters");
}

/// <summary>The outside of the sleeve of a test case.</summary>
internal sealed record OutsideCase(OutsideShape Shape, Dim Across)
{
    public override string ToString() => $"{Shape} {Across}";
}

/// <summary>One joint of a test case: the male end, its nut, and the end of the sleeve that it goes into.</summary>
internal sealed record JointCase
{
    public required ThreadCase Thread { get; init; }

    public required Dim CenterToTip { get; init; }

    public required Dim ThreadLength { get; init; }

    public Dim? Lead { get; init; }

    public Dim Offset { get; init; }

    public Dim MaxCut { get; init; }

    public Dim? Nut { get; init; }

    public required Dim Depth { get; init; }

    public required Bore Bore { get; init; }

    public Dim? Countersink { get; init; }

    public Dim? Witness { get; init; }

    public Dim? Clamp { get; init; }

    public JointKind? Joint { get; init; }

    /// <summary>Tensile strength of the end, null where it is not known.</summary>
    public double? TensileMpa { get; init; }

    /// <summary>A straight rod end; a bent one would point the other way after half a turn.</summary>
    public bool TurnsByHalves => Joint == JointKind.RodEnd && Offset.Mm == 0;

    /// <summary>One pitch where nothing is said.</summary>
    public double LeadMm => Lead?.Mm ?? Thread.PitchMm;

    /// <summary>Half a pitch where nothing is said.</summary>
    public double CountersinkMm => Countersink?.Mm ?? Thread.PitchMm / 2;

    /// <summary>Zero where there is no nut.</summary>
    public double NutMm => Nut?.Mm ?? 0;

    public override string ToString() =>
        $"{Thread} c {CenterToTip} t {ThreadLength} l {Lead?.ToString() ?? "P"} o {Offset} max cut {MaxCut} nut {Nut?.ToString() ?? "none"}"
        + $" | d {Depth} {Bore} m {Countersink?.ToString() ?? "P/2"} w {Witness?.ToString() ?? "-"} k {Clamp?.ToString() ?? "-"}"
        + string.Create(CultureInfo.InvariantCulture, $" | joint {Joint?.ToString() ?? "unsaid"} {TensileMpa:R} MPa");
}

/// <summary>A rod and what is wanted of it, in plain numbers.</summary>
internal sealed record RodCase
{
    /// <summary>Usual rule in diameters (common practice, no source), for a steel and for an aluminum sleeve.</summary>
    private const double SteelDiameters = 1.5;
    private const double AluminumDiameters = 2;

    public required JointCase Inner { get; init; }

    public required JointCase Outer { get; init; }

    public required Dim SleeveLength { get; init; }

    public MaterialKind? SleeveKind { get; init; }

    /// <summary>Tensile strength of the sleeve, null where it is not known.</summary>
    public double? SleeveTensileMpa { get; init; }

    public OutsideCase? Outside { get; init; }

    public double? ClockingDegrees { get; init; }

    public required Dim Target { get; init; }

    public required Dim Shorter { get; init; }

    public required Dim Longer { get; init; }

    public Dim TipGap { get; init; } = Dim.OfMm(3);

    public EngagementCase? Engagement { get; init; }

    /// <summary>Steering load, null where none is given.</summary>
    public double? LoadNewtons { get; init; }

    public Dim Mark { get; init; } = Dim.OfMm(0.5);

    public Dim Allowance { get; init; } = Dim.OfMm(1.5);

    /// <summary>h1 P1 - h2 P2, the change of the axial length by one clockwise turn of the sleeve.</summary>
    public double AxialPerTurn => Inner.Thread.Sign * Inner.Thread.PitchMm - Outer.Thread.Sign * Outer.Thread.PitchMm;

    /// <summary>False with the same hand and the same pitch.</summary>
    public bool SleeveAdjusts => Math.Abs(AxialPerTurn) > Millimeters.Negligible;

    /// <summary>Half a turn where an end may be turned by halves, else one: by how much starts lie apart.</summary>
    public double StartTurns => Inner.TurnsByHalves || Outer.TurnsByHalves ? 0.5 : 1;

    public bool WantsAdjustment => Shorter.Mm > 0 || Longer.Mm > 0;

    /// <summary>The larger of what is asked for and of what strength asks for.</summary>
    public double RequiredMm(JointCase joint) => Math.Max(AskedMm(joint), StrengthReference.Of(this, joint)?.RequiredMm ?? 0);

    /// <summary>What the job or the rule asks for.</summary>
    public double AskedMm(JointCase joint) =>
        Engagement?.Length?.Mm
        ?? (Engagement?.Diameters ?? (SleeveKind == MaterialKind.Aluminum ? AluminumDiameters : SteelDiameters)) * joint.Thread.DiameterMm;

    /// <summary>O^2 = o1^2 + o2^2 - 2 o1 o2 cos(clocking).</summary>
    public double OffsetSquared
    {
        get
        {
            double o1 = Inner.Offset.Mm;
            double o2 = Outer.Offset.Mm;
            return o1 * o1 + o2 * o2 - 2 * o1 * o2 * Math.Cos((ClockingDegrees ?? 0) * Math.PI / 180);
        }
    }

    /// <summary>length^2 = axial^2 + O^2.</summary>
    public double AxialOf(double length) => Math.Sqrt(length * length - OffsetSquared);

    /// <summary>length = sqrt(axial^2 + O^2).</summary>
    public double LengthOf(double axial) => Math.Sqrt(axial * axial + OffsetSquared);

    public override string ToString() =>
        $"inner {Inner}\n  outer {Outer}\n  S {SleeveLength} {SleeveKind?.ToString() ?? "kind unsaid"} {Outside?.ToString() ?? "outside unsaid"}"
        + string.Create(CultureInfo.InvariantCulture, $" {SleeveTensileMpa:R} MPa load {LoadNewtons:R} N")
        + string.Create(CultureInfo.InvariantCulture, $" clocking {ClockingDegrees:R}")
        + $" target {Target} -{Shorter} +{Longer} gap {TipGap} engagement {Engagement?.ToString() ?? "usual"}"
        + $" mark {Mark} allowance {Allowance}";
}
