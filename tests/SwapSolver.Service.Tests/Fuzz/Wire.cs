using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Text;
using Google.Protobuf;
using Google.Protobuf.Reflection;
using Grpc.Core;
using Grpc.Net.Client;
using SwapSolver.Service.Access;

namespace SwapSolver.Service.Tests.Fuzz;

/// <summary>Sends what nobody should: random requests of every method, and bodies and frames that hold none, over each way in.</summary>
internal sealed class Wire : IDisposable
{
    private const int MostTold = 2_000;

    private static readonly byte[] Whole = Encoding.UTF8.GetBytes(
        """{ "formula": { "displayName": "Loaf", "slices": 12, "lines": [ { "ingredient": "ingredients/hazelnut-flour", "grams": 180 }, { "text": "4 large eggs" } ] }, "without": ["tree-nuts"] }""");

    private static readonly byte[] WholeMessage = new V1.VaryFormulaRequest { Name = "formulas/hazelnut-tin-loaf", Without = { "tree-nuts" } }.ToByteArray();

    /// <summary>Turns of a heavy method, of which one is its own; the others go to another method.</summary>
    private const int HeavyTurns = 50;

    private readonly HttpClient http;

    private readonly HttpClient http2;

    private readonly GrpcChannel channel;

    private readonly Uri grpcAddress;

    private readonly string key;

    public Wire(Uri httpAddress, Uri grpcAddress, string key)
    {
        this.grpcAddress = grpcAddress;
        this.key = key;
        var authorization = new AuthenticationHeaderValue("Bearer", key);
        http = new HttpClient { BaseAddress = httpAddress, DefaultRequestHeaders = { Authorization = authorization } };
        http2 = new HttpClient
        {
            BaseAddress = grpcAddress,
            DefaultRequestHeaders = { Authorization = authorization },
            DefaultRequestVersion = HttpVersion.Version20,
            DefaultVersionPolicy = HttpVersionPolicy.RequestVersionExact,
        };
        channel = GrpcChannel.ForAddress(grpcAddress);
    }

    /// <summary>Every method that is asked with one request, and answers once or piece by piece.</summary>
    public static IReadOnlyList<MethodDescriptor> Methods { get; } =
        [.. Contract.Services.SelectMany(service => service.Methods).Where(method => !method.IsClientStreaming)];

    /// <summary>Methods that work for seconds and leave megabytes behind each time: asked as often as the others, they would be all that a
    /// long run waits for.</summary>
    private static bool IsHeavy(MethodDescriptor method) => method.Name is "CreateCatalogueJob" or "BackupRecords";

    private static IReadOnlyList<MethodDescriptor> Light { get; } = [.. Methods.Where(method => !IsHeavy(method))];

    /// <summary>The method whose turn it is.</summary>
    private static MethodDescriptor MethodOf(int number)
    {
        var (method, turn) = (Methods[number % Methods.Count], number / Methods.Count);
        return IsHeavy(method) && turn % HeavyTurns != 0 ? Light[turn % Light.Count] : method;
    }

    /// <summary>Whether a code tells of a fault of the service, or of one that it cannot name.</summary>
    public static bool IsOurFault(StatusCode code) => code is StatusCode.Internal or StatusCode.Unknown or StatusCode.DataLoss or StatusCode.Unimplemented;

    /// <summary>Sends the random request of a number.</summary>
    public async Task<End> SendRandom(int number, TimeSpan patience)
    {
        var method = MethodOf(number);
        var request = new RandomMessages(number).Of(method.InputType);
        var raw = Marshallers.Create<byte[]>(bytes => bytes, bytes => bytes);
        var kind = method.IsServerStreaming ? MethodType.ServerStreaming : MethodType.Unary;
        var asked = new Method<byte[], byte[]>(kind, method.Service.FullName, method.Name, raw, raw);
        var options = new CallOptions(new Metadata { { "authorization", $"Bearer {key}" } }, DateTime.UtcNow + patience);
        var invoker = channel.CreateCallInvoker();
        try
        {
            if (method.IsServerStreaming)
            {
                using var call = invoker.AsyncServerStreamingCall(asked, null, options, request.ToByteArray());
                while (await call.ResponseStream.MoveNext(CancellationToken.None))
                {
                    // What it says does not matter here.
                }
            }
            else
            {
                await invoker.AsyncUnaryCall(asked, null, options, request.ToByteArray());
            }

            return new End(StatusCode.OK, string.Empty);
        }
        catch (RpcException fault)
        {
            var text = request.ToString()!;
            return new End(fault.StatusCode, $"{fault.Status.Detail}: {method.Name} {text[..Math.Min(MostTold, text.Length)]}");
        }
    }

