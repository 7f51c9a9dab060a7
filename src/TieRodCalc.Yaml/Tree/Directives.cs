using TieRodCalc.Yaml.Sources;

namespace TieRodCalc.Yaml.Tree;

/// <summary>Checks the directives before the start of a document, which the parser mostly passes over.</summary>
internal static class Directives
{
    /// <summary>Refuses every directive but <c>%YAML 1.2</c>.</summary>
    /// <param name="source">The file.</param>
    /// <param name="end">Where the document starts, which no directive comes behind.</param>
    /// <param name="findings">Where the problems go.</param>
    public static void Check(SourceText source, int end, Findings findings)
    {
        string text = source.Text;
        for (int at = 0; at < end;)
        {
            int found = text.AsSpan(at, end - at).IndexOfAny('\r', '\n');
            int lineEnd = found < 0 ? end : at + found;
            if (text[at] == '%')
            {
                CheckOne(text.AsSpan(at, lineEnd - at), at, findings);
            }

            at = lineEnd + 1;
        }
    }

    private static void CheckOne(ReadOnlySpan<char> line, int at, Findings findings)
    {
        int comment = line.IndexOf(" #");
        ReadOnlySpan<char> directive = (comment < 0 ? line : line[..comment]).TrimEnd();
        TextSpan span = new(at, at + directive.Length);
        if (!directive.StartsWith("%YAML"))
        {
            string message = directive.StartsWith("%TAG") ? "tags are not read here: remove the directive" : "unknown directive: remove it";
            findings.Problem(span, message);
        }
        else if (directive["%YAML".Length..].Trim() is not "1.2")
        {
            findings.Problem(span, "this program reads YAML 1.2");
        }
    }
}
