using System.Diagnostics;
using Grpc.Core;
using SwapSolver.Records;
using SwapSolver.Records.Tests.Engines;
using SwapSolver.Service.Access;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Part = SwapSolver.V1.Catalogue.Types.Part;
using Role = SwapSolver.Service.Access.Role;
using State = SwapSolver.V1.Job.Types.State;

namespace SwapSolver.Service.Tests.Cluster;

/// <summary>Three services as processes of their own, with a real PostgreSQL and a real Redis, and what may happen to each of them.</summary>
public sealed class ClusterTests : IAsyncLifetime, IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(120);

    private readonly PostgresServer server = new();

    private readonly RedisServer redis = new();

    private readonly List<ServiceProcess> services = [];

    private AdvisedChannel? channel;

    private JobService.JobServiceClient Jobs => new(channel!.Invoker);

    private SubstitutionService.SubstitutionServiceClient Substitutions => new(channel!.Invoker);

    public async Task InitializeAsync()
    {
        var place = server.NewDatabase();
        var (kept, key) = ApiKey.Make("tests", Role.Owner, "2026-01-01T00:00:00.000Z");
        using (var records = new KitchenRecords(place))
        {
            await records.Keys.CreateAsync(kept);
        }

        services.AddRange(await Task.WhenAll(Enumerable.Range(0, 3).Select(_ => ServiceProcess.Start(
            place, null, ("Cache:Redis", $"127.0.0.1:{redis.Port}"), ("Limits:JobLeaseSeconds", "2"), ("Limits:JobSolvesAtOnce", "1"), ("Limits:CallerBurst", "100000")))));
        channel = new AdvisedChannel(key, services.Select(service => service.GrpcPort));
    }

    public async Task DisposeAsync()
    {
        foreach (var service in services)
        {
            await service.DisposeAsync();
        }
    }

    public void Dispose()
    {
        channel?.Dispose();
        redis.Dispose();
        server.Dispose();
    }

    [Fact]
    public async Task A_job_loses_and_doubles_nothing_whoever_dies_and_callers_are_served_meanwhile()
    {
        await An_answer_of_one_service_is_known_to_the_others();
        var job = await Jobs.CreateCatalogueJobAsync(new CreateCatalogueJobRequest
        {
            Catalogue = new Catalogue { Parts = { Part.Charts }, Formulas = { "formulas/hazelnut-tin-loaf", "formulas/almond-rolls", "formulas/seeded-free-form-loaf" } },
        });

        await Comes(job, 10);
        services[1].Kill();

        await Comes(job, 30);
        redis.Kill();
        Assert.NotEmpty((await Substitutions.VaryFormulaAsync(new VaryFormulaRequest { Formula = Bakes.Rolls, Without = { "sesame" } })).Answers);

        await Comes(job, 60);
        server.Stop("immediate");
        var away = await Refusal.Of(() => Jobs.GetJobAsync(new GetJobRequest { Name = job.Name }));
        Assert.Equal((StatusCode.Unavailable, "RECORDS_UNREACHABLE"), (away.Code, away.Info.Reason));
        Assert.Contains("see that it runs", away.Message, StringComparison.Ordinal);
        server.Start();

        await Comes(job, 90);
        services[1] = await services[1].Again();
        await A_rolling_restart_fails_no_call();

        job = await Comes(job, int.MaxValue);
        Assert.Equal((State.Done, job.Items, 0), (job.State, job.Done, job.Failed));
        var items = await Items(job);
        Assert.Equal(Enumerable.Range(1, job.Items), items.Select(item => item.Item).Order());
        Assert.Equal(Enumerable.Range(1, job.Items), items.Select(item => item.Place));
        Assert.Equal(job.Items, items.Select(item => (item.Formula, item.From, item.To)).Distinct().Count());
    }

    private async Task An_answer_of_one_service_is_known_to_the_others()
    {
        // Each in turn is asked the same; what the first found is on its way to the others when it is told.
        for (var asked = 0; asked < 6; asked++)
        {
            await Substitutions.VaryFormulaAsync(new VaryFormulaRequest { Formula = Bakes.Rolls, Without = { "peanut" } });
            await Task.Delay(200);
        }

        var made = await Task.WhenAll(services.Select(service => service.Metric(
            line => line.StartsWith("swapsolver_answers_total", StringComparison.Ordinal) && line.Contains("VaryFormula", StringComparison.Ordinal) && line.Contains("kept=\"no\"", StringComparison.Ordinal))));
        Assert.Equal(1, made.Sum());
    }

    /// <summary>One after the other is told to stop and started again, while callers ask on.</summary>
    private async Task A_rolling_restart_fails_no_call()
    {
        using var over = new CancellationTokenSource();
        var asking = Task.WhenAll(Enumerable.Range(0, 2).Select(async caller =>
        {
            var asked = 0;
            for (; !over.IsCancellationRequested; asked++)
            {
                Assert.NotEmpty((await new BalanceService.BalanceServiceClient(channel!.Invoker).BalanceFormulaAsync(
                    new BalanceFormulaRequest { Formula = new Formula(Bakes.Rolls) { Slices = 1 + caller + (2 * (asked % 100)) } })).Readings);
            }

            return asked;
        }));
        foreach (var place in new[] { 0, 2 })
        {
            await services[place].Stop();
            services[place] = await services[place].Again();
        }

        await over.CancelAsync();
        Assert.All(await asking, asked => Assert.True(asked > 0));
    }

    /// <summary>Waits until so many items are done, or the job is.</summary>
    private async Task<Job> Comes(Job job, int done)
    {
        for (var began = Stopwatch.StartNew(); began.Elapsed < Patience; await Task.Delay(100))
        {
            job = await Jobs.GetJobAsync(new GetJobRequest { Name = job.Name });
            if (job.Done >= done || job.State == State.Done)
            {
                // What is done to the services is done in the middle of the job.
                Assert.Equal(done == int.MaxValue ? State.Done : State.Running, job.State);
                return job;
            }
        }

        throw new InvalidOperationException($"the job stands at {job.Done} of {job.Items}: {string.Concat(services.Select(service => service.Said))}");
    }

    private async Task<IReadOnlyList<JobItem>> Items(Job job)
    {
        var items = new List<JobItem>();
        var request = new ListJobItemsRequest { Parent = job.Name };
        do
        {
            var page = await Jobs.ListJobItemsAsync(request);
            items.AddRange(page.Items);
            request.PageToken = page.NextPageToken;
        }
        while (request.PageToken.Length > 0);
        return items;
    }
}
