using Grpc.Core;

namespace SwapSolver.Console;

/// <summary>The one table of exit codes; scripts depend on it.</summary>
internal static class ExitCode
{
    /// <summary>An answer.</summary>
    public const int Answer = 0;

    /// <summary>A true answer that is 'no': nothing balances, no formula meets the wishes.</summary>
    public const int NoAnswer = 1;

    /// <summary>Wrong usage or bad input.</summary>
    public const int BadInput = 2;

    /// <summary>The service failed or could not be reached.</summary>
    public const int Failed = 3;

    /// <summary>The caller pressed Ctrl-C (128 + SIGINT, as shells count).</summary>
    public const int Interrupted = 130;

    /// <summary>The exit code that a status of the service stands for.</summary>
    public static int Of(StatusCode status) => status switch
    {
        StatusCode.OK => Answer,
        StatusCode.InvalidArgument => BadInput,
        StatusCode.NotFound => BadInput,
        StatusCode.OutOfRange => BadInput,
        StatusCode.AlreadyExists => BadInput,
        StatusCode.FailedPrecondition => BadInput,
        StatusCode.Aborted => BadInput,
        StatusCode.Unauthenticated => BadInput,
        StatusCode.PermissionDenied => BadInput,
        _ => Failed,
    };
}
