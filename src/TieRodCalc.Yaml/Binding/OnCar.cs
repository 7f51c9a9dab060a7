using TieRodCalc.Planning;
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
    /// <param name="request">What is wanted of it.</param>
    /// <param name="steering">The job's steering.</param>
    public static JobRod Place(JobRod read, MapReader map, RodRequest request, SteeringSetup steering)
    {
        if (read.Rod is not { } rod)
        {
            return read with { NotOnCar = read.NotPlanned };
        }

        if (Missing(read, map, steering) is { } problem)
        {
            return read with { NotOnCar = problem };
        }

        Length present = read.Built?.CenterToCenter?.Nominal ?? request.Target;
        if (!rod.CanHave(present))
        {
            // It has its problem already.
            return read;
        }

        (CarSide side, SteeringWheel wheel) = steering.WheelOf(read.Side)!.Value;
        return read with
        {
            OnCar = new ToeRod
            {
                Rod = rod,
                Request = request,
                Present = present,
                Built = read.Built,
                PresentMeasured = read.Built?.CenterToCenter is not null,
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
