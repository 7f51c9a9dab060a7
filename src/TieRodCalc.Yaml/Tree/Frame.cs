using TieRodCalc.Yaml.Sources;

namespace TieRodCalc.Yaml.Tree;

/// <summary>A list or map that is being read.</summary>
internal sealed class Frame(Node container, bool flow)
{
    /// <summary>From how many keys on a dictionary is worth its making.</summary>
    private const int FewKeys = 16;

    private Dictionary<string, ScalarNode>? _keys;

    /// <summary>The list or map.</summary>
    public Node Container => container;

    /// <summary>Whether it is written in brackets.</summary>
    public bool Flow => flow;

    /// <summary>Where it begins.</summary>
    public int Start { get; } = container.Span.Start;

    /// <summary>True in a map, where the next node is a key.</summary>
    public bool KeyNext { get; set; } = container is MapNode;

    /// <summary>The key whose value comes next; null where the entry is refused.</summary>
    public ScalarNode? Key { get; set; }

    /// <summary>The first key of a map by that name, or null.</summary>
    public ScalarNode? Earlier(ScalarNode key)
    {
        MapNode map = (MapNode)container;
        if (map.Entries.Count < FewKeys)
        {
            return map.Find(key.Value)?.Key;
        }

        if (_keys is null)
        {
            _keys = new Dictionary<string, ScalarNode>(StringComparer.Ordinal);
            foreach ((ScalarNode Key, Node Value) entry in map.Entries)
            {
                _keys.TryAdd(entry.Key.Value, entry.Key);
            }
        }

        return _keys.TryAdd(key.Value, key) ? null : _keys[key.Value];
    }
}
