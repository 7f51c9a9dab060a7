namespace TieRodCalc.Yaml.Binding;

/// <summary>The keys that each kind of map may have.</summary>
internal static class Keys
{
    private static readonly string[] PartLists = ["materials", "inner_ends", "sleeves", "outer_ends", "jam_nuts"];

    private static readonly string[] JobOnly = ["job", "units", "parts", "rules", "rods", "steering", "bump", "corner"];

    public static readonly string[] PartFile = [Sources.JobVersion.Key, .. PartLists];

    public static readonly string[] Job = [Sources.JobVersion.Key, .. JobOnly, .. PartLists];

    public static readonly string[] Material = ["id", "name", "kind", "tensile", "source"];

    public static readonly string[] InnerEnd = [.. Part, .. Threaded, .. Ball];

    public static readonly string[] OuterEnd = [.. Part, .. Threaded, .. Socketed, .. Ball];

    public static readonly string[] Sleeve = [.. Part, "length", "inner", "outer", "outside"];

    public static readonly string[] Hole = ["thread", "depth", "bore", "countersink", "witness", "clamp"];

    public static readonly string[] Nut = [.. Part, "thread", "thickness"];

    public static readonly string[] Rules = ["engagement", "tip_gap", "mark", "allowance", "load"];

    public static readonly string[] JobRules = [.. Rules, "bump"];

    public static readonly string[] BumpRules = ["very_good", "felt", "strongly_felt", "spacing"];

    public static readonly string[] Rod =
        ["name", "side", "inner", "sleeve", "outer", "nuts", "length", "adjust", "clocking", "rules", "built"];

    public static readonly string[] Length = ["from", "to", "rod", "toe", "want"];

    public static readonly string[] Adjust = ["shorter", "longer"];

    public static readonly string[] Ends = ["inner", "outer"];

    public static readonly string[] Built = ["center_to_center", "showing", "cut", "depth"];

    public static readonly string[] Steering =
        ["layout", "held", "left", "right", "arm", "joint", "rod_angle", "camber", "plates", "tire", "toe"];

    public static readonly string[] SteeringSide = ["arm", "joint", "rod_angle", "axis", "outer", "inner", "camber"];

    public static readonly string[] Axis = ["inclination", "caster", "through"];

    public static readonly string[] Toe = ["now", "want", "each", "at"];

    public static readonly string[] Each = ["each"];

    public static readonly string[] Sides = ["left", "right"];

    public static readonly string[] Sheet = ["side", "gauge", "readings", "then"];

    public static readonly string[] Gauge = ["spacing", "zeroed", "grows", "resolution"];

    public static readonly string[] Reading = ["travel", "front", "rear"];

    public static readonly string[] Then = ["outer_raised", "rod_longer"];

    public static readonly string[] CornerSide = ["lower", "upper", "wheel", "travel", "steer", "moves"];

    public static readonly string[] CornerTravel = ["bump", "droop"];

    public static readonly string[] Moves = ["outer", "inner", "length"];

    /// <summary>How far a joint may be moved, less and more.</summary>
    public static readonly string[] Heights = ["down", "up"];

    public static readonly string[] Wishbone = ["axis", "ball"];

    private static string[] Part => ["id", "name", "material", "price", "mass"];

    /// <summary>What an end with an external thread has and one with a socket has not.</summary>
    public static string[] Threaded => ["thread", "center_to_tip", "thread_length", "lead", "offset", "max_cut", "rethread"];

    public static string[] Socketed => ["center_to_face", "socket"];

    private static string[] Ball => ["joint", "swing", "stud"];

    /// <summary>Whether a key belongs at the top of a job and not of a part file.</summary>
    public static bool IsOfJob(string key) => Array.IndexOf(JobOnly, key) >= 0;
}
