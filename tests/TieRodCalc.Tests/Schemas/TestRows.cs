using System.Reflection;

namespace TieRodCalc.Tests.Schemas;

/// <summary>The rows of the reader's own tests, so that the schemas are held against the same cases.</summary>
internal static class TestRows
{
    /// <summary>Every row of every theory of a class.</summary>
    public static IEnumerable<object?[]> Of(Type tests) =>
        tests.GetMethods().SelectMany(method => method.GetCustomAttributes<InlineDataAttribute>().SelectMany(row => row.GetData(method)))
            .Concat(tests.GetProperties(BindingFlags.Static | BindingFlags.Public)
                .SelectMany(property => property.GetValue(null) as IEnumerable<object?[]> ?? []));
}
