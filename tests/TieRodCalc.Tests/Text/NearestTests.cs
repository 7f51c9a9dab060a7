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

    [Fact]
    public void Long_texts_are_not_compared() => Assert.Equal(3, Nearest.Distance(new string('a', 70), new string('a', 71), 2));
}
