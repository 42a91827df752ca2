using SwapSolver.Records.Storage;

namespace SwapSolver.Records.Tests.Storage;

public sealed class RecordsPlaceTests
{
    [Theory]
    [InlineData("Host=localhost;Database=kitchen")]
    [InlineData("host = kitchen.example")]
    [InlineData("Database=kitchen; SERVER =kitchen.example;Username=baker")]
    public void What_names_a_host_is_a_server(string place) => Assert.True(RecordsPlace.IsServer(place));

    [Theory]
    [InlineData("records")]
    [InlineData("/srv/kitchen")]
    [InlineData("C:\\kitchen\\records")]
    [InlineData("./host=of-bread/x")]
    [InlineData("ghost=1;kitchen")]
    [InlineData("Host")]
    public void Any_other_place_is_a_folder(string place) => Assert.False(RecordsPlace.IsServer(place));
}
