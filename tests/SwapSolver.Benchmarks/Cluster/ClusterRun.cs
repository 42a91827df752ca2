using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Grpc.Core;
using SwapSolver.Benchmarks.Load;
using SwapSolver.Records;
using SwapSolver.Records.Tests.Engines;
using SwapSolver.Service.Access;
using SwapSolver.Service.Tests.Cluster;
using SwapSolver.V1;
using Caller = SwapSolver.Benchmarks.Load.Caller;
using Part = SwapSolver.V1.Catalogue.Types.Part;
using Role = SwapSolver.Service.Access.Role;
using ServiceProcess = SwapSolver.Service.Tests.Cluster.ServiceProcess;
using State = SwapSolver.V1.Job.Types.State;

namespace SwapSolver.Benchmarks.Cluster;

/// <summary>A large job on three services with a real PostgreSQL and a real Redis, while one after another of them is killed; and how
/// much more two services do than one.</summary>
internal sealed class ClusterRun : IDisposable
{
    private const string Page = "tests/SwapSolver.Benchmarks/results/cluster.md";

    private const string Head =
        "# On several machines\n\nWritten by the benchmarks' `--cluster ITEMS`, run from the root of the sources: services as processes of their own on one machine, with a PostgreSQL and a Redis beside them on the same processors.\n";

    private const string Base = "formulas/almond-rolls";

    /// <summary>A part of the items, to compare one service with two: more would show nothing more.</summary>
    private const int Compared = 5;

    private readonly PostgresServer server = new();

    private readonly RedisServer redis = new();

    private readonly string place;

    private readonly string key;

    /// <summary>Rounds in which one service and two are measured in turn.</summary>
    private const int Rounds = 3;

    /// <summary>How long plain counting is measured in one round.</summary>
    private static readonly TimeSpan CountedFor = TimeSpan.FromSeconds(2);

    private ClusterRun()
    {
        place = server.NewDatabase();
        (var kept, key) = ApiKey.Make("load", Role.Owner, "2026-01-01T00:00:00.000Z");
        using var records = new KitchenRecords(place);
        records.Keys.CreateAsync(kept).GetAwaiter().GetResult();
    }

    /// <summary>Runs it.</summary>
    /// <param name="items">So many items at least.</param>
    public static async Task<int> Run(int items)
    {
        using var run = new ClusterRun();
        var faults = await run.WithFaults(items);
        return Math.Max(faults, await run.TwoBesideOne(Math.Max(200, items / Compared)));
    }

    /// <summary>Compares one service with two only.</summary>
    /// <param name="items">So many items at least.</param>
    public static async Task<int> Compare(int items)
    {
        using var run = new ClusterRun();
        return await run.TwoBesideOne(items);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        redis.Dispose();
        server.Dispose();
    }

    private async Task<int> WithFaults(int items)
    {
        var services = new List<ServiceProcess>();
        foreach (var _ in Enumerable.Range(0, 3))
        {
            services.Add(await Start(null));
        }

        using var channel = new AdvisedChannel(key, services.Select(service => service.GrpcPort));
        var jobs = new JobService.JobServiceClient(channel.Invoker);
        var job = await Begin(channel, items);
        var clock = Stopwatch.StartNew();
        var early = await Comes(jobs, job, items / 10);
        var before = services.Max(service => service.ResidentMegabytes);
        await Comes(jobs, job, items / 4);
        services[1].Kill();
        await Comes(jobs, job, items / 3);
        redis.Kill();
        await Comes(jobs, job, items / 2);
        server.Stop("immediate");
        var refused = await Refused(jobs, job);
        server.Start();
        services[1] = await services[1].Again();
        await Comes(jobs, job, items * 3 / 4);
        var (asked, failed) = await RollingRestart(services, channel);
        job = await Comes(jobs, job, int.MaxValue);
        var took = clock.Elapsed;
        var after = services.Max(service => service.ResidentMegabytes);
        var (seen, distinct, problem) = await Count(jobs, job);
        foreach (var service in services)
        {
            await service.DisposeAsync();
        }

        return LoadPage.Write("A large job, and everything killed once", [
            Found.Told("items, of them problems", $"{job.Items}, {job.Failed}"),
            Found.Told("the first problem", $"{(problem.Length > 0 ? problem : "none")}"),
            Found.Told("a service killed at a quarter, Redis at a third, PostgreSQL stopped as by a loss of power at half, each service stopped and started from three quarters on", $""),
            Found.AtMost("items lost", job.Items - distinct, 0),
            Found.AtMost("items doubled", seen - distinct, 0),
            new Found("a call while PostgreSQL was away", refused, "UNAVAILABLE with its reason", refused.StartsWith("Unavailable", StringComparison.Ordinal)),
            Found.AtMost($"calls that failed of {asked} during the rolling restart{(failed.IsEmpty ? string.Empty : $" ({string.Join(", ", failed)})")}", failed.Count, 0),
            Found.Told("took, with all that, and items a second", $"{took.TotalMinutes:0.0} min, {job.Items / took.TotalSeconds:0.0}"),
            Found.Told("resident memory of the largest service at a tenth and at the end", $"{before:0} and {after:0} MB"),
            Found.AtMost("its growth", after / before, 1.5),
        ], Page, Head);
    }