    /// <summary>Sends the broken body of a number: JSON, a frame over gRPC-Web, a frame over gRPC, or noise on the wire itself.</summary>
    public async Task<End?> SendBroken(int number, CancellationToken cancel)
    {
        var random = new Random(number);
        byte[] Body(byte[] whole) => random.Next(2) == 0 ? new RandomMessages(number).Junk(random.Next(400)) : Broken(whole, random);
        return (number % 8) switch
        {
            0 => await Noise(Body(WholeMessage), cancel),
            1 or 2 => await Sent(http, "/swapsolver.v1.SubstitutionService/VaryFormula", "application/grpc-web", random.Next(2) == 0 ? Framed(Body(WholeMessage)) : Body(Framed(WholeMessage)), cancel),
            3 or 4 => await Sent(http2, "/swapsolver.v1.SubstitutionService/VaryFormula", "application/grpc", random.Next(2) == 0 ? Framed(Body(WholeMessage)) : Body(Framed(WholeMessage)), cancel),
            5 => await Sent(http2, "/swapsolver.v1.RecordService/RestoreRecords", "application/grpc", Body([.. Framed(WholeMessage), .. Framed(WholeMessage)]), cancel),
            _ => await Sent(http, "/v1/formulas:balance", "application/json", Body(Whole), cancel),
        };
    }

    public void Dispose()
    {
        http.Dispose();
        http2.Dispose();
        channel.Dispose();
    }

    private static async Task<End> Sent(HttpClient client, string path, string kind, byte[] body, CancellationToken cancel)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri(path, UriKind.Relative)) { Content = new ByteArrayContent(body) };
        request.Content.Headers.ContentType = new MediaTypeHeaderValue(kind);
        request.Headers.TryAddWithoutValidation("te", "trailers");
        if (client.DefaultRequestVersion == HttpVersion.Version20)
        {
            (request.Version, request.VersionPolicy) = (client.DefaultRequestVersion, client.DefaultVersionPolicy);
        }

        using var response = await client.SendAsync(request, cancel);
        var answer = await response.Content.ReadAsStringAsync(cancel);
        var told = $"{kind} {(int)response.StatusCode} {answer[..Math.Min(200, answer.Length)]}: {Convert.ToBase64String(body)}";
        foreach (var headers in new HttpHeaders[] { response.Headers, response.TrailingHeaders })
        {
            if (headers.TryGetValues("grpc-status", out var codes))
            {
                return new End((StatusCode)int.Parse(codes.Single(), CultureInfo.InvariantCulture), told);
            }
        }

        // Over gRPC-Web the end stands in the last frame, behind its flag and length.
        var mark = answer.LastIndexOf("grpc-status:", StringComparison.Ordinal);
        return mark >= 0
            ? new End((StatusCode)int.Parse(answer.AsSpan(mark + "grpc-status:".Length).Trim().ToString().Split('\r')[0], CultureInfo.InvariantCulture), told)
            : new End((int)response.StatusCode >= 500 ? StatusCode.Internal : StatusCode.OK, told);
    }

    /// <summary>Bytes that are no HTTP; the service hangs up, and nothing more is owed.</summary>
    private async Task<End?> Noise(byte[] bytes, CancellationToken cancel)
    {
        using var socket = new TcpClient();
        await socket.ConnectAsync(grpcAddress.Host, grpcAddress.Port, cancel);
        try
        {
            var stream = socket.GetStream();
            await stream.WriteAsync(bytes, cancel);
            socket.Client.Shutdown(SocketShutdown.Send);
            var rest = new byte[1_024];
            while (await stream.ReadAsync(rest, cancel) > 0)
            {
                // A last word of the protocol's own.
            }
        }
        catch (Exception fault) when (fault is IOException or SocketException)
        {
            // Hung up at once.
        }

        return null;
    }

    private static byte[] Framed(byte[] message) => [0, (byte)(message.Length >> 24), (byte)(message.Length >> 16), (byte)(message.Length >> 8), (byte)message.Length, .. message];

    /// <summary>Good bytes with some of them wrong, missing or twice.</summary>
    private static byte[] Broken(byte[] whole, Random random)
    {
        var bytes = whole.ToList();
        for (var wounds = random.Next(1, 8); wounds > 0; wounds--)
        {
            var place = random.Next(bytes.Count);
            switch (random.Next(4))
            {
                case 0:
                    bytes[place] = (byte)random.Next(256);
                    break;
                case 1:
                    bytes.RemoveAt(place);
                    break;
                case 2:
                    bytes.InsertRange(place, bytes.Skip(random.Next(bytes.Count)).Take(random.Next(60)).ToList());
                    break;
                default:
                    bytes.RemoveRange(place, Math.Min(random.Next(200), bytes.Count - place));
                    break;
            }

            if (bytes.Count == 0)
            {
                return [];
            }
        }

        return [.. bytes];
    }
}

/// <summary>How a call ended.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Told">What was said and sent.</param>
internal sealed record End(StatusCode Code, string Told);
