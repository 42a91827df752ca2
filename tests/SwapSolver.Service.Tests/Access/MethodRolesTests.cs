using System.Reflection;
using System.Text.RegularExpressions;
using Google.Protobuf.Reflection;
using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Role = SwapSolver.Service.Access.Role;

namespace SwapSolver.Service.Tests.Access;

/// <summary>Every method of the contract times every role, against the table that the developers' guide shows.</summary>
public sealed partial class MethodRolesTests
{
    private static readonly Marshaller<byte[]> Bytes = Marshallers.Create(bytes => bytes, bytes => bytes);

    /// <summary>All methods, from what the contract itself says of them.</summary>
    private static IReadOnlyList<MethodDescriptor> Methods =>
    [
        .. typeof(Formula).Assembly.GetExportedTypes()
            .Select(type => type.GetProperty("Descriptor", BindingFlags.Public | BindingFlags.Static))
            .Where(property => property?.PropertyType == typeof(ServiceDescriptor))
            .SelectMany(property => ((ServiceDescriptor)property!.GetValue(null)!).Methods),
    ];

    [Fact]
    public void Every_method_has_a_row_in_the_table_and_every_row_a_method() =>
        Assert.Equal(Methods.Select(method => method.Name).Order(StringComparer.Ordinal), Table().Keys.Order(StringComparer.Ordinal));

    [Fact]
    public async Task Every_method_lets_through_exactly_whom_the_table_says()
    {
        await using var service = await RunningService.Start();
        var keys = new Dictionary<Role, string?> { [Role.Anonymous] = null };
        foreach (var (role, asked) in new[] { (Role.Reader, Key.Types.Role.Reader), (Role.Editor, Key.Types.Role.Editor), (Role.Owner, Key.Types.Role.Owner) })
        {
            keys[role] = (await service.Keys.CreateKeyAsync(new CreateKeyRequest { DisplayName = "test", Role = asked })).Secret;
        }

        var table = Table();
        var wrong = new List<string>();
        foreach (var method in Methods)
        {
            foreach (var (role, key) in keys)
            {
                var status = await Call(service.With(key), method);
                var said = table[method.Name][role];
                var seen = status is StatusCode.Unauthenticated ? "UNAUTHENTICATED" : status is StatusCode.PermissionDenied ? "PERMISSION_DENIED" : "yes";
                if (said != seen)
                {
                    wrong.Add($"{method.Name} by {role}: {seen} ({status}), and the table says {said}");
                }
            }
        }

        Assert.Empty(wrong);
    }

    /// <summary>Calls with an empty request: who may call is told what is missing in it, or is answered.</summary>
    private static async Task<StatusCode> Call(CallInvoker invoker, MethodDescriptor method)
    {
        var type = (method.IsClientStreaming, method.IsServerStreaming) switch
        {
            (false, false) => MethodType.Unary,
            (false, true) => MethodType.ServerStreaming,
            (true, false) => MethodType.ClientStreaming,
            (true, true) => MethodType.DuplexStreaming,
        };
        var raw = new Method<byte[], byte[]>(type, method.Service.FullName, method.Name, Bytes, Bytes);
        try
        {
            switch (type)
            {
                case MethodType.Unary:
                    await invoker.AsyncUnaryCall(raw, null, default, []);
                    break;
                case MethodType.ServerStreaming:
                    using (var call = invoker.AsyncServerStreamingCall(raw, null, default, []))
                    {
                        while (await call.ResponseStream.MoveNext(CancellationToken.None))
                        {
                        }
                    }

                    break;
                case MethodType.DuplexStreaming:
                    using (var call = invoker.AsyncDuplexStreamingCall(raw, null, default))
                    {
                        await call.RequestStream.CompleteAsync();
                        while (await call.ResponseStream.MoveNext(CancellationToken.None))
                        {
                        }
                    }

                    break;
                default:
                    using (var call = invoker.AsyncClientStreamingCall(raw, null, default))
                    {
                        await call.RequestStream.CompleteAsync();
                        await call;
                    }

                    break;
            }

            return StatusCode.OK;
        }
        catch (RpcException refusal)
        {
            // A fault of ours would hide who is let through.
            Assert.NotEqual(StatusCode.Internal, refusal.StatusCode);
            Assert.NotEqual(StatusCode.Unimplemented, refusal.StatusCode);
            return refusal.StatusCode;
        }
    }

    private static Dictionary<string, Dictionary<Role, string>> Table()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "DEVELOPERS.md")))
        {
            folder = folder.Parent;
        }

        return Row().Matches(File.ReadAllText(Path.Combine(folder.FullName, "DEVELOPERS.md"))).ToDictionary(
            row => row.Groups[1].Value,
            row => Enum.GetValues<Role>().ToDictionary(role => role, role => row.Groups[2 + (int)role].Value));
    }

    [GeneratedRegex(@"(?m)^\| (\w+) \| (yes|UNAUTHENTICATED|PERMISSION_DENIED) \| (\w+) \| (\w+) \| (\w+) \|")]
    private static partial Regex Row();
}
