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

    private static double Held(Ingredient ingredient, string fact) => ingredient.Facts.Single(one => one.Fact_ == fact).Value;
}
