using Google.Rpc;
using Grpc.Core;

namespace SwapSolver.Service.Tests.Running;

/// <summary>What a caller is told whose question cannot be read.</summary>
internal sealed record Refusal(StatusCode Code, string Message, IReadOnlyList<BadRequest.Types.FieldViolation> Violations, ErrorInfo Info)
{
    /// <summary>When to ask again; nothing where that would not help.</summary>
    public TimeSpan? Retry { get; init; }

    private static readonly string[] OurInsides = ["Exception", "   at ", ".cs:line", "SwapSolver."];

    /// <summary>Waits for a call to be refused, and checks what every refusal owes its caller.</summary>
    public static Task<Refusal> Of<T>(Func<AsyncUnaryCall<T>> ask) => Of(async () => await ask());

    /// <summary>The same of a call that is answered piece by piece: it is refused before the first.</summary>
    public static Task<Refusal> Of<T>(Func<AsyncServerStreamingCall<T>> ask) => Of(async () =>
    {
        using var call = ask();
        return await call.ResponseStream.MoveNext(CancellationToken.None);
    });

    private static async Task<Refusal> Of<T>(Func<Task<T>> ask)
    {
        var fault = await Assert.ThrowsAsync<RpcException>(ask);
        var status = fault.GetRpcStatus();
        Assert.True(status is not null, $"a refusal without details: {fault.StatusCode} {fault.Status.Detail}");
        Assert.Equal((int)fault.StatusCode, status.Code);
        Assert.Equal(status.Details.Count, status.Details.Select(detail => detail.TypeUrl).Distinct().Count());
        var info = status.GetDetail<ErrorInfo>();
        Assert.NotNull(info);
        Assert.NotEmpty(info.Reason);
        Assert.Equal("swapsolver", info.Domain);
        var violations = status.GetDetail<BadRequest>()?.FieldViolations.ToList() ?? [];
        Assert.All(
            violations.Select(violation => violation.Description).Append(fault.Status.Detail),
            words => Assert.DoesNotContain(OurInsides, inside => words.Contains(inside, StringComparison.Ordinal)));
        return new Refusal(fault.StatusCode, fault.Status.Detail, violations, info) { Retry = status.GetDetail<RetryInfo>()?.RetryDelay.ToTimeSpan() };
    }

    /// <summary>The refusal names a field, the value that stood there, and the way out.</summary>
    public void Names(string field, string value, string wayOut)
    {
        Assert.Equal(StatusCode.InvalidArgument, Code);
        var violation = Violations.FirstOrDefault(one => one.Field == field);
        Assert.True(violation is not null, $"no violation at {field}, but at {string.Join(", ", Violations.Select(one => one.Field))}");
        Assert.Contains(value, violation.Description, StringComparison.Ordinal);
        Assert.Contains(wayOut, violation.Description, StringComparison.Ordinal);
    }
}
