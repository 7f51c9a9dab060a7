using System.Text.RegularExpressions;
using TieRodCalc.Planning;
using TieRodCalc.Yaml;
using UnitsNet;

namespace TieRodCalc.Tests.Architecture;

/// <summary>
/// The page of the public face is what the XML documentation says. Set the environment variable TIERODCALC_UPDATE_DOCS to write it
/// anew.
/// </summary>
public partial class ApiPageTests
{
    private const string Introduction =
        """
        # API

        Every public type and member of `TieRodCalc` and `TieRodCalc.Yaml`, written by a test out of the XML documentation that the packages
        carry; do not edit. The README has two complete programs to begin with.

        Where to start:

        - a job file: `JobReader.Read`; single values as text: `LengthText.Parse`, `ThreadText.Parse`, `ValueText`;
        - a rod of its parts: `Rod.Make`, which says which threads do not match instead of throwing;
        - what to cut and how to set it: `RodPlanner.Plan`; what would make a rod fit: `RodRemedies.Of`; which parts of a catalog fit:
          `RodChooser.Choose`; a rod that is made up already: `AsBuilt.Check`; turns for toe: `ToePlanner.Plan`;
        - what to show beside every result: `Cautions.All`.

        What holds everywhere:

        - `Length`, `Angle`, `Force`, `Pressure`, `Area` and `Mass` are quantities of UnitsNet, so a value carries its unit. A bare
          `double` says in its text what it counts: turns, flats, diameters, or a ratio.
        - Everything is immutable and safe to use from several threads. Lists are never null, and a value that can be missing says what
          its absence means.
        - What a file or a text got wrong comes back as a value. Exceptions are for what no text can produce (null, a negative length,
          not a number). Named below or not, null for a parameter that must not be null is an `ArgumentNullException`.
        - Records compare their quantities as UnitsNet does: a length in inches and the same in millimeters are not equal. Compare
          lengths as numbers, with a tolerance.

        """;

    [Fact]
    public void The_page_is_what_the_documentation_says() => AcceptedFile.AssertIs(Page(), "docs", "api.md");

    [Fact]
    public void The_page_can_be_read_as_plain_text()
    {
        string[] lines = Page().Split('\n');
        Assert.All(lines, line => Assert.InRange(line.Length, 0, 140));
        string[] headings = [.. lines.Where(line => line.StartsWith('#')).Select(line => line.TrimStart('#', ' '))];
        Assert.Equal(headings.Distinct(), headings);
        HashSet<string> anchors = [.. headings.Select(heading => NotInAnchor().Replace(heading, "").ToLowerInvariant())];
        string[] links = [.. Link().Matches(string.Join('\n', lines)).Select(match => match.Groups["anchor"].Value)];
        Assert.Superset(links.ToHashSet(), anchors);
        Assert.Equal(headings.Length - 2, links.Length);
    }

    [Fact]
    public void A_record_shows_its_own_members_and_none_that_the_compiler_makes()
    {
        string page = Page();
        Assert.Contains("- `T Value { get; }`: The value.", page, StringComparison.Ordinal);
        Assert.Contains("- `T? Value { get; init; }`: The content, or null", page, StringComparison.Ordinal);
        Assert.Contains("- `const double SteelDiameters = 1.5`: ", page, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\b(Deconstruct|PrintMembers|GetHashCode|EqualityContract|op_\w+)\b", page);
        Assert.Contains("public sealed record Price(decimal Amount, string Currency)\n```\n\n- `decimal Amount { get; init; }`: The amount",
            page, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_page_says_of_equal_lengths_is_true()
    {
        Assert.NotEqual(Length.FromInches(1), Length.FromMillimeters(25.4));
        Assert.NotEqual(
            new LengthSpan(Length.Zero, Length.FromInches(1)), new LengthSpan(Length.Zero, Length.FromMillimeters(25.4)));
    }

    private static string Page() => ApiPage.Of(Introduction, typeof(RodPlanner).Assembly, typeof(JobReader).Assembly);

    [GeneratedRegex(@"\]\(#(?<anchor>[^)]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"[^\w]")]
    private static partial Regex NotInAnchor();
}
