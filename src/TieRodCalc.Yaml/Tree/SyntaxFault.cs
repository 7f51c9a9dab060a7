using TieRodCalc.Yaml.Sources;
using YamlDotNet.Core;

namespace TieRodCalc.Yaml.Tree;

/// <summary>Says in plain words what the YAML parser found wrong, and where.</summary>
internal static class SyntaxFault
{
    /// <summary>A part of the parser's message, and what it means to who wrote the file; the first that fits counts.</summary>
    private static readonly (string Part, string Sentence)[] Sentences =
    [
        ("tab as", TabIndents),
        ("tab character", TabIndents),
        ("duplicate %TAG", NoTags),
        ("%TAG directive", NoTags),
        ("tag directive", NoTags),
        ("%YAML", OtherVersion),
        ("incompatible YAML document", OtherVersion),
        ("version directive", OtherVersion),
        ("directive", "this directive cannot be read: remove it"),
        ("found unexpected end of stream", NotClosed),
        ("found unexpected document indicator", NotClosed),
        ("found wrong indentation", NotClosed),
        ("unknown escape character", "a backslash in double quotes begins an escape, and this is none: use single quotes"),
        ("invalid Unicode", NoCharacter),
        ("hexadecimal", NoCharacter),
        ("found invalid mapping", $"a colon and a space cannot stand inside a value: {QuoteOrIndent}"),
        ("Mapping values are not allowed", $"a colon cannot stand here: {QuoteOrIndent}"),
        ("Mapping keys are not allowed", "a question mark cannot stand here: put the value in quotes"),
        ("could not find expected ':'", "the colon behind this key is missing"),
        ("expected ',' or '}'", "a comma or a closing '}' is missing before this place"),
        ("expected ',' or ']'", "a comma or a closing ']' is missing before this place"),
        ("did not find expected key", $"{DoesNotFit}: check how the line is indented, or what comes behind a closing quote or bracket"),
        ("expected '-' indicator", $"{DoesNotFit}: check how the line is indented, or whether a '-' is missing"),
        ("expected <document", DoesNotFit),
        ("after '...' marker", DoesNotFit),
        ("comment", "a space is missing before the '#' of a comment, or the comment stands inside a value"),
        ("Block sequence entries are not allowed", "a list in lines begins on a line of its own"),
        ("expected node content", "a value is missing here"),
        ("Reached the end of the stream", "the file ends in the middle of a value"),
        ("cannot start any token", "a value cannot begin with this character: put it in quotes"),
        ("more than one anchor", NoAnchors),
        ("anchor or alias", NoAnchors),
        ("Anchor before", NoAnchors),
        ("did not find expected token", NoAnchors),
        ("tag", NoTags),
        ("block scalar", "this cannot begin a block of text: put the value in quotes"),
    ];

    private const string TabIndents = "a tab cannot indent a line: use spaces";
    private const string NoTags = "tags are not read here: remove it";
    private const string OtherVersion = "this program reads YAML 1.2";
    private const string QuoteOrIndent = "put the value in quotes, or check how the line is indented";
    private const string NoCharacter = "this escape stands for no character";
    private const string DoesNotFit = "this does not fit what stands before it";
    private const string NotClosed = "a quotation mark opens here and never closes";
    private const string NoAnchors = "anchors and aliases are not read here: remove it";
    private const string Unknown = "this is not valid YAML";

    /// <summary>Place and sentence of a fault.</summary>
    /// <param name="fault">What the parser threw.</param>
    /// <param name="text">The text of the file.</param>
    /// <param name="lastEnd">Where the last event before the fault ends.</param>
    /// <param name="bracket">Where the innermost open bracket stands, or null.</param>
    public static (TextSpan Span, string Message) Describe(Exception fault, string text, int lastEnd, int? bracket)
    {
        if (fault is not YamlException known)
        {
            // Thrown without a place, where a list or group in brackets is broken off.
            return bracket is { } at
                ? NeverClosed(text, at)
                : (new TextSpan(lastEnd, lastEnd + 1), Unknown);
        }

        int start = (int)Math.Clamp(known.Start.Index, 0, text.Length);
        if (bracket is { } open && start >= text.AsSpan().TrimEnd().Length)
        {
            return NeverClosed(text, open);
        }

        TextSpan span = new(start, (int)Math.Clamp(known.End.Index, start, text.Length));
        foreach ((string part, string sentence) in Sentences)
        {
            if (known.Message.Contains(part, StringComparison.Ordinal))
            {
                return sentence switch
                {
                    TabIndents => (TabFrom(text, lastEnd) ?? span, sentence),
                    NotClosed => (new TextSpan(start, start + 1), sentence),
                    _ => (span, sentence),
                };
            }
        }

        return (span, $"{Unknown}: {known.Message.TrimEnd('.')}");
    }

    private static (TextSpan Span, string Message) NeverClosed(string text, int from)
    {
        // A tag or anchor may stand before the bracket.
        int at = from + Math.Max(0, text.AsSpan(from).IndexOfAny('[', '{'));
        return (new TextSpan(at, at + 1), $"the bracket '{text[at]}' opens here and never closes");
    }

    /// <summary>The first tab in the indentation of a line behind a place; the parser's own place lies lines before it.</summary>
    private static TextSpan? TabFrom(string text, int from)
    {
        bool indentation = false;
        for (int i = from; i < text.Length; i++)
        {
            char c = text[i];
            if (indentation && c == '\t')
            {
                return new TextSpan(i, i + 1);
            }

            indentation = c is '\n' or '\r' || (indentation && c == ' ');
        }

        return null;
    }
}
