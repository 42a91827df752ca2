using System.Globalization;
using SwapSolver.Records.Formulas;
using SwapSolver.Records.Tests.Engines;

namespace SwapSolver.Records.Tests.Formulas;

/// <summary>What a kitchen may rely on, whichever engine holds its records.</summary>
public abstract class FormulaRecordsTests(IRecordsEngine engine)
{
    private const string Noon = "2026-05-01T12:00:00.000Z";

    private readonly string place = engine.NewPlace();

    private static FormulaDraft Loaf(int grams, string note = "", string name = "Test loaf") =>
        new(string.Create(CultureInfo.InvariantCulture, $$"""{ "lines": [{ "grams": {{grams}} }] }"""), name, note, "[]");

    private static WriteRequest Asked(string id = "", string fingerprint = "", string at = Noon, string forgottenBefore = "2026-04-30T12:00:00.000Z") =>
        new(id, fingerprint, at, forgottenBefore);

    private static FormulaHead Done(Changed changed)
    {
        Assert.Equal(Outcome.Done, changed.Outcome);
        return changed.Now!;
    }

    [Fact]
    public void Asking_an_empty_kitchen_finds_nothing()
    {
        using var records = new KitchenRecords(place);

        Assert.Null(records.Formulas.Find("loaf"));
        Assert.Null(records.Formulas.Find("loaf", 1));
        Assert.Empty(records.Formulas.List(string.Empty, 10, FormulaFilter.InUse));
        Assert.Empty(records.Formulas.ListRevisions("loaf", null, 10));
    }

    [Fact]
    public async Task A_saved_formula_is_there_for_whoever_opens_the_records_next()
    {
        using (var records = new KitchenRecords(place))
        {
            Done(await records.Formulas.CreateAsync("loaf", Loaf(100, "first", "Brot, süß – 日本 🍞"), Asked()));
        }

        using var next = new KitchenRecords(place);
        var (head, revision) = next.Formulas.Find("loaf", null)!.Value;
        Assert.Equal(("loaf", "Brot, süß – 日本 🍞", 1, null, Noon, null), (head.Id, head.DisplayName, head.Newest, head.Published, head.Created, head.Deleted));
        Assert.Equal(new Revision("loaf", 1, Loaf(100).Document, "first", "[]", Noon), revision);
    }

    [Fact]
    public async Task Every_change_is_a_new_revision_and_the_old_ones_stay_as_they_were()
    {
        using var records = new KitchenRecords(place);
        var first = Done(await records.Formulas.CreateAsync("loaf", Loaf(100), Asked()));
        var second = Done(await records.Formulas.UpdateAsync("loaf", Loaf(120, "more"), first.Etag, false, Asked()));

        Assert.Equal(2, second.Newest);
        Assert.NotEqual(first.Etag, second.Etag);
        Assert.Equal(Loaf(100).Document, records.Formulas.Find("loaf", 1)!.Value.Revision.Document);
        Assert.Equal([2L, 1L], records.Formulas.ListRevisions("loaf", null, 10).Select(one => one.Number));
        Assert.Equal([1L], records.Formulas.ListRevisions("loaf", 2, 10).Select(one => one.Number));
    }

    [Fact]
    public async Task The_same_formula_again_makes_no_revision()
    {
        using var records = new KitchenRecords(place);
        var first = Done(await records.Formulas.CreateAsync("loaf", Loaf(100, "first"), Asked()));

        Assert.Equal(first, Done(await records.Formulas.UpdateAsync("loaf", Loaf(100), string.Empty, false, Asked())));
        Assert.Equal(2, Done(await records.Formulas.UpdateAsync("loaf", Loaf(100, "baked it again"), string.Empty, false, Asked())).Newest);
    }

    [Fact]
    public async Task Whoever_changes_an_old_state_is_told_the_new_one_and_nothing_is_overwritten()
    {
        using var records = new KitchenRecords(place);
        var first = Done(await records.Formulas.CreateAsync("loaf", Loaf(100), Asked()));
        var second = Done(await records.Formulas.UpdateAsync("loaf", Loaf(120), first.Etag, false, Asked()));

        Assert.Equal(new Changed(Outcome.Stale, second), await records.Formulas.UpdateAsync("loaf", Loaf(90), first.Etag, false, Asked()));
        Assert.Equal(new Changed(Outcome.Stale, second), await records.Formulas.DeleteAsync("loaf", first.Etag, Asked()));
        Assert.Equal(second, records.Formulas.Find("loaf"));
    }

