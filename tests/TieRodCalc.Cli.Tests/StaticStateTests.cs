using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Reflection;
using System.Text;

namespace TieRodCalc.Cli.Tests;

/// <summary>
/// Nothing static is changed in any of the three assemblies: every static field is readonly, and so is what it holds, down to the last
/// part. Arrays and dictionaries that are kept as tables are the exception; no command may leave one of them changed.
/// </summary>
public class StaticStateTests
{
    public static TheoryData<object, string?> Holders => new()
    {
        { "text", null },
        { 1.5, null },
        { UnitsNet.Length.FromInches(1), null },
        { ImmutableArray.Create("a"), null },
        { new[] { "a" }.ToFrozenSet(), null },
        { (IReadOnlyList<string>)["a", "b"], null },
        { new[] { 1 }, null },
        { new Dictionary<string, int> { ["a"] = 1 }, null },
        { new List<int>(), "List`1" },
        { new StringBuilder(), "StringBuilder" },
        { ImmutableArray.Create(new List<int>()), "List`1" },
        { new Dictionary<string, List<int>> { ["a"] = [] }, "List`1" },
        { new[] { new Tuple<List<int>>([]) }, "List`1" },
    };

    [Fact]
    public void Every_static_field_is_readonly_and_holds_what_cannot_be_changed()
    {
        FieldInfo[] fields = [.. StaticState.Fields];
        Assert.True(fields.Length > 100, $"{fields.Length} fields");
        string[] changeable =
        [
            .. fields.Where(field => !field.IsInitOnly).Select(field => $"{field.DeclaringType}.{field.Name} is not readonly"),
            .. fields.SelectMany(field => StaticState.Changeable(field.GetValue(null)).Select(part =>
                $"{field.DeclaringType}.{field.Name} holds {part}")),
        ];
        Assert.True(changeable.Length == 0, string.Join('\n', changeable));
    }

    [Theory]
    [MemberData(nameof(Holders))]
    public void What_can_be_changed_is_found(object held, string? found) =>
        Assert.Equal(found, StaticState.Changeable(held).FirstOrDefault());
}
