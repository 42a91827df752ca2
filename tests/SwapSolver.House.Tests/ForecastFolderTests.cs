namespace SwapSolver.House.Tests;

/// <summary>A forecast, as a rule, has one name in its code with a page, its data and its tests.</summary>
public sealed class ForecastFolderTests
{
    private const string Forecasts = "src/SwapSolver.Forecasts";

    private const string Tests = "tests/SwapSolver.Forecasts.Tests";

    /// <summary>More lines than one screen shows.</summary>
    private const int MostPageLines = 60;

    public static TheoryData<string> Names => [.. Known];

    private static IEnumerable<string> Known =>
        [.. SourceTree.Files("data/forecasts", "*.json").Select(path => Path.GetFileNameWithoutExtension(path)).Select(id => char.ToUpperInvariant(id[0]) + id[1..])];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_forecast_has_its_code_a_page_of_one_screen_and_tests(string name)
    {
        Assert.True(File.Exists(SourceTree.At($"{Forecasts}/{name}/{name}.cs")), $"{Forecasts}/{name}/{name}.cs is missing");
        Assert.InRange(File.ReadLines(SourceTree.At($"{Forecasts}/{name}/{name}.md")).Count(), 5, MostPageLines);
        Assert.True(File.Exists(SourceTree.At($"{Tests}/{name}/{name}Tests.cs")), $"{Tests}/{name}/{name}Tests.cs is missing");
    }

    [Fact]
    public void Every_page_of_a_forecast_has_its_data() => Assert.Equal(
        Known.Order(StringComparer.Ordinal),
        SourceTree.Files(Forecasts, "*.md").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal));
}
