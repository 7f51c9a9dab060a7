using System.Globalization;
using TieRodCalc.Parts;
using TieRodCalc.Rods;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>The dimensions of parts that the limits of a rod hang on.</summary>
internal enum PartDimension
{
    CenterToTip,
    ThreadLength,
    Lead,
    Offset,
    MaxCut,
    Nut,
    Depth,
    Countersink,
    Witness,
    Clamp,
    Sleeve,
    Outside,
}

/// <summary>What one dimension may be off either way, in millimeters; the sleeve's length and outside belong to no end.</summary>
internal sealed record ToleranceCase(PartDimension Dimension, RodSide? Side, double PlusMinus)
{
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Dimension} {Side} ± {PlusMinus:R}");
}

/// <summary>A rod of which some dimensions carry a tolerance.</summary>
internal sealed record TolerancedRod(RodCase Rod, IReadOnlyList<ToleranceCase> Tolerances, bool OneJoint = false)
{
    private readonly Lazy<RodNumbers> _nominal = new(() => RodNumbers.Of(Rod, OneJoint));

    public RodNumbers Nominal => _nominal.Value;

    /// <summary>The library's parts, tolerances included.</summary>
    public RodParts Parts() => Tolerances.Aggregate(new RodJob(Rod, default, default, OneJoint).Parts(), WithTolerance);

    /// <summary>The rod with its dimensions off by a share of what they may be, from -1 to 1 each.</summary>
    public RodNumbers Off(IReadOnlyList<double> shares) => Tolerances
        .Zip(shares)
        .Aggregate(Nominal, (rod, off) => Shift(rod, off.First, off.First.PlusMinus * off.Second));

    public override string ToString() => $"{string.Join(", ", Tolerances)}{(OneJoint ? ", one joint" : "")}";

    private RodNumbers Shift(RodNumbers rod, ToleranceCase tolerance, double by)
    {
        if (tolerance.Side is not { } side)
        {
            return tolerance.Dimension == PartDimension.Outside ? Dilated(rod, by) : rod with { Sleeve = rod.Sleeve + by };
        }

        return rod.With(side, joint => tolerance.Dimension switch
        {
            PartDimension.CenterToTip => joint with { CenterToTip = joint.CenterToTip + by },
            PartDimension.ThreadLength => joint with { ThreadLength = joint.ThreadLength + by },
            PartDimension.Lead => joint with { Lead = joint.Lead + by },
            PartDimension.Offset => joint with { Offset = joint.Offset + by },
            PartDimension.MaxCut => joint with { MostCut = joint.MostCut + by },
            PartDimension.Nut => joint with { Nut = joint.Nut + by },
            PartDimension.Depth => joint with { Depth = joint.Depth + by },
            PartDimension.Countersink => joint with { Countersink = joint.Countersink + by },
            PartDimension.Witness => joint with { Witness = joint.Witness + by },
            PartDimension.Clamp => joint with { Clamp = joint.Clamp + by },
            _ => throw new InvalidOperationException($"{tolerance.Dimension} belongs to no end."),
        });
    }

    /// <summary>A thinner sleeve dilates more, so that strength asks for more engagement at both ends.</summary>
    private RodNumbers Dilated(RodNumbers rod, double by)
    {
        RodCase other = Rod with { Outside = Rod.Outside! with { Across = Dim.OfMm(Rod.Outside.Across.Mm + by) } };
        return rod with
        {
            Inner = rod.Inner with { Required = other.RequiredMm(other.Inner) },
            Outer = rod.Outer with { Required = other.RequiredMm(other.Outer) },
        };
    }

    private static RodParts WithTolerance(RodParts parts, ToleranceCase tolerance)
    {
        Measured Loose(Measured? dimension) => new(dimension!.Value.Nominal, Length.FromMillimeters(tolerance.PlusMinus));

        ThreadedEnd End(ThreadedEnd end) => tolerance.Dimension switch
        {
            PartDimension.CenterToTip => end with { CenterToTip = Loose(end.CenterToTip) },
            PartDimension.ThreadLength => end with { ThreadLength = Loose(end.ThreadLength) },
            PartDimension.Lead => end with { Lead = Loose(end.Lead) },
            PartDimension.Offset => end with { Offset = Loose(end.Offset) },
            PartDimension.MaxCut => end with { MaxCut = Loose(end.MaxCut) },
            _ => end,
        };

        TappedHole Hole(TappedHole hole) => tolerance.Dimension switch
        {
            PartDimension.Depth => hole with { Depth = Loose(hole.Depth) },
            PartDimension.Countersink => hole with { Countersink = Loose(hole.Countersink) },
            PartDimension.Witness => hole with { Witness = Loose(hole.Witness) },
            PartDimension.Clamp => hole with { Clamp = Loose(hole.Clamp) },
            _ => hole,
        };

        JamNut? Nut(JamNut? nut) => tolerance.Dimension == PartDimension.Nut ? nut! with { Thickness = Loose(nut.Thickness) } : nut;

        if (tolerance.Dimension == PartDimension.Outside)
        {
            Outside outside = parts.Sleeve!.Outside!;
            return parts with { Sleeve = parts.Sleeve with { Outside = outside with { Across = Loose(outside.Across) } } };
        }

        if (tolerance.Side is not { } side)
        {
            return parts with
            {
                Sleeve = parts.Sleeve is { } sleeve ? sleeve with { Length = Loose(sleeve.Length) } : null,
                Socket = parts.Socket is { } face ? face with { CenterToFace = Loose(face.CenterToFace) } : null,
            };
        }

        if (parts.Socket is { } socket)
        {
            return parts with
            {
                Inner = End(parts.Inner),
                Socket = socket with { Socket = Hole(socket.Socket) },
                InnerNut = Nut(parts.InnerNut),
            };
        }

        Sleeve around = parts.Sleeve!;
        return side == RodSide.Inner
            ? parts with { Inner = End(parts.Inner), Sleeve = around with { Inner = Hole(around.Inner) }, InnerNut = Nut(parts.InnerNut) }
            : parts with { Outer = End(parts.Outer!), Sleeve = around with { Outer = Hole(around.Outer) }, OuterNut = Nut(parts.OuterNut) };
    }
}
