using System.Reflection;
using System.Runtime.CompilerServices;

namespace SwapSolver.House.Tests.Built;

/// <summary>What a room shows to others, a line a member: types with what they are made of, and below each its constructors,
/// properties, fields and methods. What every record has by being one is left out.</summary>
internal static class Surface
{
    private const BindingFlags Shown = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly string[] OfEveryRecord = ["Equals", "GetHashCode", "ToString", "Deconstruct", "PrintMembers", "op_Equality", "op_Inequality", "<Clone>$"];

    private static readonly NullabilityInfoContext Nullability = new();

    private static readonly Dictionary<Type, string> Words = new()
    {
        [typeof(bool)] = "bool",
        [typeof(int)] = "int",
        [typeof(long)] = "long",
        [typeof(double)] = "double",
        [typeof(string)] = "string",
        [typeof(object)] = "object",
        [typeof(char)] = "char",
        [typeof(byte)] = "byte",
        [typeof(uint)] = "uint",
        [typeof(ulong)] = "ulong",
        [typeof(void)] = "void",
    };

    /// <summary>The lines of a room, in an order that does not hang on the build.</summary>
    public static IEnumerable<string> Of(Assembly room) => room.GetExportedTypes()
        .OrderBy(type => type.FullName, StringComparer.Ordinal)
        .SelectMany(type => Members(type).Order(StringComparer.Ordinal).Select(member => $"    {member}").Prepend(Head(type)));

    private static string Head(Type type)
    {
        var kind = type.IsEnum ? "enum" : type.IsInterface ? "interface" : type.IsSubclassOf(typeof(Delegate)) ? "delegate" : type.IsValueType ? "struct"
            : type is { IsAbstract: true, IsSealed: true } ? "static class" : type.IsAbstract ? "abstract class" : "class";
        var parents = new[] { type.BaseType }.Concat(type.GetInterfaces()).OfType<Type>()
            .Where(parent => parent != typeof(object) && parent != typeof(ValueType) && parent != typeof(Enum) && !(parent.IsGenericType && parent.GetGenericTypeDefinition() == typeof(IEquatable<>)))
            .Where(_ => !type.IsEnum && !type.IsSubclassOf(typeof(Delegate)))
            .Select(Name).ToList();
        return $"{type.Namespace}: {kind} {Name(type)}{(parents.Count > 0 ? " of " + string.Join(", ", parents) : "")}";
    }

    private static IEnumerable<string> Members(Type type)
    {
        if (type.IsEnum)
        {
            return Enum.GetNames(type).Select(name => $"{name} = {Convert.ToInt64(Enum.Parse(type, name), System.Globalization.CultureInfo.InvariantCulture)}");
        }

        var copies = type.GetConstructors(Shown).Where(made => made.GetParameters() is [var one] && one.ParameterType == type);
        return type.GetConstructors(Shown).Where(IsShown).Except(copies).Select(made => $"new({Parameters(made)})")
            .Concat(type.GetFields(Shown).Where(field => (field.IsPublic || field.IsFamily) && !field.IsSpecialName)
                .Select(field => $"{(field.IsLiteral ? "const " : field.IsStatic ? "static " : "")}{Name(field.FieldType)} {field.Name}"))
            .Concat(type.GetProperties(Shown).Where(property => property.GetMethod is { } get && IsShown(get) && property.Name != "EqualityContract").Select(Property))
            .Concat(type.GetMethods(Shown).Where(method => IsShown(method) && IsOurs(method)).Select(Method));
    }

    private static bool IsShown(MethodBase method) => method.IsPublic || method.IsFamily || method.IsFamilyOrAssembly;

    private static bool IsOurs(MethodInfo method) =>
        !OfEveryRecord.Contains(method.Name)
        && !(method.IsSpecialName && (method.Name.StartsWith("get_", StringComparison.Ordinal) || method.Name.StartsWith("set_", StringComparison.Ordinal)))
        && method.GetCustomAttribute<CompilerGeneratedAttribute>() is null;

    private static string Property(PropertyInfo property)
    {
        var set = property.SetMethod is { } setter && IsShown(setter)
            ? setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)) ? " init;" : " set;"
            : "";
        var index = property.GetIndexParameters() is { Length: > 0 } at ? $"[{string.Join(", ", at.Select(Parameter))}]" : "";
        return $"{Bearing(property.GetMethod!)}{Name(property.PropertyType)}{Mark(Nullability.Create(property).ReadState, property.PropertyType)} {property.Name}{index} {{ get;{set} }}";
    }

    private static string Method(MethodInfo method)
    {
        var generic = method.IsGenericMethod ? $"<{string.Join(", ", method.GetGenericArguments().Select(Name))}>" : "";
        return $"{Bearing(method)}{Name(method.ReturnType)}{Mark(Nullability.Create(method.ReturnParameter).ReadState, method.ReturnType)} {method.Name}{generic}({Parameters(method)})";
    }

    private static string Bearing(MethodInfo method) =>
        (method.IsFamily ? "protected " : "")
        + (method.IsStatic ? "static " : method.DeclaringType!.IsInterface ? "" : method.IsAbstract ? "abstract " : method.GetBaseDefinition() != method ? "override " : method.IsVirtual && !method.IsFinal ? "virtual " : "");

    private static string Parameters(MethodBase method) => string.Join(", ", method.GetParameters().Select(Parameter));

    private static string Parameter(ParameterInfo parameter) =>
        $"{(parameter.IsOut ? "out " : "")}{Name(parameter.ParameterType)}{Mark(Nullability.Create(parameter).WriteState, parameter.ParameterType)} {parameter.Name}{(parameter.HasDefaultValue ? $" = {parameter.DefaultValue ?? "null"}" : "")}";

    private static string Mark(NullabilityState state, Type type) => state == NullabilityState.Nullable && !type.IsValueType ? "?" : "";

    private static string Name(Type type) =>
        type.IsByRef ? Name(type.GetElementType()!)
        : type.IsArray ? $"{Name(type.GetElementType()!)}[]"
        : Nullable.GetUnderlyingType(type) is { } value ? $"{Name(value)}?"
        : Words.TryGetValue(type, out var word) ? word
        : type.IsGenericParameter || !type.IsGenericType ? Nested(type, type.Name)
        : Nested(type, $"{type.Name.Split('`')[0]}<{string.Join(", ", type.GetGenericArguments().Select(Name))}>");

    private static string Nested(Type type, string name) => type is { IsNested: true, IsGenericParameter: false } ? $"{Name(type.DeclaringType!)}.{name}" : name;
}
