using System.CodeDom.Compiler;
using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json.Serialization;
using TieRodCalc.Planning;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Tests;

/// <summary>The static fields of the three assemblies, and what they hold.</summary>
internal static class StaticState
{
    private const BindingFlags Static = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;
    private const BindingFlags Instance = BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    /// <summary>Types of others that cannot be changed, though their fields may say otherwise.</summary>
    private static readonly string[] s_unchangeable = ["UTF8Encoding", "SearchValues", "XNamespace"];

    private static readonly Assembly[] s_assemblies =
        [typeof(RodPlanner).Assembly, typeof(JobReader).Assembly, typeof(Application).Assembly];

    /// <summary>The static fields but for constants and for what compiler and generators make.</summary>
    public static IEnumerable<FieldInfo> Fields => s_assemblies.SelectMany(assembly => assembly.GetTypes())
        .Where(type => !type.ContainsGenericParameters)
        .SelectMany(type => type.GetFields(Static))
        .Where(one => !one.IsLiteral && WhyLeftOut(one) is null);

    /// <summary>What can be changed in a value, by the names of the types. Tables are looked at by <see cref="Tables"/>.</summary>
    public static IEnumerable<string> Changeable(object? value) => Parts(value, []).Where(IsChangeable).Select(part => part.GetType().Name);

    /// <summary>The entries of all arrays and dictionaries in the static fields, each with its field.</summary>
    public static IEnumerable<string> Tables() =>
        from field in Fields
        from table in Parts(field.GetValue(null), []).Where(IsTable)
        from entry in ((IEnumerable)table).Cast<object?>().Select((entry, at) => $"{at}: {Entry(entry)}")
        select $"{field.DeclaringType}.{field.Name} {entry}";

    /// <summary>Why a field that the compiler or a generator made is no state of ours, or null.</summary>
    private static string? WhyLeftOut(FieldInfo field)
    {
        Type type = field.DeclaringType!;
        return type.Name is "<>c" or "<>O" || type.Name.StartsWith("<>c__", StringComparison.Ordinal)
            ? "a lambda that captures nothing, made at its first use and kept"
            : type.FullName!.StartsWith("<PrivateImplementationDetails>", StringComparison.Ordinal) ? "the bytes of constants"
            : IsOfGenerator(type) || IsOfGenerator(field.FieldType) ? "made by the generator of System.Text.Json, which guards it"
            : type.GetCustomAttribute<GeneratedCodeAttribute>() is { } generated ? $"made by {generated.Tool}"
            : null;
    }

    private static bool IsOfGenerator(Type type) => typeof(JsonSerializerContext).IsAssignableFrom(type);

    /// <summary>A value and all that it is made of.</summary>
    private static IEnumerable<object> Parts(object? value, HashSet<object> seen)
    {
        if (value is null or string or decimal or Enum or Type or Delegate || value.GetType() is not { IsPrimitive: false } type
            || !seen.Add(value) || s_unchangeable.Any(name => type.Name.Contains(name, StringComparison.Ordinal)))
        {
            return [];
        }

        IEnumerable<object?> inside = IsTable(value) || IsReadOnlyList(type)
            ? ((IEnumerable)value).Cast<object?>()
            : Above(type).SelectMany(one => one.GetFields(Instance)).Select(field => field.GetValue(value));
        return inside.SelectMany(part => Parts(part, seen)).Prepend(value);
    }

    private static bool IsChangeable(object value) => value.GetType() is { IsValueType: false } type
        && !IsTable(value)
        && !IsReadOnlyList(type)
        && Above(type).SelectMany(one => one.GetFields(Instance)).Any(field => !field.IsInitOnly);

    private static bool IsTable(object value) =>
        value is Array || (value.GetType() is { IsGenericType: true } type && type.GetGenericTypeDefinition() == typeof(Dictionary<,>));

    private static bool IsReadOnlyList(Type type) => type.Name.StartsWith("<>z__ReadOnly", StringComparison.Ordinal)
        || type.Namespace is "System.Collections.Immutable" or "System.Collections.Frozen";

    private static IEnumerable<Type> Above(Type type)
    {
        for (Type? one = type; one is not null; one = one.BaseType)
        {
            yield return one;
        }
    }

    private static string Entry(object? entry) => entry is null || entry.GetType().IsValueType || entry is string
        ? $"{entry}"
        : $"{entry.GetType().Name} {RuntimeHelpers.GetHashCode(entry)}";
}
