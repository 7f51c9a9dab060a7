using System.Collections;
using System.Reflection;
using UnitsNet;

namespace TieRodCalc.Tests.Files;

/// <summary>Looks at every number that a value holds, however deep.</summary>
internal sealed class NumberWalk
{
    private const int Deepest = 40;

    private readonly Dictionary<Type, (string Name, Func<object, object?> Get)[]> _members = [];

    /// <summary>How many numbers were looked at.</summary>
    public long Numbers { get; private set; }

    /// <summary>Where a number stands that is NaN or infinite, or null where all are finite.</summary>
    public string? NotFinite(object? value) => Find(value, 0);

    private string? Find(object? value, int depth)
    {
        switch (value)
        {
            case null or string or Enum or bool or int or long or decimal:
                return null;
            case double number:
                Numbers++;
                return double.IsFinite(number) ? null : $" is {number}";
            case IQuantity quantity:
                Numbers++;
                return double.IsFinite((double)quantity.Value) ? null : $" is {quantity.Value} {quantity.Unit}";
            case IEnumerable items:
                return InItems(items, depth);
        }

        if (depth == Deepest)
        {
            return " is a value without end";
        }

        foreach ((string name, Func<object, object?> get) in MembersOf(value.GetType()))
        {
            if (Find(get(value), depth + 1) is { } found)
            {
                return $".{name}{found}";
            }
        }

        return null;
    }

    private string? InItems(IEnumerable items, int depth)
    {
        int index = 0;
        foreach (object? item in items)
        {
            if (Find(item, depth + 1) is { } found)
            {
                return $"[{index}]{found}";
            }

            index++;
        }

        return null;
    }

    /// <summary>The fields that may hold numbers, and the properties that work one out.</summary>
    private (string Name, Func<object, object?> Get)[] MembersOf(Type type)
    {
        if (!_members.TryGetValue(type, out (string, Func<object, object?>)[]? members))
        {
            const BindingFlags Own = BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic;
            members =
            [
                .. type.GetFields(Own).Where(field => Counts(field.FieldType))
                    .Select(field => (field.Name, (Func<object, object?>)field.GetValue)),
                .. type.GetProperties(BindingFlags.Instance | BindingFlags.Public)
                    .Where(property => IsNumber(property.PropertyType) && property.GetIndexParameters().Length == 0 && IsOurs(type))
                    .Where(property => type.GetField($"<{property.Name}>k__BackingField", Own) is null)
                    .Select(property => (property.Name, (Func<object, object?>)property.GetValue)),
            ];
            _members.Add(type, members);
        }

        return members;
    }

    private static bool Counts(Type type) =>
        IsNumber(type) || type.IsInterface || (typeof(IEnumerable).IsAssignableFrom(type) && type != typeof(string))
        || IsOurs(Nullable.GetUnderlyingType(type) ?? type)
        || type.FullName?.StartsWith("System.ValueTuple`", StringComparison.Ordinal) == true;

    private static bool IsNumber(Type type)
    {
        Type plain = Nullable.GetUnderlyingType(type) ?? type;
        return plain == typeof(double) || typeof(IQuantity).IsAssignableFrom(plain);
    }

    /// <summary>Values of the library; how a file was read is none.</summary>
    private static bool IsOurs(Type type) =>
        !type.IsEnum && type.Namespace is { } name && name.StartsWith("TieRodCalc", StringComparison.Ordinal)
        && name is not ("TieRodCalc.Yaml.Binding" or "TieRodCalc.Yaml.Tree" or "TieRodCalc.Yaml.Sources");
}
