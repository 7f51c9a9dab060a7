using TieRodCalc.Yaml.Sources;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace TieRodCalc.Yaml.Tree;

/// <summary>Builds the tree of a document from the parser's events and refuses what these files must not use.</summary>
internal sealed class TreeBuilder
{
    /// <summary>The parser's effort grows with the square of the nesting, and no file needs more.</summary>
    private const int DeepestNesting = 64;

    private readonly SourceText _source;
    private readonly Findings _findings;
    private readonly Stack<Frame> _open = new();
    private Node? _root;
    private bool _documentSeen;
    private bool _stopped;
    private int _lastEnd;

    private TreeBuilder(SourceText source, Findings findings) => (_source, _findings) = (source, findings);

    /// <summary>Reads a document.</summary>
    /// <param name="source">The file.</param>
    /// <param name="findings">Where its problems go.</param>
    /// <param name="whole">False where a fault ended the reading; the tree then holds what came before it.</param>
    /// <returns>The tree, or null where the document is empty.</returns>
    public static Node? Build(SourceText source, Findings findings, out bool whole)
    {
        TreeBuilder builder = new(source, findings);
        whole = builder.Run();
        return builder._root;
    }

    private bool Run()
    {
        using StringReader reader = new(_source.Text);
        Parser parser = new(reader);
        Exception? fault;
        while (Guard.Next(parser, out fault) is { } parsed)
        {
            Take(parsed);
            if (_stopped)
            {
                // Before a second document everything is closed, and the first one is whole.
                bool whole = _open.Count == 0;
                CloseOpen();
                return whole;
            }

            _lastEnd = Math.Max(_lastEnd, (int)Math.Min(parsed.End.Index, _source.Text.Length));
        }

        if (fault is not null)
        {
            Frame? bracket = null;
            foreach (Frame frame in _open)
            {
                bracket ??= frame.Flow ? frame : null;
            }

            (TextSpan span, string message) = SyntaxFault.Describe(fault, _source.Text, _lastEnd, bracket?.Start);
            _findings.Problem(span, message);
            CloseOpen();
            return false;
        }

        return true;
    }

    private void Take(ParsingEvent parsed)
    {
        switch (parsed)
        {
            case DocumentStart start:
                StartDocument(start);
                break;
            case AnchorAlias alias:
                TextSpan span = SpanOf(alias);
                _findings.Problem(span, "aliases are not read here: write the value itself");
                Attach(new RefusedNode { Span = span });
                break;
            case Scalar scalar:
                RefuseProperties(scalar);
                Attach(NodeOf(scalar));
                break;
            case MappingStart map:
                Open(map, new MapNode(), map.Style == MappingStyle.Flow);
                break;
            case SequenceStart list:
                Open(list, new ListNode(), list.Style == SequenceStyle.Flow);
                break;
            case MappingEnd or SequenceEnd:
                Close((int)parsed.Start.Index);
                break;
        }
    }

    private void StartDocument(DocumentStart start)
    {
        TextSpan span = SpanOf(start);
        if (_documentSeen)
        {
            _findings.Problem(span, "a second document begins here; a file holds one");
            _stopped = true;
            return;
        }

        _documentSeen = true;
        if (!start.IsImplicit)
        {
            Directives.Check(_source, span.End, _findings);
        }
    }

    private void Open(NodeEvent start, Node container, bool flow)
    {
        RefuseProperties(start);
        TextSpan span = SpanOf(start);
        if (_open.Count == DeepestNesting)
        {
            _findings.Problem(span, "lists and keys are nested more than 64 deep; the rest of the file was not read");
            _stopped = true;
            return;
        }

        container.Span = span;
        Frame? parent = _open.Count > 0 ? _open.Peek() : null;
        if (parent is { KeyNext: true })
        {
            _findings.Problem(span, "a key must be a plain text");
        }

        Attach(container);
        _open.Push(new Frame(container, flow));
    }

    private void Close(int end)
    {
        Frame frame = _open.Pop();
        string text = _source.Text;
        if (frame.Flow)
        {
            // The parser's end lies before the closing bracket.
            frame.Container.Span = new TextSpan(frame.Start, Math.Min(end + 1, text.Length));
        }
        else if (FirstOf(frame.Container) is { } first)
        {
            frame.Container.Span = new TextSpan(frame.Start, Math.Max(first.Span.End, frame.Start));
        }
    }

