using Google.Protobuf.Reflection;
using ServiceDescriptor = Google.Protobuf.Reflection.ServiceDescriptor;

namespace SwapSolver.Service.Access;

/// <summary>The services of the contract, as its assembly holds them.</summary>
internal static class Contract
{
    /// <summary>Every service, by its name.</summary>
    public static IReadOnlyList<ServiceDescriptor> Services { get; } =
    [
        .. typeof(V1.Formula).Assembly.GetTypes()
            .Where(type => type.Name.EndsWith("Reflection", StringComparison.Ordinal))
            .Select(type => type.GetProperty("Descriptor")?.GetValue(null))
            .OfType<FileDescriptor>()
            .SelectMany(file => file.Services)
            .OrderBy(service => service.Name, StringComparer.Ordinal),
    ];

    /// <summary>Name of the method that a call goes to.</summary>
    /// <param name="path">The path of the call: its service and its method.</param>
    public static string MethodOf(string path) => path[(path.LastIndexOf('/') + 1)..];
}
