using static TieRodCalc.Cli.Dialog.PartAnswers;

namespace TieRodCalc.Cli.Dialog;

/// <summary>The questions that parts of every kind have in common.</summary>
internal static class PartQuestions
{
    private static readonly IReadOnlyList<string> Kinds = ["steel", "aluminum", "other"];

    /// <summary>Which part a rod takes: one that was measured before, a new one, or none.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="mayBeNone">Whether a rod may do without.</param>
    public static Question Use(string name, bool mayBeNone) => new(PartAnswers.Use, $"which {name}")
    {
        What = $"{Capital(name)}: 'new' asks for its measurements{(mayBeNone ? ", 'none' leaves it out" : string.Empty)}; the id of a part "
            + "takes that one again.",
        Words = scope => [.. Earlier(scope), New, .. mayBeNone ? [None] : Array.Empty<string>()],
        Default = scope => Earlier(scope).LastOrDefault(id => Alike(scope).Any(part => part["id"] == id && part.Kind == scope.Kind)) ?? New,
        When = scope => mayBeNone || Earlier(scope).Length > 0,
        Refuse = (scope, answer) => answer is New || (mayBeNone && answer is None) || Earlier(scope).Contains(answer)
            ? null
            : $"there is no {name} {answer} that fits",
        IsWritten = false,
    };

    /// <summary>Questions that are asked only where the part is a new one.</summary>
    public static Question[] ForNew(Question[] questions) => Only(questions, IsNew);

    /// <summary>Questions that are asked only where something holds beside their own condition.</summary>
    public static Question[] Only(Question[] questions, Func<Scope, bool> condition) =>
        [.. questions.Select(question => question with { When = scope => condition(scope) && question.When(scope) })];

    /// <summary>What a part is called, and what it is made of.</summary>
    /// <param name="name">What such a part is called.</param>
    /// <param name="id">The id that an empty line takes.</param>
    /// <param name="material">Whether its material is asked for.</param>
    public static Question[] Names(string name, Func<Scope, string> id, bool material = true) =>
    [
        new("id", "short name")
        {
            What = $"A short name by which rods ask for this {name}: letters, digits, points, '_' and '-'.",
            Default = id,
        },
        new("name", "name")
        {
            What = "Its name in words, for the printed plan.",
            LeftOut = "none",
        },
        .. material ? Material : [],
    ];

    private static Question[] Material { get; } =
    [
        new("material", "material")
        {
            What = "A short name for what it is made of, such as st-850; the same name again means the same material.",
            LeftOut = "not known, strength is not checked",
        },
        new("material_kind", "kind of material")
        {
            What = "What sort of material that is: threads in aluminum ask for 2 diameters of engagement.",
            Words = _ => Kinds,
            When = IsNewMaterial,
        },
        new("material_tensile", "tensile strength")
        {
            What = "Its tensile strength, as 850 MPa or 120 ksi, from the maker's paper.",
            How = "A guess is worth nothing here. Leave it out where there is no paper.",
            LeftOut = "not known, strength is not checked",
            When = IsNewMaterial,
        },
    ];

    private static bool IsNewMaterial(Scope part) => part["material"] is { } material
        && part.Answers.ScopesWith("material").First(other => other["material"] == material) == part;

    private static string[] Earlier(Scope scope) => [.. Alike(scope).Where(part => Fits(part, scope)).Select(part => part["id"]!)];

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];
}
