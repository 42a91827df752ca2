using System.Reflection;

namespace SwapSolver.House.Tests.Built;

/// <summary>Which types of a room use which others of it: by what they are made of, what they say in signatures, and what their code
/// names. A constant that the compiler copied is no use any more.</summary>
internal static class TypeUses
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>Every pair of a type and another of the same room that it uses, both as the outermost type of their file.</summary>
    public static IReadOnlyCollection<(Type User, Type Used)> Of(Assembly room)
    {
        var uses = new HashSet<(Type, Type)>();
        foreach (var type in room.GetTypes())
        {
            foreach (var used in Named(type).SelectMany(Parts).Where(used => used.Assembly == room))
            {
                uses.Add((Outermost(type), Outermost(used)));
            }
        }

        uses.RemoveWhere(pair => pair.Item1 == pair.Item2);
        return uses;
    }

    private static IEnumerable<Type> Named(Type type) =>
    [
        .. type.BaseType is { } parent ? [parent] : Type.EmptyTypes,
        .. type.GetInterfaces(),
        .. type.GetFields(Declared).Select(field => field.FieldType),
        .. type.GetMethods(Declared).SelectMany(method => Signature(method).Append(method.ReturnType)),
        .. type.GetConstructors(Declared).SelectMany(Signature),
        .. type.GetMethods(Declared).SelectMany(NamedInCode),
        .. type.GetConstructors(Declared).SelectMany(NamedInCode),
    ];

    private static IEnumerable<Type> Signature(MethodBase method) => method.GetParameters().Select(parameter => parameter.ParameterType);

    private static IEnumerable<Type> NamedInCode(MethodBase method)
    {
        if (method.GetMethodBody() is not { } body)
        {
            return [];
        }

        var ofType = method.DeclaringType!.GetGenericArguments();
        var ofMethod = method.IsGenericMethod ? method.GetGenericArguments() : [];
        return body.LocalVariables.Select(local => local.LocalType).Concat(
            OperandSizes.Tokens(body.GetILAsByteArray()!).SelectMany(token => method.Module.ResolveMember(token, ofType, ofMethod) switch
            {
                Type type => [type],
                FieldInfo field => [field.DeclaringType!, field.FieldType],
                MethodInfo called => [called.DeclaringType!, called.ReturnType, .. called.IsGenericMethod ? called.GetGenericArguments() : []],
                MemberInfo other => (Type[])[other.DeclaringType!],
                null => [],
            }));
    }

    /// <summary>A type and what it is made of: the element of an array, the arguments of a generic type.</summary>
    private static IEnumerable<Type> Parts(Type type) =>
        type.HasElementType ? Parts(type.GetElementType()!)
        : type.IsGenericType ? type.GetGenericArguments().SelectMany(Parts).Append(type.GetGenericTypeDefinition())
        : [type];

    private static Type Outermost(Type type) => type.DeclaringType is { } outer ? Outermost(outer) : type;
}
