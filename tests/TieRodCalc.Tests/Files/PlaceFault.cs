using System.Text;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Files;

/// <summary>Holds the places of problems against the file that they are of.</summary>
internal static class PlaceFault
{
    /// <summary>What is wrong with the places of problems and notes, or null.</summary>
    /// <param name="problems">The problems.</param>
    /// <param name="notes">The notes.</param>
    /// <param name="content">The file that they are of; null where they may be of several.</param>
    /// <param name="valid">Whether the file was read.</param>
    public static string? Of(IReadOnlyList<Problem> problems, IReadOnlyList<Problem> notes, byte[]? content, bool valid)
    {
        if (valid == problems.Count > 0)
        {
            return "neither read nor refused, or both";
        }

        string[]? lines = content is null || content.Length == 0 ? null : LinesOf(content);
        return problems.Concat(notes).FirstOrDefault(problem => !IsPlaced(problem, content, lines))?.ToString();
    }

    /// <summary>Whether a problem has a line and column of the file; the file as a whole where there is no character in it.</summary>
    private static bool IsPlaced(Problem problem, byte[]? content, string[]? lines)
    {
        if (problem.Message.Length == 0 || problem.Message.Any(char.IsControl))
        {
            return false;
        }

        if (problem is { Line: 0, Column: 0, Length: 0, SourceLine: null })
        {
            return content is null || content.Length == 0 || lines is [""] || IsUtf16(content);
        }

        return problem is { Line: > 0, Column: > 0, Length: > 0, SourceLine: { } shown }
            && problem.Column <= shown.Length + 1
            && problem.Column + problem.Length <= shown.Length + 2
            && (lines is null || problem.File != "-" || (problem.Line <= lines.Length && lines[problem.Line - 1] == shown));
    }

    private static bool IsUtf16(byte[] content) => content.Contains((byte)0) || content is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..];

    /// <summary>The lines as a reader of YAML counts them, what cannot be shown replaced.</summary>
    private static string[] LinesOf(byte[] content)
    {
        StringBuilder shown = new();
        foreach (char c in Encoding.UTF8.GetString(content.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? content.AsSpan(3) : content))
        {
            bool hidden = (char.IsControl(c) && c is not ('\t' or '\n' or '\r' or '\u0085')) || c is '\uFFFE' or '\uFFFF';
            shown.Append(hidden ? '\uFFFD' : c);
        }

        return shown.Replace("\r\n", "\n").ToString().Split('\n', '\r', '\u0085', '\u2028', '\u2029');
    }
}
