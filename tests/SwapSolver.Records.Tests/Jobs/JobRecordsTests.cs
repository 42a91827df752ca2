using System.Globalization;
using SwapSolver.Records.Formulas;
using SwapSolver.Records.Jobs;
using SwapSolver.Records.Tests.Engines;

namespace SwapSolver.Records.Tests.Jobs;

/// <summary>Jobs, their shards and results, whichever engine holds them.</summary>
public abstract class JobRecordsTests(IRecordsEngine engine)
{
    private const string Noon = "2026-05-01T12:00:00.000Z", Later = "2026-05-01T13:00:00.000Z";

    private static readonly TimeSpan Long = TimeSpan.FromHours(1), Over = TimeSpan.FromSeconds(-1);

    private readonly string place = engine.NewPlace();

    private static WriteRequest Asked(string id = "", string fingerprint = "") => new(id, fingerprint, Noon, Noon);

    private static StoredJob Job(string id, string at = Noon) => new(id, "Spring list", "{\"asked\":1}", JobState.Running, 0, 0, 0, 0, at, null);

    private static NewResult[] Results(params string[] words) => [.. words.Select(word => new NewResult(word == "bad", word))];

    /// <summary>A job of two shards, of three and of two items, that are all counted.</summary>
    private static async Task Cut(KitchenRecords records, string id = "a")
    {
        Assert.Equal(id, (await records.Jobs.CreateAsync(Job(id), "from the first", Asked())).Id);
        var counting = records.Jobs.Shards.Take("one", Long)!;
        Assert.Equal((ShardKind.Counting, "from the first", "{\"asked\":1}"), (counting.Kind, counting.Document, counting.JobDocument));
        Assert.Equal(Hold.Kept, records.Jobs.Shards.Count(counting, [new NewShard("loaf", 3), new NewShard("rolls", 2)], null, Noon));
    }

    [Fact]
    public async Task A_job_is_done_when_every_item_has_its_result_and_not_before()
    {
        using var records = new KitchenRecords(place);
        Assert.Null(records.Jobs.Shards.Take("one", Long));
        await Cut(records);
        Assert.Equal((5L, 1L, 0L, JobState.Running), records.Jobs.Find("a") is { } counted ? (counted.Items, counted.IsCounted, counted.Done, counted.State) : default);

        var loaf = records.Jobs.Shards.Take("one", Long)!;
        var rolls = records.Jobs.Shards.Take("two", Long)!;
        Assert.Null(records.Jobs.Shards.Take("three", Long));
        Assert.Equal(Hold.Kept, records.Jobs.Shards.Write(rolls, Results("d", "bad"), Long, Noon));
        Assert.Equal(Hold.Kept, records.Jobs.Shards.Write(loaf, Results("a", "b"), Long, Noon));
        Assert.Equal(JobState.Running, records.Jobs.Find("a")!.State);
        Assert.Equal(Hold.Kept, records.Jobs.Shards.Write(loaf with { Written = 2 }, Results("c"), Long, Later));

        var done = records.Jobs.Find("a")!;
        Assert.Equal((JobState.Done, 5L, 1L, Later), (done.State, done.Done, done.Failed, done.Ended));
        Assert.Equal(["4 d", "5 bad", "1 a", "2 b", "3 c"], records.Jobs.Results("a", 0, 10).Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.Item} {one.Document}")));
        Assert.Equal([4L, 5L], records.Jobs.Results("a", 3, 10).Select(one => one.Place));
        Assert.Single(records.Jobs.Results("a", 3, 1));
    }

