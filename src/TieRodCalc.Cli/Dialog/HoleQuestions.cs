using static TieRodCalc.Cli.Dialog.PartAnswers;

namespace TieRodCalc.Cli.Dialog;

/// <summary>The questions about a threaded hole: an end of a sleeve, or a socket.</summary>
internal static class HoleQuestions
{
    private static readonly IReadOnlyList<string> Bores = ["closed", "open"];

    /// <summary>The questions.</summary>
    /// <param name="key">The key of the hole in its part.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="hasMate">Whether the end that goes in is known already.</param>
    /// <param name="drawing">Draws the part with a dimension.</param>
    /// <param name="depth">The columns of the thread in that drawing.</param>
    public static Question[] Of(
        string key, string name, Func<Scope, bool> hasMate, Func<int, int, string, string> drawing, (int From, int To) depth) =>
    [
        new($"{key}.thread", $"thread of the {name}")
        {
            What = "The thread inside: diameter, pitch and hand.",
            How = "The end that belongs in must run in by hand, all the way, without play. Never force two threads together.",
            Drawing = Drawings.Hand,
            More = "Class and series may be said too: 5/8-18 UNF-2B LH, M18x1.5-6H LH.",
            Default = scope => hasMate(scope) && Mate(scope) is { } mate ? Bare(mate) : null,
            Refuse = (scope, answer) => hasMate(scope) && Mate(scope) is { } mate ? Mismatch(mate, answer) : null,
        },
        new($"{key}.depth", $"thread depth of the {name}")
        {
            What = "How deep the full thread is from the face.",
            How = "A drilled depth is not thread depth: run a known good male with a square end in until it stops, and measure what went "
                + "in.",
            Drawing = drawing(depth.From, depth.To, "depth"),
        },
        new($"{key}.bore", $"bore of the {name}")
        {
            What = "Whether the bore ends at the thread, so that a tip may not pass it, or goes on clear.",
            Drawing = Drawings.Bore,
            Words = _ => Bores,
            Default = _ => "closed",
            More = "Open means that nothing is in the tip's way up to the other end's thread.",
        },
        new($"{key}.countersink", $"countersink of the {name}")
        {
            What = "How far the countersink at the face reaches in, where no thread is full.",
            Drawing = Drawings.Countersink,
            LeftOut = "taken as half a pitch",
        },
        new($"{key}.witness", $"witness hole of the {name}")
        {
            What = "From the face to the far edge of the witness hole, where it has one.",
            How = "Covered by thread it proves engagement.",
            Drawing = Drawings.Witness,
            LeftOut = "there is none",
        },
        new($"{key}.clamp", $"clamp of the {name}")
        {
            What = "From the face to the inner edge of the clamp, where one locks the thread.",
            Drawing = Drawings.Clamp,
            LeftOut = "there is none; a jam nut is to lock it",
        },
    ];
}
