using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using UnitsNet;

namespace TieRodCalc.Tests.Architecture;

/// <summary>A value written out to the last bit of every number in it, whatever it is made of.</summary>
internal static class Bits
{
    private const BindingFlags Fields = BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic;

    /// <summary>Deeper than anything that is computed here; what goes round in a circle is deeper.</summary>
    private const int Deepest = 40;

    public static string Of(object? value)
    {
        StringBuilder text = new();
        Append(text, value, 0);
        return text.ToString();
    }

    private static void Append(StringBuilder text, object? value, int depth)
    {
        Assert.True(depth < Deepest, "too deep");
        switch (value)
        {
            case null:
                text.Append("null;");
                break;
            case double number:
                text.Append(CultureInfo.InvariantCulture, $"{BitConverter.DoubleToInt64Bits(number):X};");
                break;
            case IQuantity quantity:
                text.Append(CultureInfo.InvariantCulture, $"{BitConverter.DoubleToInt64Bits((double)quantity.Value):X} {quantity.Unit};");
                break;
            case string or Enum or bool or int or long or decimal or char:
                text.Append(CultureInfo.InvariantCulture, $"{value};");
                break;
            case Delegate or Type:
                break;
            case IEnumerable list:
                foreach (object? item in list)
                {
                    Append(text, item, depth + 1);
                }

                text.Append(']');
                break;
            default:
                text.Append(value.GetType().Name).Append('{');
                for (Type? type = value.GetType(); type is not null && type != typeof(object); type = type.BaseType)
                {
                    foreach (FieldInfo field in type.GetFields(Fields | BindingFlags.DeclaredOnly))
                    {
                        Append(text, field.GetValue(value), depth + 1);
                    }
                }

                text.Append('}');
                break;
        }
    }
}
