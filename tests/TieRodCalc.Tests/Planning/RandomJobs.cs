namespace TieRodCalc.Tests.Planning;

/// <summary>Draws jobs of which most cannot be built: random rods of which something was spoilt.</summary>
internal static class RandomJobs
{
    /// <summary>Keeps the draw of what is spoilt apart from that of the rod.</summary>
    private const int OwnDraw = 5_000_000;

    private const double OneJointShare = 0.2;

    public static RodJob Draw(int index)
    {
        Random random = RandomCounts.For(OwnDraw + index);
        RodCase rod = RandomRods.Draw(index);
        bool oneJoint = random.NextDouble() < OneJointShare;
        rod = oneJoint ? Socketed(rod, random) : rod;
        if (random.NextDouble() < 0.5)
        {
            rod = rod with
            {
                SleeveTensileMpa = 400 + 500 * random.NextDouble(),
                Inner = rod.Inner with { TensileMpa = 400 + 300 * random.NextDouble() },
                Outer = rod.Outer with { TensileMpa = 400 + 300 * random.NextDouble() },
            };
        }

        int spoilt = random.Next(1, 4);
        for (int one = 0; one < spoilt; one++)
        {
            rod = Spoil(rod, oneJoint, random);
        }

        rod = random.NextDouble() < 0.5 ? rod with { Inner = Nutted(rod.Inner), Outer = Nutted(rod.Outer) } : rod;
        return new RodJob(rod, Rethread(rod.Inner, random), oneJoint ? default : Rethread(rod.Outer, random), oneJoint);
    }

    /// <summary>
    /// The rod with the internal thread in its outer end: of the outer joint nothing is left, and the sleeve's length is the way from ball
    /// center to face. The target stays within what the insertions give.
    /// </summary>
    public static RodCase Socketed(RodCase rod, Random random)
    {
        JointCase inner = rod.Inner;
        double face = inner.Depth.Mm + 10 + 40 * random.NextDouble();
        RodCase one = rod with
        {
            // A short thread, so that the parts which are not used make a rod.
            Outer = rod.Outer with { Offset = default, MaxCut = default, Witness = null, Clamp = null, Depth = Dim.OfMm(8) },
            SleeveLength = new Dim(rod.SleeveLength.InInches ? face / 25.4 : face, rod.SleeveLength.InInches),
            ClockingDegrees = null,
            Outside = null,
        };
        double low = inner.LeadMm + inner.CountersinkMm + one.RequiredMm(inner);
        double high = Math.Min(inner.ThreadLength.Mm - inner.NutMm, inner.Depth.Mm);
        double insertion = low + (high - low) * (1.2 * random.NextDouble() - 0.1);
        double cut = random.NextDouble() < 0.5 ? 0 : inner.MaxCut.Mm * random.NextDouble();
        double axial = Math.Max(40, inner.CenterToTip.Mm - cut + face - insertion);
        double adjust = inner.Thread.PitchMm * random.Next(0, 4);
        return one with
        {
            Target = Dim.OfMm(one.LengthOf(axial)),
            Shorter = Dim.OfMm(adjust),
            Longer = Dim.OfMm(random.NextDouble() < 0.3 ? adjust / 2 : adjust),
        };
    }

    private static RodCase Spoil(RodCase rod, bool oneJoint, Random random)
    {
        double some = random.NextDouble();
        switch (random.Next(10))
        {
            case 0 when !oneJoint:
                return rod with { SleeveLength = Dim.OfMm(rod.Inner.Depth.Mm + rod.Outer.Depth.Mm + 4 * some) };
            case 1:
                return rod with { SleeveLength = Dim.OfMm(rod.SleeveLength.Mm + 50 * some) };
            case 2:
                return rod with { Inner = rod.Inner with { MaxCut = default }, Outer = rod.Outer with { MaxCut = default } };
            case 3:
                return rod with { Inner = rod.Inner with { MaxCut = Dim.OfMm(rod.Inner.MaxCut.Mm * some) } };
            case 4 or 5:
                double times = 1.5 + 3 * some;
                return Lasting(rod with { Shorter = Times(rod.Shorter, times), Longer = Times(rod.Longer, times) });
            case 6:
                return rod with { Inner = Thicker(rod.Inner, 12 * some), Outer = Thicker(rod.Outer, 8 * random.NextDouble()) };
            case 7:
                return Lasting(rod with { Target = Dim.OfMm(rod.Target.Mm + 60 * some - 30) });
            case 8:
                return rod with { Engagement = new EngagementCase(1.6 + Math.Round(some, 1), null) };
            default:
                return Lasting(rod with { Longer = Dim.OfMm(rod.Longer.Mm + 25 * some) });
        }
    }

    /// <summary>A nut beside the clamp.</summary>
    private static JointCase Nutted(JointCase joint) => joint.Clamp is null ? joint : joint with { Nut = Dim.OfMm(8) };

    private static JointCase Thicker(JointCase joint, double by) =>
        joint.Nut is { } nut ? joint with { Nut = Dim.OfMm(nut.Mm + by) } : joint;

    private static Dim Times(Dim dimension, double by) => dimension with { Value = dimension.Value * by };

    /// <summary>A rod is never asked to be shorter than what two bent ends can be apart.</summary>
    private static RodCase Lasting(RodCase rod)
    {
        double least = Math.Sqrt(Math.Max(0, rod.OffsetSquared)) + 10;
        double target = Math.Max(rod.Target.Mm, least);
        return rod with
        {
            Target = target > rod.Target.Mm ? Dim.OfMm(target) : rod.Target,
            Shorter = rod.Shorter.Mm > target - least ? Dim.OfMm(target - least) : rod.Shorter,
        };
    }

    private static Dim Rethread(JointCase joint, Random random)
    {
        double most = joint.CenterToTip.Mm - joint.ThreadLength.Mm;
        return random.NextDouble() < 0.5 || most < 1 ? default : Dim.OfMm(Math.Floor(Math.Min(most, 25) * random.NextDouble()));
    }
}
