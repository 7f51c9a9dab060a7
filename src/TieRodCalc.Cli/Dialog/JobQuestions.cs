using static TieRodCalc.Cli.Dialog.PartAnswers;

namespace TieRodCalc.Cli.Dialog;

/// <summary>The questions about the job, its rods and its rules.</summary>
internal static class JobQuestions
{
    private static readonly IReadOnlyList<string> Units = ["in", "mm"];
    private static readonly IReadOnlyList<string> Sides = ["left", "right"];

    /// <summary>What the job is called, and in what it is shown.</summary>
    public static Question[] Start { get; } =
    [
        new("job", "name of the job")
        {
            What = "What the job is called: the car, what is being made.",
        },
        new("units", "units")
        {
            What = "The unit that results are shown in first. Answers may be in either one, each says its own.",
            Words = _ => Units,
            Default = _ => "in",
        },
    ];

    /// <summary>What a rod is called.</summary>
    public static Question[] Rod { get; } =
    [
        new("name", "name of the rod")
        {
            What = "What the rod is called, such as left.",
            Default = scope => Sides.FirstOrDefault(side => scope.Answers.ScopesWith("adjust.longer").All(rod => rod["name"] != side)),
        },
        new("side", "side of the car")
        {
            What = "The wheel that it turns.",
            Words = _ => Sides,
            Default = scope => scope["name"] is { } name && Sides.Contains(name) ? name : null,
            LeftOut = "not said, toe of a rod per side is not computed",
        },
    ];

    /// <summary>What is wanted of a rod.</summary>
    public static Question[] Wanted { get; } =
    [
        new("length", "wanted length")
        {
            What = "The length that the rod shall have, ball center to ball center.",
            How = "Set the car where it belongs: ride height, steering at its center, both wheels straight. Measure from joint center to "
                + "joint center.",
            Drawing = Drawings.Rod,
            More = "A straight line from center to center, also where an end is bent.",
        },
        new("adjust.shorter", "wanted adjustment, shorter")
        {
            What = "How much shorter than that the sleeve must be able to make it.",
        },
        new("adjust.longer", "wanted adjustment, longer")
        {
            What = "How much longer.",
            Default = scope => scope["adjust.shorter"],
        },
        new("clocking", "clocking")
        {
            What = "Both ends are bent: the angle between their offsets seen along the rod, 0 deg where both point the same way.",
            How = "Hold the rod as it sits in the car and look along it.",
            Drawing = Drawings.Clocking,
            When = scope => IsBent(scope.Of("inner")) && IsBent(scope.Of("outer")),
        },
        Question.YesOrNo("another", "another rod", "Whether the job has another rod; it may take the same parts.", "no"),
    ];

    /// <summary>The rules of the job.</summary>
    public static Question[] Rules { get; } =
    [
        new("engagement", "least engagement")
        {
            What = "The thread engagement that every joint must have, as 1.5 diameters or a length.",
            LeftOut = "1.5 diameters, 2 where the sleeve is aluminum",
        },
        new("tip_gap", "gap between the tips")
        {
            What = "The least distance between the two tips inside the sleeve.",
            LeftOut = "3 mm",
        },
        new("mark", "grid of the cut")
        {
            What = "What a cut is rounded to, so that it can be marked.",
            LeftOut = "1/32 in, or 0.5 mm in a metric job",
        },
        new("allowance", "cutting allowance")
        {
            What = "How much is cut beyond the least that works.",
            LeftOut = "1/16 in, or 1.5 mm in a metric job",
        },
        new("load", "steering load")
        {
            What = "A load along the rod to hold the joints against, as 8 kN or 1800 lbf.",
            LeftOut = "none, the joints are held against no load",
        },
    ];

    private static bool IsBent(Scope end) => Definition(end)?["offset"] is { } offset
        && Text.LengthText.Parse(offset) is { Fault: null } read && read.Value.Nominal.Millimeters > 0;
}
