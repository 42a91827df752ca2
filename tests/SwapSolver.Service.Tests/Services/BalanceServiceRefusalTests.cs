using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

[Collection(StrictKitchen.Name)]
public sealed class BalanceServiceRefusalTests(StrictKitchen kitchen)
{
    [Fact]
    public async Task A_check_without_a_swap_is_refused() =>
        (await Check()).Names("swaps", "0", "give 1 to 10");

    [Fact]
    public async Task More_than_ten_swaps_are_refused() =>
        (await Check([.. Enumerable.Repeat(new Swap { From = "ingredients/butter", To = "ingredients/olive-oil" }, 11)])).Names("swaps", "'11'", "give 1 to 10");

    [Fact]
    public async Task Nothing_can_be_swapped_that_is_not_in_the_bowl() =>
        (await Check(new Swap { From = "ingredients/almond-meal", To = "ingredients/butter" }))
            .Names("swaps[0].from", "ingredients/almond-meal", "hazelnut-flour");

    [Fact]
    public async Task Nothing_can_come_in_that_is_not_known() =>
        (await Check(new Swap { From = "ingredients/butter", To = "ingredients/coconut-oyl" })).Names("swaps[0].to", "ingredients/coconut-oyl", "coconut-oil");

    [Fact]
    public async Task Nothing_can_go_out_that_is_not_known()
    {
        (await Check(new Swap { From = "ingredients/buter", To = "ingredients/butter" })).Names("swaps[0].from", "ingredients/buter", "butter");
        (await Check(new Swap { To = "ingredients/butter" })).Names("swaps[0].from", "missing", "name it");
    }

    [Theory]
    [InlineData(-1, "'-1'")]
    [InlineData(100_001, "'100001'")]
    [InlineData(double.NaN, "'NaN'")]
    [InlineData(double.PositiveInfinity, "'Infinity'")]
    public async Task A_dose_that_no_scale_shows_is_refused(double grams, string value) =>
        (await Check(new Swap { From = "ingredients/butter", To = "ingredients/olive-oil", Grams = grams })).Names("swaps[0].grams", value, "give 0 to 100000");

    private Task<Refusal> Check(params Swap[] swaps) =>
        kitchen.Refuses(service => service.Balances.CheckSwapAsync(new CheckSwapRequest { Formula = Bakes.Hazelnut, Swaps = { swaps } }));
}
