using TieRodCalc.Text;
using TieRodCalc.Threads;

namespace TieRodCalc.Tests.Threads;

/// <summary>The drills for a thread, against every drill up to 50 mm tried.</summary>
public class TapDrillsTests
{
    [Theory]
    [InlineData("M1x0.25-5H")]
    [InlineData("M1.6x0.35")]
    [InlineData("M3x0.5-4H")]
    [InlineData("M5x0.8")]
    [InlineData("M18x1.5")]
    [InlineData("M30x3.5")]
    [InlineData("5/8-18 UNF")]
    [InlineData("5/8-18 UNF-3B")]
    [InlineData("1/4-20 UNC")]
    [InlineData("0.060-80 UNF")]
    [InlineData("1-8 UNC-1B")]
    public void Within_the_limits_or_the_nearest_to_them(string thread)
    {
        ThreadLimits limits = ThreadLimits.Of(ThreadText.Parse(thread).Value!, ThreadGender.Internal)!;
        TapDrills drills = TapDrills.Of(limits);
        Assert.Equal(Tried(limits, 25.4 / 64), Figures(drills.SixtyFourths));
        Assert.Equal(Tried(limits, 0.1), Figures(drills.Tenths));
    }

    [Fact]
    public void An_external_thread_is_not_drilled() => Assert.Throws<ArgumentException>("limits", () => TapDrills.Of(
        ThreadLimits.Of(ThreadText.Parse("M18x1.5").Value!, ThreadGender.External)!));

    private static (string Within, double Nearest) Tried(ThreadLimits limits, double step)
    {
        double[] all = [.. Enumerable.Range(1, 2_000).Select(count => count * step).Where(drill => drill < 50)];
        double[] within = [.. all.Where(drill => Outside(drill) < 1e-6)];
        return (Shown(within), Math.Round(within.Length > 0 ? within[0] : all.MinBy(Outside), 6));

        double Outside(double drill) =>
            Math.Max(0, Math.Max(limits.Printed.MinorLeast - drill, drill - limits.Printed.MinorMost));
    }

    private static (string Within, double Nearest) Figures(DrillChoice choice) =>
        (Shown(choice.Within.Select(drill => drill.Millimeters)), Math.Round(choice.Nearest.Millimeters, 6));

    private static string Shown(IEnumerable<double> drills) =>
        string.Join(", ", drills.Select(drill => drill.ToString("F6", System.Globalization.CultureInfo.InvariantCulture)));
}
