namespace TieRodCalc.Cli.Dialog;

/// <summary>One question: what is asked, how it is measured, what is taken where nothing is answered.</summary>
/// <param name="Key">Its key among those of its scope; where it is written, the key of the file, a point between nested ones.</param>
/// <param name="Title">What is asked for, in a few words.</param>
internal sealed record Question(string Key, string Title)
{
    /// <summary>What it is, in one sentence.</summary>
    public required string What { get; init; }

    /// <summary>How it is measured, in a sentence or two, or null.</summary>
    public string? How { get; init; }

    /// <summary>A small drawing with the dimension marked, or null.</summary>
    public string? Drawing { get; init; }

    /// <summary>What <c>?</c> says beyond that, or null.</summary>
    public string? More { get; init; }

    /// <summary>What it means that it is left out; null where an answer is needed.</summary>
    public string? LeftOut { get; init; }

    /// <summary>The words to choose from; null where it is free.</summary>
    public Func<Scope, IReadOnlyList<string>>? Words { get; init; }

    /// <summary>What an empty line takes, or null.</summary>
    public Func<Scope, string?>? Default { get; init; }

    /// <summary>Whether it is asked.</summary>
    public Func<Scope, bool> When { get; init; } = _ => true;

    /// <summary>What is wrong with an answer beyond what the reader of the files says, or null.</summary>
    public Func<Scope, string, string?> Refuse { get; init; } = (_, _) => null;

    /// <summary>Whether the answer is written under this key; otherwise the dialog goes by it.</summary>
    public bool IsWritten { get; init; } = true;

    /// <summary>A question with two answers that decides what is asked next.</summary>
    public static Question YesOrNo(string key, string title, string what, string usual) => new(key, title)
    {
        What = what,
        Words = _ => ["yes", "no"],
        Default = _ => usual,
        Refuse = (_, answer) => answer is "yes" or "no" ? null : "the answer is yes or no",
        IsWritten = false,
    };
}

/// <summary>A question at its place in the dialog.</summary>
/// <param name="Question">The question.</param>
/// <param name="Scope">The answers around it.</param>
/// <param name="Heading">What the group of questions is about.</param>
internal sealed record Asked(Question Question, Scope Scope, string Heading)
{
    /// <summary>The key of its answer.</summary>
    public string Key => $"{Scope.Name}.{Question.Key}";

    /// <summary>The question in a message: <c>inner end: center to tip</c>.</summary>
    public string Shown => $"{Heading}: {Question.Title}";
}
