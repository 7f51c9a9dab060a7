using TieRodCalc.Steering;
using TieRodCalc.Yaml.Sources;
using TieRodCalc.Yaml.Tree;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Reads <c>steering</c> of a job.</summary>
internal static class SteeringBinder
{
    private static readonly string[] ArmKeys = ["arm", "joint", "rod_angle"];
    private static readonly string[] PointKeys = ["axis", "outer", "inner"];

    public static SteeringSetup Bind(MapReader job)
    {
        if (job.Map("steering", Keys.Steering) is not { } map)
        {
            return SteeringSetup.Unsaid;
        }

        bool oneRod = map.Choose("layout", Choices.OneRod) ?? false;
        ArmParts common = ArmParts.Read(map);
        SteeringWheel? left = Wheel(map, "left", common);
        SteeringWheel? right = Wheel(map, "right", common);
        if (common.Any && !map.Has("left") && !map.Has("right"))
        {
            common.ReportMissing(map, map, ArmParts.None);
        }

        if (oneRod && left is not null && right is not null && left != right && map.Find("right") is { } unused)
        {
            map.Findings.Note(
                unused.Key.Span,
                "with one rod between the wheels this version counts toe by the left wheel's steering alone; the right wheel's differs");
        }

        ToeReadings.Check(map);
        return new SteeringSetup(oneRod, left, right, map.Exact("plates", Least.AboveZero));
    }

    /// <summary>The wheel of one side: its own words where it has some, those for both sides where not.</summary>
    private static SteeringWheel? Wheel(MapReader steering, string side, ArmParts common)
    {
        if (steering.Map(side, Keys.SteeringSide) is not { } map)
        {
            return OfArm(common);
        }

        bool points = HasAny(map, PointKeys);
        bool arm = HasAny(map, ArmKeys);
        if (points && arm)
        {
            map.Findings.Problem(
                map.Span, $"{map.Title} is given either by 'arm' and 'joint' or by the points 'axis', 'outer' and 'inner', not by both");
        }

        if (points)
        {
            return Points(map, side, needed: !arm) is { } given ? new SteeringWheel(null, given) : null;
        }

        ArmParts own = ArmParts.Read(map);
        own.ReportMissing(map, steering, common);
        return OfArm(own.Over(common));
    }

    private static bool HasAny(MapReader map, string[] keys)
    {
        foreach (string key in keys)
        {
            if (map.Has(key))
            {
                return true;
            }
        }

        return false;
    }

    private static SteeringWheel? OfArm(ArmParts parts) => parts is { Arm: { } arm, Joint: { } joint }
        ? new SteeringWheel(new SteeringArm(arm, joint, parts.RodAngle ?? Angle.Zero), null)
        : null;

    private static SteeringPoints? Points(MapReader map, string side, bool needed)
    {
        (Point First, Point Second)? axis = map.TwoPoints("axis", needed);
        Point? outer = map.Point("outer", needed);
        Point? inner = map.Point("inner", needed);
        if (axis is { } two && !(two.First.DistanceTo(two.Second).Millimeters > 0))
        {
            map.Findings.Problem(map.SpanOf("axis"), "the two points of the steer axis are the same");
            return null;
        }

        // y points to the car's left, and a wheel's rod runs from its joint toward the other side.
        int outward = side == "left" ? 1 : -1;
        if (outer is { } outerJoint && inner is { } innerJoint && !(outward * (outerJoint.Y - innerJoint.Y).Millimeters > 0))
        {
            map.Findings.Note(
                map.SpanOf("outer"),
                $"the outer joint of the {side} wheel lies no further to the {side} than the inner joint; y points to the car's "
                    + "left, and a wrong sign turns toe-in into toe-out");
        }

        return axis is { } both && outer is { } out1 && inner is { } in1 ? new SteeringPoints(both.First, both.Second, out1, in1) : null;
    }
}
