namespace TieRodCalc.Steering;

/// <summary>The travel of a corner: finds the angle of the lower arm at which the wheel is so far up.</summary>
internal readonly struct CornerPath(CornerGeometry corner)
{
    /// <summary>Steps, in radians, in which the travel is followed; arms beyond the last are not looked for.</summary>
    private const double Step = 0.05;

    private const double Most = 1.2;

    private const double SmallestStep = 1e-5;

    /// <summary>What is left of the travel where the angle counts as found, millimeters: what doubles can tell.</summary>
    private const double Close = 1e-12;

    private const int MostTries = 100;

    /// <summary>How the wheel rises with the angle of the lower arm at ride height, millimeters a radian.</summary>
    public double RiseAtRideHeight
    {
        get
        {
            const double small = 1e-4;
            return (RiseAt(small) - RiseAt(-small)) / (2 * small);
        }
    }

    /// <summary>The corner at a travel, or null where its parts do not reach; steered, the arms stand as straight ahead.</summary>
    public CornerState? At(double travel, double steer)
    {
        double angle = AngleAt(travel);
        return double.IsFinite(angle) && corner.StateAt(angle, steer) is { Exists: true } state ? state : null;
    }

    /// <summary>
    /// The angle of the lower arm at a travel, followed from ride height in steps so that it is the first; not finite where there
    /// is none.
    /// </summary>
    public double AngleAt(double travel)
    {
        if (Math.Abs(travel) <= Close)
        {
            return 0;
        }

        int sense = Math.Sign(travel) * Math.Sign(RiseAtRideHeight);
        (double near, double before) = (0, -travel);
        for (double step = Step; step >= SmallestStep && Math.Abs(near) < Most;)
        {
            double far = near + sense * step;
            double after = RiseAt(far) - travel;
            if (double.IsFinite(after) && Math.Sign(after) != Math.Sign(before))
            {
                return Between(near, before, far, after, travel);
            }

            if (!(Math.Abs(after) < Math.Abs(RiseAt(far - sense * SmallestStep) - travel)))
            {
                // The parts reach no further than somewhere within the step, or the wheel turns back there.
                step /= 2;
            }
            else
            {
                (near, before) = (far, after);
            }
        }

        return double.NaN;
    }

    /// <summary>Regula falsi that halves the value of an end that stays (the Illinois rule), so that it cannot stall.</summary>
    private double Between(double near, double before, double far, double after, double travel)
    {
        double found = far;
        for (int tries = 0; tries < MostTries && before != after; tries++)
        {
            found = (near * after - far * before) / (after - before);
            double value = RiseAt(found) - travel;
            if (Math.Abs(value) <= Close || found == near || found == far)
            {
                break;
            }

            if (Math.Sign(value) == Math.Sign(after))
            {
                before /= 2;
            }
            else
            {
                (near, before) = (far, after);
            }

            (far, after) = (found, value);
        }

        return found;
    }

    private double RiseAt(double angle)
    {
        CornerState state = corner.StateAt(angle, 0);
        return state.Exists ? state.Wheel.Z - corner.Start.Wheel.Z : double.NaN;
    }
}
