using TieRodCalc.Text;
using TieRodCalc.Threads;

namespace TieRodCalc.Cli.Tests;

/// <summary>The names and sentences of threads.</summary>
public sealed class ThreadSentenceTests
{
    private static readonly ThreadLimits Male =
        ThreadLimits.Of(ThreadText.Parse("5/8-18").Value, ThreadGender.External)!;

    public static TheoryData<ThreadWarningCode> Codes => [.. Enum.GetValues<ThreadWarningCode>()];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Every_warning_has_its_code_and_a_sentence(ThreadWarningCode code)
    {
        string words = string.Concat(code.ToString().Select((letter, place) =>
            char.IsUpper(letter) && place > 0 ? $"-{char.ToLowerInvariant(letter)}" : $"{char.ToLowerInvariant(letter)}"));
        Assert.Equal(words, Names.Of(code));
        string sentence = new ThreadSentences(LengthDisplay.Inch).Of(new ThreadWarning(code, Male));
        Assert.EndsWith(".", sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("  ", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void No_two_warnings_say_the_same() => Assert.Distinct(
        Enum.GetValues<ThreadWarningCode>().Select(code => new ThreadSentences(LengthDisplay.Inch).Of(new ThreadWarning(code, Male))));

    [Fact]
    public void A_missing_strength_is_that_of_the_member()
    {
        ThreadSentences sentences = new(LengthDisplay.Millimeter);
        Assert.Contains("of the male is", Of(ThreadGender.External), StringComparison.Ordinal);
        Assert.Contains("of the female is", Of(ThreadGender.Internal), StringComparison.Ordinal);
        Assert.Contains("of the male and of the female is", Of(null), StringComparison.Ordinal);

        string Of(ThreadGender? member) => sentences.Of(new ThreadWarning(ThreadWarningCode.StrengthNotChecked, Male, member));
    }

    [Fact]
    public void Names_are_those_that_scripts_rely_on()
    {
        Assert.Equal(
            ["goes together", "does not start", "starts and binds", "goes in loose"], Enum.GetValues<FitOutcome>().Select(Names.Of));
        Assert.Equal(["into look-alike", "look-alike into"], Enum.GetValues<FitDirection>().Select(Names.Of));
        Assert.Equal(["male breaks", "male thread strips", "female thread strips"], Enum.GetValues<GivesWay>().Select(Names.Of));
        Assert.Equal(["UNC", "UNF", "UNEF", "UN", "UNS"], Enum.GetValues<UnifiedSeries>().Select(Names.Of));
        Assert.Equal(["external", "internal"], Enum.GetValues<ThreadGender>().Select(Names.Of));
    }

    [Fact]
    public void A_value_that_is_none_has_no_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Names.Of((FitOutcome)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => Names.Of((GivesWay)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => Names.Of((ThreadWarningCode)99));
    }

    [Theory]
    [InlineData("1.25", "above 1, the female thread is the weaker one")]
    [InlineData("0.8", "below 1, the male thread is the weaker one")]
    [InlineData("1", "1, the two threads are equally strong")]
    public void The_ratio_names_the_weaker_thread(string ratio, string expected) =>
        Assert.Equal(expected, ThreadSentences.OfRatio(double.Parse(ratio, System.Globalization.CultureInfo.InvariantCulture)));
}