    private async Task<int> TwoBesideOne(int items)
    {
        // Warm, and of the same work: each measured from three tenths of the items on. In turn, for this machine is not as quick at one minute as at another.
        var (one, two, counted, countedByTwo) = (0.0, 0.0, 0.0, 0.0);
        for (var round = 0; round < Rounds; round++)
        {
            one += await Rate(items, 0) / Rounds;
            two += await Rate(items, 0, 1) / Rounds;
            counted += await Counted(1);
            countedByTwo += await Counted(2);
        }

        return LoadPage.Write("Two services beside one, each pinned to a processor", [
            Found.Told("items a second, one and two", $"{one:0.0} and {two:0.0}"),
            Found.AtLeast("two do so many times the work of one", two / one, 1.7),
            Found.Told("plain counting meanwhile, two processors beside one", $"{countedByTwo / counted:0.00}"),
        ], Page, Head);
    }

    /// <summary>How far so many threads count in a while, together: what the machine itself gives for a second processor.</summary>
    private static async Task<double> Counted(int threads)
    {
        static long Count()
        {
            var (clock, count) = (Stopwatch.StartNew(), 0L);
            while (clock.Elapsed < CountedFor)
            {
                count++;
            }

            return count;
        }

        var counts = await Task.WhenAll(Enumerable.Range(0, threads).Select(_ => Task.Factory.StartNew(Count, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default)));
        return counts.Sum();
    }

    private async Task<double> Rate(int items, params int[] processors)
    {
        var services = new List<ServiceProcess>();
        foreach (var processor in processors)
        {
            services.Add(await Start(processor));
        }

        using var channel = new AdvisedChannel(key, services.Select(service => service.GrpcPort));
        var jobs = new JobService.JobServiceClient(channel.Invoker);
        var job = await Begin(channel, items);
        // A program that has just started compiles what it runs often; two of them do so twice. That is their start, not their rate.
        var first = await Comes(jobs, job, items * 3 / 10);
        var clock = Stopwatch.StartNew();
        var last = await Comes(jobs, job, items * 9 / 10);
        var rate = (last.Done - first.Done) / clock.Elapsed.TotalSeconds;
        await jobs.CancelJobAsync(new CancelJobRequest { Name = job.Name });
        foreach (var service in services)
        {
            await service.DisposeAsync();
        }

        return rate;
    }

    private Task<ServiceProcess> Start(int? processor) => ServiceProcess.Start(
        place, processor, ("Cache:Redis", $"127.0.0.1:{redis.Port}"), ("Limits:JobLeaseSeconds", "5"), ("Limits:CallerBurst", "1000000"), ("Limits:CallerCallsPerSecond", "1000000"));

