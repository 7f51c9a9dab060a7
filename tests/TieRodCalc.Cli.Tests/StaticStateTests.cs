using System.CodeDom.Compiler;
using System.Collections;
using System.Reflection;
using System.Text;
using System.Text.Json.Serialization;
using TieRodCalc.Planning;
using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Tests;

/// <summary>
/// Nothing static can be changed in any of the three assemblies: every static field is readonly, and what it holds, down to the last
/// part, is readonly too. An array or a dictionary is not, wherever it is kept.
/// </summary>
public class StaticStateTests
{
    private const BindingFlags Static = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;
    private const BindingFlags Instance = BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    /// <summary>Types of the runtime and of UnitsNet that cannot be changed, though their fields may say otherwise.</summary>
    private static readonly string[] s_unchangeable = ["UTF8Encoding", "SearchValues", "DBNull"];

    private static readonly Assembly[] s_assemblies =
        [typeof(RodPlanner).Assembly, typeof(JobReader).Assembly, typeof(Application).Assembly];

    [Fact]
    public void Every_static_field_is_readonly_and_holds_what_cannot_be_changed()
    {
        FieldInfo[] fields =
        [
            .. s_assemblies.SelectMany(assembly => assembly.GetTypes()).Where(type => !type.ContainsGenericParameters)
                .SelectMany(type => type.GetFields(Static)).Where(field => !field.IsLiteral && WhyLeftOut(field) is null),
        ];
        Assert.True(fields.Length > 50, $"{fields.Length} fields");
        string[] changeable =
        [
            .. fields.Where(field => !field.IsInitOnly).Select(field => $"{Name(field)} is not readonly"),
            .. fields.SelectMany(field => Changeable(field.GetValue(null), []).Select(part => $"{Name(field)} holds {part}")),
        ];
        Assert.True(changeable.Length == 0, string.Join('\n', changeable));
    }

    [Theory]
    [MemberData(nameof(Holders))]
    public void What_can_be_changed_is_found(object held, string? found) =>
        Assert.Equal(found is null ? [] : [found], Changeable(held, []));

    public static TheoryData<object, string?> Holders => new()
    {
        { "text", null },
        { 1.5, null },
        { UnitsNet.Length.FromInches(1), null },
        { System.Collections.Immutable.ImmutableArray.Create("a"), null },
        { System.Collections.Frozen.FrozenSet.ToFrozenSet(["a"]), null },
        { (IReadOnlyList<string>)["a", "b"], null },
        { new KeyValuePair<string, int>("a", 1), null },
        { new[] { 1 }, "Int32[]" },
        { new Dictionary<string, int>(), "Dictionary`2" },
        { new List<int>(), "List`1" },
        { new StringBuilder(), "StringBuilder" },
        { System.Collections.Immutable.ImmutableArray.Create(new StringBuilder()), "StringBuilder" },
        { new Tuple<int[]>([1]), "Int32[]" },
    };

    /// <summary>Why a field that the compiler or a generator made is no state of ours, or null.</summary>
    private static string? WhyLeftOut(FieldInfo field)
    {
        Type type = field.DeclaringType!;
        return type.Name is "<>c" or "<>O" || type.Name.StartsWith("<>c__", StringComparison.Ordinal)
            ? "a lambda that captures nothing, made at its first use and kept"
            : type.FullName!.StartsWith("<PrivateImplementationDetails>", StringComparison.Ordinal) ? "the bytes of constants"
            : typeof(JsonSerializerContext).IsAssignableFrom(type) ? "made by the generator of System.Text.Json, which guards it"
            : type.GetCustomAttribute<GeneratedCodeAttribute>() is { } generated ? $"made by {generated.Tool}"
            : null;
    }

    private static IEnumerable<string> Changeable(object? value, HashSet<object> seen)
    {
        if (value is null or string or decimal or Enum or Type or Delegate || value.GetType() is not { IsPrimitive: false } type
            || !seen.Add(value) || s_unchangeable.Any(name => type.Name.Contains(name, StringComparison.Ordinal)))
        {
            return [];
        }

        bool readOnlyList = type.Name.StartsWith("<>z__ReadOnly", StringComparison.Ordinal);
        if (readOnlyList || type.Namespace is "System.Collections.Immutable" or "System.Collections.Frozen")
        {
            return ((IEnumerable)value).Cast<object?>().SelectMany(item => Changeable(item, seen));
        }

        FieldInfo[] fields = [.. Above(type).SelectMany(one => one.GetFields(Instance))];
        return type.IsArray || fields.Any(field => !field.IsInitOnly && !type.IsValueType)
            ? [type.Name]
            : fields.SelectMany(field => Changeable(field.GetValue(value), seen));
    }

    private static IEnumerable<Type> Above(Type type)
    {
        for (Type? one = type; one is not null; one = one.BaseType)
        {
            yield return one;
        }
    }

    private static string Name(FieldInfo field) => $"{field.DeclaringType!.FullName}.{field.Name}";
}
