using TieRodCalc.Text;
using TieRodCalc.Yaml.Sources;
using TieRodCalc.Yaml.Tree;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Reads the keys of one map and reports those that are unknown, missing or of the wrong kind.</summary>
internal sealed class MapReader
{
    private readonly MapNode _map;
    private readonly string _kind;
    private readonly MapReader? _parent;
    private List<string>? _likelyMeant;
    private string? _title;

    private MapReader(MapNode map, string kind, LoadedFile file, MapReader? parent) =>
        (_map, _kind, File, _parent) = (map, kind, file, parent);

    /// <summary>The file.</summary>
    public LoadedFile File { get; }

    /// <summary>What was found in the file.</summary>
    public Findings Findings => File.Findings;

    /// <summary>What to mark where the map as a whole is meant.</summary>
    public TextSpan Span => _map.Span;

    /// <summary>What the map describes: <c>sleeve sl-8</c>, <c>'inner' of sleeve sl-8</c>.</summary>
    public string Title => _title ??= FindTitle();

    /// <summary>Opens a map whose keys are read by their names, and reports every key that is none of them.</summary>
    /// <param name="map">The map.</param>
    /// <param name="kind">What it describes: <c>sleeve</c>, <c>the job</c>; below a parent the key that it is the value of.</param>
    /// <param name="keys">The keys that it may have.</param>
    /// <param name="file">The file.</param>
    /// <param name="parent">The map that it is part of, where it has no name of its own.</param>
    public static MapReader Open(MapNode map, string kind, string[] keys, LoadedFile file, MapReader? parent = null)
    {
        MapReader reader = new(map, kind, file, parent);
        foreach ((ScalarNode key, _) in map.Entries)
        {
            if (Array.IndexOf(keys, key.Value) < 0)
            {
                reader.Unknown(key, keys);
            }
        }

        return reader;
    }

    /// <summary>Opens an item of a list, or reports that it is no map.</summary>
    public static MapReader? OpenItem(Node item, string kind, string[] keys, LoadedFile file, MapReader? parent = null)
    {
        if (item is MapNode map)
        {
            return Open(map, kind, keys, file, parent);
        }

        string wrong = item is ScalarNode { IsEmpty: true } ? "has no value" : $"must be keys and values, not {KindOf(item)}";
        ReportKind(file, item, item.Span, $"this item of the list {wrong}");
        return null;
    }

    /// <summary>The key and value, or null where the key is not there; a value that was refused counts as not there.</summary>
    public (ScalarNode Key, Node Value)? Find(string key) =>
        _map.Find(key) is { } entry && entry.Value is not RefusedNode ? entry : null;

    /// <summary>Whether the key is there, whatever its value.</summary>
    public bool Has(string key) => _map.Find(key) is not null;

    /// <summary>The key and value; where the key is not there, that is reported.</summary>
    public (ScalarNode Key, Node Value)? Need(string key)
    {
        if (_map.Find(key) is null && _map.Whole && _likelyMeant?.Contains(key) != true)
        {
            Findings.Problem(Span, $"'{key}' is missing in {Title}");
        }

        return Find(key);
    }

    /// <summary>What to mark where a key's value is meant; the map where there is no such key.</summary>
    public TextSpan SpanOf(string key) => Find(key) is { } entry
        ? entry.Value is ScalarNode { IsEmpty: true } ? entry.Key.Span : entry.Value.Span
        : Span;

    /// <summary>The text of a key, or null where there is none.</summary>
    public ScalarNode? Text(string key, bool needed = false)
    {
        if ((needed ? Need(key) : Find(key)) is not { } entry)
        {
            return null;
        }

        if (entry.Value is ScalarNode { IsEmpty: false } text)
        {
            return text;
        }

        WrongKind(entry, "a single value");
        return null;
    }

    /// <summary>The map of a key, or null where there is none.</summary>
    public MapReader? Map(string key, string[] keys, bool needed = false)
    {
        if ((needed ? Need(key) : Find(key)) is not { } entry)
        {
            return null;
        }

        if (entry.Value is MapNode map)
        {
            return Open(map, key, keys, File, this);
        }

        WrongKind(entry, "keys and values");
        return null;
    }

    /// <summary>The list of a key, or null where there is none.</summary>
    public ListNode? List(string key, bool needed = false)
    {
        if ((needed ? Need(key) : Find(key)) is not { } entry)
        {
            return null;
        }

        if (entry.Value is ListNode list)
        {
            return list;
        }

        WrongKind(entry, "a list");
        return null;
    }

    /// <summary>Reports a value that is empty or of the wrong kind.</summary>
    public void WrongKind((ScalarNode Key, Node Value) entry, string wanted)
    {
        string key = Wording.Quote(entry.Key.Value);
        if (entry.Value is ScalarNode { IsEmpty: true })
        {
            Findings.Problem(entry.Key.Span, $"{key} has no value");
        }
        else
        {
            ReportKind(File, entry.Value, entry.Value.Span, $"{key} must be {wanted}, not {KindOf(entry.Value)}");
        }
    }

    private string FindTitle()
    {
        if (_parent is not null)
        {
            return $"'{_kind}' of {_parent.Title}";
        }

        if (_kind.StartsWith("the ", StringComparison.Ordinal))
        {
            return _kind;
        }

        return (_map.Find("id") ?? _map.Find("name"))?.Value is ScalarNode { IsEmpty: false } id
            ? $"{_kind} {Wording.Shown(id.Value)}"
            : $"this {_kind}";
    }

    private static string KindOf(Node node) => node switch
    {
        MapNode => "keys and values",
        ListNode => "a list",
        _ => "a single value",
    };

    private static void ReportKind(LoadedFile file, Node node, TextSpan span, string message)
    {
        if (node is not RefusedNode)
        {
            file.Findings.Problem(span, message);
        }
    }

    private void Unknown(ScalarNode key, string[] keys)
    {
        string? nearest = Nearest.Of(key.Value, keys);
        if (nearest is not null)
        {
            // One slip of the pen is one problem: the key that was meant is not called missing as well.
            (_likelyMeant ??= []).Add(nearest);
        }

        Findings.Problem(
            key.Span,
            ReferenceEquals(keys, Keys.PartFile) && Keys.IsOfJob(key.Value)
                ? $"{Wording.Quote(key.Value)} belongs in a job; without 'job' or 'rods' this file is a part file"
                : $"{Title} has no key {Wording.Quote(key.Value)}",
            nearest);
    }
}
