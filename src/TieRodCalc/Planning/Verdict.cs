namespace TieRodCalc.Planning;

/// <summary>Whether a rod can be made.</summary>
public enum Verdict
{
    /// <summary>All limits hold over the whole wanted adjustment, without a cut.</summary>
    Buildable,

    /// <summary>All limits hold over the whole wanted adjustment once something is cut.</summary>
    BuildableAfterCutting,

    /// <summary>No cut that the parts allow makes all limits hold.</summary>
    NotBuildable,

    /// <summary>Measurements of a made-up rod do not suffice to say; never of a plan.</summary>
    NotChecked,
}
