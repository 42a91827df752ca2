using System.Collections.Concurrent;
using System.Net.Http.Headers;
using System.Text;
using Google.Protobuf;
using Google.Protobuf.Reflection;
using Grpc.Core;
using SwapSolver.Service.Networking;
using SwapSolver.Service.Tests.Running;

namespace SwapSolver.Service.Tests.Fuzz;

/// <summary>Whatever comes over the wire is answered, or refused with a code that says whose fault it is: never ours, never unknown.</summary>
public sealed class FuzzTests
{
    /// <summary>Random requests; the benchmarks' <c>--fuzz</c> sends as many as it is told.</summary>
    private const int Requests = 1_500;

    private const int Bodies = 1_500;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private static readonly StatusCode[] Ours = [StatusCode.Internal, StatusCode.Unknown, StatusCode.DataLoss, StatusCode.Unimplemented];

    [Fact]
    public async Task No_request_that_its_descriptor_allows_is_a_fault_of_the_service()
    {
        await using var service = await RunningService.Start(null, null, ("Limits:SolvesWaiting", "100"), ("Limits:CallSeconds", "1"), ("Limits:StreamSeconds", "1"));
        var methods = Contract.Services.SelectMany(one => one.Methods).Where(method => !method.IsClientStreaming).ToList();
        Assert.True(methods.Count > 20);
        var faults = new ConcurrentBag<string>();
        await Parallel.ForAsync(0, Requests, new ParallelOptions { MaxDegreeOfParallelism = 4 }, async (number, _) =>
        {
            var method = methods[number % methods.Count];
            var request = new RandomMessages(number).Of(method.InputType);
            if (await Asked(service, method, request) is { } code && Ours.Contains(code.StatusCode))
            {
                faults.Add($"{number} {method.Name} {code.StatusCode} {code.Detail}: {request.ToString()![..Math.Min(2_000, request.ToString()!.Length)]}");
            }
        });
        Assert.Empty(faults);
        Assert.NotEmpty((await Bakes.Vary(service, Bakes.Hazelnut)).Answers);
    }

    [Fact]
    public async Task No_body_that_is_none_is_a_fault_of_the_service()
    {
        await using var service = await RunningService.Start();
        var faults = new ConcurrentBag<string>();
        var whole = Encoding.UTF8.GetBytes($$"""{ "formula": {{JsonFormatter.Default.Format(Bakes.Hazelnut)}}, "without": ["tree-nuts"] }""");
        await Parallel.ForAsync(0, Bodies, new ParallelOptions { MaxDegreeOfParallelism = 4 }, async (number, cancel) =>
        {
            var random = new Random(number);
            var isGrpcWeb = number % 3 == 0;
            var body = number % 2 == 0 ? new RandomMessages(number).Junk(random.Next(400)) : Broken(whole, random);
            using var content = new ByteArrayContent(body);
            content.Headers.ContentType = new MediaTypeHeaderValue(isGrpcWeb ? "application/grpc-web" : "application/json");
            using var response = await service.Http.PostAsync(
                new Uri(isGrpcWeb ? "/swapsolver.v1.SubstitutionService/VaryFormula" : "/v1/formulas:balance", UriKind.Relative), content, cancel).WaitAsync(Patience, cancel);
            var code = response.Headers.TryGetValues("grpc-status", out var codes) ? (StatusCode)int.Parse(codes.Single(), System.Globalization.CultureInfo.InvariantCulture)
                : (int)response.StatusCode >= 500 ? StatusCode.Internal
                : StatusCode.OK;
            // A frame that is no message is told as INTERNAL by the framework, before any word of ours; over JSON it is the caller's mistake.
            if (Ours.Contains(code) && !isGrpcWeb)
            {
                faults.Add($"{number}: {response.StatusCode} {await response.Content.ReadAsStringAsync(cancel)}: {Convert.ToBase64String(body)}");
            }
        });
        Assert.Empty(faults);
        Assert.NotEmpty((await Bakes.Vary(service, Bakes.Hazelnut)).Answers);
    }

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

    private static async Task<Status?> Asked(RunningService service, MethodDescriptor method, IMessage request)
    {
        var raw = Marshallers.Create<byte[]>(bytes => bytes, bytes => bytes);
        var kind = method.IsServerStreaming ? MethodType.ServerStreaming : MethodType.Unary;
        var asked = new Method<byte[], byte[]>(kind, method.Service.FullName, method.Name, raw, raw);
        var options = new CallOptions(deadline: DateTime.UtcNow + Patience);
        try
        {
            if (method.IsServerStreaming)
            {
                using var call = service.With(service.Key).AsyncServerStreamingCall(asked, null, options, request.ToByteArray());
                while (await call.ResponseStream.MoveNext(CancellationToken.None))
                {
                    // What it says does not matter here.
                }
            }
            else
            {
                await service.With(service.Key).AsyncUnaryCall(asked, null, options, request.ToByteArray());
            }

            return null;
        }
        catch (RpcException fault)
        {
            return fault.Status;
        }
    }
}
