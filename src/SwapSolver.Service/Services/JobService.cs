using System.Globalization;
using System.Security.Cryptography;
using Google.Rpc;
using Grpc.Core;
using SwapSolver.Records;
using SwapSolver.Records.Jobs;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Jobs;
using SwapSolver.Service.Records;
using SwapSolver.Service.Stored;
using SwapSolver.Service.Translation;
using SwapSolver.V1;
using Reason = SwapSolver.V1.CallFault.Types.Reason;

namespace SwapSolver.Service.Services;

/// <summary>Keeps jobs; <see cref="JobRunner"/> works on them.</summary>
internal sealed class JobService(
    KitchenRecords records, KitchenToday kitchen, FormulaLibrary library, RequestReader requests, JobRunner runner, IHostApplicationLifetime life, TimeProvider time) : V1.JobService.JobServiceBase
{
    private const int MostLetters = 100;

    private const int IdBytes = 5;

    /// <summary>Size of a page of results beyond which it ends [characters]; one result may be longer.</summary>
    private const int PageLetters = 1 << 20;

    private const int ResultsAtOnce = 50;

    private static readonly TimeSpan LookEvery = TimeSpan.FromMilliseconds(300);

    /// <inheritdoc/>
    public override async Task<Job> CreateCatalogueJob(CreateCatalogueJobRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        if (request.DisplayName.Length > MostLetters || request.DisplayName.Contains('\0', StringComparison.Ordinal))
        {
            problems.Add("displayName", request.DisplayName, "is too long for a name", $"give at most {MostLetters} letters");
        }

        var catalogue = new CatalogueReader(kitchen.Search.Bakehouse, library, problems).Read(request.Catalogue);
        var asked = requests.Read(request.RequestId, request, problems);
        problems.ThrowIfAny();
        var job = new StoredJob(
            Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(IdBytes)), request.DisplayName.Trim(), JobDocument.Write(catalogue), JobState.Running, 0, 0, 0, 0, asked.At, null);
        var made = await records.Jobs.CreateAsync(job, CatalogueCount.Start, asked);
        if (made.Id.Length == 0)
        {
            throw FormulaRefusal.OtherRequest();
        }

        runner.Look();
        return JobDocument.Read(made);
    }

    /// <inheritdoc/>
    public override Task<Job> GetJob(GetJobRequest request, ServerCallContext context) => Task.FromResult(JobDocument.Read(Find(request.Name)));

    /// <inheritdoc/>
    public override Task<ListJobsResponse> ListJobs(ListJobsRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var pages = new PageReader("jobs", problems);
        var (size, last) = (pages.Size(request.PageSize), pages.Last(request.PageToken));
        problems.ThrowIfAny();
        var listed = records.Jobs.List(last.Length == 0 ? null : last, size + 1);
        var response = new ListJobsResponse { NextPageToken = listed.Count > size ? pages.Token(listed[size - 1].Id) : string.Empty };
        response.Jobs.AddRange(listed.Take(size).Select(JobDocument.Read));
        return Task.FromResult(response);
    }

    /// <inheritdoc/>
    public override Task<Job> PauseJob(PauseJobRequest request, ServerCallContext context) => Tell(request.Name, JobState.Paused);

    /// <inheritdoc/>
    public override Task<Job> ResumeJob(ResumeJobRequest request, ServerCallContext context) => Tell(request.Name, JobState.Running);

    /// <inheritdoc/>
    public override Task<Job> CancelJob(CancelJobRequest request, ServerCallContext context) => Tell(request.Name, JobState.Cancelled);

    /// <inheritdoc/>
    public override async Task WatchJob(WatchJobRequest request, IServerStreamWriter<Job> responseStream, ServerCallContext context)
    {
        var job = Find(request.Name);
        using var attended = runner.Attend();
        using var gone = CancellationTokenSource.CreateLinkedTokenSource(context.CancellationToken, life.ApplicationStopping);
        await responseStream.WriteAsync(JobDocument.Read(job), context.CancellationToken);
        while (job.State == JobState.Running)
        {
            await Task.Delay(LookEvery, gone.Token).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            if (life.ApplicationStopping.IsCancellationRequested)
            {
                return;
            }

            context.CancellationToken.ThrowIfCancellationRequested();
            var now = Find(request.Name);
            if (now != job)
            {
                await responseStream.WriteAsync(JobDocument.Read(now), context.CancellationToken);
                job = now;
            }
        }
    }

    /// <inheritdoc/>
    public override Task<ListJobItemsResponse> ListJobItems(ListJobItemsRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        var job = Find(request.Parent);
        var pages = new PageReader($"jobs/{job.Id}/items", problems);
        var (size, last) = (pages.Size(request.PageSize), pages.Last(request.PageToken));
        long after = request.After;
        if (last.Length > 0 && !long.TryParse(last, NumberStyles.None, CultureInfo.InvariantCulture, out after))
        {
            problems.Add("pageToken", request.PageToken, "is no token of this list", "give the nextPageToken of the page before");
        }

        if (request.After < 0)
        {
            problems.Add("after", request.After, "is no place", "give the place of the last result that you have, or 0");
        }

        problems.ThrowIfAny();
        var response = new ListJobItemsResponse();
        long letters = 0;
        while (response.Items.Count < size && letters < PageLetters && records.Jobs.Results(job.Id, after, Math.Min(ResultsAtOnce, size - response.Items.Count)) is { Count: > 0 } some)
        {
            foreach (var result in some.TakeWhile(_ => letters < PageLetters))
            {
                response.Items.Add(JobDocument.Read(job.Id, result));
                (after, letters) = (result.Place, letters + result.Document.Length);
            }
        }

        response.NextPageToken = records.Jobs.Results(job.Id, after, 1).Count > 0 ? pages.Token(after.ToString(CultureInfo.InvariantCulture)) : string.Empty;
        return Task.FromResult(response);
    }

    private async Task<Job> Tell(string name, string state)
    {
        _ = Find(name);
        var job = await records.Jobs.TellAsync(JobDocument.IdOf(name), state, Moment.Write(time.GetUtcNow())) ?? throw NotThere(name);
        if (job.State != state)
        {
            throw RichFault.Of(
                Code.FailedPrecondition, $"'{name}' has ended ({job.State.ToLowerInvariant()}) and stays so; begin another job", RichFault.Info(Reason.JobEnded, ("name", name), ("state", job.State)));
        }

        runner.Look();
        return JobDocument.Read(job);
    }

    private StoredJob Find(string name) => records.Jobs.Find(JobDocument.IdOf(name)) ?? throw NotThere(name);

    private static RpcException NotThere(string name) =>
        RichFault.Of(Code.NotFound, $"'{RichFault.Short(name)}' is no job of this kitchen; see them with ListJobs (job list)", RichFault.Info(Reason.NotFound, ("name", name)));
}
