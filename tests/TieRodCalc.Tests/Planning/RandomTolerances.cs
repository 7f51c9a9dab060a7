using TieRodCalc.Rods;

namespace TieRodCalc.Tests.Planning;

/// <summary>Draws rods of which up to eight dimensions carry a tolerance.</summary>
internal static class RandomTolerances
{
    public const int Most = 8;

    /// <summary>Keeps the draw of tolerances apart from that of the rod.</summary>
    private const int OwnDraw = 3_000_000;

    public static TolerancedRod Draw(int index)
    {
        Random random = RandomCounts.For(OwnDraw + index);
        RodCase rod = RandomRods.Draw(index);
        bool oneJoint = random.NextDouble() < 0.15;
        if (oneJoint)
        {
            rod = RandomJobs.Socketed(rod, random);
        }
        else if (random.NextDouble() < 0.3)
        {
            rod = Bent(rod, random);
        }

        List<ToleranceCase> possible = [.. Possible(rod, oneJoint)];
        int count = random.Next(1, Most + 1);
        double coarse = random.Next(3) switch { 0 => 0.1, 1 => 1.5, _ => 4 };
        List<ToleranceCase> chosen = [];
        while (chosen.Count < count && possible.Count > 0)
        {
            int at = possible.FindIndex(tolerance => tolerance.Dimension == PartDimension.Offset);
            at = at < 0 || random.NextDouble() < 0.3 ? random.Next(possible.Count) : at;
            double scale = possible[at].Dimension is PartDimension.Lead or PartDimension.Countersink ? 0.2 : 1;
            chosen.Add(possible[at] with { PlusMinus = Math.Round(random.NextDouble() * coarse * scale, 3) + 0.001 });
            possible.RemoveAt(at);
        }

        return new TolerancedRod(rod, chosen, oneJoint);
    }

    /// <summary>Both ends bent nearly alike, so that the least distance across lies inside the tolerances now and then.</summary>
    private static RodCase Bent(RodCase rod, Random random)
    {
        double axial = rod.AxialOf(rod.Target.Mm);
        double inner = 6 + 16 * random.NextDouble();
        double clocking = random.NextDouble() < 0.3 ? 0 : Math.Round(40 * random.NextDouble());
        double outer = inner * Math.Cos(clocking * Math.PI / 180) + 2 * random.NextDouble() - 1;
        RodCase bent = rod with
        {
            Inner = rod.Inner with { Offset = Dim.OfMm(inner) },
            Outer = rod.Outer with { Offset = Dim.OfMm(outer) },
            ClockingDegrees = clocking,
        };
        return bent with { Target = Dim.OfMm(bent.LengthOf(axial)) };
    }

    private static IEnumerable<ToleranceCase> Possible(RodCase rod, bool oneJoint)
    {
        yield return new(PartDimension.Sleeve, null, 0);
        if (rod is { Outside: not null, SleeveTensileMpa: not null } && !oneJoint)
        {
            yield return new(PartDimension.Outside, null, 0);
        }

        foreach (RodSide side in oneJoint ? (RodSide[])[RodSide.Inner] : [RodSide.Inner, RodSide.Outer])
        {
            JointCase joint = rod.Joint(side);
            yield return new(PartDimension.CenterToTip, side, 0);
            yield return new(PartDimension.ThreadLength, side, 0);
            yield return new(PartDimension.Depth, side, 0);
            (PartDimension Dimension, bool Stated)[] optional =
            [
                (PartDimension.Lead, joint.Lead is not null),
                (PartDimension.Offset, joint.Offset.Mm > 0),
                (PartDimension.Nut, joint.Nut is not null),
                (PartDimension.Countersink, joint.Countersink is not null),
                (PartDimension.Witness, joint.Witness is not null),
                (PartDimension.Clamp, joint.Clamp is not null),
                (PartDimension.MaxCut, joint.MaxCut.Mm > 0),
            ];
            foreach ((PartDimension dimension, bool stated) in optional)
            {
                if (stated)
                {
                    yield return new(dimension, side, 0);
                }
            }
        }
    }
}
