namespace TieRodCalc.Steering;

/// <summary>Three points of a rigid body as axes that go with it: along two of them, toward the third, square to both.</summary>
internal readonly record struct Triangle(Vector Origin, Vector Along, Vector Toward, Vector Square)
{
    public static Triangle Of(Vector first, Vector second, Vector third)
    {
        Vector along = 1 / (second - first).Norm * (second - first);
        Vector aside = third - first - along.Dot(third - first) * along;
        Vector toward = 1 / aside.Norm * aside;
        return new Triangle(first, along, toward, along.Cross(toward));
    }

    /// <summary>
    /// The corner at given distances from the ends of a side and from a point beside it (where three spheres meet): of the two
    /// answers the one on a side of the plane through the three centers.
    /// </summary>
    /// <param name="first">The first center.</param>
    /// <param name="second">The second center.</param>
    /// <param name="third">The third center.</param>
    /// <param name="radii">The distances from the three.</param>
    /// <param name="side">+1 where <c>(second - first) x (third - first)</c> points to the wanted answer, -1 where away from it.</param>
    /// <returns>The corner; not finite where the three do not meet.</returns>
    public static Vector Meet(Vector first, Vector second, Vector third, (double First, double Second, double Third) radii, int side)
    {
        Vector between = second - first;
        double length = between.Norm;
        Vector along = 1 / length * between;
        double reach = (Square2(radii.First) - Square2(radii.Second) + length * length) / (2 * length);
        Vector beside = third - first;
        double ahead = along.Dot(beside);
        Vector aside = beside - ahead * along;
        double far = aside.Norm;
        Vector toward = 1 / far * aside;

        // In the plane of the centers: at reach along the first two, at near toward the third; then off that plane.
        double near = (Square2(radii.First) - Square2(radii.Third) + beside.Dot(beside) - 2 * reach * ahead) / (2 * far);
        double off = Math.Sqrt(Square2(radii.First) - reach * reach - near * near);
        return first + reach * along + near * toward + side * off * along.Cross(toward);
    }

    /// <summary>A direction that goes with the body, where it points after the body moved from here to there.</summary>
    public Vector Turned(Vector direction, Triangle to) =>
        direction.Dot(Along) * to.Along + direction.Dot(Toward) * to.Toward + direction.Dot(Square) * to.Square;

    /// <summary>A point that goes with the body.</summary>
    public Vector Moved(Vector point, Triangle to) => to.Origin + Turned(point - Origin, to);

    private static double Square2(double value) => value * value;
}
