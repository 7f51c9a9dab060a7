namespace TieRodCalc.Steering;

/// <summary>A corner at an angle of its lower arm, in millimeters and radians.</summary>
/// <param name="Lower">Lower ball joint.</param>
/// <param name="Upper">Upper ball joint.</param>
/// <param name="Outer">Outer joint.</param>
/// <param name="Inner">Inner joint.</param>
/// <param name="Wheel">Wheel center.</param>
/// <param name="Spin">Spin axis, to the car's left.</param>
/// <param name="Upright">Axes that go with the upright.</param>
internal readonly record struct CornerState(
    Vector Lower, Vector Upper, Vector Outer, Vector Inner, Vector Wheel, Vector Spin, Triangle Upright)
{
    /// <summary>Whether the parts reach one another there.</summary>
    public bool Exists => double.IsFinite(Spin.X) && double.IsFinite(Wheel.Z);
}
