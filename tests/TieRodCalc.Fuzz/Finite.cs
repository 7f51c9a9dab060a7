using System.Collections;
using System.Globalization;
using System.Reflection;
using UnitsNet;

namespace TieRodCalc.Fuzz;

/// <summary>Looks for numbers that are none in all that a value holds.</summary>
internal static class Finite
{
    /// <summary>No value of the library holds others that deep.</summary>
    private const int Deepest = 16;

    /// <summary>Every number of a value, of its public properties and of what its lists hold, is finite.</summary>
    public static void Check(object? value, string name) => Check(value, name, 0);

    private static void Check(object? value, string name, int depth)
    {
        switch (value)
        {
            case null or string or Enum:
                break;
            case double number:
                Finding.Unless(double.IsFinite(number), string.Create(CultureInfo.InvariantCulture, $"{name} is {number}"));
                break;
            case IQuantity quantity:
                Check((double)quantity.Value, name, depth);
                break;
            case IEnumerable many:
                foreach (object? one in many)
                {
                    Check(one, name + "[]", depth + 1);
                }

                break;
            case var other when Ours(other.GetType()):
                Finding.Unless(depth < Deepest, $"{name} has no end");
                foreach (PropertyInfo property in other.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
                {
                    if (property.GetIndexParameters().Length == 0)
                    {
                        Check(property.GetValue(other), $"{name}.{property.Name}", depth + 1);
                    }
                }

                break;
        }
    }

    /// <summary>Types of the library, and the pairs and triples that it puts them into.</summary>
    private static bool Ours(Type type) => type.FullName!.StartsWith("TieRodCalc.", StringComparison.Ordinal);
}
