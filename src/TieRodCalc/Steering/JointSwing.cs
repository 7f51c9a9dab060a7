using UnitsNet;

namespace TieRodCalc.Steering;

/// <summary>How the stud or bolt of a joint stands at ride height.</summary>
public enum StudAxis
{
    /// <summary>Upright.</summary>
    Vertical,

    /// <summary>Along the axle, across the car.</summary>
    AlongAxle,

    /// <summary>Along the car, fore and aft.</summary>
    AlongCar,
}

/// <summary>The positions over which the swing of joints counts; zero or more each.</summary>
/// <param name="Droop">Travel below ride height.</param>
/// <param name="Bump">Travel above ride height.</param>
/// <param name="Steer">How far the steering moves the inner joint each way.</param>
public sealed record SwingRange(Length Droop, Length Bump, Length Steer);

/// <summary>The greatest swing of a joint, and where it is.</summary>
/// <param name="Most">
/// Angle between the stud and the perpendicular to the rod: <c>asin |stud . rod|</c>, both unit vectors.
/// </param>
/// <param name="Travel">The travel there.</param>
/// <param name="Steer">How far the inner joint is moved to the left there.</param>
public sealed record JointSwing(Angle Most, Length Travel, Length Steer);

/// <summary>The swing of a rod's joints over travel and steering.</summary>
/// <remarks>The stud of the outer joint goes with the upright; that of the inner joint keeps its direction in the car.</remarks>
public static class Swings
{
    private const int Intervals = 24;

    /// <summary>Of the outer joint; null where the corner does not reach everywhere in the range.</summary>
    public static JointSwing? OfOuter(CornerGeometry corner, StudAxis stud, SwingRange range) =>
        Of(corner, range, state => corner.Start.Upright.Turned(Direction(stud), state.Upright));

    /// <summary>Of the inner joint; null where the corner does not reach everywhere in the range.</summary>
    public static JointSwing? OfInner(CornerGeometry corner, StudAxis stud, SwingRange range) =>
        Of(corner, range, _ => Direction(stud));

    private static Vector Direction(StudAxis stud) => stud switch
    {
        StudAxis.Vertical => new Vector(0, 0, 1),
        StudAxis.AlongAxle => new Vector(0, 1, 0),
        StudAxis.AlongCar => new Vector(1, 0, 0),
        _ => throw new ArgumentOutOfRangeException(nameof(stud)),
    };

    private static JointSwing? Of(CornerGeometry corner, SwingRange range, Func<CornerState, Vector> stud)
    {
        ArgumentNullException.ThrowIfNull(corner);
        ArgumentNullException.ThrowIfNull(range);
        double droop = Millimeters.NotNegative(range.Droop, nameof(range));
        double bump = Millimeters.NotNegative(range.Bump, nameof(range));
        double steer = Millimeters.NotNegative(range.Steer, nameof(range));
        CornerPath path = new(corner);
        (double Sine, double Travel, double Steer) most = (-1, 0, 0);
        foreach (double travel in Grid(droop, bump))
        {
            double angle = path.AngleAt(travel);
            foreach (double moved in Grid(steer, steer))
            {
                CornerState state = double.IsFinite(angle) ? corner.StateAt(angle, moved) : default;
                if (!double.IsFinite(angle) || !state.Exists)
                {
                    return null;
                }

                Vector rod = state.Inner - state.Outer;
                double sine = Math.Min(1, Math.Abs(stud(state).Dot(rod)) / rod.Norm);
                most = sine > most.Sine + 1e-12 ? (sine, travel, moved) : most;
            }
        }

        return new JointSwing(
            Angle.FromRadians(Math.Asin(most.Sine)), Length.FromMillimeters(most.Travel), Length.FromMillimeters(most.Steer));
    }

    /// <summary>Even steps from one end to the other, zero among them.</summary>
    private static IEnumerable<double> Grid(double less, double more) => less + more == 0 ? [0]
        : Enumerable.Range(0, Intervals + 1).Select(step => -less + step * (less + more) / Intervals).Append(0).Distinct();
}
