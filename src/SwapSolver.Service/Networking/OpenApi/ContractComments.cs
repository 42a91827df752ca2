using Google.Protobuf.Reflection;

namespace SwapSolver.Service.Networking.OpenApi;

/// <summary>The comments of the protos, by the full name of what they stand at.</summary>
internal sealed class ContractComments
{
    /// <summary>Name of the descriptor set that the contract carries.</summary>
    private const string Resource = "swapsolver.protoset";

    private readonly Dictionary<string, string> comments = [];

    /// <summary>Reads them.</summary>
    public ContractComments()
    {
        using var stream = typeof(V1.Formula).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"the contract carries no {Resource}");
        foreach (var file in FileDescriptorSet.Parser.ParseFrom(stream).File)
        {
            foreach (var place in file.SourceCodeInfo?.Location ?? [])
            {
                if (place.HasLeadingComments && NameOf(file, place.Path) is { } name)
                {
                    comments[name] = string.Join(' ', place.LeadingComments.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries));
                }
            }
        }
    }

    /// <summary>What stands at a name; empty where nothing does.</summary>
    public string Of(string fullName) => comments.GetValueOrDefault(fullName, string.Empty);

    /// <summary>The full name of what a path of field numbers leads to, as descriptor.proto numbers them; null for what has none.</summary>
    private static string? NameOf(FileDescriptorProto file, Google.Protobuf.Collections.RepeatedField<int> path)
    {
        if (path.Count < 2)
        {
            return null;
        }

        return path[0] switch
        {
            FileDescriptorProto.MessageTypeFieldNumber => InMessage(file.MessageType[path[1]], $"{file.Package}.{file.MessageType[path[1]].Name}", [.. path.Skip(2)]),
            FileDescriptorProto.EnumTypeFieldNumber => InEnum(file.EnumType[path[1]], $"{file.Package}.{file.EnumType[path[1]].Name}", [.. path.Skip(2)]),
            FileDescriptorProto.ServiceFieldNumber => InService(file.Service[path[1]], $"{file.Package}.{file.Service[path[1]].Name}", [.. path.Skip(2)]),
            _ => null,
        };
    }

    private static string? InMessage(DescriptorProto message, string name, int[] path) => path switch
    {
        [] => name,
        [DescriptorProto.FieldFieldNumber, var field] => $"{name}.{message.Field[field].Name}",
        [DescriptorProto.NestedTypeFieldNumber, var nested, .. var rest] => InMessage(message.NestedType[nested], $"{name}.{message.NestedType[nested].Name}", rest),
        [DescriptorProto.EnumTypeFieldNumber, var nested, .. var rest] => InEnum(message.EnumType[nested], $"{name}.{message.EnumType[nested].Name}", rest),
        _ => null,
    };

    private static string? InEnum(EnumDescriptorProto words, string name, int[] path) => path switch
    {
        [] => name,
        [EnumDescriptorProto.ValueFieldNumber, var value] => $"{name}.{words.Value[value].Name}",
        _ => null,
    };

    private static string? InService(ServiceDescriptorProto service, string name, int[] path) => path switch
    {
        [] => name,
        [ServiceDescriptorProto.MethodFieldNumber, var method] => $"{name}.{service.Method[method].Name}",
        _ => null,
    };
}
