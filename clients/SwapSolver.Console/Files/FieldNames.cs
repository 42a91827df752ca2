using Google.Protobuf.Reflection;

namespace SwapSolver.Console.Files;

/// <summary>The names that fields have in a formula file.</summary>
internal static class FieldNames
{
    /// <summary>The field of that name, in lowerCamelCase or as the proto writes it; null where there is none.</summary>
    public static FieldDescriptor? Find(MessageDescriptor message, string name)
    {
        foreach (var field in message.Fields.InDeclarationOrder())
        {
            if (field.JsonName == name || field.Name == name)
            {
                return field;
            }
        }

        return null;
    }

    /// <summary>The names nearest to a mistyped one; where none is near, all of them.</summary>
    public static string Suggest(MessageDescriptor message, string name)
    {
        var near = NearestNames.Suggest(name, message.Fields.InDeclarationOrder().Select(field => field.JsonName));
        return near.Length > 0 ? near : $" Known here: {List(message)}.";
    }

    /// <summary>All names, in the order of the contract.</summary>
    public static string List(MessageDescriptor message) =>
        string.Join(", ", message.Fields.InDeclarationOrder().Select(field => field.JsonName));
}
