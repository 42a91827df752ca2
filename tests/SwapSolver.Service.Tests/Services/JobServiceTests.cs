using Grpc.Core;
using SwapSolver.Records;
using SwapSolver.Records.Formulas;
using SwapSolver.Records.Jobs;
using SwapSolver.Service.Jobs;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Diet = SwapSolver.V1.VaryFormulaRequest.Types.Diet;
using Part = SwapSolver.V1.Catalogue.Types.Part;
using State = SwapSolver.V1.Job.Types.State;

namespace SwapSolver.Service.Tests.Services;

/// <summary>Charts and variants of a catalogue, as a job that goes on by itself.</summary>
public sealed class JobServiceTests : IAsyncLifetime
{
    private const string Noon = "2026-05-01T12:00:00.000Z";

    private const string Loaf = "formulas/hazelnut-tin-loaf", Rolls = "formulas/almond-rolls";

    private RunningService? service;

    private JobService.JobServiceClient Jobs => new(service!.With(service.Key));

    public async Task InitializeAsync() => service = await RunningService.Start();

    public async Task DisposeAsync() => await service!.DisposeAsync();

    private static CreateCatalogueJobRequest Variants(params string[] formulas) => new()
    {
        DisplayName = "Spring list",
        Catalogue = new Catalogue { Parts = { Part.Variants }, Formulas = { formulas }, Without = { "egg" }, Diets = { Diet.DairyFree } },
    };

    private async Task<Job> Ended(Job job)
    {
        using var watch = Jobs.WatchJob(new WatchJobRequest { Name = job.Name });
        await foreach (var seen in watch.ResponseStream.ReadAllAsync())
        {
            Assert.True(seen.Done >= job.Done, "a job went backwards");
            job = seen;
        }

        return job;
    }

    private async Task<IReadOnlyList<JobItem>> Items(Job job) => (await Jobs.ListJobItemsAsync(new ListJobItemsRequest { Parent = job.Name, PageSize = 1000 })).Items;

    [Fact]
    public async Task Every_formula_is_solved_for_every_wish_as_its_question_is_answered()
    {
        var begun = await Jobs.CreateCatalogueJobAsync(Variants(Loaf, Rolls));
        Assert.Equal((State.Running, "Spring list"), (begun.State, begun.DisplayName));
        var job = await Ended(begun);
        Assert.Equal((State.Done, true, 4, 4, 0), (job.State, job.Counted, job.Items, job.Done, job.Failed));
        Assert.NotNull(job.EndTime);

        var items = await Items(job);
        Assert.Equal([1, 2, 3, 4], items.Select(item => item.Place));
        Assert.Equal([1, 2, 3, 4], items.Select(item => item.Item).Order());
        foreach (var item in items)
        {
            var alone = await service!.Substitutions.VaryFormulaAsync(new VaryFormulaRequest
            {
                Name = item.Formula,
                Diet = item.Diet,
                Without = { item.Without.Length > 0 ? [item.Without] : Array.Empty<string>() },
                Habits = new Habits { Answers = 1 },
            });
            Assert.Equal(alone, item.Variant);
        }
    }

    [Fact]
    public async Task A_chart_has_an_item_for_every_pair_that_its_question_judges()
    {
        var job = await Ended(await Jobs.CreateCatalogueJobAsync(new CreateCatalogueJobRequest { Catalogue = new Catalogue { Parts = { Part.Charts }, Formulas = { Rolls } } }));
        var alone = new List<ChartSwapsResponse>();
        using var chart = service!.Substitutions.ChartSwaps(new ChartSwapsRequest { Name = Rolls });
        await foreach (var pair in chart.ResponseStream.ReadAllAsync())
        {
            alone.Add(new ChartSwapsResponse(pair) { Pair = 1, Pairs = 1 });
        }

        Assert.Equal(alone, (await Items(job)).OrderBy(item => item.Item).Select(item => item.Pair));
        Assert.Equal(job.Items, alone.Count);
    }

