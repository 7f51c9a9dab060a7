using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>Tries every combination of a catalog, each by the table of limits.</summary>
internal static class ChoiceReference
{
    /// <summary>Every combination that makes a rod, in the order of the catalog: sleeve, inner end, outer end.</summary>
    public static List<ReferenceChoice> All(CatalogCase catalog)
    {
        if (catalog.SleeveWish is null)
        {
            return
            [
                .. from inner in Enumerable.Range(0, catalog.Inner.Count)
                   from socket in Enumerable.Range(0, catalog.Sockets.Count)
                   select OneJoint(catalog, inner, socket) into choice
                   where choice is not null
                   select choice,
            ];
        }

        List<ReferenceChoice> found = [];
        for (int sleeve = 0; sleeve < catalog.Sleeves.Count; sleeve++)
        {
            for (int inner = 0; inner < catalog.Inner.Count; inner++)
            {
                for (int outer = 0; outer < catalog.Outer.Count; outer++)
                {
                    if (Of(catalog, sleeve, inner, outer) is { } choice)
                    {
                        found.Add(choice);
                    }
                }
            }
        }

        return found;
    }

    /// <summary>Whether the wishes and the threads let three parts go together, whatever comes of it.</summary>
    public static bool Fits(CatalogCase catalog, SleeveCase sleeve, EndCase inner, EndCase outer) =>
        catalog.SleeveWish is { } wish
        && wish.Takes(sleeve.Id, sleeve.Inner.Thread)
        && (wish.OuterThread is null || wish.OuterThread == sleeve.Outer.Thread)
        && catalog.InnerWish.Takes(inner.Id, inner.Thread)
        && catalog.OuterWish.Takes(outer.Id, outer.Thread)
        && inner.Thread == sleeve.Inner.Thread
        && outer.Thread == sleeve.Outer.Thread;

    /// <summary>How many combinations the wishes and the threads allow.</summary>
    public static int Combinations(CatalogCase catalog) => Together(catalog).Count();

    /// <summary>How many of them have two bent ends and no clocking.</summary>
    public static int WithoutClocking(CatalogCase catalog) =>
        catalog.ClockingDegrees is null ? Together(catalog).Count(bothBent => bothBent) : 0;

    /// <summary>
    /// The thinnest nut of a thread that is wished, of equal ones the first of the catalog; none where a clamp locks or none fits, unless
    /// the rod names one: then it must fit.
    /// </summary>
    /// <returns>False where a nut is named that does not fit.</returns>
    public static bool Nut(CatalogCase catalog, Wish wish, HoleCase hole, out NutCase? nut)
    {
        nut = wish.Must || hole.Clamp is null
            ? catalog.Nuts.Where(nut => nut.Thread == hole.Thread && wish.Takes(nut.Id, nut.Thread)).MinBy(nut => nut.Thickness.Mm)
            : null;
        return wish.Id is null || nut is not null;
    }

    /// <summary>Whether both ends are bent, for each combination that the wishes and the threads allow.</summary>
    private static IEnumerable<bool> Together(CatalogCase catalog) => catalog.SleeveWish is null
        ? from inner in catalog.Inner
          from socket in catalog.Sockets
          where catalog.InnerWish.Takes(inner.Id, inner.Thread)
              && catalog.OuterWish.Takes(socket.Id, socket.Hole.Thread)
              && inner.Thread == socket.Hole.Thread
          select false
        : from sleeve in catalog.Sleeves
          from inner in catalog.Inner
          from outer in catalog.Outer
          where Fits(catalog, sleeve, inner, outer)
          select inner.Offset.Mm > 0 && outer.Offset.Mm > 0;

    private static ReferenceChoice? Of(CatalogCase catalog, int sleeveAt, int innerAt, int outerAt)
    {
        (SleeveCase sleeve, EndCase inner, EndCase outer) = (catalog.Sleeves[sleeveAt], catalog.Inner[innerAt], catalog.Outer[outerAt]);
        bool bothBent = inner.Offset.Mm > 0 && outer.Offset.Mm > 0;
        if (!Fits(catalog, sleeve, inner, outer)
            || (bothBent && catalog.ClockingDegrees is null)
            || !Nut(catalog, catalog.InnerNutWish, sleeve.Inner, out NutCase? innerNut)
            || !Nut(catalog, catalog.OuterNutWish!, sleeve.Outer, out NutCase? outerNut))
        {
            return null;
        }

        RodCase rod = catalog.Rod(inner, sleeve, outer, innerNut, outerNut);
        double shortest = rod.Target.Mm - rod.Shorter.Mm;
        if (shortest <= 0 || shortest * shortest <= rod.OffsetSquared || (rod.WantsAdjustment && !rod.SleeveAdjusts))
        {
            return null;
        }

        RodPolytope polytope = RodPolytope.Of(rod);
        if (polytope.LeastCut() is not { } least)
        {
            return null;
        }

        CutPair cut = Recommended(rod, polytope, least);
        double middle = polytope.InnerInsertions(cut).Middle;
        Setting setting = new(middle, RodPolytope.OuterInsertion(rod, cut, middle));
        CostCase?[] costs = [inner.Cost, sleeve.Cost, outer.Cost, innerNut?.Cost, outerNut?.Cost];
        return new ReferenceChoice
        {
            Rod = rod,
            OneJoint = false,
            Place = (sleeveAt, innerAt, outerAt),
            Inner = inner.Id,
            Sleeve = sleeve.Id,
            Outer = outer.Id,
            InnerNut = innerNut,
            OuterNut = outerNut,
            Costs = [.. costs.OfType<CostCase>()],
            Least = least,
            Cut = cut,
            Setting = setting,
            Margin = Margin(rod, cut, setting),
        };
    }