    [Fact]
    public async Task An_id_is_taken_once_and_a_formula_that_is_not_there_is_made_only_where_that_is_meant()
    {
        using var records = new KitchenRecords(place);
        Done(await records.Formulas.CreateAsync("loaf", Loaf(100), Asked()));

        Assert.Equal(Outcome.AlreadyThere, (await records.Formulas.CreateAsync("loaf", Loaf(100), Asked())).Outcome);
        Assert.Equal(Outcome.NotThere, (await records.Formulas.UpdateAsync("rolls", Loaf(100), string.Empty, false, Asked())).Outcome);
        Assert.Equal(1, Done(await records.Formulas.UpdateAsync("rolls", Loaf(100), string.Empty, true, Asked())).Newest);
    }

    [Fact]
    public async Task What_is_put_away_is_no_longer_listed_or_changed_and_can_be_taken_back_with_all_its_revisions()
    {
        using var records = new KitchenRecords(place);
        Done(await records.Formulas.CreateAsync("loaf", Loaf(100), Asked()));
        Done(await records.Formulas.UpdateAsync("loaf", Loaf(120), string.Empty, false, Asked()));
        Assert.Equal(Noon, Done(await records.Formulas.DeleteAsync("loaf", string.Empty, Asked())).Deleted);

        Assert.Empty(records.Formulas.List(string.Empty, 10, FormulaFilter.InUse));
        Assert.Single(records.Formulas.List(string.Empty, 10, FormulaFilter.InUse with { WithPutAway = true }));
        Assert.Equal(Outcome.PutAway, (await records.Formulas.UpdateAsync("loaf", Loaf(90), string.Empty, true, Asked())).Outcome);
        Assert.Equal(Outcome.PutAway, (await records.Formulas.PublishAsync("loaf", null, string.Empty, Asked())).Outcome);

        Assert.Null(Done(await records.Formulas.UndeleteAsync("loaf", string.Empty, Asked())).Deleted);
        Assert.Equal(2, records.Formulas.ListRevisions("loaf", null, 10).Count);
    }

    [Fact]
    public async Task A_published_formula_keeps_its_published_revision_and_is_not_put_away()
    {
        using var records = new KitchenRecords(place);
        Done(await records.Formulas.CreateAsync("loaf", Loaf(100), Asked()));
        Assert.Equal(1, Done(await records.Formulas.PublishAsync("loaf", null, string.Empty, Asked())).Published);
        var changed = Done(await records.Formulas.UpdateAsync("loaf", Loaf(120), string.Empty, false, Asked()));

        Assert.Equal((2, 1), (changed.Newest, changed.Published));
        Assert.Equal(Outcome.NoSuchRevision, (await records.Formulas.PublishAsync("loaf", 3, string.Empty, Asked())).Outcome);
        Assert.Equal(Outcome.Published, (await records.Formulas.DeleteAsync("loaf", string.Empty, Asked())).Outcome);
        Assert.Single(records.Formulas.List(string.Empty, 10, FormulaFilter.InUse with { IsPublished = true }));
        Assert.Null(Done(await records.Formulas.UnpublishAsync("loaf", string.Empty, Asked())).Published);
        Assert.Empty(records.Formulas.List(string.Empty, 10, FormulaFilter.InUse with { IsPublished = true }));
    }

    [Fact]
    public async Task A_request_that_is_sent_again_is_done_once_and_its_id_serves_no_other()
    {
        using var records = new KitchenRecords(place);
        Done(await records.Formulas.CreateAsync("loaf", Loaf(100), Asked("one", "create")));
        Assert.Equal(1, Done(await records.Formulas.CreateAsync("loaf", Loaf(100), Asked("one", "create"))).Newest);

        var etag = records.Formulas.Find("loaf")!.Etag;
        Done(await records.Formulas.UpdateAsync("loaf", Loaf(120), etag, false, Asked("two", "update")));
        // The etag is an old one by now, but this very request was done.
        Assert.Equal(2, Done(await records.Formulas.UpdateAsync("loaf", Loaf(120), etag, false, Asked("two", "update"))).Newest);
        Assert.Equal(Outcome.OtherRequest, (await records.Formulas.UpdateAsync("loaf", Loaf(130), string.Empty, false, Asked("two", "another"))).Outcome);
        // A day later the id is free again.
        Assert.Equal(3, Done(await records.Formulas.UpdateAsync("loaf", Loaf(130), string.Empty, false, Asked("two", "another", "2026-05-03T12:00:00.000Z", "2026-05-02T12:00:00.000Z"))).Newest);
    }

