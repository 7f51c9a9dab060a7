using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text;

namespace TieRodCalc.Tests.Architecture;

/// <summary>Writes the public face of an assembly as sorted lines.</summary>
internal static class PublicApi
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly Dictionary<Type, string> s_keywords = new()
    {
        [typeof(void)] = "void",
        [typeof(bool)] = "bool",
        [typeof(int)] = "int",
        [typeof(double)] = "double",
        [typeof(decimal)] = "decimal",
        [typeof(string)] = "string",
        [typeof(object)] = "object",
    };

    public static string Of(Assembly assembly)
    {
        StringBuilder text = new();
        foreach (Type type in assembly.GetExportedTypes().OrderBy(type => type.FullName, StringComparer.Ordinal))
        {
            text.Append(CultureInfo.InvariantCulture, $"{Kind(type)} {type.Namespace}.{Name(type)}\n");
            foreach (string member in Members(type).Order(StringComparer.Ordinal))
            {
                text.Append(CultureInfo.InvariantCulture, $"  {member}\n");
            }
        }

        return text.ToString();
    }

    public static string Kind(Type type)
    {
        bool record = type.GetMethod("<Clone>$") is not null
            || (type.IsValueType && type.GetMethod("PrintMembers", BindingFlags.NonPublic | BindingFlags.Instance) is not null);
        string kind = type.IsEnum ? "enum"
            : type.IsInterface ? "interface"
            : type.IsValueType ? (record ? "record struct" : "struct")
            : record ? "record"
            : "class";
        string modifier = type.IsEnum || type.IsInterface ? ""
            : type.IsValueType ? (type.IsDefined(typeof(IsReadOnlyAttribute)) ? "readonly " : "")
            : type is { IsAbstract: true, IsSealed: true } ? "static "
            : type.IsAbstract ? "abstract "
            : type.IsSealed ? "sealed "
            : "";
        return modifier + kind;
    }

    private static IEnumerable<string> Members(Type type)
    {
        if (type.IsEnum)
        {
            return Enum.GetNames(type).Select(name => $"{Convert.ToInt64(Enum.Parse(type, name), CultureInfo.InvariantCulture):D2} {name}");
        }

        return
        [
            .. type.GetConstructors(Declared).Select(made => $"new({Parameters(made)})"),
            .. type.GetFields(Declared).Select(Field),
            .. type.GetProperties(Declared).Select(Property),
            .. type.GetMethods(Declared).Where(method => !IsWritten(method)).Select(Method),
            .. type.GetInterfaces().Where(face => !IsEquality(face)).Select(face => $": {Name(face)}"),
        ];
    }

    /// <summary>Accessors, and what the compiler writes for a record.</summary>
    public static bool IsWritten(MethodInfo method) =>
        method.IsDefined(typeof(CompilerGeneratedAttribute)) || method.Name.StartsWith('<')
        || (method.IsSpecialName && !method.Name.StartsWith("op_", StringComparison.Ordinal));

    private static bool IsEquality(Type face) => face.IsGenericType && face.GetGenericTypeDefinition() == typeof(IEquatable<>);

    private static string Field(FieldInfo field) =>
        $"{Static(field.IsStatic)}{Name(new NullabilityInfoContext().Create(field))} {field.Name}";

    public static string Property(PropertyInfo property)
    {
        MethodInfo? get = property.GetMethod is { IsPublic: true } getter ? getter : null;
        MethodInfo? set = property.SetMethod is { IsPublic: true } setter ? setter : null;
        bool init = set?.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)) == true;
        string required = property.IsDefined(typeof(RequiredMemberAttribute)) ? "required " : "";
        string accessors = $"{(get is null ? "" : "get; ")}{(set is null ? "" : init ? "init; " : "set; ")}";
        string index = string.Join(", ", property.GetIndexParameters().Select(Parameter));
        string name = index.Length == 0 ? property.Name : $"{property.Name}[{index}]";
        string type = Name(new NullabilityInfoContext().Create(property));
        return $"{Static((get ?? set)!.IsStatic)}{required}{type} {name} {{ {accessors}}}";
    }

    private static string Method(MethodInfo method)
    {
        string arguments = method.IsGenericMethod ? $"<{string.Join(", ", method.GetGenericArguments().Select(Name))}>" : "";
        string result = Name(new NullabilityInfoContext().Create(method.ReturnParameter));
        return $"{Static(method.IsStatic)}{result} {method.Name}{arguments}({Parameters(method)})";
    }

    private static string Parameters(MethodBase method) => string.Join(", ", method.GetParameters().Select(Parameter));

    private static string Parameter(ParameterInfo parameter)
    {
        string way = parameter.IsOut ? "out " : parameter.ParameterType.IsByRef ? (parameter.IsIn ? "in " : "ref ") : "";
        string otherwise = parameter.HasDefaultValue
            ? string.Create(CultureInfo.InvariantCulture, $" = {parameter.RawDefaultValue ?? "default"}")
            : "";
        return $"{way}{Name(new NullabilityInfoContext().Create(parameter))} {parameter.Name}{otherwise}";
    }

    private static string Static(bool isStatic) => isStatic ? "static " : "";

    /// <summary>A type with what is said about null.</summary>
    public static string Name(NullabilityInfo info)
    {
        Type type = info.Type.IsByRef ? info.Type.GetElementType()! : info.Type;
        if (Nullable.GetUnderlyingType(type) is { } value)
        {
            return Name(value) + "?";
        }

        string name = type.IsArray && info.ElementType is { } element ? $"{Name(element)}[]"
            : type.IsGenericType && info.GenericTypeArguments.Length > 0 ? Generic(type, info.GenericTypeArguments.Select(Name))
            : Name(type);
        return !type.IsValueType && info.ReadState == NullabilityState.Nullable ? name + "?" : name;
    }

    public static string Name(Type type) =>
        s_keywords.TryGetValue(type, out string? keyword) ? keyword
        : Nullable.GetUnderlyingType(type) is { } value ? Name(value) + "?"
        : type.IsGenericParameter ? type.Name
        : type.IsArray ? $"{Name(type.GetElementType()!)}[]"
        : type.IsGenericType ? Generic(type, type.GetGenericArguments().Select(Name))
        : Full(type);

    private static string Generic(Type type, IEnumerable<string> arguments)
    {
        string list = string.Join(", ", arguments);
        return type.FullName?.StartsWith("System.ValueTuple`", StringComparison.Ordinal) == true
            ? $"({list})"
            : $"{Full(type.GetGenericTypeDefinition()).Split('`')[0]}<{list}>";
    }

    /// <summary>A type by its own name; a nested one after the type that it stands in.</summary>
    private static string Full(Type type) => type.DeclaringType is { } outer ? $"{Full(outer)}.{type.Name}" : type.Name;
}
