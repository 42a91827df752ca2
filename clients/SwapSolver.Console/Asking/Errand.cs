using System.CommandLine;
using Google.Protobuf;
using Grpc.Core;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Embedded;
using SwapSolver.Console.Screens;

namespace SwapSolver.Console.Asking;

/// <summary>Takes a question to the service and brings the answer back: every verb goes this way.</summary>
internal sealed class Errand(SharedOptions shared)
{
    /// <summary>Asks one question.</summary>
    /// <returns>The exit code.</returns>
    public async Task<int> RunAsync<TResponse>(ParseResult parse, Question<TResponse> question, CancellationToken cancel)
        where TResponse : IMessage
    {
        var settings = shared.Read(parse);
        try
        {
            // Opened before the formula is read: the embedded service starts meanwhile.
            await using var service = Connect(settings);
            var call = await question.PrepareAsync(cancel);
            if (!call.IsGood)
            {
                ProblemList.Write(call.Problems);
                return ExitCode.BadInput;
            }

            return await AskAsync(service, call.Value, question, settings, cancel);
        }
        catch (ServiceNotReachedException fault)
        {
            ServiceFault.Write(fault);
            return ExitCode.Failed;
        }
    }

    private static IServiceConnection Connect(SharedSettings settings) =>
        settings.Server is { } address ? new RemoteService(address) : EmbeddedService.Start(settings.Records);

    private static async Task<int> AskAsync<TResponse>(
        IServiceConnection service,
        ServiceCall<TResponse> call,
        Question<TResponse> question,
        SharedSettings settings,
        CancellationToken cancel)
        where TResponse : IMessage
    {
        TResponse response;
        try
        {
            using var progress = Progress.Start();
            var invoker = await service.ReadyAsync(cancel);
            response = await call(invoker, new CallOptions(deadline: DateTime.UtcNow + settings.Deadline, cancellationToken: cancel));
        }
        catch (RpcException fault)
        {
            cancel.ThrowIfCancellationRequested();
            await ServiceFault.WriteAsync(fault, service, settings.Deadline);
            return ExitCode.Of(fault.StatusCode);
        }

        Print(response, question, settings);
        return question.ExitCodeOf(response);
    }

    private static void Print<TResponse>(TResponse response, Question<TResponse> question, SharedSettings settings)
        where TResponse : IMessage
    {
        if (settings.Json)
        {
            JsonOutput.Write(response);
            return;
        }

        using var screen = new Screen(Terminal.Detect(settings.NoColour));
        question.Show(screen, response);
        StandardOutput.Write(screen.ToString());
    }
}
