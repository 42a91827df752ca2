using Grpc.Core;
using SwapSolver.Console.Asking;
using SwapSolver.V1;
using Client = SwapSolver.V1.JobService.JobServiceClient;
using State = SwapSolver.V1.Job.Types.State;

namespace SwapSolver.Console.Working;

/// <summary>Watches a job until it ends or is paused, tells how far it is, and takes its results as they are written. A service
/// that goes away is waited for: the job is no worse for it.</summary>
/// <param name="service">The service.</param>
/// <param name="name">Resource name of the job.</param>
/// <param name="take">Is given the results; null where none are wanted.</param>
/// <param name="last">Place of the last result that is there already.</param>
internal sealed class JobWatch(IServiceConnection service, string name, Action<IEnumerable<JobItem>>? take, int last)
{
    private const int ResultsAtOnce = 200;

    /// <summary>How often a service that does not answer is asked again, each time after a little longer.</summary>
    private const int MostTries = 10;

    private static readonly TimeSpan TellEvery = TimeSpan.FromSeconds(2), FirstWait = TimeSpan.FromSeconds(0.25), LongestWait = TimeSpan.FromSeconds(5);

    private DateTime told = DateTime.UtcNow;

    private int tried;

    /// <summary>The job as it was seen last; null before that.</summary>
    public Job? Seen { get; private set; }

    /// <summary>Watches to the end.</summary>
    /// <exception cref="RpcException">The job is not there, or the service stays away.</exception>
    public async Task<Job> RunAsync(CancellationToken cancel)
    {
        while (true)
        {
            try
            {
                var client = new Client(await service.ReadyAsync(cancel));
                await WatchAsync(client, cancel);
                if (Seen is { State: not State.Running } ended)
                {
                    await TakeAsync(client, cancel);
                    return ended;
                }
            }
            catch (RpcException fault) when (fault.StatusCode == StatusCode.Unavailable && !cancel.IsCancellationRequested && ++tried < MostTries)
            {
                var wait = FirstWait * Math.Pow(2, tried);
                await Task.Delay(wait < LongestWait ? wait : LongestWait, cancel);
            }
        }
    }

    /// <summary>Takes what is written by now.</summary>
    public async Task TakeAsync(Client client, CancellationToken cancel)
    {
        if (take is null)
        {
            return;
        }

        ListJobItemsResponse page;
        do
        {
            page = await client.ListJobItemsAsync(new ListJobItemsRequest { Parent = name, After = last, PageSize = ResultsAtOnce }, cancellationToken: cancel);
            take(page.Items);
            last = page.Items.Count > 0 ? page.Items[^1].Place : last;
        }
        while (page.NextPageToken.Length > 0);
    }

    private async Task WatchAsync(Client client, CancellationToken cancel)
    {
        using var watch = client.WatchJob(new WatchJobRequest { Name = name }, cancellationToken: cancel);
        while (await watch.ResponseStream.MoveNext(cancel))
        {
            Seen = watch.ResponseStream.Current;
            tried = 0;
            if (DateTime.UtcNow - told >= TellEvery && Seen.State == State.Running)
            {
                told = DateTime.UtcNow;
                ErrorOutput.Write($"{Words(Seen)}; Ctrl-C leaves it.");
                await TakeAsync(client, cancel);
            }
        }
    }

    /// <summary>How far a job is, as '120 of 500 items, 2 of them problems'.</summary>
    public static string Words(Job job) =>
        $"{job.Done} of {job.Items}{(job.Counted ? string.Empty : " and more")} items{(job.Failed > 0 ? $", {job.Failed} of them problems" : string.Empty)}";
}
