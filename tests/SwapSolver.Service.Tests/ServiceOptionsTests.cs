namespace SwapSolver.Service.Tests;

public sealed class ServiceOptionsTests
{
    [Fact]
    public void Without_a_word_the_kitchen_opens_at_its_usual_doors()
    {
        var options = ServiceOptions.Read([], out var wrong);
        Assert.Equal((5081, 5080), (options!.GrpcPort, options.HttpPort));
        Assert.Empty(wrong);
    }

    [Fact]
    public void Other_doors_can_be_named()
    {
        var options = ServiceOptions.Read(["--grpc-port", "6001", "--http-port", "6002", "--embedded-socket", "kitchen.sock"], out _);
        Assert.Equal((6001, 6002, "kitchen.sock"), (options!.GrpcPort, options.HttpPort, options.EmbeddedSocket));
    }

    [Theory]
    [InlineData("--grpc-port", "70000")]
    [InlineData("--grpc-port", "-1")]
    [InlineData("--http-port", "many")]
    [InlineData("--door", "5")]
    [InlineData("--data", "")]
    public void A_door_that_does_not_exist_is_named_with_the_way_out(string option, string value)
    {
        Assert.Null(ServiceOptions.Read([option, value], out var wrong));
        Assert.Contains(option, wrong, StringComparison.Ordinal);
        Assert.Contains("usage:", wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void An_option_without_its_value_is_refused() => Assert.Null(ServiceOptions.Read(["--grpc-port"], out _));
}
