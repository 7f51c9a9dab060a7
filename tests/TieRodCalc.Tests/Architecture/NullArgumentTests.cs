using System.Linq.Expressions;
using System.Reflection;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace TieRodCalc.Tests.Architecture;

/// <summary>Every public method refuses a null that it does not ask for, by the name of the parameter, before it does anything.</summary>
public class NullArgumentTests
{
    [Fact]
    public void A_null_is_refused_by_the_name_of_its_parameter()
    {
        List<string> taken = [];
        int refused = 0;
        foreach (MethodInfo method in Methods())
        {
            object? owner = method.IsStatic ? null : RuntimeHelpers.GetUninitializedObject(method.DeclaringType!);
            ParameterInfo[] parameters = method.GetParameters();
            foreach (ParameterInfo parameter in parameters.Where(IsNeeded))
            {
                object?[] arguments = [.. parameters.Select(other => other == parameter ? null : Sample(other))];
                Exception? thrown = Record.Exception(() => Walk(method.Invoke(owner, BindingFlags.DoNotWrapExceptions, null, arguments, null)));
                if (thrown is ArgumentNullException { ParamName: { } name } && name == parameter.Name)
                {
                    refused++;
                }
                else
                {
                    taken.Add($"{method.DeclaringType!.Name}.{method.Name}, {parameter.Name}: {thrown?.GetType().Name ?? "taken"}");
                }
            }
        }

        Assert.True(taken.Count == 0, string.Join('\n', taken));
        Assert.True(refused > 60, $"{refused} refused");
    }

    private static IEnumerable<MethodInfo> Methods() =>
        from type in typeof(TieRodCalc.Parts.Sleeve).Assembly.GetExportedTypes()
        where !typeof(Delegate).IsAssignableFrom(type)
        from method in type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly)
        where !method.IsSpecialName && !method.IsGenericMethod && method.GetCustomAttribute<CompilerGeneratedAttribute>() is null
        select method;

    private static bool IsNeeded(ParameterInfo parameter) =>
        !parameter.ParameterType.IsValueType && !parameter.ParameterType.IsByRef
        && new NullabilityInfoContext().Create(parameter).WriteState == NullabilityState.NotNull;

    /// <summary>Something that is no null, and nothing more: the check of a parameter must not look at another one before.</summary>
    private static object? Sample(ParameterInfo parameter)
    {
        Type type = parameter.ParameterType;
        if (!type.IsValueType && !IsNeeded(parameter))
        {
            return null;
        }

        if (type == typeof(string))
        {
            return string.Empty;
        }

        if (typeof(Delegate).IsAssignableFrom(type))
        {
            MethodInfo invoke = type.GetMethod("Invoke")!;
            return Expression.Lambda(
                type, Expression.Default(invoke.ReturnType), invoke.GetParameters().Select(of => Expression.Parameter(of.ParameterType))).Compile();
        }

        if (typeof(IQuantity).IsAssignableFrom(type))
        {
            return Quantity.From(1, ((IQuantity)RuntimeHelpers.GetUninitializedObject(type)).Unit);
        }

        return type is { IsInterface: true, IsGenericType: true }
            ? Array.CreateInstance(type.GetGenericArguments()[0], 0)
            : RuntimeHelpers.GetUninitializedObject(type);
    }

    /// <summary>A sequence checks what it was given when it is walked.</summary>
    private static void Walk(object? result)
    {
        if (result is System.Collections.IEnumerable sequence and not string)
        {
            foreach (object? _ in sequence)
            {
                return;
            }
        }
    }
}