    [Fact]
    public async Task One_formula_that_cannot_be_solved_is_a_problem_of_its_own_and_what_is_saved_later_moves_nothing()
    {
        var (started, goOn) = (new TaskCompletionSource(), new TaskCompletionSource());
        var solver = new StandInSolver
        {
            Instead = (solution, cancel) =>
            {
                started.TrySetResult();
                goOn.Task.Wait(TimeSpan.FromSeconds(60), cancel);
                return solution;
            },
        };
        await using var one = await RunningService.Start(solver, null, ("Limits:JobSolvesAtOnce", "1"));
        var jobs = new JobService.JobServiceClient(one.With(one.Key));
        await one.Formulas.CopyFormulaAsync(new CopyFormulaRequest { Name = Rolls, FormulaId = "mine" });
        await one.Formulas.CopyFormulaAsync(new CopyFormulaRequest { Name = Rolls, FormulaId = "gone" });
        var job = await jobs.CreateCatalogueJobAsync(Variants("formulas/mine", "formulas/gone"));
        await started.Task;
        // The first is being solved; the second waits for its turn.
        await one.Formulas.DeleteFormulaAsync(new DeleteFormulaRequest { Name = "formulas/gone" });
        var newer = new Formula(await one.Formulas.GetFormulaAsync(new GetFormulaRequest { Name = "formulas/mine" }));
        newer.Lines[0].Grams += 5;
        await one.Formulas.UpdateFormulaAsync(new UpdateFormulaRequest { Formula = newer });
        goOn.SetResult();

        using var watch = jobs.WatchJob(new WatchJobRequest { Name = job.Name });
        await foreach (var seen in watch.ResponseStream.ReadAllAsync())
        {
            job = seen;
        }

        var items = (await jobs.ListJobItemsAsync(new ListJobItemsRequest { Parent = job.Name })).Items;
        Assert.Equal((State.Done, 4, 2), (job.State, job.Done, job.Failed));
        Assert.All(items.Take(2), item => Assert.Equal(("formulas/mine/revisions/1", string.Empty), (item.Formula, item.Problem)));
        Assert.All(items.Skip(2), item => Assert.Contains("put away", item.Problem, StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_item_that_ends_process_after_process_is_given_up_and_the_others_are_not()
    {
        var folder = Directory.CreateTempSubdirectory("kitchen-jobs-");
        var (kept, asked) = (new StoredJob("dark", string.Empty, JobDocument.Write(Variants(Rolls).Catalogue), JobState.Running, 0, 0, 0, 0, Noon, null), new WriteRequest(string.Empty, string.Empty, Noon, Noon));
        using (var records = new KitchenRecords(folder.FullName))
        {
            await records.Jobs.CreateAsync(kept, CatalogueCount.Start, asked);
            var counting = records.Jobs.Shards.Take("one", TimeSpan.FromMinutes(1))!;
            records.Jobs.Shards.Count(counting, [.. CatalogueShard.Cut(Rolls, [CatalogueItem.OfWithout("egg"), CatalogueItem.OfDiet(Diet.DairyFree)])], null, Noon);
            // Five processes took it, and no more was heard of them.
            for (var died = 0; died < 5; died++)
            {
                Assert.NotNull(records.Jobs.Shards.Take("one", TimeSpan.FromSeconds(-1)));
            }
        }

        await using (var next = await RunningService.Start(place: folder.FullName))
        {
            var jobs = new JobService.JobServiceClient(next.With(next.Key));
            using var watch = jobs.WatchJob(new WatchJobRequest { Name = "jobs/dark" });
            await foreach (var seen in watch.ResponseStream.ReadAllAsync())
            {
                Assert.InRange(seen.Failed, 0, 1);
            }

            var items = (await jobs.ListJobItemsAsync(new ListJobItemsRequest { Parent = "jobs/dark" })).Items;
            Assert.Contains("5 times", items[0].Problem, StringComparison.Ordinal);
            Assert.Equal((2, string.Empty), (items.Count, items[1].Problem));
        }

        folder.Delete(recursive: true);
    }

    [Fact]
    public async Task A_paused_job_waits_and_goes_on_and_one_given_up_stays_so()
    {
        var job = await Jobs.CreateCatalogueJobAsync(new CreateCatalogueJobRequest { Catalogue = new Catalogue { Parts = { Part.Variants, Part.Charts } } });
        Assert.Equal(State.Paused, (await Jobs.PauseJobAsync(new PauseJobRequest { Name = job.Name })).State);
        // Ends at once, as it is paused.
        Assert.Equal(State.Paused, (await Ended(job)).State);
        Assert.Equal(State.Running, (await Jobs.ResumeJobAsync(new ResumeJobRequest { Name = job.Name })).State);
        Assert.Equal(State.Cancelled, (await Jobs.CancelJobAsync(new CancelJobRequest { Name = job.Name })).State);
        Assert.Equal(State.Cancelled, (await Jobs.CancelJobAsync(new CancelJobRequest { Name = job.Name })).State);
        var refusal = await Refusal.Of(() => Jobs.ResumeJobAsync(new ResumeJobRequest { Name = job.Name }));
        Assert.Equal((StatusCode.FailedPrecondition, "JOB_ENDED"), (refusal.Code, refusal.Info.Reason));
        Assert.Equal(State.Cancelled, (await Jobs.GetJobAsync(new GetJobRequest { Name = job.Name })).State);
    }

    [Fact]
    public async Task The_same_request_begins_one_job_and_jobs_and_results_are_listed_in_pages()
    {
        var request = Variants(Rolls);
        request.RequestId = "one-and-only";
        var first = await Jobs.CreateCatalogueJobAsync(request);
        Assert.Equal(first.Name, (await Jobs.CreateCatalogueJobAsync(request)).Name);
        var second = await Ended(await Jobs.CreateCatalogueJobAsync(Variants(Loaf)));

        var page = await Jobs.ListJobsAsync(new ListJobsRequest { PageSize = 1 });
        Assert.Equal(second.Name, Assert.Single(page.Jobs).Name);
        var rest = await Jobs.ListJobsAsync(new ListJobsRequest { PageSize = 1, PageToken = page.NextPageToken });
        Assert.Equal((first.Name, string.Empty), (Assert.Single(rest.Jobs).Name, rest.NextPageToken));

        var items = await Jobs.ListJobItemsAsync(new ListJobItemsRequest { Parent = second.Name, PageSize = 1 });
        var more = await Jobs.ListJobItemsAsync(new ListJobItemsRequest { Parent = second.Name, PageSize = 1, PageToken = items.NextPageToken });
        Assert.Equal((1, 2, string.Empty), (Assert.Single(items.Items).Place, Assert.Single(more.Items).Place, more.NextPageToken));
        Assert.Equal(more.Items, (await Jobs.ListJobItemsAsync(new ListJobItemsRequest { Parent = second.Name, After = 1 })).Items);
    }

    [Fact]
    public async Task A_job_that_cannot_be_read_is_refused_with_all_that_is_wrong()
    {
        var refusal = await Refusal.Of(() => Jobs.CreateCatalogueJobAsync(new CreateCatalogueJobRequest { Catalogue = new Catalogue { Without = { "eg" }, Diets = { (Diet)77 } } }));
        refusal.Names("catalogue.parts", "", "VARIANTS");
        refusal.Names("catalogue.without[0]", "eg", "egg");
        refusal.Names("catalogue.diets[0]", "77", "VEGAN");
        Assert.Equal(StatusCode.NotFound, (await Refusal.Of(() => Jobs.CreateCatalogueJobAsync(Variants("formulas/none")))).Code);
        Assert.Equal(StatusCode.NotFound, (await Refusal.Of(() => Jobs.GetJobAsync(new GetJobRequest { Name = "jobs/none" }))).Code);
        Assert.Equal(StatusCode.NotFound, (await Refusal.Of(() => Jobs.PauseJobAsync(new PauseJobRequest { Name = "jobs/none" }))).Code);
        Assert.Equal(StatusCode.NotFound, (await Refusal.Of(() => Jobs.WatchJob(new WatchJobRequest { Name = "jobs/none" }))).Code);
        Assert.Equal(StatusCode.NotFound, (await Refusal.Of(() => Jobs.ListJobItemsAsync(new ListJobItemsRequest { Parent = "jobs/none" }))).Code);
    }

    [Fact]
    public async Task A_service_that_starts_again_goes_on_with_its_jobs()
    {
        var folder = Directory.CreateTempSubdirectory("kitchen-jobs-");
        Job job;
        await using (var first = await RunningService.Start(place: folder.FullName))
        {
            job = await new JobService.JobServiceClient(first.With(first.Key)).CreateCatalogueJobAsync(new CreateCatalogueJobRequest { Catalogue = new Catalogue { Parts = { Part.Variants }, Formulas = { Rolls, Loaf } } });
        }

        await using (var second = await RunningService.Start(place: folder.FullName))
        {
            var jobs = new JobService.JobServiceClient(second.With(second.Key));
            using var watch = jobs.WatchJob(new WatchJobRequest { Name = job.Name });
            await foreach (var seen in watch.ResponseStream.ReadAllAsync())
            {
                job = seen;
            }

            Assert.Equal((State.Done, job.Items, 0), (job.State, job.Done, job.Failed));
            var items = (await jobs.ListJobItemsAsync(new ListJobItemsRequest { Parent = job.Name, PageSize = 1000 })).Items;
            Assert.Equal(Enumerable.Range(1, job.Items), items.Select(item => item.Item).Order());
        }

        folder.Delete(recursive: true);
    }
}