    [Fact]
    public async Task Who_fell_silent_is_overtaken_and_can_write_no_more()
    {
        using var records = new KitchenRecords(place);
        await Cut(records);
        var silent = records.Jobs.Shards.Take("one", Over)!;
        Assert.Equal(Hold.Kept, records.Jobs.Shards.Write(silent, Results("a"), Over, Noon));
        var next = records.Jobs.Shards.Take("two", Long)!;
        Assert.Equal((silent.Number, 1L, 1L), (next.Number, next.Written, next.Attempts));

        Assert.Equal(Hold.Lost, records.Jobs.Shards.Write(silent with { Written = 1 }, Results("again"), Long, Noon));
        Assert.Equal(Hold.Lost, records.Jobs.Shards.Renew(silent with { Written = 1 }, Long));
        Assert.Equal(Hold.Kept, records.Jobs.Shards.Write(next, Results("b", "c"), Long, Noon));
        Assert.Equal(["a", "b", "c"], records.Jobs.Results("a", 0, 10).Select(one => one.Document));
        Assert.Equal(3, records.Jobs.Find("a")!.Done);
    }

    [Fact]
    public async Task The_same_results_written_again_are_there_once()
    {
        using var records = new KitchenRecords(place);
        await Cut(records);
        var loaf = records.Jobs.Shards.Take("one", Long)!;
        Assert.Equal(Hold.Kept, records.Jobs.Shards.Write(loaf, Results("a", "b"), Long, Noon));
        // As after a server that wrote and could no longer say so.
        Assert.Equal(Hold.Lost, records.Jobs.Shards.Write(loaf, Results("a", "b"), Long, Noon));
        Assert.Equal(2, records.Jobs.Find("a")!.Done);
        Assert.Equal(2, records.Jobs.Results("a", 0, 10).Count);
    }

    [Fact]
    public async Task A_shard_on_which_process_after_process_dies_says_how_often_and_one_that_is_given_back_does_not_count()
    {
        using var records = new KitchenRecords(place);
        await Cut(records);
        Assert.Equal([1L, 2L, 3L], Enumerable.Range(0, 3).Select(_ => records.Jobs.Shards.Take("one", Over)!.Attempts).ToList());
        var fourth = records.Jobs.Shards.Take("one", Long)!;
        records.Jobs.Shards.GiveBack(fourth);
        Assert.Equal(4, records.Jobs.Shards.Take("one", Over)!.Attempts);
        var last = records.Jobs.Shards.Take("one", Long)!;
        Assert.Equal(Hold.Kept, records.Jobs.Shards.Write(last, Results("a"), Over, Noon));
        Assert.Equal(1, records.Jobs.Shards.Take("two", Long)!.Attempts);
    }

    [Fact]
    public async Task A_paused_job_takes_what_is_done_and_begins_nothing_and_one_given_up_takes_nothing()
    {
        using var records = new KitchenRecords(place);
        await Cut(records);
        var loaf = records.Jobs.Shards.Take("one", Long)!;
        Assert.Equal(JobState.Paused, (await records.Jobs.TellAsync("a", JobState.Paused, Noon))!.State);
        Assert.Equal(Hold.Stopped, records.Jobs.Shards.Write(loaf, Results("a"), Long, Noon));
        records.Jobs.Shards.GiveBack(loaf);
        Assert.Null(records.Jobs.Shards.Take("one", Long));

        Assert.Equal(JobState.Running, (await records.Jobs.TellAsync("a", JobState.Running, Noon))!.State);
        var again = records.Jobs.Shards.Take("one", Long)!;
        Assert.Equal((loaf.Number, 1L), (again.Number, again.Written));
        Assert.Equal((JobState.Cancelled, Later), await records.Jobs.TellAsync("a", JobState.Cancelled, Later) is { } gone ? (gone.State, gone.Ended) : default);
        Assert.Equal(Hold.Lost, records.Jobs.Shards.Write(again, Results("b"), Long, Noon));
        Assert.Single(records.Jobs.Results("a", 0, 10));
        Assert.Equal(JobState.Cancelled, (await records.Jobs.TellAsync("a", JobState.Running, Noon))!.State);
        Assert.Null(await records.Jobs.TellAsync("none", JobState.Running, Noon));
    }

