using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Threads;

namespace TieRodCalc.Cli.Dialog;

/// <summary>The parts among the answers: which there are, which a rod takes, and what goes into what.</summary>
internal static class PartAnswers
{
    /// <summary>The answer that asks for the measurements of a part.</summary>
    public const string New = "new";

    /// <summary>The answer for no part.</summary>
    public const string None = "none";

    /// <summary>The question which part a rod takes.</summary>
    public const string Use = "use";

    /// <summary>The scopes of the parts of a rod, each with the list of the file that it belongs into.</summary>
    public static IReadOnlyDictionary<string, string> Lists { get; } = new Dictionary<string, string>
    {
        ["inner"] = "inner_ends",
        ["sleeve"] = "sleeves",
        ["outer"] = "outer_ends",
        ["inner_nut"] = "jam_nuts",
        ["outer_nut"] = "jam_nuts",
    };

    /// <summary>The parts of the same list that were measured before this one, in the order in which they were asked for.</summary>
    public static IEnumerable<Scope> Alike(Scope part)
    {
        string list = Lists[part.Kind];
        return part.Answers.ScopesWith("id", before: part).Where(other => Lists.GetValueOrDefault(other.Kind) == list);
    }

    /// <summary>Where the measurements of the part are that this rod takes here; null where it takes none.</summary>
    public static Scope? Definition(Scope part) => part[Use] switch
    {
        null or New => part,
        None => null,
        { } id => Alike(part).First(other => other["id"] == id),
    };

    /// <summary>Whether the measurements of the part are asked for.</summary>
    public static bool IsNew(Scope part) => part[Use] is null or New;

    /// <summary>Whether the rod has no sleeve.</summary>
    public static bool HasSocket(Scope part) => part.Rod.Of("sleeve")[Use] == None;

    /// <summary>The thread that a part has or must fit, as it was answered; null where that is not known.</summary>
    public static string? Mate(Scope part) => part.Kind switch
    {
        "sleeve" or "inner_nut" => Thread(part.Rod.Of("inner"), "thread"),
        "outer" when HasSocket(part) => Thread(part.Rod.Of("inner"), "thread"),
        "outer" => Thread(part.Rod.Of("sleeve"), "outer.thread"),
        "outer_nut" => Thread(part.Rod.Of("outer"), "thread"),
        _ => null,
    };

    /// <summary>Whether this part, already measured, fits its mate in the rod of another one.</summary>
    public static bool Fits(Scope candidate, Scope part)
    {
        string key = part.Kind == "sleeve" ? "inner.thread" : part.Kind == "outer" && HasSocket(part) ? "socket.thread" : "thread";
        return candidate[key] is { } thread && (Mate(part) is not { } mate || Mismatch(mate, thread) is null);
    }

    /// <summary>Why two threads do not go together, or null where they do or one cannot be read.</summary>
    public static string? Mismatch(string one, string other) =>
        ThreadText.Parse(one) is { Fault: null } first && ThreadText.Parse(other) is { Fault: null } second
            && Rod.Difference(first.Value, second.Value) is var difference && difference != ThreadDifference.None
                ? $"{Bare(other)} and {Bare(one)}: {FitSentences.OfDifference(difference)} {FitSentences.NeverForce}"
                : null;

    /// <summary>A thread without its class, which belongs to one gender alone.</summary>
    public static string Bare(string thread) => ThreadText.Parse(thread) is { Fault: null } read
        ? ThreadText.Format(read.Value with { ToleranceClass = null })
        : thread;

    /// <summary>An id for a part by its kind and thread that no part of its list has yet.</summary>
    public static string NewId(string kind, string? thread, Scope part)
    {
        string id = $"{kind}-{Slug.Of(Bare(thread ?? string.Empty), '.')}".TrimEnd('-');
        HashSet<string?> taken = [.. Alike(part).Select(other => other["id"])];
        string free = id;
        for (int count = 2; taken.Contains(free); count++)
        {
            free = $"{id}-{count}";
        }

        return free;
    }

    private static string? Thread(Scope part, string key) => Definition(part) is { } definition ? definition[key] : null;
}
