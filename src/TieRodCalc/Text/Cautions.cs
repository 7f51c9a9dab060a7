namespace TieRodCalc.Text;

/// <summary>The cautions that every plan shows.</summary>
public static class Cautions
{
    /// <summary>The cautions, one sentence or two each.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "Steering that fails can kill. This is arithmetic on the dimensions that were typed in, not an approval.",
        "For competition and off-road use under that body's rules; on a public road local law and a licensed inspector decide.",
        "Measure the real parts. Never weld, heat or straighten a steering part on the strength of this. Replace parts that have "
            + "been bent.",
        "Look at the engagement with your own eyes (witness hole) before driving. Recheck the nuts after the first run.",
    ];

    /// <summary>What no plan of this version covers.</summary>
    public static string NotChecked { get; } =
        "Not checked: yielding, buckling, shock, fatigue, the sleeve's own section, the ball joints themselves; strength of threads "
            + "and ends only where the parts say what they are made of.";
}
