namespace TieRodCalc.Cli.Dialog;

/// <summary>What was answered so far, in the order of the questions.</summary>
internal sealed class Answers
{
    private readonly List<(string Key, string Value)> _given = [];
    private readonly Dictionary<string, string> _typed = new(StringComparer.Ordinal);

    /// <summary>How many there are.</summary>
    public int Count => _given.Count;

    /// <summary>The keys of all of them, those of left out ones included.</summary>
    public IEnumerable<string> Keys => _given.Select(answer => answer.Key);

    /// <summary>An answer; null where it was not asked for or left out.</summary>
    public string? this[string key] => _given.Find(answer => answer.Key == key).Value is { Length: > 0 } value ? value : null;

    /// <summary>Whether a question was answered, be it by leaving it out.</summary>
    public bool Has(string key) => _given.Exists(answer => answer.Key == key);

    /// <summary>What was typed at a question before somebody went back; empty where it was left out, null where nothing was.</summary>
    public string? Before(string key) => _typed.GetValueOrDefault(key);

    /// <summary>Takes an answer.</summary>
    /// <param name="key">The question.</param>
    /// <param name="value">The answer; empty where it is left out.</param>
    public void Give(string key, string value) => _given.Add((key, value));

    /// <summary>Remembers what was typed, for who comes back.</summary>
    public void Remember(string key, string value) => _typed[key] = value;

    /// <summary>Takes the last answer back.</summary>
    public void DropLast() => _given.RemoveAt(_given.Count - 1);

    /// <summary>The scopes in which a key has a value, in order.</summary>
    /// <param name="key">The key.</param>
    /// <param name="before">Only those that were answered before this scope was begun.</param>
    public IEnumerable<Scope> ScopesWith(string key, Scope? before = null) =>
        _given.TakeWhile(answer => before is not { } end || !answer.Key.StartsWith($"{end.Name}.", StringComparison.Ordinal))
            .Where(answer => answer.Value.Length > 0 && answer.Key.EndsWith($".{key}", StringComparison.Ordinal))
            .Select(answer => new Scope(this, answer.Key[..^(key.Length + 1)]));
}

/// <summary>The answers that belong together: those about one part, one rod, the steering.</summary>
/// <param name="Answers">All answers.</param>
/// <param name="Name">The name before their keys.</param>
internal readonly record struct Scope(Answers Answers, string Name)
{
    /// <summary>An answer; null where it was not asked for or left out.</summary>
    public string? this[string key] => Answers[$"{Name}.{key}"];

    /// <summary>Whether anything in this scope was answered.</summary>
    public bool IsBegun
    {
        get
        {
            string start = $"{Name}.";
            return Answers.Keys.Any(key => key.StartsWith(start, StringComparison.Ordinal));
        }
    }

    /// <summary>What kind of part it is about: the last word of its name.</summary>
    public string Kind => Name[(Name.LastIndexOf('.') + 1)..];

    /// <summary>The rod that it belongs to.</summary>
    public Scope Rod => new(Answers, Name.Split('.')[0]);

    /// <summary>A part of this rod, or a scope of the job.</summary>
    public Scope Of(string name) => new(Answers, $"{Name}.{name}");

    /// <summary>Another scope of the job.</summary>
    public Scope At(string name) => new(Answers, name);
}
