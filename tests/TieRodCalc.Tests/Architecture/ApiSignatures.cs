using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace TieRodCalc.Tests.Architecture;

/// <summary>Types and members as C# declares them, and the ids that the XML documentation knows them by.</summary>
internal static partial class ApiSignatures
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>A type; a record with its positions.</summary>
    public static string Of(Type type)
    {
        string positions = Positions(type) is { } made ? $"({Parameters(made)})" : "";
        string flags = type.IsDefined(typeof(FlagsAttribute)) ? "[Flags] " : "";
        return $"{flags}public {PublicApi.Kind(type)} {PublicApi.Name(type)}{positions}";
    }

    public static string Of(MemberInfo member) => member switch
    {
        PropertyInfo property => Property(property),
        ConstructorInfo made => $"new {PublicApi.Name(made.DeclaringType!)}({Parameters(made)})",
        MethodInfo method => Method(method),
        FieldInfo { DeclaringType.IsEnum: false, IsLiteral: true } constant =>
            $"const {PublicApi.Name(constant.FieldType)} {constant.Name} = {Written(constant.GetRawConstantValue())}",
        FieldInfo { DeclaringType.IsEnum: true } => member.Name,
        _ => throw new NotSupportedException($"{member}"),
    };

    /// <summary>
    /// What a type has of its own, in the order of the source: the values of an enumeration; else constructors, properties and methods,
    /// without what the compiler makes of a record and without the constructor that takes nothing.
    /// </summary>
    public static IEnumerable<MemberInfo> Members(Type type) => type.IsEnum
        ? type.GetFields(BindingFlags.Public | BindingFlags.Static)
        :
        [
            .. type.GetConstructors(Declared)
                .Where(made => made.GetParameters().Length > 0 && made != Positions(type))
                .OrderBy(made => made.MetadataToken),
            .. type.GetFields(Declared).OrderBy(field => field.MetadataToken),
            .. type.GetProperties(Declared).OrderBy(property => property.MetadataToken),
            .. type.GetMethods(Declared).Where(method => !PublicApi.IsWritten(method)).OrderBy(method => method.MetadataToken),
        ];

    /// <summary>The id of a type or member in the XML documentation (C# standard, annex D.4.2).</summary>
    public static string Id(MemberInfo member) => member switch
    {
        Type type => $"T:{IdOf(type)}",
        FieldInfo => $"F:{IdOf(member.DeclaringType!)}.{member.Name}",
        PropertyInfo property => $"P:{IdOf(member.DeclaringType!)}.{member.Name}{Arguments(property.GetIndexParameters())}",
        MethodBase { IsGenericMethod: true } => throw new NotSupportedException($"{member} is generic"),
        MethodBase made =>
            $"M:{IdOf(member.DeclaringType!)}.{(made.IsConstructor ? "#ctor" : made.Name)}{Arguments(made.GetParameters())}",
        _ => throw new NotSupportedException($"{member}"),
    };

    /// <summary>The constructor whose parameters are the properties of a record.</summary>
    private static ConstructorInfo? Positions(Type type) => type.GetMethod("<Clone>$") is null && !type.IsValueType
        ? null
        : type.GetConstructors(Declared).FirstOrDefault(made => made.GetParameters() is { Length: > 0 } parameters
            && parameters.All(parameter => type.GetProperty(parameter.Name!)?.PropertyType == parameter.ParameterType));

    private static string Property(PropertyInfo property)
    {
        string text = Plain(PublicApi.Property(property), property.PropertyType, property, property.DeclaringType!);
        return text.Replace(" Item[", " this[", StringComparison.Ordinal);
    }

    private static string Method(MethodInfo method)
    {
        string result = WithNames(PublicApi.Name(new NullabilityInfoContext().Create(method.ReturnParameter)), method.ReturnParameter);
        return $"{(method.IsStatic ? "static " : "")}{result} {method.Name}({Parameters(method)})";
    }

    private static string Parameters(MethodBase method) => string.Join(", ", method.GetParameters().Select(Parameter));

    private static string Parameter(ParameterInfo parameter)
    {
        string type = WithNames(PublicApi.Name(new NullabilityInfoContext().Create(parameter)), parameter);
        string text = $"{(parameter.IsOut ? "out " : "")}{type} {parameter.Name}";
        string plain = Plain(text, parameter.ParameterType, parameter, parameter.Member.DeclaringType!);
        return parameter.HasDefaultValue ? $"{plain} = {Written(parameter.DefaultValue)}" : plain;
    }

    private static string Written(object? value) => value switch
    {
        null => "null",
        bool truth => truth ? "true" : "false",
        Enum member => $"{PublicApi.Name(member.GetType())}.{member}",
        IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
        _ => throw new NotSupportedException($"{value}"),
    };

    /// <summary>
    /// A signature in C#'s words. Of the type parameter <c>T</c> reflection says that it may be null wherever T may be; what the source
    /// says is in the attribute of the compiler (1: not, 2: may), which the type carries where its members do not.
    /// </summary>
    private static string Plain(string signature, Type type, ICustomAttributeProvider place, Type declaring)
    {
        string words = signature.Replace("Int64", "long", StringComparison.Ordinal);
        if (!type.IsGenericParameter)
        {
            return words;
        }

        byte? said = place.GetCustomAttributes(typeof(NullableAttribute), false).Cast<NullableAttribute>()
            .Select(attribute => (byte?)attribute.NullableFlags[0]).FirstOrDefault()
            ?? declaring.GetCustomAttribute<NullableContextAttribute>()?.Flag;
        return said == 2 ? words : words.Replace($"{type.Name}? ", $"{type.Name} ", StringComparison.Ordinal);
    }

    /// <summary>A signature with the names that its tuple gives to its items.</summary>
    private static string WithNames(string type, ParameterInfo parameter)
    {
        IList<string?> names = parameter.GetCustomAttribute<TupleElementNamesAttribute>()?.TransformNames ?? [];
        return names.Count == 0 ? type : Tuple().Replace(type, tuple =>
            $"({string.Join(", ", tuple.Groups["items"].Value.Split(", ").Zip(names, (item, name) => $"{item} {name}"))})");
    }

    private static string Arguments(ParameterInfo[] parameters) =>
        parameters.Length == 0 ? "" : $"({string.Join(",", parameters.Select(parameter => IdOf(parameter.ParameterType)))})";

    private static string IdOf(Type type) =>
        type.IsGenericParameter ? $"`{type.GenericParameterPosition}"
        : type.IsByRef ? $"{IdOf(type.GetElementType()!)}@"
        : type.IsArray ? $"{IdOf(type.GetElementType()!)}[]"
        : type.IsConstructedGenericType
            ? $"{type.GetGenericTypeDefinition().FullName!.Split('`')[0]}{{{string.Join(",", type.GetGenericArguments().Select(IdOf))}}}"
        : type.FullName!.Replace('+', '.');

    [GeneratedRegex(@"\((?<items>[^()]*)\)")]
    private static partial Regex Tuple();
}
