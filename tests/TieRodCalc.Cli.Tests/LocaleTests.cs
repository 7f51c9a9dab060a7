using System.Diagnostics;

namespace TieRodCalc.Cli.Tests;

/// <summary>Drawings are made of ASCII where the locale says that a terminal shows nothing else.</summary>
public sealed class LocaleTests
{
    [Theory]
    [InlineData(null, null, null, false)]
    [InlineData("", "", "", false)]
    [InlineData(null, null, "en_US.UTF-8", false)]
    [InlineData(null, null, "de_DE.utf8", false)]
    [InlineData(null, null, "C", true)]
    [InlineData("C.UTF-8", null, "C", false)]
    [InlineData("POSIX", "en_US.UTF-8", "en_US.UTF-8", true)]
    [InlineData(null, "en_US.ISO-8859-1", "en_US.UTF-8", true)]
    public void The_first_variable_that_is_set_decides(string? all, string? ctype, string? lang, bool ascii) =>
        Assert.Equal(ascii, Locale.IsAsciiAlone(all, ctype, lang));

    [Fact]
    public void The_drawing_follows_the_locale()
    {
        string drawn = Drawing("C.UTF-8");
        string ascii = Drawing("C");
        Assert.Contains('█', drawn);
        Assert.DoesNotContain(ascii, letter => letter > '\x7f');
        Assert.Equal(drawn.Split('\n').Select(line => line.Length), ascii.Split('\n').Select(line => line.Length));
        Assert.Equal(drawn.IndexOf('█', StringComparison.Ordinal), ascii.IndexOf('#', StringComparison.Ordinal));
    }

    private static string Drawing(string locale)
    {
        using Process process = CommandProcess.Start(
            ["plan", "catalog-samples/jobs/car-27.yaml", "--rod", "left"], environment: ("LC_ALL", locale));
        string text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        int from = text.IndexOf("The rod as it is made", StringComparison.Ordinal);
        return text[from..text.IndexOf("What to cut", StringComparison.Ordinal)];
    }
}
