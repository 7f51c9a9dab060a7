using System.Buffers.Binary;
using System.Reflection;
using System.Reflection.Emit;

namespace TieRodCalc.Tests.Architecture;

/// <summary>Which types a type uses: in its signatures, its fields, and the bodies of its methods.</summary>
internal static class TypeUses
{
    private const BindingFlags Declared =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>The first byte of an instruction of two bytes (ECMA-335, partition III, 1.2.1).</summary>
    private const byte TwoBytes = 0xFE;

    private static readonly Dictionary<int, OpCode> s_instructions = typeof(OpCodes)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(field => (OpCode)field.GetValue(null)!)
        .ToDictionary(instruction => instruction.Value & 0xFFFF);

    /// <summary>The types used, those that they are made of (arguments of generics, elements of arrays) included.</summary>
    public static IEnumerable<Type> Of(Type type) => Direct(type).SelectMany(Parts).Distinct();

    private static IEnumerable<Type> Direct(Type type) =>
    [
        .. type.BaseType is { } parent ? [parent] : Type.EmptyTypes,
        .. type.GetInterfaces(),
        .. type.GetCustomAttributesData().Select(attribute => attribute.AttributeType),
        .. type.GetFields(Declared).Select(field => field.FieldType),
        .. type.GetProperties(Declared).Select(property => property.PropertyType),
        .. type.GetConstructors(Declared).SelectMany(Method),
        .. type.GetMethods(Declared).SelectMany(Method),
    ];

    private static IEnumerable<Type> Method(MethodBase method) =>
    [
        .. method is MethodInfo { ReturnType: { } result } ? [result] : Type.EmptyTypes,
        .. method.GetParameters().Select(parameter => parameter.ParameterType),
        .. method.GetMethodBody() is { } body ? Body(method, body) : [],
    ];

    private static IEnumerable<Type> Body(MethodBase method, MethodBody body)
    {
        byte[] code = body.GetILAsByteArray() ?? [];
        Type[]? ofType = method.DeclaringType is { IsGenericType: true } type ? type.GetGenericArguments() : null;
        foreach (LocalVariableInfo local in body.LocalVariables)
        {
            yield return local.LocalType;
        }

        Type[]? ofMethod = method.IsGenericMethod ? method.GetGenericArguments() : null;
        for (int at = 0; at < code.Length;)
        {
            int value = code[at++];
            OpCode instruction = s_instructions[value == TwoBytes ? (value << 8) | code[at++] : value];
            switch (instruction.OperandType)
            {
                case OperandType.InlineField or OperandType.InlineMethod or OperandType.InlineTok or OperandType.InlineType:
                    int token = BinaryPrimitives.ReadInt32LittleEndian(code.AsSpan(at));
                    MemberInfo? member = method.Module.ResolveMember(token, ofType, ofMethod);
                    if ((member as Type ?? member?.DeclaringType) is { } used)
                    {
                        yield return used;
                    }

                    foreach (Type argument in member is MethodInfo { IsGenericMethod: true } generic ? generic.GetGenericArguments() : [])
                    {
                        yield return argument;
                    }

                    break;
            }

            at += Operand(instruction, code, at);
        }
    }

    private static int Operand(OpCode instruction, byte[] code, int at) => instruction.OperandType switch
    {
        OperandType.InlineNone => 0,
        OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => sizeof(byte),
        OperandType.InlineVar => sizeof(short),
        OperandType.InlineI8 or OperandType.InlineR => sizeof(long),
        OperandType.InlineSwitch => sizeof(int) * (1 + BinaryPrimitives.ReadInt32LittleEndian(code.AsSpan(at))),
        _ => sizeof(int),
    };

    private static IEnumerable<Type> Parts(Type type) =>
    [
        type.IsGenericType ? type.GetGenericTypeDefinition() : type,
        .. type.HasElementType ? Parts(type.GetElementType()!) : [],
        .. type.IsGenericType ? type.GetGenericArguments().SelectMany(Parts) : [],
    ];
}