    /// <summary>What to mark where a list or map written in lines is meant: its first item, or its first key and value.</summary>
    private static Node? FirstOf(Node container) => container switch
    {
        MapNode { Entries: [(var key, var value), ..] } => value is ScalarNode { Value.Length: > 0 } ? value : key,
        ListNode { Items: [var item, ..] } => item,
        _ => null,
    };

    /// <summary>Hangs a node into the open list or map.</summary>
    private void Attach(Node node)
    {
        if (_open.Count == 0)
        {
            _root ??= node;
            return;
        }

        Frame frame = _open.Peek();
        if (frame.Container is ListNode list)
        {
            list.Items.Add(node);
        }
        else if (frame.KeyNext)
        {
            frame.Key = KeyOf(frame, node);
            frame.KeyNext = false;
        }
        else
        {
            if (frame.Key is { } key)
            {
                ((MapNode)frame.Container).Entries.Add((key, node));
                frame.Key = null;
            }

            frame.KeyNext = true;
        }
    }

    /// <summary>The key that a node is, or null where it is refused.</summary>
    private ScalarNode? KeyOf(Frame frame, Node node)
    {
        if (node is not ScalarNode key)
        {
            return null;
        }

        if (key is { Value: "<<", Quoted: false })
        {
            _findings.Problem(key.Span, "merge keys are not read here: write the keys themselves");
            return null;
        }

        if (key.Value.Length == 0)
        {
            // The parser gives an empty key no place of its own.
            string text = _source.Text;
            int at = text.Length - text.AsSpan(_lastEnd).TrimStart().Length;
            _findings.Problem(new TextSpan(at, at + 1), "the key before the colon is missing");
            return null;
        }

        if (frame.Earlier(key) is { } earlier)
        {
            int line = _source.LineOf(earlier.Span.Start);
            _findings.Problem(
                key.Span, string.Create(Wording.Invariant, $"the key {Wording.Quote(key.Value)} stands here already, in line {line}"));
            return null;
        }

        return key;
    }

    private ScalarNode NodeOf(Scalar scalar)
    {
        string text = _source.Text;
        TextSpan span = SpanOf(scalar);
        bool quoted = scalar.Style is not (ScalarStyle.Plain or ScalarStyle.Any);
        int at = span.Start + (quoted ? 1 : 0);
        bool verbatim = span.End - at - (quoted ? 1 : 0) == scalar.Value.Length
            && string.CompareOrdinal(text, at, scalar.Value, 0, scalar.Value.Length) == 0;
        if (!verbatim && Decoder.HoldsControl(scalar.Value))
        {
            _findings.Problem(span, "a control character, even an escaped one, cannot stand in a text");
        }

        return new ScalarNode { Span = span, Value = scalar.Value, Quoted = quoted, VerbatimAt = verbatim ? at : -1 };
    }

    /// <summary>Refuses the anchor and the tag that stand before a node.</summary>
    private void RefuseProperties(NodeEvent node)
    {
        if (node.Anchor.IsEmpty && node.Tag.IsEmpty)
        {
            return;
        }

        TextSpan rest = SpanOf(node);
        string text = _source.Text;
        int at = rest.Start;
        while (at < rest.End && text[at] is '&' or '!')
        {
            int length = text.AsSpan(at, rest.End - at).IndexOfAny(" \t\r\n");
            int end = length < 0 ? rest.End : at + length;
            _findings.Problem(
                new TextSpan(at, end),
                text[at] == '&' ? "anchors are not read here: remove it" : "tags are not read here: remove it");
            at = end;
            while (at < rest.End && text[at] is ' ' or '\t' or '\r' or '\n')
            {
                at++;
            }
        }
    }

    /// <summary>Marks what was open when reading stopped; an entry without a value gets a refused one.</summary>
    private void CloseOpen()
    {
        foreach (Frame frame in _open)
        {
            if (frame.Container is MapNode map)
            {
                map.Whole = false;
                if (frame.Key is { } key)
                {
                    map.Entries.Add((key, new RefusedNode { Span = key.Span }));
                }
            }
            else if (frame.Container is ListNode list)
            {
                list.Whole = false;
            }
        }
    }

    private TextSpan SpanOf(ParsingEvent parsed)
    {
        int start = (int)Math.Min(parsed.Start.Index, _source.Text.Length);
        return new TextSpan(start, (int)Math.Clamp(parsed.End.Index, start, _source.Text.Length));
    }
}
