using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Limits;

public sealed class CallerLimitsTests
{
    [Fact]
    public async Task Who_asks_more_often_than_anyone_may_is_told_when_to_ask_again()
    {
        await using var service = await RunningService.Start(null, null, ("Limits:CallerBurst", "5"), ("Limits:CallerCallsPerSecond", "0.01"));
        for (var call = 0; call < 5; call++)
        {
            await service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = "ingredients/butter" });
        }

        var refusal = await Refusal.Of(() => service.Ingredients.GetIngredientAsync(new GetIngredientRequest { Name = "ingredients/butter" }));
        Assert.Equal((StatusCode.ResourceExhausted, "TOO_MANY_CALLS"), (refusal.Code, refusal.Info.Reason));
        Assert.True(refusal.Retry > TimeSpan.Zero);
    }
}
