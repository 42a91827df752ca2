using Google.Protobuf.Reflection;

namespace SwapSolver.Console.Arguments;

/// <summary>Reads the values of the contract's enums as a caller types them: in either case, with - or _.</summary>
internal static class EnumWord
{
    /// <summary>Reads one value by name; the value that says nothing is not offered.</summary>
    public static Checked<T> Read<T>(EnumDescriptor descriptor, string text)
        where T : struct, Enum
    {
        var name = text.Trim().Replace('-', '_').ToUpperInvariant();
        var found = descriptor.FindValueByName(name);
        if (found is { Number: not 0 })
        {
            return (T)Enum.ToObject(typeof(T), found.Number);
        }

        var known = descriptor.Values.Where(value => value.Number != 0).Select(value => value.Name);
        return Checked<T>.Bad($"'{text}' is not known. Write one of {string.Join(", ", known)}.");
    }
}
