using SwapSolver.Kitchen.Foods;
using SwapSolver.Records.Formulas;
using SwapSolver.Records.Keys;
using SwapSolver.Records.Tests.Engines;
using SwapSolver.Records.Trials;

namespace SwapSolver.Records.Tests;

/// <summary>Trials, choices and keys, whichever engine holds them.</summary>
public abstract class TrialAndKeyRecordsTests(IRecordsEngine engine)
{
    private const string Noon = "2026-05-01T12:00:00.000Z", Later = "2026-05-01T13:00:00.000Z";

    private readonly string place = engine.NewPlace();

    private static WriteRequest Asked(string id = "", string fingerprint = "") => new(id, fingerprint, Noon, Noon);

    private static StoredTrial Baked(long revision, string document = "{}", string at = Noon) => new("loaf", 0, revision, document, at);

    private async Task<KitchenRecords> Kitchen()
    {
        var records = new KitchenRecords(place);
        await records.Formulas.CreateAsync("loaf", new FormulaDraft("{}", "Loaf", string.Empty, "[]"), Asked());
        return records;
    }

    [Fact]
    public async Task Trials_are_numbered_by_formula_and_only_of_revisions_that_are_there()
    {
        using var records = await Kitchen();
        Assert.Equal(1, (await records.Trials.AddAsync(Baked(1, "{\"a\":1}"), Asked()))!.Number);
        Assert.Equal(2, (await records.Trials.AddAsync(Baked(1, "{\"a\":2}", Later), Asked()))!.Number);
        Assert.Null(await records.Trials.AddAsync(Baked(2), Asked()));
        Assert.Null(await records.Trials.AddAsync(Baked(1) with { Formula = "rolls" }, Asked()));

        Assert.Equal([2L, 1L], records.Trials.List("loaf", null, 10).Select(trial => trial.Number));
        Assert.Equal([1L], records.Trials.List("loaf", 2, 10).Select(trial => trial.Number));
        Assert.Equal(["{\"a\":1}", "{\"a\":2}"], records.Trials.Newest(10).Select(trial => trial.Document));
        Assert.Equal("{\"a\":2}", Assert.Single(records.Trials.Newest(1)).Document);
        Assert.Equal("{\"a\":1}", records.Trials.Find("loaf", 1)!.Document);
    }

    [Fact]
    public async Task A_trial_that_is_sent_again_is_written_down_once_and_is_seen_by_the_version()
    {
        using var records = await Kitchen();
        var before = records.Version;
        var first = await records.Trials.AddAsync(Baked(1), Asked("one", "print"));
        Assert.True(records.Version > before);
        Assert.Equal(first, await records.Trials.AddAsync(Baked(1), Asked("one", "print")));
        Assert.Equal(string.Empty, (await records.Trials.AddAsync(Baked(1), Asked("one", "other")))!.Document);
        Assert.Single(records.Trials.List("loaf", null, 10));
    }

    [Fact]
    public async Task The_last_choice_about_a_fact_counts()
    {
        using var records = await Kitchen();
        Assert.Empty(records.Trials.Choices());
        await records.Trials.ChooseAsync(new LearnedChoice("oven-factor", 1, string.Empty));
        await records.Trials.ChooseAsync(new LearnedChoice("oven-factor", 0, Noon));
        Assert.Equal(new LearnedChoice("oven-factor", 0, Noon), Assert.Single(records.Trials.Choices()).Value);
    }

    [Fact]
    public async Task What_another_program_writes_is_seen_by_the_next_look()
    {
        using var records = await Kitchen();
        using var another = new KitchenRecords(place);
        var key = new StoredKey("tablet", "bench tablet", "Reader", "5a", "17", Noon, null);
        await another.Keys.CreateAsync(key);
        var (stamp, version) = (records.Stamp, records.Version);
        Assert.Null(records.Keys.Find("tablet")!.Revoked);
        Assert.Equal((stamp, version), (records.Stamp, records.Version));

        await another.Keys.RevokeAsync("tablet", Later);
        Assert.Equal(Later, records.Keys.Find("tablet")!.Revoked);
        Assert.True(stamp is null || records.Stamp != stamp);

        another.Put([new MeasuredFact("salt", SwapSolver.Kitchen.Ingredients.Fact.WaterBound, new SwapSolver.Kitchen.Ingredients.Range(1, 2, 3), "weighed")]);
        Assert.True(records.Version > version);
    }

    [Fact]
    public async Task A_key_is_found_by_its_id_and_taken_back_once()
    {
        using var records = new KitchenRecords(place);
        Assert.Null(records.Keys.Find("a"));
        Assert.Empty(records.Keys.List());
        var key = new StoredKey("a", "bench", "Reader", "00", "11", Noon, null);
        await records.Keys.CreateAsync(key);
        Assert.Equal(key, records.Keys.Find("a"));
        Assert.Equal(Noon, (await records.Keys.RevokeAsync("a", Noon))!.Revoked);
        Assert.Equal(Noon, (await records.Keys.RevokeAsync("a", Later))!.Revoked);
        Assert.Null(await records.Keys.RevokeAsync("b", Noon));
    }
}

/// <summary>In the embedded engine.</summary>
public sealed class EmbeddedTrialAndKeyRecordsTests(EmbeddedEngine engine) : TrialAndKeyRecordsTests(engine), IClassFixture<EmbeddedEngine>;

/// <summary>In a PostgreSQL server.</summary>
[Collection(WithServer.Name)]
public sealed class ServerTrialAndKeyRecordsTests(ServerEngine engine) : TrialAndKeyRecordsTests(engine);
