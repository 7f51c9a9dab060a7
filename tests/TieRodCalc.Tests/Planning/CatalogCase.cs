using System.Globalization;
using TieRodCalc.Parts;
using TieRodCalc.Rods;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Planning;

/// <summary>What a part of a test catalog costs and weighs; null where it is not said.</summary>
internal sealed record CostCase(decimal? Amount, string Currency, decimal? Kilograms);

/// <summary>What a part of a test catalog is made of.</summary>
internal sealed record StockCase(string Id, MaterialKind? Kind, double? TensileMpa);

/// <summary>An inner or outer end with an external thread.</summary>
internal sealed record EndCase
{
    public required string Id { get; init; }

    public required CostCase Cost { get; init; }

    public StockCase? Stock { get; init; }

    public required ThreadCase Thread { get; init; }

    public required Dim CenterToTip { get; init; }

    public required Dim ThreadLength { get; init; }

    public Dim? Lead { get; init; }

    public Dim Offset { get; init; }

    public Dim MaxCut { get; init; }
}

/// <summary>A threaded hole: one end of a sleeve, or the socket of an outer end.</summary>
internal sealed record HoleCase
{
    public required ThreadCase Thread { get; init; }

    public required Dim Depth { get; init; }

    public required Bore Bore { get; init; }

    public Dim? Countersink { get; init; }

    public Dim? Witness { get; init; }

    public Dim? Clamp { get; init; }
}

/// <summary>A sleeve.</summary>
internal sealed record SleeveCase(
    string Id, CostCase Cost, StockCase? Stock, Dim Length, HoleCase Inner, HoleCase Outer, OutsideCase? Outside)
{
    public HoleCase Hole(RodSide side) => side == RodSide.Inner ? Inner : Outer;
}

/// <summary>An outer end that carries the internal thread itself.</summary>
internal sealed record SocketCase(string Id, CostCase Cost, StockCase? Stock, Dim CenterToFace, HoleCase Hole);

/// <summary>A jam nut.</summary>
internal sealed record NutCase(string Id, CostCase Cost, ThreadCase Thread, Dim Thickness);

/// <summary>What a rod says of one of its parts: any, a list, a filter by thread, one by its id, none.</summary>
internal sealed record Wish
{
    public static Wish Any { get; } = new();

    /// <summary>The one part that is named.</summary>
    public string? Id { get; init; }

    /// <summary>The ids of a list.</summary>
    public IReadOnlyList<string>? Ids { get; init; }

    /// <summary>The thread of a filter; of a sleeve that of its inner end.</summary>
    public ThreadCase? Thread { get; init; }

    /// <summary>The thread of the outer end of a sleeve.</summary>
    public ThreadCase? OuterThread { get; init; }

    /// <summary>True where there shall be no such part.</summary>
    public bool None { get; init; }

    /// <summary>Whether it leaves nothing to be chosen.</summary>
    public bool Must => None || Id is not null;

    public bool Takes(string id, ThreadCase thread) => !None
        && (Id is null || Id == id)
        && (Ids is null || Ids.Contains(id))
        && (Thread is null || Thread == thread);
}

/// <summary>A catalog, and a rod whose parts are to be chosen from it.</summary>
internal sealed record CatalogCase
{
    public IReadOnlyList<StockCase> Stocks { get; init; } = [];

    public required IReadOnlyList<EndCase> Inner { get; init; }

    public required IReadOnlyList<SleeveCase> Sleeves { get; init; }

    public required IReadOnlyList<EndCase> Outer { get; init; }

    public IReadOnlyList<SocketCase> Sockets { get; init; } = [];

    public required IReadOnlyList<NutCase> Nuts { get; init; }

    public Wish InnerWish { get; init; } = Wish.Any;

    /// <summary>Null where the rod says no sleeve: then its outer end is one that carries the internal thread.</summary>
    public Wish? SleeveWish { get; init; } = Wish.Any;

    public Wish OuterWish { get; init; } = Wish.Any;

    public Wish InnerNutWish { get; init; } = Wish.Any;

    public Wish? OuterNutWish { get; init; } = Wish.Any;

    public required Dim Target { get; init; }

    public required Dim Shorter { get; init; }

    public required Dim Longer { get; init; }

    public double? ClockingDegrees { get; init; }

    public Dim TipGap { get; init; } = Dim.OfMm(3);

    public EngagementCase? Engagement { get; init; }

    public Dim Mark { get; init; } = Dim.OfMm(0.5);

    public Dim Allowance { get; init; } = Dim.OfMm(1.5);

    /// <summary>The rod that three parts and two nuts make, as a test case.</summary>
    public RodCase Rod(EndCase inner, SleeveCase sleeve, EndCase outer, NutCase? innerNut, NutCase? outerNut) => new()
    {
        Inner = Joint(inner, sleeve.Inner, innerNut),
        Outer = Joint(outer, sleeve.Outer, outerNut),
        SleeveLength = sleeve.Length,
        SleeveKind = sleeve.Stock?.Kind,
        SleeveTensileMpa = sleeve.Stock?.TensileMpa,
        Outside = sleeve.Outside,
        ClockingDegrees = ClockingDegrees,
        Target = Target,
        Shorter = Shorter,
        Longer = Longer,
        TipGap = TipGap,
        Engagement = Engagement,
        Mark = Mark,
        Allowance = Allowance,
    };

    public static JointCase Joint(EndCase end, HoleCase hole, NutCase? nut) => new()
    {
        Thread = end.Thread,
        CenterToTip = end.CenterToTip,
        ThreadLength = end.ThreadLength,
        Lead = end.Lead,
        Offset = end.Offset,
        MaxCut = end.MaxCut,
        Nut = nut?.Thickness,
        Depth = hole.Depth,
        Bore = hole.Bore,
        Countersink = hole.Countersink,
        Witness = hole.Witness,
        Clamp = hole.Clamp,
        TensileMpa = end.Stock?.TensileMpa,
    };

    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Inner.Count} inner ends, {Sleeves.Count} sleeves, {Outer.Count} outer ends\n{CatalogText.Of(this)}");
}
