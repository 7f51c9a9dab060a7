using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Puts a rod on the car: its present length, and the wheel that it turns.</summary>
internal static class OnCar
{
    /// <summary>What was read of the rod, and on the car where enough is known of it.</summary>
    /// <param name="read">What was read of it.</param>
    /// <param name="map">Its map.</param>
    /// <param name="rod">The rod, or null.</param>
    /// <param name="socketRod">The rod with one threaded joint, or null.</param>
    /// <param name="request">What is wanted of it.</param>
    /// <param name="built">What was measured on it, or null.</param>
    /// <param name="steering">The job's steering.</param>
    public static JobRod Place(
        JobRod read, MapReader map, Rod? rod, SocketRod? socketRod, RodRequest request, BuiltReadings? built, SteeringSetup steering)
    {
        if (rod is null && socketRod is null)
        {
            return read with { NotOnCar = read.NotPlanned };
        }

        if (Missing(read, map, steering) is { } problem)
        {
            return read with { NotOnCar = problem };
        }

        Length present = read.MeasuredLength?.Nominal ?? request.Target;
        if (!(rod?.CanHave(present) ?? socketRod!.CanHave(present)))
        {
            // A wanted length of a rod with a sleeve was held against it before.
            if (read.MeasuredLength is not null || rod is null)
            {
                map.Findings.Problem(
                    map.SpanOf(read.MeasuredLength is null ? "length" : "built"),
                    $"the rod's length of {Wording.Mm(present)} is not above {Wording.Mm(rod?.Offset ?? socketRod!.Offset)}, the least "
                        + "distance that the bent ends leave between the ball centers");
            }

            return read;
        }

        (CarSide side, SteeringWheel wheel) = steering.WheelOf(read.Side)!.Value;
        return read with
        {
            OnCar = new ToeRod
            {
                Rod = rod,
                SocketRod = socketRod,
                Request = request,
                Present = present,
                Built = built,
                PresentMeasured = read.MeasuredLength is not null,
                Steering = wheel.With(side, present),
                Camber = wheel.Camber,
            },
        };
    }

    private static Problem? Missing(JobRod read, MapReader map, SteeringSetup steering)
    {
        if (steering.OneRodTurns is null && read.Side is null)
        {
            return map.File.Source.At(map.SpanOf("name"), $"{map.Title} does not say which wheel it turns: side: left or side: right");
        }

        if (steering.WheelOf(read.Side) is not null)
        {
            return null;
        }

        string wheel = Names.Of(steering.OneRodTurns ?? read.Side!.Value);
        return map.File.Source.At(map.SpanOf(map.Has("side") ? "side" : "name"), $"the steering of the {wheel} wheel is not given");
    }
}