    [Fact]
    public async Task Counting_goes_on_where_it_stopped_and_jobs_take_turns()
    {
        using var records = new KitchenRecords(place);
        await records.Jobs.CreateAsync(Job("a"), "1", Asked());
        var first = records.Jobs.Shards.Take("one", Over)!;
        var taken = records.Jobs.Shards.Take("two", Long)!;
        Assert.Equal(Hold.Lost, records.Jobs.Shards.Count(first, [new NewShard("loaf", 3)], "2", Noon));
        Assert.Equal(Hold.Kept, records.Jobs.Shards.Count(taken, [new NewShard("loaf", 3), new NewShard("rolls", 2)], "2", Noon));
        Assert.Equal((5L, 0L), records.Jobs.Find("a") is { } job ? (job.Items, job.IsCounted) : default);
        await records.Jobs.CreateAsync(Job("b"), "1", Asked());
        Assert.Equal(["b", "a", "a", "a"], Enumerable.Range(0, 4).Select(_ => records.Jobs.Shards.Take("one", Long)!.Job).ToList());
    }

    [Fact]
    public async Task A_job_that_is_asked_for_again_is_made_once_and_jobs_are_listed_newest_first()
    {
        using var records = new KitchenRecords(place);
        Assert.Empty(records.Jobs.List(null, 10));
        await records.Jobs.CreateAsync(Job("a"), "1", Asked("id", "print"));
        Assert.Equal("a", (await records.Jobs.CreateAsync(Job("b"), "1", Asked("id", "print"))).Id);
        Assert.Equal(string.Empty, (await records.Jobs.CreateAsync(Job("c"), "1", Asked("id", "another"))).Id);
        await records.Jobs.CreateAsync(Job("d", Later), "1", Asked());
        await records.Jobs.CreateAsync(Job("e", Later), "1", Asked());
        Assert.Equal(["e", "d", "a"], records.Jobs.List(null, 10).Select(job => job.Id));
        Assert.Equal(["d"], records.Jobs.List("e", 1).Select(job => job.Id));
        Assert.Equal(["a"], records.Jobs.List("d", 10).Select(job => job.Id));
    }

    [Fact]
    public async Task Records_are_told_from_any_other_and_stay_who_they_are()
    {
        using var records = new KitchenRecords(place);
        Assert.Null(records.Identity());
        await records.Jobs.CreateAsync(Job("a"), "1", Asked());
        var identity = records.Identity();
        Assert.NotEmpty(identity!);
        using var same = new KitchenRecords(place);
        Assert.Equal(identity, same.Identity());
    }

    [Fact]
    public async Task Two_kitchens_programs_at_once_write_every_item_once()
    {
        using var first = new KitchenRecords(place);
        await first.Jobs.CreateAsync(Job("a"), "1", Asked());
        var counting = first.Jobs.Shards.Take("one", Long)!;
        first.Jobs.Shards.Count(counting, [.. Enumerable.Range(0, 20).Select(_ => new NewShard("loaf", 5))], null, Noon);

        using var second = new KitchenRecords(place);
        await Task.WhenAll(new[] { first, second, first, second }.Select(records => Task.Run(() =>
        {
            while (records.Jobs.Shards.Take("one", Long) is { } shard)
            {
                Assert.Equal(Hold.Kept, records.Jobs.Shards.Write(shard, Results("a", "b", "c"), Long, Noon));
                Assert.Equal(Hold.Kept, records.Jobs.Shards.Write(shard with { Written = 3 }, Results("d", "e"), Long, Noon));
            }
        })));
        var results = second.Jobs.Results("a", 0, 1000);
        Assert.Equal(Enumerable.Range(1, 100).Select(item => (long)item), results.Select(one => one.Item).Order());
        Assert.Equal(Enumerable.Range(1, 100).Select(place => (long)place), results.Select(one => one.Place));
        Assert.Equal((JobState.Done, 100L), second.Jobs.Find("a") is { } job ? (job.State, job.Done) : default);
    }
}

/// <summary>In the embedded engine.</summary>
public sealed class EmbeddedJobRecordsTests(EmbeddedEngine engine) : JobRecordsTests(engine), IClassFixture<EmbeddedEngine>;

/// <summary>In a PostgreSQL server.</summary>
[Collection(WithServer.Name)]
public sealed class ServerJobRecordsTests(ServerEngine engine) : JobRecordsTests(engine);
