namespace TieRodCalc.Cli.Dialog;

/// <summary>The questions about what the rods work on.</summary>
internal static class SteeringQuestions
{
    private static readonly IReadOnlyList<string> Layouts = ["rod per side", "one rod between wheels"];
    private static readonly IReadOnlyList<string> Places = ["behind axle", "ahead of axle"];

    /// <summary>All of them; the first one decides whether the others are asked.</summary>
    public static Question[] All { get; } =
    [
        Question.YesOrNo(
            "asked",
            "steering",
            "Whether to say what the rods work on, so that toe per turn is computed; no leaves the steering out.",
            "yes"),
        .. PartQuestions.Only(
            [
                new("layout", "layout")
                {
                    What = "Whether each wheel has a rod of its own, or one rod joins both wheels.",
                    Words = _ => Layouts,
                    Default = _ => "rod per side",
                },
                new("arm", "steering arm")
                {
                    What = "The steering arm: square from the steer axis to the center of the outer joint. Both sides alike.",
                    Drawing = Drawings.Arm,
                    More = "The steer axis runs through the two ball joints of the upright, or along the king pin. Arms that differ from "
                        + "side to side can be written into the file afterwards.",
                },
                new("joint", "place of the joint")
                {
                    What = "Where the outer joint lies.",
                    Words = _ => Places,
                    More = "Behind the axle a longer rod gives toe-in, ahead of it toe-out.",
                },
                new("rod_angle", "rod angle")
                {
                    What = "How much the angle between arm and rod, seen from above, is over 90 degrees; negative where it is under.",
                    How = "Hold a square against the arm, and measure how far the rod is off it.",
                    Drawing = Drawings.Arm,
                    LeftOut = "0 deg, arm and rod are square",
                },
                new("plates", "width of the toe plates")
                {
                    What = "The width of the toe plates, or of what toe as a length is measured across.",
                    Drawing = Drawings.Plates,
                    LeftOut = "no toe is shown as a length",
                },
                new("toe.now", "measured toe")
                {
                    What = "The toe of both wheels together, measured with the rods as they are now, as 1/8 in out or 0.25 deg in.",
                    Drawing = Drawings.Plates,
                    LeftOut = "not measured yet, 'toe' then counts no turns",
                },
                new("toe.want", "wanted toe")
                {
                    What = "The toe that both wheels together shall have.",
                    When = scope => scope["toe.now"] is not null,
                },
            ],
            scope => scope["asked"] == "yes"),
    ];
}
