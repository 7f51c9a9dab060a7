using TieRodCalc.Parts;
using TieRodCalc.Tests.Planning;
using UnitsNet;

namespace TieRodCalc.Tests.Parts;

/// <summary>Dimensions that contradict each other, just within and just beyond.</summary>
public class PartFaultTests
{
    /// <summary>Below the comparison constant, and above it.</summary>
    private const double Hair = 5e-7;
    private const double Seen = 2e-6;

    /// <summary>200 mm long; M18 inside, 5/8 in outside, 45 mm of thread in each end.</summary>
    private static Sleeve Sound => CheckCases.Bent.Rod.ToRod().Parts.Sleeve!;

    [Fact]
    public void A_sound_sleeve_has_none() => Assert.Empty(PartFaults.Of(Sound));

    [Theory]
    [InlineData(17.0, true)]
    [InlineData(18.0, true)]
    [InlineData(18 + Hair, true)]
    [InlineData(18 + Seen, false)]
    [InlineData(19.0, false)]
    public void The_outside_is_larger_than_the_larger_thread(double across, bool faulty)
    {
        foreach (OutsideShape shape in Enum.GetValues<OutsideShape>())
        {
            Sleeve sleeve = Sound with { Outside = new(shape, Mm(across)) };
            Sleeve turned = sleeve with { Inner = sleeve.Outer, Outer = sleeve.Inner };
            Assert.Equal(faulty ? [PartFault.OutsideNotLargerThanThread] : [], PartFaults.Of(sleeve));
            Assert.Equal(faulty ? [PartFault.OutsideNotLargerThanThread] : [], PartFaults.Of(turned));
        }
    }

    [Theory]
    [InlineData(199.0, false)]
    [InlineData(200.0, false)]
    [InlineData(200 + Hair, false)]
    [InlineData(200 + Seen, true)]
    [InlineData(250.0, true)]
    public void Witness_and_clamp_lie_within_the_sleeve(double at, bool faulty)
    {
        Sleeve sleeve = Sound;
        foreach ((Func<TappedHole, TappedHole> put, PartFault fault) in new (Func<TappedHole, TappedHole>, PartFault)[]
            {
                (hole => hole with { Witness = Mm(at) }, PartFault.WitnessBeyondSleeve),
                (hole => hole with { Clamp = Mm(at) }, PartFault.ClampBeyondSleeve),
            })
        {
            PartFault[] expected = faulty ? [fault] : [];
            Assert.Equal(expected, PartFaults.Of(sleeve with { Inner = put(sleeve.Inner) }));
            Assert.Equal(expected, PartFaults.Of(sleeve with { Outer = put(sleeve.Outer) }));
            Assert.Equal(expected, PartFaults.Of(put(sleeve.Inner), sleeve.Length.Nominal));

            // A hole that is no end of a sleeve has nothing to lie beyond.
            Assert.Empty(PartFaults.Of(put(sleeve.Inner)));
        }
    }

    [Fact]
    public void Witness_and_clamp_beyond_are_told_of_both_ends()
    {
        static TappedHole Beyond(TappedHole hole) => hole with { Witness = Mm(201), Clamp = Mm(202) };
        Sleeve sleeve = Sound;
        Assert.Equal(
            [PartFault.WitnessBeyondSleeve, PartFault.ClampBeyondSleeve, PartFault.WitnessBeyondSleeve, PartFault.ClampBeyondSleeve],
            PartFaults.Of(sleeve with { Inner = Beyond(sleeve.Inner), Outer = Beyond(sleeve.Outer) }));
    }

    [Theory]
    [InlineData(90.0, false)]
    [InlineData(90 - Hair, false)]
    [InlineData(90 - Seen, true)]
    public void The_threads_have_room_in_the_sleeve(double length, bool faulty) => Assert.Equal(
        faulty ? [PartFault.ThreadsLongerThanSleeve] : [], PartFaults.Of(Sound with { Length = Mm(length) }));

    [Theory]
    [InlineData(44.9, PartFault.SocketDeeperThanEnd)]
    [InlineData(45 - Seen, PartFault.SocketDeeperThanEnd)]
    [InlineData(45 - Hair)]
    [InlineData(80.0)]
    public void The_thread_of_a_socket_has_room_in_its_end(double centerToFace, params PartFault[] expected)
    {
        TappedHole socket = Sound.Inner;
        SocketEnd end = new() { Info = Sound.Info, CenterToFace = Mm(centerToFace), Socket = socket };
        Assert.Equal(expected, PartFaults.Of(end));
        Assert.Equal(
            [.. expected, PartFault.CountersinkNotShallowerThanThread, PartFault.WitnessBeyondSleeve],
            PartFaults.Of(end with { Socket = socket with { Countersink = Mm(45), Witness = Mm(centerToFace + 1) } }));
    }

    private static Measured Mm(double value) => new(Length.FromMillimeters(value));
}
