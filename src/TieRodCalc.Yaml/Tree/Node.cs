using TieRodCalc.Yaml.Sources;

namespace TieRodCalc.Yaml.Tree;

/// <summary>A node of a YAML document, with its place.</summary>
internal abstract class Node
{
    /// <summary>What to mark where the node is meant.</summary>
    public TextSpan Span { get; set; }
}

/// <summary>A node that was refused, or that a fault of the syntax kept from being read; it has had its problem already.</summary>
internal sealed class RefusedNode : Node;

/// <summary>A text.</summary>
internal sealed class ScalarNode : Node
{
    /// <summary>The text.</summary>
    public required string Value { get; init; }

    /// <summary>Where the text stands in the file character by character; below zero where it is escaped or folded.</summary>
    public required int VerbatimAt { get; init; }

    /// <summary>True where the text stands in quotes or as a block.</summary>
    public required bool Quoted { get; init; }

    /// <summary>Nothing where a value is expected: nothing at all, or the null of YAML 1.2's core schema.</summary>
    public bool IsEmpty => Value.Length == 0 || (!Quoted && Value is "~" or "null" or "Null" or "NULL");

    /// <summary>The place of a part of the text; the whole scalar where it does not stand there character by character.</summary>
    public TextSpan Part(int offset, int length)
    {
        if (VerbatimAt < 0)
        {
            return Span;
        }

        int start = VerbatimAt + Math.Min(offset, Value.Length);
        return new TextSpan(start, start + Math.Max(1, length));
    }
}

/// <summary>A list.</summary>
internal sealed class ListNode : Node
{
    /// <summary>Its items.</summary>
    public List<Node> Items { get; } = [];

    /// <summary>False where reading stopped inside it.</summary>
    public bool Whole { get; set; } = true;
}

/// <summary>Keys and values; no key stands twice.</summary>
internal sealed class MapNode : Node
{
    /// <summary>Its entries, in the order of the file.</summary>
    public List<(ScalarNode Key, Node Value)> Entries { get; } = [];

    /// <summary>False where reading stopped inside it.</summary>
    public bool Whole { get; set; } = true;

    /// <summary>The entry of a key, or null.</summary>
    public (ScalarNode Key, Node Value)? Find(string key)
    {
        foreach ((ScalarNode Key, Node Value) entry in Entries)
        {
            if (entry.Key.Value == key)
            {
                return entry;
            }
        }

        return null;
    }
}