    /// <summary>Writes down as many formulas as the items ask for, each a little different, and begins their charts and variants.</summary>
    private static async Task<Job> Begin(AdvisedChannel channel, int items)
    {
        var (formulas, jobs) = (new FormulaService.FormulaServiceClient(channel.Invoker), new JobService.JobServiceClient(channel.Invoker));
        var request = new CreateCatalogueJobRequest { Catalogue = new Catalogue { Parts = { Part.Charts, Part.Variants }, Formulas = { Base } } };
        var trial = await jobs.CreateCatalogueJobAsync(request);
        trial = await Comes(jobs, trial, 0);
        var of1 = trial.Items;
        if (trial.State != State.Done)
        {
            await jobs.CancelJobAsync(new CancelJobRequest { Name = trial.Name });
        }

        var model = await formulas.GetFormulaAsync(new GetFormulaRequest { Name = Base });
        request.Catalogue.Formulas.Clear();
        for (var number = 0; number < (items + of1 - 1) / of1; number++)
        {
            var formula = new Formula { DisplayName = string.Create(CultureInfo.InvariantCulture, $"{model.DisplayName} {number}"), Lines = { model.Lines }, Slices = model.Slices, Oven = model.Oven };
            // Larger and larger bowls: no two are the same problem, and all are the same kind.
            formula.Lines[0].Grams += number % 10;
            formula.Lines[1].Grams += number / 10 % 10;
            var id = string.Create(CultureInfo.InvariantCulture, $"bench-{Guid.NewGuid():N}");
            request.Catalogue.Formulas.Add((await formulas.CreateFormulaAsync(new CreateFormulaRequest { Formula = formula, FormulaId = id })).Name);
        }

        return await jobs.CreateCatalogueJobAsync(request);
    }

    private static async Task<Job> Comes(JobService.JobServiceClient jobs, Job job, int done)
    {
        while (true)
        {
            await Task.Delay(200);
            job = await jobs.GetJobAsync(new GetJobRequest { Name = job.Name });
            if (job.State == State.Done || (done == 0 ? job.Counted : job.Done >= done))
            {
                return job;
            }
        }
    }

    private static async Task<string> Refused(JobService.JobServiceClient jobs, Job job)
    {
        try
        {
            await jobs.GetJobAsync(new GetJobRequest { Name = job.Name });
            return "an answer";
        }
        catch (RpcException fault)
        {
            return $"{fault.StatusCode}: {fault.Status.Detail[..Math.Min(120, fault.Status.Detail.Length)]}";
        }
    }

    private static async Task<(int Asked, ConcurrentBag<string> Failed)> RollingRestart(List<ServiceProcess> services, AdvisedChannel channel)
    {
        using var over = new CancellationTokenSource();
        var (asked, failed) = (0, new ConcurrentBag<string>());
        var caller = new Caller(channel.Invoker);
        var asking = Task.WhenAll(Enumerable.Range(0, 4).Select(async _ =>
        {
            while (!over.IsCancellationRequested)
            {
                if (await caller.Ask(Interlocked.Increment(ref asked)) is { Code: not StatusCode.OK } ended)
                {
                    failed.Add($"{ended.Code} after {ended.Took.TotalSeconds:0.0} s");
                }
            }
        }));
        for (var number = 0; number < services.Count; number++)
        {
            await services[number].Stop();
            services[number] = await services[number].Again();
        }

        await over.CancelAsync();
        await asking;
        return (asked, failed);
    }

    /// <summary>Reads every result once: how many there are, of how many items, and the first that is a problem.</summary>
    private static async Task<(int Seen, int Distinct, string Problem)> Count(JobService.JobServiceClient jobs, Job job)
    {
        var (seen, distinct, problem) = (0, new HashSet<int>(), string.Empty);
        var request = new ListJobItemsRequest { Parent = job.Name, PageSize = 1000 };
        do
        {
            var page = await jobs.ListJobItemsAsync(request);
            seen += page.Items.Count;
            distinct.UnionWith(page.Items.Select(item => item.Item));
            problem = problem.Length > 0 ? problem : page.Items.Where(item => item.Problem.Length > 0).Select(item => $"{item.Diet} {item.Without} {item.From} {item.To}: {item.Problem}".Trim()).FirstOrDefault(string.Empty);
            request.PageToken = page.NextPageToken;
        }
        while (request.PageToken.Length > 0);
        return (seen, distinct.Count, problem);
    }
}
