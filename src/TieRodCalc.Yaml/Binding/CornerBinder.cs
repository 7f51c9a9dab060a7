using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Yaml.Sources;
using TieRodCalc.Yaml.Tree;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Reads <c>corner</c> of a job: the points of the suspension of each wheel.</summary>
internal static class CornerBinder
{
    /// <summary>A steer axis and the ball joints that it goes through, measured apart, may differ by this much. Our own choice.</summary>
    private static readonly Length MostDifference = Length.FromMillimeters(1);

    /// <summary>The corners that are given, the left one first.</summary>
    public static List<JobCorner> Bind(MapReader job, SteeringSetup steering)
    {
        List<JobCorner> corners = [];
        if (job.Map("corner", Keys.Sides) is { } sides)
        {
            foreach (CarSide side in Choices.Side.Values)
            {
                if (sides.Map(Names.Of(side), Keys.CornerSide) is { } map)
                {
                    corners.Add(Corner(map, sides.Find(Names.Of(side))!.Value.Key.Span, side, steering));
                }
            }
        }

        return corners;
    }

    private static JobCorner Corner(MapReader map, TextSpan key, CarSide side, SteeringSetup steering)
    {
        Arm? lower = Arm.Read(map, "lower");
        Arm? upper = Arm.Read(map, "upper");
        Point? wheel = map.Point("wheel", needed: true);
        MapReader? travel = map.Map("travel", Keys.CornerTravel);
        JobCorner corner = new()
        {
            Side = side,
            BumpTravel = travel?.Exact("bump", Least.AboveZero),
            DroopTravel = travel?.Exact("droop", Least.AboveZero),
            Steer = map.Exact("steer", Least.AboveZero),
            Moves = map.Map("moves", Keys.Moves) is { } moves
                ? new MoveLimits(
                    Range(moves, "outer", Keys.Heights), Range(moves, "inner", Keys.Heights), Range(moves, "length", Keys.Adjust))
                : null,
        };
        SteeringWheel? steered = steering.Of(side);
        if (steering.OneRodTurns is not null || steered?.Points is not { } rod)
        {
            return corner with { Missing = map.File.Source.At(key, Missing(side, steering)) };
        }

        if (lower?.Wishbone is not { } low || upper?.Wishbone is not { } high || wheel is not { } center)
        {
            return corner;
        }

        if (CornerGeometry.FaultOf(side, low, high, rod.Outer, rod.Inner, center) is { } fault)
        {
            (TextSpan span, string message) = Said(fault, lower, upper, rod);
            map.Findings.Problem(span, message);
            return corner;
        }

        NoteAxis(map, key, side, rod.Axis, low.Ball, high.Ball);
        int outward = side == CarSide.Left ? 1 : -1;
        if (outward * (center.Y - low.Ball.Y).Millimeters < 0)
        {
            map.Findings.Note(
                map.SpanOf("wheel"),
                $"the wheel center lies no further to the {Names.Of(side)} than the lower ball joint; y points to the car's left: "
                    + "check its sign");
        }

        CornerGeometry geometry = CornerGeometry.FromPoints(side, low, high, rod.Outer, rod.Inner, center);
        return corner with { Geometry = geometry.Aligned(Angle.Zero, steered.Camber) };
    }

    private static string Missing(CarSide side, SteeringSetup steering) => steering.OneRodTurns is not null
        ? "a corner with two arms has a rod of its own, and 'steering' says one rod between wheels: nothing is computed from its points"
        : $"the corner needs the points of the rod's joints: 'outer' and 'inner' in '{Names.Of(side)}' of 'steering'";

    private static (TextSpan Span, string Message) Said(CornerFault fault, Arm lower, Arm upper, SteeringPoints rod) => fault switch
    {
        CornerFault.LowerAxisIsAPoint => (lower.Map.SpanOf("axis"), "the two points of the lower arm's axis are nearer than 1 mm"),
        CornerFault.UpperAxisIsAPoint => (upper.Map.SpanOf("axis"), "the two points of the upper arm's axis are nearer than 1 mm"),
        CornerFault.LowerBallOnAxis => (lower.Map.SpanOf("ball"), "the ball joint lies on the axis of its arm, or nearer than 1 mm to it"),
        CornerFault.UpperBallOnAxis => (upper.Map.SpanOf("ball"), "the ball joint lies on the axis of its arm, or nearer than 1 mm to it"),
        CornerFault.BallsMeet => (upper.Map.SpanOf("ball"), "the upper ball joint is nearer than 1 mm to the lower one"),
        CornerFault.UprightInLine => (
            upper.Map.SpanOf("ball"),
            "the upper arm stands in line with the upright between the ball joints: which way the corner moves from there is not "
                + "determined"),
        CornerFault.RodInLine => (
            rod.InnerAt, "the rod is in line with the steer axis through the corner's ball joints: it does not hold the wheel's toe there"),
        CornerFault.WheelDoesNotRise => (
            lower.Map.SpanOf("axis"), "turning the lower arm about this axis does not raise the wheel: check the points of the corner"),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, null),
    };

    private static void NoteAxis(MapReader map, TextSpan key, CarSide side, SteerAxis axis, Point lower, Point upper)
    {
        (Length low, Length high) = (axis.DistanceTo(lower, side), axis.DistanceTo(upper, side));
        if (low > MostDifference || high > MostDifference)
        {
            (string ball, Length most) = low > high ? ("lower", low) : ("upper", high);
            map.Findings.Note(
                key,
                $"the steer axis of the {Names.Of(side)} wheel in 'steering' passes {Wording.Mm(most)} from the corner's {ball} ball "
                    + "joint; "
                    + "the toe of 'bump' goes by the ball joints");
        }
    }

    /// <summary>How far something may be moved: one length each way, or one for each; zero where nothing is said.</summary>
    private static MoveRange Range(MapReader moves, string key, string[] ways)
    {
        if (moves.Find(key)?.Value is not MapNode)
        {
            return MoveRange.EachWay(moves.Exact(key, Least.Zero) ?? default);
        }

        MapReader map = moves.Map(key, ways)!;
        return new MoveRange(map.Exact(ways[0], Least.Zero) ?? default, map.Exact(ways[1], Least.Zero) ?? default);
    }

    /// <summary>An arm, null where it could not be read whole, and where it stands.</summary>
    private sealed record Arm(MapReader Map, Wishbone? Wishbone)
    {
        public static Arm? Read(MapReader corner, string key)
        {
            if (corner.Map(key, Keys.Wishbone, needed: true) is not { } map)
            {
                return null;
            }

            (Point First, Point Second)? axis = map.TwoPoints("axis", needed: true);
            Point? ball = map.Point("ball", needed: true);
            return new Arm(map, axis is { } two && ball is { } center ? new Wishbone(two.First, two.Second, center) : null);
        }
    }
}
