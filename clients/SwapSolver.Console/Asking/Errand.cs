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
            await using var service = Connect(settings, cancel);
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

    /// <summary>Asks one question whose answer comes piece by piece, and passes each piece on as it comes.</summary>
    /// <returns>The exit code.</returns>
    public async Task<int> StreamAsync<TResponse>(ParseResult parse, StreamedQuestion<TResponse> question, CancellationToken cancel)
        where TResponse : IMessage
    {
        var settings = shared.Read(parse);
        try
        {
            using var count = new PieceCount(question.Piece);
            await using var service = Connect(settings, cancel);
            var call = await question.PrepareAsync(cancel);
            if (!call.IsGood)
            {
                ProblemList.Write(call.Problems);
                return ExitCode.BadInput;
            }

            return await StreamAsync(service, call.Value, question, settings, count, cancel);
        }
        catch (ServiceNotReachedException fault)
        {
            ServiceFault.Write(fault);
            return ExitCode.Failed;
        }
    }

    /// <summary>Opens the service for work that asks it in a way of its own.</summary>
    /// <returns>The exit code.</returns>
    public async Task<int> WithServiceAsync(ParseResult parse, Func<IServiceConnection, SharedSettings, Task<int>> work, CancellationToken cancel)
    {
        var settings = shared.Read(parse);
        try
        {
            await using var service = Connect(settings, cancel);
            return await work(service, settings);
        }
        catch (ServiceNotReachedException fault)
        {
            ServiceFault.Write(fault);
            return ExitCode.Failed;
        }
    }

    private static IServiceConnection Connect(SharedSettings settings, CancellationToken cancel) =>
        settings.Server is { } address ? new RemoteService(address, settings.Key) : EmbeddedService.Start(settings.Records, cancel);

    private static async Task<int> StreamAsync<TResponse>(
        IServiceConnection service,
        StreamCall<TResponse> call,
        StreamedQuestion<TResponse> question,
        SharedSettings settings,
        PieceCount count,
        CancellationToken cancel)
        where TResponse : IMessage
    {
        var pieces = new List<TResponse>();
        try
        {
            var invoker = await service.ReadyAsync(cancel);
            using var answer = call(invoker, new CallOptions(deadline: DateTime.UtcNow + settings.StreamDeadline, cancellationToken: cancel));
            while (await answer.ResponseStream.MoveNext(cancel))
            {
                var piece = answer.ResponseStream.Current;
                pieces.Add(piece);
                count.Add(question.MostOf(piece));
                if (settings.Json)
                {
                    JsonOutput.WriteLine(piece);
                }
            }
        }
        catch (Exception fault) when (cancel.IsCancellationRequested && fault is RpcException or OperationCanceledException)
        {
            Show(pieces, question, settings);
            ErrorOutput.Write($"stopped: {count.Words}.");
            return ExitCode.Interrupted;
        }
        catch (RpcException fault)
        {
            Show(pieces, question, settings);
            await ServiceFault.WriteAsync(fault, service, settings.StreamDeadline);
            return ExitCode.Of(fault.StatusCode);
        }

        if (pieces.Count == 0)
        {
            ErrorOutput.Write("No formula keeps every band and limit.");
            return ExitCode.NoAnswer;
        }

        Show(pieces, question, settings);
        return ExitCode.Answer;
    }

    private static void Show<TResponse>(List<TResponse> pieces, StreamedQuestion<TResponse> question, SharedSettings settings)
    {
        if (settings.Json || pieces.Count == 0)
        {
            return;
        }

        using var screen = new Screen(Terminal.Detect(settings.NoColour));
        question.Show(screen, pieces);
        StandardOutput.Write(screen.ToString());
    }

    private static async Task<int> AskAsync<TResponse>(
        IServiceConnection service,
        ServiceCall<TResponse> call,
        Question<TResponse> question,
        SharedSettings settings,
        CancellationToken cancel)
        where TResponse : IMessage
    {
        var patience = question.IsLong ? settings.StreamDeadline : settings.Deadline;
        TResponse response;
        try
        {
            using var progress = Progress.Start();
            var invoker = await service.ReadyAsync(cancel);
            response = await call(invoker, new CallOptions(deadline: DateTime.UtcNow + patience, cancellationToken: cancel));
        }
        catch (RpcException fault)
        {
            cancel.ThrowIfCancellationRequested();
            await ServiceFault.WriteAsync(fault, service, patience);
            return ExitCode.Of(fault.StatusCode);
        }

        if (question.KeepAsync is { } keep && await keep(response, cancel) is { } problem)
        {
            ErrorOutput.Write(problem);
            return ExitCode.BadInput;
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
