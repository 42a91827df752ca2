using System.Net;
using Google.Rpc;
using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Verdict = SwapSolver.V1.CheckSwapResponse.Types.Verdict;

namespace SwapSolver.Service.Tests.Solves;

public sealed class FullHouseTests
{
    [Fact]
    public async Task Who_comes_to_a_full_house_is_told_the_same_with_and_without_a_key_and_by_every_method_that_solves()
    {
        await using var full = await FullKitchen.Open();
        var told = new HashSet<Google.Rpc.Status>();
        foreach (var key in new[] { full.Service.Key, null })
        {
            var channel = full.Service.With(key);
            var (substitutions, reformulations) = (new SubstitutionService.SubstitutionServiceClient(channel), new ReformulationService.ReformulationServiceClient(channel));
            var (baking, balances) = (new BakingService.BakingServiceClient(channel), new BalanceService.BalanceServiceClient(channel));
            var cards = new CardService.CardServiceClient(channel);
            Func<Task>[] questions =
            [
                async () => await substitutions.VaryFormulaAsync(Bakes.WithoutTreeNuts(Bakes.Hazelnut)),
                async () => await balances.CheckSwapAsync(Bakes.SodaSwap(Bakes.Hazelnut)),
                async () => await substitutions.ReplaceIngredientAsync(new ReplaceIngredientRequest { Formula = Bakes.Hazelnut, Ingredient = "ingredients/egg-whole" }),
                async () => await reformulations.ResizeFormulaAsync(new ResizeFormulaRequest { Formula = Bakes.Hazelnut, Factor = 2 }),
                async () => await reformulations.ReformulateFormulaAsync(new ReformulateFormulaRequest { Formula = Bakes.Hazelnut }),
                async () => await baking.PredictRiseAsync(new PredictRiseRequest { Formula = Bakes.Hazelnut }),
                async () => await baking.BakeFormulaAsync(new BakeFormulaRequest { Formula = Bakes.Hazelnut }),
                async () => await cards.PrintCardAsync(new PrintCardRequest { Formula = Bakes.Hazelnut }),
                async () => await balances.BalanceFormulaAsync(new BalanceFormulaRequest { Formula = Bakes.Hazelnut }),
            ];
            foreach (var ask in questions)
            {
                var refusal = await Assert.ThrowsAsync<RpcException>(ask);
                Assert.Equal(StatusCode.ResourceExhausted, refusal.StatusCode);
                told.Add(refusal.GetRpcStatus()!);
            }
        }

        var status = Assert.Single(told);
        Assert.Contains("all places for solving are taken", status.Message, StringComparison.Ordinal);
        Assert.Equal("BUSY", status.GetDetail<ErrorInfo>().Reason);
        Assert.Equal(1, status.GetDetail<RetryInfo>().RetryDelay.Seconds);
    }

    [Fact]
    public async Task What_needs_no_place_is_answered_in_a_full_house()
    {
        await using var full = await FullKitchen.Open();
        var balance = await full.Service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Formula = Bakes.Hazelnut, TypicalOnly = true });
        Assert.NotEmpty(balance.Readings);
        // A swap that balances by its sums: nothing is solved for it.
        var swap = new Swap { From = "ingredients/butter", To = "ingredients/coconut-oil" };
        var check = await full.Service.Balances.CheckSwapAsync(new CheckSwapRequest { Formula = Bakes.Hazelnut, Swaps = { swap } });
        Assert.Equal(Verdict.Balances, check.Verdict);
        Assert.NotEmpty((await full.Service.Ingredients.ListIngredientsAsync(new ListIngredientsRequest())).Ingredients);
    }

    /// <summary>A full house is no reason to answer who may not ask at all.</summary>
    [Fact]
    public async Task A_key_that_nobody_knows_is_told_so_in_a_full_house_too()
    {
        await using var full = await FullKitchen.Open();
        var stranger = new SubstitutionService.SubstitutionServiceClient(full.Service.With("swk_unknown_unknown"));
        var refusal = await Assert.ThrowsAsync<RpcException>(async () => await stranger.VaryFormulaAsync(Bakes.WithoutTreeNuts(Bakes.Hazelnut)));
        Assert.Equal(StatusCode.Unauthenticated, refusal.StatusCode);
    }

    [Fact]
    public async Task Http_is_told_to_come_back_as_well()
    {
        await using var full = await FullKitchen.Open();
        using var question = new StringContent($$"""{ "formula": {{Bakes.Hazelnut}}, "without": ["tree-nuts"] }""", System.Text.Encoding.UTF8, "application/json");
        using var answer = await full.Service.Http.PostAsync(new Uri("/v1/formulas:variant", UriKind.Relative), question);
        Assert.Equal(HttpStatusCode.TooManyRequests, answer.StatusCode);
        Assert.Contains("BUSY", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    /// <summary>What is no message is told as one where it is read.</summary>
    [Fact]
    public async Task Who_comes_to_a_full_house_is_turned_away_unread()
    {
        await using var full = await FullKitchen.Open();
        var refusal = await Assert.ThrowsAsync<RpcException>(() => Broken(full.Service));
        Assert.Equal(StatusCode.ResourceExhausted, refusal.StatusCode);
        await using var open = await RunningService.Start();
        var read = await Assert.ThrowsAsync<RpcException>(() => Broken(open));
        Assert.Equal(StatusCode.InvalidArgument, read.StatusCode);
    }

    private static async Task Broken(RunningService service)
    {
        var asItIs = Marshallers.Create<byte[]>(bytes => bytes, bytes => bytes);
        var method = new Method<byte[], byte[]>(MethodType.Unary, "swapsolver.v1.SubstitutionService", "VaryFormula", asItIs, asItIs);
        await service.With(service.Key).AsyncUnaryCall(method, null, default, [0xff, 0xff]);
    }
}
