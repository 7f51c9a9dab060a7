namespace TieRodCalc.Steering;

/// <summary>A vector of doubles in millimeters, or a direction.</summary>
internal readonly record struct Vector(double X, double Y, double Z)
{
    public double Norm => Math.Sqrt(Dot(this));

    public static Vector operator +(Vector a, Vector b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vector operator -(Vector a, Vector b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vector operator *(double factor, Vector a) => new(factor * a.X, factor * a.Y, factor * a.Z);

    public double Dot(Vector b) => X * b.X + Y * b.Y + Z * b.Z;

    public Vector Cross(Vector b) => new(Y * b.Z - Z * b.Y, Z * b.X - X * b.Z, X * b.Y - Y * b.X);
}
