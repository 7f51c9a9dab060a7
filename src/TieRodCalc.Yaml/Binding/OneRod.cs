using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>One rod between the wheels: the steering holds one of them, and the rod turns the other.</summary>
internal static class OneRod
{
    /// <summary>The joints of one rod, given once with each wheel, may differ by this much: they were measured twice.</summary>
    private static readonly Length MostDifference = Length.FromMillimeters(1);

    /// <summary>
    /// The wheel that the rod turns. Unsaid, the right wheel is held and the left one turns, or the one that is given where only
    /// one is.
    /// </summary>
    public static CarSide Turns(MapReader map, CarSide? held, SteeringWheel? left, SteeringWheel? right)
    {
        CheckJoints(map, left?.Points, right?.Points);
        if (held is { } said)
        {
            CarSide turns = said == CarSide.Left ? CarSide.Right : CarSide.Left;
            if ((turns == CarSide.Left ? left : right) is null && (left is not null || right is not null))
            {
                map.Findings.Problem(
                    map.SpanOf("held"), $"the steering of the {Names.Of(turns)} wheel, which the rod turns then, is not given");
            }

            return turns;
        }

        if (left is not null && right is not null && left != right && map.Find("right") is { } unused)
        {
            map.Findings.Note(
                unused.Key.Span,
                "with one rod between the wheels toe is counted with the right wheel held by the steering and the left one turning; "
                    + "write held: left in 'steering' where the left one is held");
        }

        return left is null && right is not null ? CarSide.Right : CarSide.Left;
    }

    private static void CheckJoints(MapReader map, SteeringPoints? left, SteeringPoints? right)
    {
        if (left is null || right is null)
        {
            return;
        }

        foreach ((string side, SteeringPoints own, SteeringPoints other) in new[] { ("left", left, right), ("right", right, left) })
        {
            if (own.Inner.DistanceTo(other.Outer) > MostDifference)
            {
                string far = side == "left" ? "right" : "left";
                map.Findings.Problem(
                    own.InnerAt,
                    $"with one rod between the wheels the inner joint of the {side} wheel is the outer joint of the {far} one, and they "
                        + $"are {Wording.Mm(own.Inner.DistanceTo(other.Outer))} apart");
            }
        }
    }
}
