using System.CommandLine;
using Grpc.Core;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.Console.Working;
using SwapSolver.V1;
using State = SwapSolver.V1.Job.Types.State;

namespace SwapSolver.Console.Verbs;

/// <summary><c>job watch</c>: watches a job to its end. The service that a console starts for itself works while it is watched.</summary>
internal static class JobFollow
{
    /// <summary>The option for a file of results.</summary>
    public static Option<string?> OutFile() => new("--out")
    {
        Description = "Write the results to this file as they come, one JSON object a line. A file that holds the first of them is gone on with.",
        HelpName = "FILE",
    };

    /// <summary>The verb.</summary>
    public static VerbCommand Create(Errand errand)
    {
        var (name, outFile) = (new JobName(), OutFile());
        var verb = new VerbCommand(
            "watch", "Watches a job until it ends or is paused. Without --server it is worked on while it is watched.", "swapsolver job watch 0a1b2c3d4e --out results.jsonl") { name, outFile };
        verb.SetAction((parse, cancel) => errand.WithServiceAsync(
            parse, (service, settings) => RunAsync(service, settings, name.Read(parse), parse.GetValue(outFile), cancel), cancel));
        return verb;
    }

    /// <summary>Watches, and shows the job as it stands in the end.</summary>
    /// <returns>The exit code: 0 where every item has an answer.</returns>
    public static Task<int> RunAsync(IServiceConnection service, SharedSettings settings, string name, string? path, CancellationToken cancel) =>
        ResultsFile.WithAsync(path, name, file => RunAsync(service, settings, name, path, file, cancel));

    private static async Task<int> RunAsync(
        IServiceConnection service, SharedSettings settings, string name, string? path, ResultsFile? file, CancellationToken cancel)
    {
        var watch = new JobWatch(service, name, file is null ? null : file.Add, file?.Last ?? 0);
        try
        {
            var job = await watch.RunAsync(cancel);
            Show(job, settings);
            return job is { State: State.Done, Failed: 0 } ? ExitCode.Answer : ExitCode.NoAnswer;
        }
        catch (Exception fault) when (cancel.IsCancellationRequested && fault is RpcException or OperationCanceledException)
        {
            var so = watch.Seen is { } seen ? $": {JobWatch.Words(seen)}" : string.Empty;
            ErrorOutput.Write($"left{so}. {(settings.Server is null ? "It goes on with" : "The service goes on with it; watch it again with")}: swapsolver job watch {JobName.Id(name)}{(path is null ? string.Empty : $" --out {path}")}");
            return ExitCode.Interrupted;
        }
        catch (RpcException fault)
        {
            await ServiceFault.WriteAsync(fault, service, Timeout.InfiniteTimeSpan);
            return ExitCode.Of(fault.StatusCode);
        }
    }

    /// <summary>Shows a job.</summary>
    public static void Show(Job job, SharedSettings settings)
    {
        if (settings.Json)
        {
            JsonOutput.Write(job);
            return;
        }

        using var screen = new Screen(Terminal.Detect(settings.NoColour));
        JobScreen.Show(screen, job);
        StandardOutput.Write(screen.ToString());
    }
}
