using TieRodCalc.Text;

namespace TieRodCalc.Tests.Text;

public class NearestTests
{
    [Theory]
    [InlineData("depth", "depth", 0)]
    [InlineData("Depth", "depth", 0)]
    [InlineData("dept", "depth", 1)]
    [InlineData("deepth", "depth", 1)]
    [InlineData("detph", "depth", 1)]
    [InlineData("dipht", "depth", 2)]
    [InlineData("", "abc", 3)]
    [InlineData("abcdef", "ghijkl", 4)]
    public void Counts_letters_put_in_left_out_exchanged_or_swapped(string one, string other, int distance)
    {
        Assert.Equal(distance, Nearest.Distance(one, other, 3));
        Assert.Equal(distance, Nearest.Distance(other, one, 3));
    }

    [Theory]
    [InlineData("lenght", "length")]
    [InlineData("LENGTH", "length")]
    [InlineData("len", "length")]
    [InlineData("lengths_of_thread", "length")]
    [InlineData("id", null)]
    [InlineData("x", null)]
    public void Gives_the_nearest_name_or_none(string written, string? nearest) =>
        Assert.Equal(nearest, Nearest.Of(written, ["depth", "length"]));

    [Theory]
    [InlineData(64, 64, 0)]
    [InlineData(63, 64, 1)]
    [InlineData(64, 65, 3)]
    [InlineData(65, 64, 3)]
    [InlineData(70, 71, 3)]
    [InlineData(3, 64, 3)]
    public void Long_texts_are_not_compared(int one, int other, int distance)
    {
        Assert.Equal(distance, Nearest.Distance(new string('a', one), new string('a', other), 2));
        Assert.Equal(3, Nearest.Distance(new string('a', one), new string('b', other), 2));
    }

    [Theory]
    [InlineData("xe", "axe", "axe")]
    [InlineData("ab", "abcdefgh", "abcdefgh")]
    [InlineData("b", "abcdefgh", null)]
    [InlineData("inches", "in", "in")]
    [InlineData("inches", "i", null)]
    [InlineData("abcdefghijkl", "abcdefghixyz", "abcdefghixyz")]
    [InlineData("abcdefghijkl", "abcdefghwxyz", null)]
    public void Near_is_what_a_third_of_the_letters_parts_or_what_contains_the_other(string written, string name, string? nearest) =>
        Assert.Equal(nearest, Nearest.Of(written, [name]));

    [Fact]
    public void Of_several_the_nearest_is_taken_and_of_equally_near_ones_the_first()
    {
        Assert.Equal("depth", Nearest.Of("DEPTH", ["depht", "depth"]));
        Assert.Equal("depth", Nearest.Of("depth", ["depth", "Depth"]));
        Assert.Equal("dephh", Nearest.Of("dephx", ["dephh", "depht"]));
    }
}
