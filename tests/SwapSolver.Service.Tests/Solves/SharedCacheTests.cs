using SwapSolver.Service.Limits;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Solves;

/// <summary>Answers in a Redis server; that one service's answers reach the others is shown by the cluster's tests.</summary>
public sealed class SharedCacheTests
{
    [Fact]
    public async Task A_server_that_is_not_there_fails_nobody()
    {
        // Port 1 is nobody's here.
        await using var service = await RunningService.Start(null, null, ("Cache:Redis", "127.0.0.1:1"));
        Assert.NotEmpty((await Bakes.Balance(service, Bakes.Rolls)).Readings);
        Assert.NotEmpty((await service.Substitutions.VaryFormulaAsync(new VaryFormulaRequest { Formula = Bakes.Rolls, Without = { "peanut" } })).Answers);
    }

    [Theory]
    [InlineData("Cache:Redis", "cache:6379,pasword=larkfield", "HOST:6379")]
    [InlineData("Cache:Redis", "ssl=true", "HOST:6379")]
    [InlineData("Cache:Reddis", "cache:6379", "Cache:Redis")]
    public async Task A_setting_that_cannot_be_used_is_named_without_its_password(string name, string value, string wayOut)
    {
        var fault = await Assert.ThrowsAsync<SettingFaultException>(() => RunningService.Start(null, null, (name, value)));
        Assert.Contains($"setting {name}", fault.Message, StringComparison.Ordinal);
        Assert.Contains(wayOut, fault.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("larkfield", fault.Message, StringComparison.Ordinal);
    }
}
