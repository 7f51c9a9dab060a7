using System.Text.RegularExpressions;

namespace TieRodCalc.Cli.Tests;

/// <summary>Links of the documents lead somewhere, none of them to the net, and every page can be found from the README.</summary>
public sealed partial class DocumentLinkTests
{
    [Theory]
    [MemberData(nameof(Documents.Each), MemberType = typeof(Documents))]
    public void Every_link_leads_to_a_file_and_a_heading(string document)
    {
        Assert.Empty(Broken(document, Links(Documents.Lines(document))));
    }

    [Theory]
    [InlineData("[x](docs/nowhere.md)", "docs/nowhere.md")]
    [InlineData("[x](docs/plan.md#nowhere)", "docs/plan.md#nowhere")]
    [InlineData("[x](https://example.org)", "https://example.org")]
    [InlineData("![](docs/toe-signs.svg)", "docs/toe-signs.svg: a picture without a text in its place")]
    [InlineData("![a picture](docs/toe-signs.svg) [limits](docs/plan.md#the-limits)", null)]
    [InlineData("`[x](docs/nowhere.md)`", null)]
    public void A_broken_link_is_seen(string line, string? broken)
    {
        Assert.Equal(broken is null ? [] : [broken], Broken("README.md", Links([line])));
    }

    [Fact]
    public void Headings_are_named_as_they_are_on_a_page()
    {
        string[] lines = ["# What `plan` prints: a, b_c", "## Same", "```", "# not one", "```", "## Same", "### [A link](x.md), and more"];
        Assert.Equal(["what-plan-prints-a-b_c", "same", "same-1", "a-link-and-more"], Anchors(lines));
    }

    [Fact]
    public void Every_page_and_picture_is_found_from_the_readme()
    {
        HashSet<string> found = ["README.md"];
        Queue<string> open = new(found);
        while (open.TryDequeue(out string? document))
        {
            IEnumerable<string> next = Links(Documents.Lines(document))
                .Select(link => Target(document, link.Target.Split('#')[0]))
                .Where(found.Add)
                .Where(target => target.EndsWith(".md", StringComparison.Ordinal));
            foreach (string target in next.ToArray())
            {
                open.Enqueue(target);
            }
        }

        string[] kept = [.. Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs"), "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Repository.Root, file).Replace('\\', '/'))
            .Where(file => Path.GetExtension(file) is ".md" or ".svg" or ".json")];
        Assert.NotEmpty(kept);
        Assert.Empty(kept.Except(found));
    }

    private static List<string> Broken(string document, IEnumerable<(bool Picture, string Words, string Target)> links)
    {
        List<string> broken = [];
        foreach ((bool picture, string words, string target) in links)
        {
            string[] parts = target.Split('#');
            string file = parts[0].Length == 0 ? document : Target(document, parts[0]);
            string path = Path.Combine(Repository.Root, file);
            bool there = !target.Contains(':', StringComparison.Ordinal) && Path.Exists(path);
            if (!there || (parts.Length > 1 && !Anchors(File.ReadAllLines(path)).Contains(parts[1])))
            {
                broken.Add(target);
            }
            else if (picture && string.IsNullOrWhiteSpace(words))
            {
                broken.Add($"{target}: a picture without a text in its place");
            }
        }

        return broken;
    }

    private static string Target(string document, string target) => Path
        .GetRelativePath(Repository.Root, Path.GetFullPath(Path.Combine(Repository.Root, Path.GetDirectoryName(document)!, target)))
        .Replace('\\', '/');

    private static IEnumerable<(bool Picture, string Words, string Target)> Links(IEnumerable<string> lines)
    {
        string text = string.Join('\n', Documents.Fences(lines).Where(line => !line.Fenced).Select(line => line.Line));
        return Link().Matches(CodeSpan().Replace(text, "code"))
            .Select(match => (match.Groups["picture"].Length > 0, match.Groups["words"].Value, match.Groups["target"].Value));
    }

    /// <summary>The names of a page's headings: small letters, digits, hyphens for spaces; a second one is numbered.</summary>
    private static List<string> Anchors(IEnumerable<string> lines)
    {
        Dictionary<string, int> seen = [];
        List<string> anchors = [];
        foreach ((string line, bool fenced) in Documents.Fences(lines))
        {
            if (!fenced && Heading().Match(line) is { Success: true } match)
            {
                string words = Link().Replace(match.Groups["words"].Value, "${words}");
                string name = NotInName().Replace(words.Trim().ToLowerInvariant(), string.Empty).Replace(' ', '-');
                int count = seen.GetValueOrDefault(name);
                seen[name] = count + 1;
                anchors.Add(count == 0 ? name : $"{name}-{count}");
            }
        }

        return anchors;
    }

    [GeneratedRegex(@"(?<picture>!?)\[(?<words>[^\]]*)\]\((?<target>[^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex("`[^`]*`")]
    private static partial Regex CodeSpan();

    [GeneratedRegex("^#{1,6} (?<words>.*)$")]
    private static partial Regex Heading();

    [GeneratedRegex(@"[^\p{L}\p{N}_\- ]")]
    private static partial Regex NotInName();
}
