using Microsoft.Extensions.Configuration;
using SwapSolver.Service.Limits;

namespace SwapSolver.Service.Tests.Limits;

public sealed class ServiceLimitsTests
{
    [Theory]
    [InlineData("SolvesAtOnce", "many", "a whole figure from 0 to 1024")]
    [InlineData("SolvesAtOnce", "-1", "a whole figure from 0 to 1024")]
    [InlineData("CallSeconds", "0", "a figure from 1 to 3600")]
    [InlineData("CallerCallsPerSecond", "NaN", "a figure from 0.01")]
    [InlineData("MessageBytes", "1e6", "a whole figure from 1024")]
    [InlineData("SolvesAtonceness", "3", "the limits are")]
    public void A_limit_that_cannot_be_one_is_named_with_its_value_and_the_way_out(string name, string value, string wayOut)
    {
        var fault = Assert.Throws<SettingFaultException>(() => ServiceLimits.Read(With(($"Limits:{name}", value))));
        Assert.Contains($"Limits:{name}", fault.Message, StringComparison.Ordinal);
        Assert.Contains($"'{value}'", fault.Message, StringComparison.Ordinal);
        Assert.Contains(wayOut, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_said_is_one_solve_and_one_in_the_queue_a_processor()
    {
        var limits = ServiceLimits.Read(With());
        Assert.Equal(Environment.ProcessorCount, limits.Solves);
        Assert.Equal((Environment.ProcessorCount + 1) / 2, limits.Waiting);
    }

    [Fact]
    public void The_file_that_is_shipped_says_what_holds_without_it()
    {
        var shipped = new ConfigurationBuilder().AddJsonFile(Path.Combine(AppContext.BaseDirectory, "appsettings.json")).Build();
        Assert.Equal(new ServiceLimits(), ServiceLimits.Read(shipped));
        Assert.NotEmpty(shipped.GetSection("Limits").GetChildren());
    }

    private static IConfiguration With(params (string Name, string? Value)[] settings) =>
        new ConfigurationBuilder().AddInMemoryCollection(settings.Select(one => KeyValuePair.Create(one.Name, one.Value))).Build();
}