    [Fact]
    public async Task Pages_of_a_list_hold_every_formula_once_in_one_order_on_every_engine()
    {
        using var records = new KitchenRecords(place);
        string[] ids = ["a", "a-1", "a1", "ab", "b", "loaf-10", "loaf-2", "z"];
        foreach (var id in ids.Reverse())
        {
            Done(await records.Formulas.CreateAsync(id, Loaf(100), Asked()));
        }

        var seen = new List<string>();
        for (var last = string.Empty; records.Formulas.List(last, 3, FormulaFilter.InUse) is { Count: > 0 } page; last = page[^1].Id)
        {
            seen.AddRange(page.Select(one => one.Id));
        }

        Assert.Equal(ids.Order(StringComparer.Ordinal), seen);
        Assert.Equal("loaf-10", records.Formulas.IdsFrom("loaf", 1).Single());
    }

    [Theory]
    [InlineData("hazelnut", "Hazelnut tin loaf")]
    [InlineData("SÜSS", "Süsses Brot")]
    [InlineData("100%", "100% rye-free")]
    [InlineData("_", "snake_case loaf")]
    [InlineData("!", "Loaf!")]
    public async Task Words_are_found_in_names_in_any_case_and_signs_stand_for_themselves(string word, string name)
    {
        using var records = new KitchenRecords(place);
        Done(await records.Formulas.CreateAsync("one", Loaf(100, name: name), Asked()));
        Done(await records.Formulas.CreateAsync("other", Loaf(100, name: "Plain thing"), Asked()));

        Assert.Equal("one", Assert.Single(records.Formulas.List(string.Empty, 10, FormulaFilter.InUse with { Words = [word] })).Id);
    }

    [Fact]
    public async Task Of_two_hundred_writers_on_one_formula_none_is_lost_and_each_conflict_is_told_with_the_state_of_then()
    {
        const int writers = 200;
        using var records = new KitchenRecords(place);
        var first = Done(await records.Formulas.CreateAsync("loaf", Loaf(0), Asked()));
        var conflicts = 0;
        await Task.WhenAll(Enumerable.Range(1, writers).Select(writer => Task.Run(async () =>
        {
            // All of them saw the same state, so at first all but one meet another; then each comes again when it likes.
            var (etag, random) = (first.Etag, new Random(writer));
            while (await records.Formulas.UpdateAsync("loaf", Loaf(writer), etag, false, Asked()) is { Outcome: not Outcome.Done } changed)
            {
                Assert.Equal(Outcome.Stale, changed.Outcome);
                Assert.NotEqual(etag, changed.Now!.Etag);
                etag = changed.Now.Etag;
                Interlocked.Increment(ref conflicts);
                await Task.Delay(random.Next(500));
                etag = random.Next(2) == 0 ? etag : records.Formulas.Find("loaf")!.Etag;
            }
        })));

        var revisions = records.Formulas.ListRevisions("loaf", null, 1000);
        Assert.Equal(writers + 1, revisions.Count);
        Assert.Equal(Enumerable.Range(0, writers + 1).Select(writer => Loaf(writer).Document).Order(), revisions.Select(one => one.Document).Order());
        Assert.True(conflicts >= writers - 1, "nobody met another: the writers were not at work at once");
    }
}

/// <summary>In the embedded engine.</summary>
public sealed class EmbeddedFormulaRecordsTests(EmbeddedEngine engine) : FormulaRecordsTests(engine), IClassFixture<EmbeddedEngine>;

/// <summary>In a PostgreSQL server.</summary>
[Collection(WithServer.Name)]
public sealed class ServerFormulaRecordsTests(ServerEngine engine) : FormulaRecordsTests(engine);
