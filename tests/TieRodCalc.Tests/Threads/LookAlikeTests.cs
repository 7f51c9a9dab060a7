using TieRodCalc.Threads;
using UnitsNet;
using static TieRodCalc.Tests.Threads.Pairs;

namespace TieRodCalc.Tests.Threads;

/// <summary>Which threads are taken for which, and the list of them.</summary>
public class LookAlikeTests
{
    private const double Rounding = 1e-9;

    [Fact]
    public void The_most_dangerous_come_first_and_of_each_the_nearest() => Assert.All(
        RandomThreads.Standard.Where(size => size.Diameter.Millimeters is > 4 and < 40),
        size =>
        {
            var alike = LookAlike.Of(new(size, Hand.Right));
            for (int n = 1; n < alike.Count; n++)
            {
                Assert.True(Rank(alike[n - 1]) <= Rank(alike[n]), size.ToString());
                Assert.True(
                    Rank(alike[n - 1]) != Rank(alike[n]) || Away(alike[n - 1]) <= Away(alike[n]) + Rounding, size.ToString());
            }

            double Away(LookAlike other) => Math.Abs((other.Thread.Size.Diameter - size.Diameter).Millimeters);
        });

    [Fact]
    public void Every_standard_size_has_its_list_of_others() => Assert.All(RandomThreads.Standard, size =>
    {
        ThreadDesignation thread = new(size, Hand.Left);
        var alike = LookAlike.Of(thread);
        Assert.DoesNotContain(alike, other => other.Thread.Size.Matches(size));
        Assert.All(alike, other => Assert.Equal(Hand.Left, other.Thread.Hand));
        Assert.All(alike, other => Assert.NotEqual(FitOutcome.GoesTogether, other.Fit.Outcome));
        Assert.Equal(alike.Count, alike.DistinctBy(other => (other.Thread, other.Direction)).Count());
        Assert.All(alike.GroupBy(other => other.Thread), both => Assert.Equal(2, both.Count()));
        Assert.All(alike.GroupBy(other => other.Thread), both => Assert.Contains(both, other => IsTaken(other.Fit)));
    });

    [Theory]
    [InlineData("5/8-18")]
    [InlineData("M18x1.5")]
    public void A_left_hand_thread_has_the_left_hand_ones(string text)
    {
        IReadOnlyList<LookAlike> right = LookAlike.Of(Thread(text));
        Assert.NotEmpty(right);
        Assert.Equal(
            right.Select(other => other with { Thread = other.Thread with { Hand = Hand.Left } }),
            LookAlike.Of(Thread(text + " LH")));
    }

    /// <summary>What one thread says of another, the other says of it.</summary>
    [Fact]
    public void Two_threads_are_taken_for_each_other()
    {
        Dictionary<ThreadSize, IReadOnlyList<LookAlike>> lists = RandomThreads.Standard
            .Where(size => size.Diameter.Millimeters is > 4 and < 40)
            .ToDictionary(size => size, size => LookAlike.Of(new(size, Hand.Right)));
        int compared = 0;
        foreach ((ThreadSize size, IReadOnlyList<LookAlike> alike) in lists)
        {
            foreach (LookAlike other in alike)
            {
                ThreadSize? key = lists.Keys.FirstOrDefault(listed => listed.Matches(other.Thread.Size));
                if (key is null)
                {
                    continue;
                }

                compared++;
                FitDirection opposite = other.Direction == FitDirection.IntoLookAlike
                    ? FitDirection.LookAlikeInto
                    : FitDirection.IntoLookAlike;
                LookAlike back = Assert.Single(lists[key], found => found.Thread.Size.Matches(size) && found.Direction == opposite);
                Assert.Equal(other.Fit, back.Fit);
            }
        }

        Assert.InRange(compared, 1000, 100_000);
    }

    /// <summary>By definition, over all pairs of near sizes: one is listed where a full turn goes in and the crests overlap.</summary>
    [Theory]
    [InlineData("5/8-18")]
    [InlineData("M16x1.5")]
    [InlineData("M12x1.25")]
    [InlineData("11/16-18")]
    [InlineData("M18x1.5")]
    [InlineData("3/4-16")]
    public void The_list_has_all_that_are_taken_for_it(string text)
    {
        ThreadDesignation thread = Thread(text);
        HashSet<ThreadSize> listed = [.. LookAlike.Of(thread).Select(other => other.Thread.Size)];
        foreach (ThreadSize size in RandomThreads.Standard.Where(size => !size.Matches(thread.Size) && size.Pitch.Millimeters >= 0.35))
        {
            ThreadDesignation other = new(size, Hand.Right);
            ThreadFit[] both = [ThreadFit.Of(thread, other)!, ThreadFit.Of(other, thread)!];
            Assert.Equal(both.Any(IsTaken), listed.Any(found => found.Matches(size)));
        }
    }

    [Fact]
    public void A_thread_without_limits_has_no_look_alikes() => Assert.Empty(LookAlike.Of(Thread("M10x1.5-5g")));

    private static bool IsTaken(ThreadFit fit) =>
        fit.Outcome is FitOutcome.GoesInLoose or FitOutcome.StartsAndBinds && fit.MostOverlap > Length.Zero;

    private static int Rank(LookAlike alike) => alike.Fit.Outcome switch
    {
        FitOutcome.GoesInLoose => 0,
        FitOutcome.StartsAndBinds => 1,
        FitOutcome.DoesNotStart => 2,
        _ => 3,
    };
}
