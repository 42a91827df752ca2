using Google.Rpc;
using Grpc.Core;

namespace SwapSolver.Console.Asking;

/// <summary>Says what the service refused, or that it did not answer.</summary>
internal static class ServiceFault
{
    /// <summary>Writes why there is no service to ask.</summary>
    public static void Write(ServiceNotReachedException fault) => WriteAll(fault.Lines);

    /// <summary>Writes what the service answered instead of an answer.</summary>
    public static async Task WriteAsync(RpcException fault, IServiceConnection service, TimeSpan deadline)
    {
        if (fault.StatusCode == StatusCode.DeadlineExceeded)
        {
            ErrorOutput.Write($"there was no answer within {deadline.TotalSeconds} s. Give it longer with --deadline SECONDS.");
        }
        else if (IsSilence(fault))
        {
            WriteAll(await service.ExplainSilenceAsync());
        }
        else if (Refusals(fault) is { Count: > 0 } refusals)
        {
            // The status says the first of them in the same words.
            WriteAll(refusals);
        }
        else
        {
            ErrorOutput.Write(Sentence(fault));
            WriteMetadata(fault);
        }

        WriteRetry(fault);
    }

    private static List<string> Refusals(RpcException fault) =>
    [
        .. (fault.GetRpcStatus()?.GetDetail<BadRequest>()?.FieldViolations ?? [])
            .Select(violation => $"{violation.Field}: {violation.Description}"),
    ];

    // A status that the service itself sent has no exception of ours behind it.
    private static bool IsSilence(RpcException fault) =>
        fault is { StatusCode: StatusCode.Unavailable or StatusCode.Internal, Status.DebugException: not null };

    private static string Sentence(RpcException fault) =>
        fault.Status.Detail.Length > 0 ? fault.Status.Detail : $"the service answered {fault.StatusCode}.";

    private static void WriteMetadata(RpcException fault)
    {
        foreach (var (key, value) in fault.GetRpcStatus()?.GetDetail<ErrorInfo>()?.Metadata ?? [])
        {
            ErrorOutput.WriteMore($"{key}: {value}");
        }
    }

    private static void WriteRetry(RpcException fault)
    {
        if (fault.GetRpcStatus()?.GetDetail<RetryInfo>()?.RetryDelay is { } delay)
        {
            ErrorOutput.WriteMore($"Try again in {Math.Ceiling(delay.ToTimeSpan().TotalSeconds)} s.");
        }
    }

    private static void WriteAll(IReadOnlyList<string> lines)
    {
        ErrorOutput.Write(lines[0]);
        foreach (var line in lines.Skip(1))
        {
            ErrorOutput.WriteMore(line);
        }
    }
}
