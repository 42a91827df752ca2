using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Client = SwapSolver.V1.FormulaService.FormulaServiceClient;

namespace SwapSolver.Service.Tests.Services;

public sealed class KeyServiceTests
{
    private static CreateKeyRequest For(Key.Types.Role role) => new() { DisplayName = "bench tablet", Role = role };

    [Fact]
    public async Task A_key_opens_what_its_role_may_until_it_is_taken_back()
    {
        await using var service = await RunningService.Start();
        var made = await service.Keys.CreateKeyAsync(For(Key.Types.Role.Editor));
        var editor = new Client(service.With(made.Secret));
        await editor.CopyFormulaAsync(new CopyFormulaRequest { Name = "formulas/almond-rolls", FormulaId = "mine" });

        Assert.NotNull((await service.Keys.RevokeKeyAsync(new RevokeKeyRequest { Name = made.Key.Name })).RevokeTime);
        var refusal = await Refusal.Of(() => editor.GetFormulaAsync(new GetFormulaRequest { Name = "formulas/mine" }));
        Assert.Equal((StatusCode.Unauthenticated, "UNKNOWN_KEY"), (refusal.Code, refusal.Info.Reason));
    }

    [Fact]
    public async Task A_key_is_kept_only_as_a_salted_hash()
    {
        await using var service = await RunningService.Start();
        var secret = (await service.Keys.CreateKeyAsync(For(Key.Types.Role.Owner))).Secret;
        var other = (await service.Keys.CreateKeyAsync(For(Key.Types.Role.Owner))).Secret;
        Assert.NotEqual(secret, other);
        var kept = string.Concat(Directory.EnumerateFiles(service.Records).Select(path =>
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            using var reader = new StreamReader(file, System.Text.Encoding.Latin1);
            return reader.ReadToEnd();
        }));
        Assert.Contains("bench tablet", kept, StringComparison.Ordinal);
        Assert.DoesNotContain(secret[(secret.IndexOf('.') + 1)..], kept, StringComparison.Ordinal);
        Assert.Equal(3, (await service.Keys.ListKeysAsync(new ListKeysRequest())).Keys.Count);
    }

    [Fact]
    public async Task Keys_are_listed_a_page_after_another_and_a_token_of_another_list_is_refused()
    {
        await using var service = await RunningService.Start();
        for (var number = 0; number < 4; number++)
        {
            await service.Keys.CreateKeyAsync(For(Key.Types.Role.Reader));
        }

        var whole = (await service.Keys.ListKeysAsync(new ListKeysRequest())).Keys;
        var (paged, token) = (new List<Key>(), string.Empty);
        do
        {
            var page = await service.Keys.ListKeysAsync(new ListKeysRequest { PageSize = 2, PageToken = token });
            Assert.InRange(page.Keys.Count, 1, 2);
            paged.AddRange(page.Keys);
            token = page.NextPageToken;
        }
        while (token.Length > 0);
        Assert.Equal(whole, paged);
        (await Refusal.Of(() => service.Keys.ListKeysAsync(new ListKeysRequest { PageToken = "formulas:x" }))).Names("pageToken", "formulas:x", "the page before");
        (await Refusal.Of(() => service.Trials.ListLearnedFactsAsync(new ListLearnedFactsRequest { PageToken = "learned:nothing" }))).Names("pageToken", "learned:nothing", "the page before");
    }

    [Theory]
    [InlineData("nonsense")]
    [InlineData("0a1b2c3d4e.")]
    [InlineData("0a1b2c3d4e.00")]
    [InlineData(".")]
    public async Task A_key_that_is_none_is_refused_even_where_none_is_needed(string key)
    {
        await using var service = await RunningService.Start();
        var refusal = await Refusal.Of(() => new Client(service.With(key)).ListFormulasAsync(new ListFormulasRequest()));
        Assert.Equal(StatusCode.Unauthenticated, refusal.Code);
    }

    [Fact]
    public async Task A_key_without_an_owner_or_a_role_is_not_made()
    {
        await using var service = await RunningService.Start();
        var refusal = await Refusal.Of(() => service.Keys.CreateKeyAsync(new CreateKeyRequest()));
        refusal.Names("displayName", "", "letters");
        refusal.Names("role", "Unspecified", "READER");
        Assert.Equal(StatusCode.NotFound, (await Refusal.Of(() => service.Keys.RevokeKeyAsync(new RevokeKeyRequest { Name = "keys/none" }))).Code);
    }

    [Fact]
    public async Task Without_a_key_only_what_is_published_is_seen_and_only_in_the_revision_that_is()
    {
        await using var service = await RunningService.Start();
        var saved = await service.Formulas.CreateFormulaAsync(new CreateFormulaRequest { Formula = Bakes.Hazelnut, FormulaId = "mine", Note = "a note of ours" });
        var guest = new Client(service.With(null));
        var get = new GetFormulaRequest { Name = "formulas/mine" };
        Assert.Equal(StatusCode.NotFound, (await Refusal.Of(() => guest.GetFormulaAsync(get))).Code);

        await service.Formulas.PublishFormulaAsync(new PublishFormulaRequest { Name = saved.Name });
        var newer = new Formula(saved) { DisplayName = "A secret name" };
        newer.ClearEtag();
        newer.Lines[0].Grams += 5;
        await service.Formulas.UpdateFormulaAsync(new UpdateFormulaRequest { Formula = newer });

        var seen = await guest.GetFormulaAsync(get);
        Assert.Equal(saved.Lines, seen.Lines);
        Assert.False(seen.HasEtag);
        Assert.Equal(StatusCode.NotFound, (await Refusal.Of(() => guest.GetFormulaAsync(new GetFormulaRequest { Name = "formulas/mine/revisions/2" }))).Code);
        var revision = Assert.Single((await guest.ListRevisionsAsync(new ListRevisionsRequest { Name = saved.Name })).Revisions);
        Assert.Equal((saved.Lines[0], string.Empty), (revision.Formula.Lines[0], revision.Note));
        Assert.DoesNotContain((await guest.ListFormulasAsync(new ListFormulasRequest())).Formulas, formula => formula.DisplayName == "A secret name");
        var asked = await new BalanceService.BalanceServiceClient(service.With(null)).BalanceFormulaAsync(new BalanceFormulaRequest { Name = saved.Name });
        Assert.Equal((await Bakes.Balance(service, Bakes.Hazelnut)).Readings, asked.Readings);
    }

    [Fact]
    public async Task Without_a_key_the_kitchens_own_foods_and_figures_are_not_seen()
    {
        await using var service = await RunningService.Start();
        const string name = "ingredients/coconut-flour";
        await service.Ingredients.MeasureIngredientAsync(new MeasureIngredientRequest { Name = name, PricePerKg = 7 });
        var guest = new IngredientService.IngredientServiceClient(service.With(null));
        Assert.DoesNotContain((await guest.GetIngredientAsync(new GetIngredientRequest { Name = name })).Facts, fact => fact.Fact_.StartsWith("price", StringComparison.OrdinalIgnoreCase));
        Assert.Contains((await service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = name })).Facts, fact => fact.Fact_.StartsWith("price", StringComparison.OrdinalIgnoreCase));
    }
}
