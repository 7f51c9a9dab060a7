namespace TieRodCalc.Rods;

/// <summary>What bounds how far an end may be in its sleeve, and how much may be cut off it.</summary>
public enum Limit
{
    /// <summary>Enough full thread on full thread.</summary>
    Engagement,

    /// <summary>Thread for the jam nut outside the sleeve; without a nut the run-out must stay outside.</summary>
    NutRoom,

    /// <summary>A closed bore: the tip stops where the thread of the sleeve ends.</summary>
    ClosedBore,

    /// <summary>An open bore: the tip stops where the thread of the other end begins.</summary>
    FarThread,

    /// <summary>The two tips keep the tip gap between them.</summary>
    Tips,

    /// <summary>Full thread covers the witness hole.</summary>
    Witness,

    /// <summary>Full thread lies under the clamp.</summary>
    Clamp,

    /// <summary>The most that the part allows to be cut.</summary>
    Cut,
}
