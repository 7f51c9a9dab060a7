namespace TieRodCalc.Steering;

/// <summary>A suspension arm: it turns about an axis fixed in the car and carries a ball joint of the upright.</summary>
/// <param name="First">A point of the axis.</param>
/// <param name="Second">A second point of the axis, in any order.</param>
/// <param name="Ball">Center of the ball joint.</param>
public sealed record Wishbone(Point First, Point Second, Point Ball);
