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
        else
        {
            ErrorOutput.Write(Sentence(fault));
        }

        WriteDetails(fault);
    }

    // A status that the service itself sent has no exception of ours behind it.
    private static bool IsSilence(RpcException fault) =>
        fault is { StatusCode: StatusCode.Unavailable or StatusCode.Internal, Status.DebugException: not null };

    private static string Sentence(RpcException fault) =>
        fault.Status.Detail.Length > 0 ? fault.Status.Detail : $"the service answered {fault.StatusCode}.";

    private static void WriteDetails(RpcException fault)
    {
        var status = fault.GetRpcStatus();
        var refused = status?.GetDetail<BadRequest>();
        foreach (var violation in refused?.FieldViolations ?? [])
        {
            ErrorOutput.WriteMore($"{violation.Field}: {violation.Description}");
        }

        // The violations say the same in sentences, so the bare words stand in only where there are none.
        if (refused is null)
        {
            foreach (var (key, value) in status?.GetDetail<ErrorInfo>()?.Metadata ?? [])
            {
                ErrorOutput.WriteMore($"{key}: {value}");
            }
        }

        if (status?.GetDetail<RetryInfo>()?.RetryDelay is { } delay)
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
