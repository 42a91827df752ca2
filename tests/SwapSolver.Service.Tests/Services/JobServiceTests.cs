using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Diet = SwapSolver.V1.VaryFormulaRequest.Types.Diet;
using Part = SwapSolver.V1.Catalogue.Types.Part;
using State = SwapSolver.V1.Job.Types.State;

namespace SwapSolver.Service.Tests.Services;

/// <summary>Charts and variants of a catalogue, as a job that goes on by itself.</summary>
public sealed class JobServiceTests : IAsyncLifetime
{
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
        await service!.Formulas.CopyFormulaAsync(new CopyFormulaRequest { Name = Rolls, FormulaId = "mine" });
        await service.Formulas.CopyFormulaAsync(new CopyFormulaRequest { Name = Rolls, FormulaId = "gone" });
        var paused = await Jobs.CreateCatalogueJobAsync(Variants("formulas/mine", "formulas/gone"));
        await service.Formulas.DeleteFormulaAsync(new DeleteFormulaRequest { Name = "formulas/gone" });
        var items = await Items(await Ended(paused));
        Assert.Equal(["formulas/mine/revisions/1"], items.Where(item => item.Problem.Length == 0).Select(item => item.Formula).Distinct());
        Assert.All(items.Where(item => item.Formula.Contains("gone", StringComparison.Ordinal) && item.Problem.Length > 0), item => Assert.Contains("put away", item.Problem, StringComparison.Ordinal));
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