    /// <summary>
    /// A rod with one threaded joint: the insertion follows from the cut, <c>s = (c - x) + b - axial</c>, and every millimeter of
    /// adjustment moves it by one. How far an open bore goes on toward the ball is not known: the tip stays in the thread.
    /// </summary>
    private static ReferenceChoice? OneJoint(CatalogCase catalog, int innerAt, int socketAt)
    {
        (EndCase inner, SocketCase socket) = (catalog.Inner[innerAt], catalog.Sockets[socketAt]);
        if (!catalog.InnerWish.Takes(inner.Id, inner.Thread)
            || !catalog.OuterWish.Takes(socket.Id, socket.Hole.Thread)
            || inner.Thread != socket.Hole.Thread
            || !Nut(catalog, catalog.InnerNutWish, socket.Hole, out NutCase? nut))
        {
            return null;
        }

        SleeveCase sleeve = new(socket.Id, socket.Cost, socket.Stock, socket.CenterToFace, socket.Hole, socket.Hole, null);
        RodCase rod = catalog.Rod(inner, sleeve, inner with { Offset = default }, nut, null);
        double shortest = rod.Target.Mm - rod.Shorter.Mm;
        if (shortest <= 0 || shortest * shortest <= rod.OffsetSquared)
        {
            return null;
        }

        JointCase joint = rod.Inner;
        double axial = rod.AxialOf(rod.Target.Mm);
        double inward = axial - rod.AxialOf(shortest);
        double outward = rod.AxialOf(rod.Target.Mm + rod.Longer.Mm) - axial;
        double uncut = joint.CenterToTip.Mm + socket.CenterToFace.Mm - axial;
        double least = Math.Max(0, uncut + inward - joint.Depth.Mm);
        least = least <= Millimeters.Negligible ? 0 : least;
        double required = rod.RequiredMm(joint);
        double edge = new[] { joint.CountersinkMm + required, joint.Witness?.Mm ?? 0, joint.Clamp?.Mm ?? 0 }.Max();
        double most = Math.Min(joint.MaxCut.Mm, uncut - outward - joint.LeadMm - edge);
        if (least > most + Millimeters.Negligible)
        {
            return null;
        }

        double cut = least == 0 ? 0 : CutRule.Recommended(rod, least, new Span(least, most));
        double into = uncut - cut;
        double margin = new[]
        {
            into - outward - joint.LeadMm - edge,
            joint.Depth.Mm - joint.CountersinkMm - required,
            LimitTable.Room(joint, into + inward, cut),
            joint.Depth.Mm - into - inward,
        }.Min();
        return margin < -Millimeters.Negligible
            ? null
            : new ReferenceChoice
            {
                Rod = rod,
                OneJoint = true,
                Place = (0, innerAt, socketAt),
                Inner = inner.Id,
                Sleeve = null,
                Outer = socket.Id,
                InnerNut = nut,
                OuterNut = null,
                Costs = [.. new[] { inner.Cost, socket.Cost, nut?.Cost }.OfType<CostCase>()],
                Least = new CutPair(least, 0),
                Cut = new CutPair(cut, 0),
                Setting = new Setting(into, 0),
                Margin = margin,
            };
    }

    /// <summary>The recommended cuts: inner end first, then the outer end beside it.</summary>
    private static CutPair Recommended(RodCase rod, RodPolytope polytope, CutPair least)
    {
        if (least.Total == 0)
        {
            return default;
        }

        double inner = CutRule.Recommended(rod, least.Inner, polytope.Window(RodSide.Inner, least.Outer)!.Value);
        return new CutPair(inner, CutRule.Recommended(rod, least.Outer, polytope.Window(RodSide.Outer, inner)!.Value));
    }

    private static double Margin(RodCase rod, CutPair cut, Setting setting) =>
        new[] { rod.Target.Mm - rod.Shorter.Mm, rod.Target.Mm + rod.Longer.Mm }
            .SelectMany(length => LimitTable.Slacks(rod, cut, LimitTable.Turned(rod, setting, LimitTable.TurnsTo(rod, length))))
            .Where(slack => slack.Limit != Limit.Cut)
            .Min(slack => slack.Left);
}
