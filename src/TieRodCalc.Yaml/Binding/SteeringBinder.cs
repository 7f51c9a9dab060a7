using TieRodCalc.Steering;
using TieRodCalc.Yaml.Sources;
using TieRodCalc.Yaml.Tree;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Reads <c>steering</c> of a job.</summary>
internal static class SteeringBinder
{
    /// <summary>Camber, inclination and caster stay well below this on anything that is steered; beyond it a value is a slip.</summary>
    private const double MostAxisDegrees = 60;

    private const string AxisRange = "above -60 and below 60 deg";

    private static readonly string[] ArmKeys = ["arm", "joint", "rod_angle"];
    private static readonly string[] PointKeys = ["axis", "outer", "inner"];

    /// <summary>The steering, and what it says of toe or what is missing of that.</summary>
    public static (SteeringSetup Setup, JobToe? Toe, Problem? NoToe) Bind(MapReader job)
    {
        int before = job.Findings.Count;
        if (job.Map("steering", Keys.Steering) is not { } map)
        {
            Problem? missing = job.Has("steering")
                ? null
                : job.File.Source.At(job.File.JobKey!.Span, "the job gives no 'steering', so there is no toe to count");
            return (SteeringSetup.Unsaid, null, missing);
        }

        bool oneRod = map.Choose("layout", Choices.OneRod) ?? false;
        ArmParts common = ArmParts.Read(map);
        Angle camber = Camber(map) ?? Angle.Zero;
        SteeringWheel? left = Wheel(map, "left", common, camber);
        SteeringWheel? right = Wheel(map, "right", common, camber);
        if (common.Any && !map.Has("left") && !map.Has("right"))
        {
            common.ReportMissing(map, map, ArmParts.None);
        }

        MapReader? toeMap = map.Map("toe", Keys.Toe);
        ToeGauges gauges = ToeGauges.Read(map, toeMap);
        CarSide? held = Held(map, oneRod);
        SteeringSetup setup = new(oneRod ? OneRod.Turns(map, held, left, right) : null, left, right, gauges, true);
        (JobToe? toe, Problem? noToe) = ToeBinder.Bind(map, toeMap, job.Find("steering")!.Value.Key.Span, setup);
        return (setup with { Sound = map.Findings.Count == before }, toe, noToe);
    }

    private static CarSide? Held(MapReader map, bool oneRod)
    {
        CarSide? held = map.Choose("held", Choices.Side);
        if (!oneRod && map.Find("held") is { } entry)
        {
            map.Findings.Problem(
                entry.Key.Span, "'held' is for 'one rod between wheels': with a rod per side the steering holds both inner joints");
        }

        return held;
    }

    private static Angle? Camber(MapReader map) =>
        map.Angle("camber", degrees => Math.Abs(degrees) < MostAxisDegrees, AxisRange);

    /// <summary>The wheel of one side: its own words where it has some, those for both sides where not.</summary>
    private static SteeringWheel? Wheel(MapReader steering, string side, ArmParts common, Angle commonCamber)
    {
        if (steering.Map(side, Keys.SteeringSide) is not { } map)
        {
            return OfArm(common, commonCamber);
        }

        Angle camber = Camber(map) ?? commonCamber;

        bool points = HasAny(map, PointKeys);
        bool arm = HasAny(map, ArmKeys);
        if (points && arm)
        {
            map.Findings.Problem(
                map.Span, $"{map.Title} is given either by 'arm' and 'joint' or by the points 'axis', 'outer' and 'inner', not by both");
        }

        if (points)
        {
            return Points(map, side, needed: !arm) is { } given ? new SteeringWheel(null, given, camber) : null;
        }

        ArmParts own = ArmParts.Read(map);
        own.ReportMissing(map, steering, common);
        return OfArm(own.Over(common), camber);
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

    private static SteeringWheel? OfArm(ArmParts parts, Angle camber) => parts is { Arm: { } arm, Joint: { } joint }
        ? new SteeringWheel(new SteeringArm(arm, joint, parts.RodAngle ?? Angle.Zero), null, camber)
        : null;

    private static SteeringPoints? Points(MapReader map, string side, bool needed)
    {
        SteerAxis? axis = Axis(map, needed);
        Point? outer = map.Point("outer", needed);
        Point? inner = map.Point("inner", needed);
        // y points to the car's left, and a wheel's rod runs from its joint toward the other side.
        int outward = side == "left" ? 1 : -1;
        if (outer is { } outerJoint && inner is { } innerJoint && !(outward * (outerJoint.Y - innerJoint.Y).Millimeters > 0))
        {
            map.Findings.Note(
                map.SpanOf("outer"),
                $"the outer joint of the {side} wheel lies no further to the {side} than the inner joint; y points to the car's "
                    + "left, and a wrong sign turns toe-in into toe-out");
        }

        return axis is not null && outer is { } out1 && inner is { } in1 ? new SteeringPoints(axis, out1, in1, map.SpanOf("inner")) : null;
    }

    /// <summary>Two points of the axis, or inclination, caster and one point.</summary>
    private static SteerAxis? Axis(MapReader map, bool needed)
    {
        if (map.Find("axis")?.Value is MapNode)
        {
            MapReader axis = map.Map("axis", Keys.Axis)!;
            axis.Need("inclination");
            axis.Need("caster");
            Angle? inclination = axis.Angle("inclination", degrees => Math.Abs(degrees) < MostAxisDegrees, AxisRange);
            Angle? caster = axis.Angle("caster", degrees => Math.Abs(degrees) < MostAxisDegrees, AxisRange);
            Point? through = axis.Point("through", needed: true);
            return inclination is { } inward && caster is { } rearward && through is { } point
                ? new SteerAxis(point, null, inward, rearward)
                : null;
        }

        if (map.TwoPoints("axis", needed) is not { } two)
        {
            return null;
        }

        if (two.First.DistanceTo(two.Second).Millimeters > 0)
        {
            return new SteerAxis(two.First, two.Second, Angle.Zero, Angle.Zero);
        }

        map.Findings.Problem(map.SpanOf("axis"), "the two points of the steer axis are the same");
        return null;
    }
}
