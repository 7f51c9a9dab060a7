using TieRodCalc.Parts;
using TieRodCalc.Threads;
using TieRodCalc.Yaml.Sources;
using TieRodCalc.Yaml.Tree;

namespace TieRodCalc.Yaml.Binding;

/// <summary>A part by its id and the place where it is defined.</summary>
/// <param name="Part">The part; null where it has problems of its own.</param>
/// <param name="File">The file.</param>
/// <param name="Span">The place of its id.</param>
internal sealed record Definition<T>(T? Part, LoadedFile File, TextSpan Span)
    where T : class;

/// <summary>An outer end of either sort.</summary>
/// <param name="Threaded">With an external thread, or null.</param>
/// <param name="Socket">With an internal thread, or null.</param>
internal sealed record OuterEnd(ThreadedEnd? Threaded, SocketEnd? Socket)
{
    /// <summary>Its thread.</summary>
    public ThreadDesignation Thread => Threaded?.Thread ?? Socket!.Socket.Thread;
}

/// <summary>What the tables of parts of different kinds have in common.</summary>
internal interface IPartTable
{
    /// <summary>The kind of part with its article: <c>an inner end</c>.</summary>
    string Kind { get; }

    /// <summary>Whether there is a part by an id.</summary>
    bool Has(string id);
}

/// <summary>All parts of one kind.</summary>
/// <param name="kind">The kind with its article: <c>an inner end</c>.</param>
internal sealed class PartTable<T>(string kind) : IPartTable
    where T : class
{
    private readonly Dictionary<string, Definition<T>> _byId = new(StringComparer.Ordinal);
    private readonly Dictionary<T, string> _ids = new(ReferenceEqualityComparer.Instance);

    /// <inheritdoc/>
    public string Kind => kind;

    /// <summary>The sound ones, in the order of the files.</summary>
    public List<T> Parts { get; } = [];

    /// <summary>The id of a part of this table.</summary>
    public string IdOf(T part) => _ids[part];

    /// <summary>All ids.</summary>
    public IEnumerable<string> Ids => _byId.Keys;

    /// <inheritdoc/>
    public bool Has(string id) => _byId.ContainsKey(id);

    /// <summary>The part by an id, or null.</summary>
    public Definition<T>? Find(string id) => _byId.GetValueOrDefault(id);

    /// <summary>Adds a part, or reports that its id is taken.</summary>
    /// <param name="id">Where its id stands, or null where it has none.</param>
    /// <param name="part">The part; null where it has problems.</param>
    /// <param name="file">Its file.</param>
    public void Add(ScalarNode? id, T? part, LoadedFile file)
    {
        if (id is null)
        {
            return;
        }

        if (!_byId.TryAdd(id.Value, new Definition<T>(part, file, id.Span)))
        {
            Definition<T> first = _byId[id.Value];
            string place = string.Create(Wording.Invariant, $"{first.File.Source.Name}:{first.File.Source.LineOf(first.Span.Start)}");
            file.Findings.Problem(id.Span, $"there is {kind} {Wording.Shown(id.Value)} already, at {place}");
            return;
        }

        if (part is not null)
        {
            Parts.Add(part);
            _ids.Add(part, id.Value);
        }
    }
}
