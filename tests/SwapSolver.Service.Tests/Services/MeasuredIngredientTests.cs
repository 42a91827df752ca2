using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

public sealed class MeasuredIngredientTests
{
    private const string Coconut = "ingredients/coconut-flour";

    [Fact]
    public async Task A_soaking_test_goes_before_the_shipped_figure_until_it_is_forgotten()
    {
        await using var service = await RunningService.Start();
        var shipped = await service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = Coconut });
        var measured = await service.Ingredients.MeasureIngredientAsync(
            new MeasureIngredientRequest { Name = Coconut, Soak = new SoakTest { DryG = 10, DrainedG = 60 } });

        // 50 g of water on 10 g of flour; the batter's figure moves by the same factor.
        Assert.Equal(5, Held(measured.Ingredient, "waterBoundCentrifugeGPerG"), 9);
        Assert.Equal(
            5 / Held(shipped, "waterBoundCentrifugeGPerG"),
            Held(measured.Ingredient, "waterBoundBatterGPerG") / Held(shipped, "waterBoundBatterGPerG"),
            9);

        var forgotten = await service.Ingredients.DeleteIngredientAsync(new DeleteIngredientRequest { Name = Coconut });
        Assert.Equal(shipped, forgotten.Ingredient);
    }

    [Fact]
    public async Task Nothing_gets_lighter_by_soaking()
    {
        await using var service = await RunningService.Start();
        var refusal = await Assert.ThrowsAsync<RpcException>(async () => await service.Ingredients.MeasureIngredientAsync(
            new MeasureIngredientRequest { Name = Coconut, Soak = new SoakTest { DryG = 10, DrainedG = 8 } }));

        Assert.Equal(StatusCode.InvalidArgument, refusal.StatusCode);
        Assert.Contains("soak.drainedG", refusal.Status.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Asked_without_a_figure_it_says_how_the_test_is_done_and_writes_nothing_down()
    {
        await using var service = await RunningService.Start();
        var answer = await service.Ingredients.MeasureIngredientAsync(new MeasureIngredientRequest { Name = Coconut });

        Assert.Contains("weigh", answer.Method, StringComparison.Ordinal);
        Assert.Empty(answer.Measured);
        var nothing = await Assert.ThrowsAsync<RpcException>(async () =>
            await service.Ingredients.DeleteIngredientAsync(new DeleteIngredientRequest { Name = Coconut }));
        Assert.Equal(StatusCode.NotFound, nothing.StatusCode);
    }

    [Fact]
    public async Task A_vinegar_of_twice_the_acidity_is_twice_as_sour()
    {
        await using var service = await RunningService.Start();
        var name = "ingredients/vinegar-distilled";
        var shipped = await service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = name });
        var measured = await service.Ingredients.MeasureIngredientAsync(new MeasureIngredientRequest { Name = name, AcidityPercent = 10 });

        // The shipped one is of 5 %; acetic acid weighs 60.052 g/mol (IUPAC standard atomic weights, from memory).
        Assert.Equal(2, Held(measured.Ingredient, "acidMmolPerG") / Held(shipped, "acidMmolPerG"), 9);
        Assert.Equal(100 / 60.052, Held(measured.Ingredient, "acidMmolPerG"), 0.001);
    }

    private static double Held(Ingredient ingredient, string fact) => ingredient.Facts.Single(one => one.Fact_ == fact).Value;
}
