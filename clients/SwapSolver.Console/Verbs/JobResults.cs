using Grpc.Core;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Working;
using SwapSolver.V1;
using Client = SwapSolver.V1.JobService.JobServiceClient;

namespace SwapSolver.Console.Verbs;

/// <summary><c>job results</c>: what a job has so far, one JSON object a line.</summary>
internal static class JobResults
{
    /// <summary>The verb.</summary>
    public static VerbCommand Create(Errand errand)
    {
        var (name, outFile) = (new JobName(), JobFollow.OutFile());
        var verb = new VerbCommand("results", "The results that a job has so far, one JSON object a line.", "swapsolver job results 0a1b2c3d4e --out results.jsonl") { name, outFile };
        verb.SetAction((parse, cancel) => errand.WithServiceAsync(
            parse, (service, settings) => ResultsFile.WithAsync(
                parse.GetValue(outFile), name.Read(parse), file => RunAsync(service, settings, name.Read(parse), file, cancel)), cancel));
        return verb;
    }

    private static async Task<int> RunAsync(IServiceConnection service, SharedSettings settings, string name, ResultsFile? file, CancellationToken cancel)
    {
        try
        {
            var client = new Client(await service.ReadyAsync(cancel));
            var job = await client.GetJobAsync(new GetJobRequest { Name = name }, cancellationToken: cancel);
            await new JobWatch(service, name, file is null ? Print : file.Add, file?.Last ?? 0).TakeAsync(client, cancel);
            ErrorOutput.Write($"{JobWatch.Words(job)}{(job.State == Job.Types.State.Done ? string.Empty : file is null ? "; the job is not done" : "; the job is not done, and the same command goes on from there")}.");
            return ExitCode.Answer;
        }
        catch (RpcException fault)
        {
            cancel.ThrowIfCancellationRequested();
            await ServiceFault.WriteAsync(fault, service, settings.Deadline);
            return ExitCode.Of(fault.StatusCode);
        }
    }

    private static void Print(IEnumerable<JobItem> items)
    {
        foreach (var item in items)
        {
            JsonOutput.WriteLine(item);
        }
    }
}
