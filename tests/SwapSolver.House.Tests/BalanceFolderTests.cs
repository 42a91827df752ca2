using SwapSolver.Kitchen.Balances;
using SwapSolver.Loaves;

namespace SwapSolver.House.Tests;

/// <summary>A rule of the kitchen has one name in three places: its code with a page, its data, its tests.</summary>
public sealed class BalanceFolderTests
{
    private const string Balances = "src/SwapSolver.Kitchen/Balances";

    private const string Tests = "tests/SwapSolver.Kitchen.Tests/Balances";

    /// <summary>More lines than one screen shows.</summary>
    private const int MostPageLines = 60;

    public static TheoryData<string> Rules => [.. RuleNames];

    public static TheoryData<string> Ids => [.. BalanceIds];

    private static IEnumerable<string> RuleNames =>
        [.. typeof(Balance).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Balance)) && !type.IsAbstract).Select(type => type.Name).Order(StringComparer.Ordinal)];

    public static TheoryData<string> Folders => [.. Directory.EnumerateDirectories(SourceTree.At(Balances)).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    private static IEnumerable<string> BalanceIds => [.. TestKitchen.Bakehouse.Balances.Targetable.Select(balance => balance.Id)];

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_has_a_folder_with_its_code_and_its_page(string rule)
    {
        Assert.True(File.Exists(SourceTree.At($"{Balances}/{rule}/{rule}.cs")), $"{Balances}/{rule}/{rule}.cs is missing");
        Assert.True(File.Exists(SourceTree.At($"{Balances}/{rule}/{rule}.md")), $"{Balances}/{rule}/{rule}.md is missing");
    }

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_folder_holds_the_rule_that_it_is_named_for(string folder) => Assert.Contains(folder, RuleNames);

    [Theory]
    [MemberData(nameof(Rules))]
    public void The_page_of_a_rule_fits_one_screen(string rule) =>
        Assert.InRange(File.ReadLines(SourceTree.At($"{Balances}/{rule}/{rule}.md")).Count(), 5, MostPageLines);

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_has_tests_of_its_own(string rule)
    {
        var test = SourceTree.At($"{Tests}/{rule}/{rule}Tests.cs");
        Assert.True(File.Exists(test), $"{Tests}/{rule}/{rule}Tests.cs is missing");
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_rule_has_a_file_of_its_band_and_words(string id) =>
        Assert.True(File.Exists(SourceTree.At($"data/balances/{id}.json")), $"data/balances/{id}.json is missing");

    [Fact]
    public void Every_file_of_bands_belongs_to_a_rule() =>
        Assert.Equal(
            BalanceIds.Order(StringComparer.Ordinal),
            SourceTree.Files("data/balances", "*.json").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal));

    [Fact]
    public void No_two_rules_share_a_name() =>
        Assert.Equal(TestKitchen.Bakehouse.Balances.Targetable.Length, TestKitchen.Bakehouse.Balances.Targetable.Select(balance => balance.Id).Distinct().Count());
}
