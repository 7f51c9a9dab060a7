using System.Globalization;

namespace TieRodCalc.Cli.Tests;

/// <summary>What a command prints does not depend on the culture of the thread it runs on.</summary>
public class CultureTests
{
    /// <summary>Commas, other digits, other calendars, a dotless i, apostrophes in numbers, and a minus of another character.</summary>
    private static readonly string[] s_spread = ["tr-TR", "ar-SA", "fa-IR", "th-TH", "de-CH", "sv-SE", "hi-IN", "az-Latn-AZ"];

    [Fact]
    public void Every_command_prints_the_same_in_a_spread_of_cultures()
    {
        CommandLine[] expected = [.. AllCommands.Lines.Select(CommandLine.Run)];
        CultureInfo[] cultures = [.. s_spread.Select(CultureInfo.GetCultureInfo), Odd()];
        for (int number = 0; number < cultures.Length; number++)
        {
            // A third of the commands in each.
            for (int at = number % 3; at < expected.Length; at += 3)
            {
                In(cultures[number], () => Assert.Equal(expected[at], CommandLine.Run(AllCommands.Lines[at])));
            }
        }
    }

    /// <summary>Of cultures that write numbers and letters alike, the first stands for all.</summary>
    [Fact]
    public void A_plan_and_the_errors_of_a_job_are_the_same_in_every_culture()
    {
        string wrong = CheckJobs.W1.With("length: 365.125 mm", "length: 365,125 mm").With("adjust: 3.175 mm", "ADJUST: 3.175 MM");
        CommandLine[] Both() => [CommandLine.RunWith(CheckJobs.W1, "plan", "-"), CommandLine.RunWith(wrong, "plan", "-")];
        CommandLine[] expected = Both();
        HashSet<string> differing = [];
        foreach (CultureInfo culture in CultureInfo.GetCultures(CultureTypes.AllCultures).Append(Odd()))
        {
            if (differing.Add(string.Create(culture, $"{-1234.5:N} {"i".ToUpper(culture)}")))
            {
                In(culture, () => Assert.Equal(expected, Both()));
            }
        }

        Assert.Equal((0, 2), (expected[0].Status, expected[1].Status));
        Assert.True(differing.Count > 5, $"The machine knows too few cultures that differ: {string.Join("; ", differing)}");
    }

    private static void In(CultureInfo culture, Action action)
    {
        (CultureInfo before, CultureInfo beforeUi) = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);
        try
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (culture, culture);
            action();
        }
        finally
        {
            (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (before, beforeUi);
        }
    }

    /// <summary>A culture in which signs are words; it differs also on a machine that knows no other.</summary>
    private static CultureInfo Odd()
    {
        CultureInfo odd = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        odd.NumberFormat.NumberDecimalSeparator = "point";
        odd.NumberFormat.NegativeSign = "minus";
        odd.NumberFormat.NumberGroupSeparator = ".";
        return odd;
    }
}
