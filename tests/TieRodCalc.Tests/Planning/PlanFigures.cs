using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using TieRodCalc.Planning;
using UnitsNet;

namespace TieRodCalc.Tests.Planning;

/// <summary>A plan laid out flat, so that two plans can be compared figure by figure.</summary>
internal static class PlanFigures
{
    /// <summary>Every value of a plan by its path: lengths in millimeters, angles in degrees, N and MPa, everything else as it stands.</summary>
    public static SortedDictionary<string, object?> Of(RodPlan plan)
    {
        SortedDictionary<string, object?> figures = new(StringComparer.Ordinal);
        Add(figures, "", plan);
        return figures;
    }

    /// <summary>What differs by more than a tolerance, relative above one and absolute below.</summary>
    public static IEnumerable<string> Differences(RodPlan one, RodPlan other, double tolerance)
    {
        SortedDictionary<string, object?> figures = Of(one);
        SortedDictionary<string, object?> others = Of(other);
        foreach (string path in figures.Keys.Union(others.Keys))
        {
            object? value = figures.GetValueOrDefault(path);
            object? otherValue = others.GetValueOrDefault(path);
            bool same = value is double number && otherValue is double otherNumber
                ? number.Equals(otherNumber) || Math.Abs(number - otherNumber) <= tolerance * Math.Max(1, Math.Abs(number))
                : Equals(value, otherValue);
            if (!same)
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"{path}: {value ?? "null"} and {otherValue ?? "null"}");
            }
        }
    }

    private static void Add(SortedDictionary<string, object?> figures, string path, object? value)
    {
        switch (value)
        {
            case null or Enum or string or bool or int or double:
                figures[path] = value;
                break;
            case Length length:
                figures[path] = length.Millimeters;
                break;
            case Angle angle:
                figures[path] = angle.Degrees;
                break;
            case Force force:
                figures[path] = force.Newtons;
                break;
            case Pressure stress:
                figures[path] = stress.Megapascals;
                break;
            case ITuple tuple:
                for (int item = 0; item < tuple.Length; item++)
                {
                    Add(figures, $"{path}[{item}]", tuple[item]);
                }

                break;
            case IEnumerable items:
                int count = 0;
                foreach (object? item in items)
                {
                    Add(figures, $"{path}[{count++}]", item);
                }

                break;
            default:
                foreach (PropertyInfo property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
                {
                    Add(figures, $"{path}/{property.Name}", property.GetValue(value));
                }

                break;
        }
    }
}
