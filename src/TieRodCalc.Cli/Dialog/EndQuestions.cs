using static TieRodCalc.Cli.Dialog.PartAnswers;

namespace TieRodCalc.Cli.Dialog;

/// <summary>The questions about an inner or outer end.</summary>
internal static class EndQuestions
{
    private static readonly IReadOnlyList<string> Joints = ["tapered stud", "rod end"];

    private static readonly Question Joint = new("joint", "joint")
    {
        What = "How the ball is held: by a tapered stud that goes in one way, or as a rod end (heim joint) with a bolt through it.",
        How = "A straight rod end may be turned by half turns before its bolt goes in, which the plan uses.",
        Words = _ => Joints,
        LeftOut = "not known, taken as one that cannot be turned",
    };

    private static readonly Question Thread = new("thread", "thread")
    {
        What = "Its thread: diameter, pitch and hand, as 5/8-18 LH or M18x1.5; RH is right-hand and need not be said.",
        How = "Diameter with the caliper over the crests. Pitch with a thread gauge, or count the crests over 1 in (or measure over ten of "
            + "them). Hand: the thread held upright, a left-hand one rises to the left.",
        Drawing = Drawings.Hand,
        More = "Class and series may be said too: 5/8-18 UNF-2A LH, M18x1.5-6g LH. M16x1.5 looks like 5/8-18 and is not; 'tierodcalc "
            + "thread M16x1.5' lists what a thread can be taken for.",
        Default = scope => Mate(scope) is { } mate ? Bare(mate) : null,
        Refuse = (scope, answer) => Mate(scope) is { } mate ? Mismatch(mate, answer) : null,
    };

    private static readonly Question[] Measured =
    [
        Thread,
        new("center_to_tip", "ball center to tip")
        {
            What = "From the ball center to the tip of the thread.",
            How = "On a bent end measure along the thread axis. Where only the straight line from ball center to tip can be had: its "
                + "square less the square of the offset is the square of the length along the axis.",
            Drawing = Drawings.OfEnd(Drawings.Ball, Drawings.Tip, "center to tip"),
            More = "The ball center lies half the ball's diameter in from its edge: measure to the edge, and take that off. A tolerance "
                + "stands behind: 212 mm +/- 0.5 mm, 9 in +/- 1/64 in.",
        },
        new("thread_length", "length of thread")
        {
            What = "How much full thread it has from the tip, the lead chamfer counted in.",
            How = "Run a nut on until it stops by hand, and measure from the tip to its far face.",
            Drawing = Drawings.OfEnd(Drawings.Thread, Drawings.Tip, "thread"),
        },
        new("lead", "lead chamfer")
        {
            What = "How much of the thread at the tip is not full: the lead chamfer.",
            Drawing = Drawings.OfEnd(Drawings.Tip - 4, Drawings.Tip, "lead"),
            LeftOut = "taken as one pitch",
        },
        new("offset", "offset of a bent end")
        {
            What = "How far the ball center lies beside the thread axis, where the end is bent.",
            How = "Lay the thread in vee blocks. Measure the height of the ball center and of the thread axis over the table.",
            Drawing = Drawings.Offset,
            LeftOut = "straight",
        },
        new("max_cut", "how much may be cut off")
        {
            What = "The most that may be sawn off the tip.",
            How = "What must stay is thread enough for the nut and the engagement; the plan counts that. Here counts what the part itself "
                + "forbids, such as a bore or its maker's word.",
            Drawing = Drawings.OfEnd(Drawings.Tip - 9, Drawings.Tip, "cut"),
            LeftOut = "it must not be cut",
        },
        new("rethread", "room for a die")
        {
            What = "How much further up the shank a die could cut thread.",
            How = "A die finds metal only where the shank is at least the least major diameter; rolled threads leave a thinner shank.",
            Drawing = Drawings.OfEnd(Drawings.Thread - 9, Drawings.Thread, "die"),
            LeftOut = "none",
        },
        Joint,
    ];

    private static readonly Question[] Sockets =
    [
        new("center_to_face", "ball center to face")
        {
            What = "From the ball center to the face where the thread begins.",
            Drawing = Drawings.OfSocket(Drawings.Ball, Drawings.SocketFace, "center to face"),
        },
        .. HoleQuestions.Of("socket", "socket", _ => true, Drawings.OfSocket, (Drawings.SocketDepth, Drawings.SocketFace)),
        Joint,
    ];

    /// <summary>The questions about an inner end.</summary>
    public static Question[] Inner { get; } =
    [
        PartQuestions.Use("inner end", mayBeNone: false),
        .. PartQuestions.ForNew(Measured),
        .. PartQuestions.ForNew(PartQuestions.Names("inner end", scope => NewId("in", scope["thread"], scope))),
    ];

    /// <summary>The questions about an outer end, with a thread or with a socket.</summary>
    public static Question[] Outer { get; } =
    [
        PartQuestions.Use("outer end", mayBeNone: false),
        .. PartQuestions.ForNew(PartQuestions.Only(Measured, scope => !HasSocket(scope))),
        .. PartQuestions.ForNew(PartQuestions.Only(Sockets, HasSocket)),
        .. PartQuestions.ForNew(PartQuestions.Names(
            "outer end", scope => NewId("out", scope["thread"] ?? scope["socket.thread"], scope))),
    ];
}
