using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

public sealed class FormulaServiceTests
{
    private const string Name = "formulas/my-loaf";

    private static async Task<Formula> Saved(RunningService service, string id = "my-loaf") =>
        await service.Formulas.CreateFormulaAsync(new CreateFormulaRequest { Formula = Bakes.Hazelnut, FormulaId = id, Note = "first", Goals = { "softer" } });

    private static Formula Wetter(Formula formula, double grams = 10)
    {
        var wetter = new Formula(formula);
        wetter.Lines.Single(line => line.Ingredient == "ingredients/water").Grams += grams;
        return wetter;
    }

    [Fact]
    public async Task A_saved_formula_comes_back_as_it_was_given_and_can_be_asked_about_by_name()
    {
        await using var service = await RunningService.Start();
        var saved = await Saved(service);
        var read = await service.Formulas.GetFormulaAsync(new GetFormulaRequest { Name = Name });

        Assert.Equal(saved, read);
        Assert.Equal((Name, 1), (read.Name, read.Revision));
        Assert.Equal(Bakes.Hazelnut.Lines, read.Lines);
        var byName = await service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = Name });
        Assert.Equal((await Bakes.Balance(service, Bakes.Hazelnut)).Readings, byName.Readings);
    }

    [Fact]
    public async Task A_question_by_name_is_answered_anew_after_the_formula_changed_and_by_revision_as_it_was()
    {
        await using var service = await RunningService.Start();
        var saved = await Saved(service);
        var before = await service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = Name });
        await service.Formulas.UpdateFormulaAsync(new UpdateFormulaRequest { Formula = Wetter(saved) });
        var after = await service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = Name });
        var then = await service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = $"{Name}/revisions/1" });

        Assert.NotEqual(before.Readings, after.Readings);
        Assert.Equal(before, then);
    }

    [Fact]
    public async Task Whoever_saves_an_old_state_is_told_the_etag_of_the_new_one()
    {
        await using var service = await RunningService.Start();
        var saved = await Saved(service);
        var newer = await service.Formulas.UpdateFormulaAsync(new UpdateFormulaRequest { Formula = Wetter(saved), Note = "wetter" });
        var refusal = await Refusal.Of(() => service.Formulas.UpdateFormulaAsync(new UpdateFormulaRequest { Formula = Wetter(saved, 20) }));

        Assert.Equal(StatusCode.Aborted, refusal.Code);
        Assert.Equal(("STALE_ETAG", newer.Etag), (refusal.Info.Reason, refusal.Info.Metadata["etag"]));
        var history = await service.Formulas.ListRevisionsAsync(new ListRevisionsRequest { Name = Name });
        Assert.Equal(["wetter", "first"], history.Revisions.Select(one => one.Note));
        Assert.Equal(["softer"], history.Revisions[1].Goals);
    }

    [Fact]
    public async Task Only_the_fields_of_a_mask_are_changed()
    {
        await using var service = await RunningService.Start();
        var saved = await Saved(service);
        var changed = await service.Formulas.UpdateFormulaAsync(new UpdateFormulaRequest
        {
            Formula = new Formula { Name = Name, Slices = 16, Etag = saved.Etag },
            UpdateMask = new Google.Protobuf.WellKnownTypes.FieldMask { Paths = { "slices" } },
        });

        Assert.Equal(16, changed.Slices);
        Assert.Equal(saved.Lines, changed.Lines);
        (await Refusal.Of(() => service.Formulas.UpdateFormulaAsync(new UpdateFormulaRequest
        {
            Formula = new Formula { Name = Name },
            UpdateMask = new Google.Protobuf.WellKnownTypes.FieldMask { Paths = { "crust" } },
        }))).Names("updateMask", "crust", "leave the mask away");
    }

    [Fact]
    public async Task What_is_only_tried_is_told_as_it_would_be_and_leaves_nothing_behind()
    {
        await using var service = await RunningService.Start();
        var tried = await service.Formulas.CreateFormulaAsync(new CreateFormulaRequest { Formula = Bakes.Hazelnut, FormulaId = "my-loaf", RequestId = "one", ValidateOnly = true });
        Assert.Equal((Name, 1), (tried.Name, tried.Revision));
        Assert.Equal(StatusCode.NotFound, (await Refusal.Of(() => service.Formulas.GetFormulaAsync(new GetFormulaRequest { Name = Name }))).Code);

        // What was tried is not taken for done.
        var saved = await service.Formulas.CreateFormulaAsync(new CreateFormulaRequest { Formula = Bakes.Hazelnut, FormulaId = "my-loaf", RequestId = "one" });
        Assert.Equal(2, (await service.Formulas.UpdateFormulaAsync(new UpdateFormulaRequest { Formula = Wetter(saved), ValidateOnly = true })).Revision);
        Assert.True((await service.Formulas.PublishFormulaAsync(new PublishFormulaRequest { Name = Name, ValidateOnly = true })).HasPublishedRevision);
        Assert.NotNull((await service.Formulas.DeleteFormulaAsync(new DeleteFormulaRequest { Name = Name, ValidateOnly = true })).DeleteTime);
        Assert.Equal("formulas/other", (await service.Formulas.CopyFormulaAsync(new CopyFormulaRequest { Name = Name, FormulaId = "other", ValidateOnly = true })).Name);
        Assert.Equal(1, (await service.Trials.AddTrialAsync(new AddTrialRequest { Parent = Name, Trial = new Trial { Minutes = 50 }, ValidateOnly = true })).Revision);
        Assert.Equal(saved, await service.Formulas.GetFormulaAsync(new GetFormulaRequest { Name = Name }));
        Assert.Single((await service.Formulas.ListFormulasAsync(new ListFormulasRequest())).Formulas, formula => formula.HasRevision);
        Assert.Empty((await service.Trials.ListTrialsAsync(new ListTrialsRequest { Parent = Name })).Trials);

        // It fails where the change itself would.
        Assert.Equal(StatusCode.AlreadyExists, (await Refusal.Of(() => service.Formulas.CreateFormulaAsync(new CreateFormulaRequest { Formula = Bakes.Hazelnut, FormulaId = "my-loaf", ValidateOnly = true }))).Code);
        Assert.Equal(StatusCode.Aborted, (await Refusal.Of(() => service.Formulas.DeleteFormulaAsync(new DeleteFormulaRequest { Name = Name, Etag = "\"old\"", ValidateOnly = true }))).Code);
    }

    [Fact]
    public async Task A_formula_that_cannot_be_read_is_not_saved_and_everything_wrong_is_named()
    {
        await using var service = await RunningService.Start();
        var wrong = Bakes.Hazelnut;
        wrong.DisplayName = string.Empty;
        wrong.Lines[0].Ingredient = "ingredients/hazelnut-flower";
        var refusal = await Refusal.Of(() => service.Formulas.CreateFormulaAsync(new CreateFormulaRequest { Formula = wrong, FormulaId = "My Loaf" }));

        refusal.Names("formula.lines[0].ingredient", "ingredients/hazelnut-flower", "hazelnut-flour");
        refusal.Names("formula.displayName", "", "give 1 to");
        refusal.Names("formulaId", "My Loaf", "small letters");
        Assert.Equal(StatusCode.NotFound, (await Refusal.Of(() => service.Formulas.GetFormulaAsync(new GetFormulaRequest { Name = "formulas/My Loaf" }))).Code);
    }

    [Fact]
    public async Task A_shipped_formula_is_read_and_copied_and_never_changed()
    {
        await using var service = await RunningService.Start();
        const string shipped = "formulas/hazelnut-tin-loaf";
        var read = await service.Formulas.GetFormulaAsync(new GetFormulaRequest { Name = shipped });
        Assert.False(read.HasRevision);
        Assert.Equal("SHIPPED", (await Refusal.Of(() => service.Formulas.UpdateFormulaAsync(new UpdateFormulaRequest { Formula = read }))).Info.Reason);
        Assert.Equal("SHIPPED", (await Refusal.Of(() => service.Formulas.DeleteFormulaAsync(new DeleteFormulaRequest { Name = shipped }))).Info.Reason);
        Assert.Equal(StatusCode.AlreadyExists, (await Refusal.Of(() => service.Formulas.CreateFormulaAsync(new CreateFormulaRequest { Formula = Bakes.Hazelnut }))).Code);

        var copy = await service.Formulas.CopyFormulaAsync(new CopyFormulaRequest { Name = shipped, FormulaId = "mine" });
        Assert.Equal(("formulas/mine", 1), (copy.Name, copy.Revision));
        Assert.Equal(read.Lines, copy.Lines);
    }

    [Fact]
    public async Task What_is_put_away_answers_no_question_until_it_is_taken_back()
    {
        await using var service = await RunningService.Start();
        await Saved(service);
        Assert.NotNull((await service.Formulas.DeleteFormulaAsync(new DeleteFormulaRequest { Name = Name })).DeleteTime);
        Assert.Equal("PUT_AWAY", (await Refusal.Of(() => service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = Name }))).Info.Reason);
        var without = await service.Formulas.ListFormulasAsync(new ListFormulasRequest());
        Assert.DoesNotContain(without.Formulas, formula => formula.Name == Name);

        Assert.Null((await service.Formulas.UndeleteFormulaAsync(new UndeleteFormulaRequest { Name = Name })).DeleteTime);
        await service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Name = Name });
    }

    [Fact]
    public async Task A_published_formula_is_unpublished_before_it_is_put_away()
    {
        await using var service = await RunningService.Start();
        await Saved(service);
        Assert.Equal(1, (await service.Formulas.PublishFormulaAsync(new PublishFormulaRequest { Name = Name })).PublishedRevision);
        Assert.Equal(StatusCode.FailedPrecondition, (await Refusal.Of(() => service.Formulas.DeleteFormulaAsync(new DeleteFormulaRequest { Name = Name }))).Code);
        Assert.False((await service.Formulas.UnpublishFormulaAsync(new UnpublishFormulaRequest { Name = Name })).HasPublishedRevision);
        await service.Formulas.DeleteFormulaAsync(new DeleteFormulaRequest { Name = Name });
    }

    [Fact]
    public async Task Pages_hold_every_formula_once_shipped_ones_among_them()
    {
        await using var service = await RunningService.Start();
        await Saved(service, "a-loaf");
        await Saved(service, "z-loaf");
        var all = await service.Formulas.ListFormulasAsync(new ListFormulasRequest());
        var names = new List<string>();
        var request = new ListFormulasRequest { PageSize = 2 };
        do
        {
            var page = await service.Formulas.ListFormulasAsync(request);
            names.AddRange(page.Formulas.Select(formula => formula.Name));
            request.PageToken = page.NextPageToken;
        }
        while (request.PageToken.Length > 0);

        Assert.Equal(all.Formulas.Select(formula => formula.Name), names);
        Assert.Equal(("formulas/a-loaf", "formulas/z-loaf"), (names[0], names[^1]));
        Assert.Contains("formulas/hazelnut-tin-loaf", names);
        var found = await service.Formulas.ListFormulasAsync(new ListFormulasRequest { Filter = "displayName:\"hazelnut tin\" AND published=false" });
        Assert.Equal(["formulas/a-loaf", "formulas/z-loaf"], found.Formulas.Select(formula => formula.Name));
        (await Refusal.Of(() => service.Formulas.ListFormulasAsync(new ListFormulasRequest { Filter = "colour=red", PageSize = -1, PageToken = "x" }))).Names("filter", "colour=red", "joined by AND");
    }

    [Fact]
    public async Task A_request_that_is_sent_again_is_done_once()
    {
        await using var service = await RunningService.Start();
        var request = new CreateFormulaRequest { Formula = Bakes.Hazelnut, FormulaId = "my-loaf", RequestId = "5f0c" };
        var first = await service.Formulas.CreateFormulaAsync(request);
        Assert.Equal(first, await service.Formulas.CreateFormulaAsync(request));
        request.FormulaId = "other";
        (await Refusal.Of(() => service.Formulas.CreateFormulaAsync(request))).Names("requestId", "", "an id of its own");
    }

    [Fact]
    public async Task A_script_saves_reads_and_changes_it_over_http_too()
    {
        await using var service = await RunningService.Start();
        var created = await service.Http.PostAsync("/v1/formulas?formulaId=my-loaf", JsonContent.Create(JsonDocument.Parse(Google.Protobuf.JsonFormatter.Default.Format(Bakes.Hazelnut)).RootElement));
        Assert.Equal(HttpStatusCode.OK, created.StatusCode);
        var read = JsonDocument.Parse(await service.Http.GetStringAsync("/v1/formulas/my-loaf")).RootElement;
        Assert.Equal("formulas/my-loaf", read.GetProperty("name").GetString());
        var revision = JsonDocument.Parse(await service.Http.GetStringAsync("/v1/formulas/my-loaf/revisions/1")).RootElement;
        Assert.Equal(read.GetProperty("etag").GetString(), revision.GetProperty("etag").GetString());
        Assert.Equal(HttpStatusCode.OK, (await service.Http.GetAsync("/v1/formulas/my-loaf/revisions")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await service.Http.GetAsync("/v1/formulas/my-loaf/revisions/2")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await service.Http.DeleteAsync("/v1/formulas/my-loaf")).StatusCode);
    }

    [Fact]
    public async Task Of_two_hundred_callers_who_saw_one_state_one_saves_and_the_others_are_told_the_etag_to_come_again_with()
    {
        const int callers = 200;
        await using var service = await RunningService.Start();
        var seen = await Saved(service);
        var conflicts = 0;
        await Task.WhenAll(Enumerable.Range(1, callers).Select(async caller =>
        {
            var (mine, random) = (new Formula(seen), new Random(caller));
            mine.Lines[0].Grams = 1000 + caller;
            while (true)
            {
                try
                {
                    await service.Formulas.UpdateFormulaAsync(new UpdateFormulaRequest { Formula = mine });
                    return;
                }
                catch (RpcException refusal) when (refusal.StatusCode == StatusCode.Aborted)
                {
                    var current = refusal.GetRpcStatus()!.GetDetail<Google.Rpc.ErrorInfo>()!.Metadata["etag"];
                    Assert.NotEqual(mine.Etag, current);
                    mine.Etag = current;
                    Interlocked.Increment(ref conflicts);
                    await Task.Delay(random.Next(1000));
                }
            }
        }));

        Assert.True(conflicts >= callers - 1, $"only {conflicts} were told");
        var history = await service.Formulas.ListRevisionsAsync(new ListRevisionsRequest { Name = Name, PageSize = 1000 });
        Assert.Equal(Enumerable.Range(1, callers).Select(caller => 1000.0 + caller), history.Revisions.Select(one => one.Formula.Lines[0].Grams).Where(grams => grams != 180).Order());
    }
}
