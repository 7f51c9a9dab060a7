namespace TieRodCalc.Steering;

/// <summary>A point that turns about an axis: <c>center + radius (cos(angle) start + sin(angle) ahead)</c>; angle 0 as it stands.</summary>
internal readonly record struct Hinge(Vector Center, Vector Start, Vector Ahead, double Radius)
{
    /// <summary>
    /// The hinge of an arm; its radius is 0 where the ball joint lies on the axis, and not finite where there is no axis.
    /// </summary>
    public static Hinge Of(Wishbone arm)
    {
        Vector first = arm.First.Millimeter;
        Vector along = arm.Second.Millimeter - first;
        Vector axis = 1 / along.Norm * along;
        Vector ball = arm.Ball.Millimeter - first;
        Vector radius = ball - axis.Dot(ball) * axis;
        Vector start = 1 / radius.Norm * radius;
        return new Hinge(first + axis.Dot(ball) * axis, start, axis.Cross(start), radius.Norm);
    }

    /// <summary>Where the point is at an angle, in radians, right-handed about the axis.</summary>
    public Vector At(double angle)
    {
        (double sine, double cosine) = Math.SinCos(angle);
        return Center + Radius * (cosine * Start + sine * Ahead);
    }

    /// <summary>
    /// How a point at a distance from a given one is found: with <c>a</c> and <c>b</c> that one's parts along start and ahead,
    /// <c>a cos g + b sin g = (d.d + R^2 - distance^2) / (2 R)</c>, so <c>g = atan2(b, a) +- acos(..)</c>.
    /// </summary>
    /// <returns>The middle of the two answers and half their difference, which is not finite where there is no answer.</returns>
    public (double Middle, double Half) AnglesAt(double distance, Vector from)
    {
        Vector apart = from - Center;
        double along = apart.Dot(Start);
        double ahead = apart.Dot(Ahead);
        double wanted = (apart.Dot(apart) + Radius * Radius - distance * distance) / (2 * Radius);
        return (Math.Atan2(ahead, along), Math.Acos(wanted / Math.Sqrt(along * along + ahead * ahead)));
    }
}
