using static TieRodCalc.Cli.Dialog.PartAnswers;

namespace TieRodCalc.Cli.Dialog;

/// <summary>The questions about the sleeve and the jam nuts.</summary>
internal static class SleeveQuestions
{
    /// <summary>The questions about the sleeve; without one the inner end screws straight into the outer end's socket.</summary>
    public static Question[] All { get; } =
    [
        PartQuestions.Use("sleeve", mayBeNone: true) with
        {
            How = "One piece with a thread in each end is a sleeve. None: the inner end screws straight into the socket of the outer end.",
        },
        .. PartQuestions.ForNew(
        [
            new("length", "length of the sleeve")
            {
                What = "From face to face.",
                Drawing = Drawings.OfSleeve(Drawings.InnerFace, Drawings.OuterFace, "length"),
            },
            .. HoleQuestions.Of(
                "inner", "inner side", _ => true, Drawings.OfSleeve, (Drawings.InnerFace, Drawings.InnerDepth)),
            .. HoleQuestions.Of(
                "outer", "outer side", _ => false, Drawings.OfSleeve, (Drawings.OuterDepth, Drawings.OuterFace)),
            new("outside", "outside")
            {
                What = "Its outside: hex and the width across flats, or round and the diameter, as hex 1 in or round 25 mm.",
                LeftOut = "not known, flats are not counted",
            },
            .. PartQuestions.Names("sleeve", scope => NewId("sl", scope["inner.thread"], scope)),
        ]),
    ];

    /// <summary>The questions about a jam nut.</summary>
    public static Question[] Nut { get; } =
    [
        PartQuestions.Use("jam nut", mayBeNone: true) with
        {
            How = "A joint without nut and clamp is not locked; locking one end only leaves the other free to work.",
            Default = UsualNut,
        },
        .. PartQuestions.ForNew(
        [
            new("thread", "thread of the nut")
            {
                What = "Its thread. It must run onto the end by hand.",
                Default = scope => Mate(scope) is { } mate ? Bare(mate) : null,
                Refuse = (scope, answer) => Mate(scope) is { } mate ? Mismatch(mate, answer) : null,
            },
            new("thickness", "thickness of the nut")
            {
                What = "How thick it is along the thread, washers and tab locks counted in.",
                Drawing = Drawings.Nut,
            },
            .. PartQuestions.Names("jam nut", scope => NewId("jn", scope["thread"], scope), material: false),
        ]),
    ];

    /// <summary>A nut that was measured for this side before; none where a clamp locks the joint; else a new one.</summary>
    private static string? UsualNut(Scope nut)
    {
        string side = nut.Kind == "inner_nut" ? "inner" : "outer";
        bool clamped = Definition(nut.Rod.Of("sleeve")) is { } sleeve
            ? sleeve[$"{side}.clamp"] is not null
            : Definition(nut.Rod.Of("outer"))?["socket.clamp"] is not null;
        return clamped ? None
            : Alike(nut).LastOrDefault(other => other.Kind == nut.Kind && Fits(other, nut)) is { Answers: not null } earlier ? earlier["id"]
            : New;
    }
}
