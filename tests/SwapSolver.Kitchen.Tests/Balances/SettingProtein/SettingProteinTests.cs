using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Tests.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class SettingProteinTests
{
    private const string SettingProtein = "setting-protein";

    private static readonly Ingredient Meal = Invented.Of("meal", Role.Flour, (Fact.Protein, 20));

    private static readonly Ingredient Legume =
        Invented.Of("legume", Role.Flour, (Fact.Protein, 20), (Fact.SettingShareOfProtein, 0.25));

    [Fact]
    public void All_the_protein_of_eggs_sets()
    {
        // USDA SR 26, row 01123: 12.56 g of protein in 100 g. 200 g of egg in 400 g of batter: 25.12 / 400.
        Assert.Equal(0.0628, Bowls.Weigh(10, (Meal, 200)).WithEggs(4).Reading(SettingProtein)!.Value, 12);
    }

    [Fact]
    public void Protein_that_does_not_coagulate_sets_nothing() =>
        Assert.Equal(0, Bowls.Weigh(10, (Meal, 200)).Reading(SettingProtein)!.Value);

    [Fact]
    public void A_protein_that_sets_in_part_counts_in_part()
    {
        // 100 g x 0.20 x 0.25 = 5 g in 200 g of batter.
        Assert.Equal(0.025, Bowls.Weigh(10, (Legume, 100), (Meal, 100)).Reading(SettingProtein)!.Value, 12);
    }

    [Theory]
    [InlineData("almond-meal")]
    [InlineData("gelatin")]
    [InlineData("casein")]
    [InlineData("psyllium-husk")]
    public void Nuts_gelatine_casein_and_husks_set_no_crumb(string id)
    {
        // Common practice, no source: gelatine melts in the oven, casein stays liquid, nut proteins hardly coagulate.
        Assert.Equal(0, Bowl.Of((id, 100), ("water", 100)).Reading(SettingProtein)!.Value);
    }

    [Fact]
    public void A_loaf_that_sets_by_itself_bears_a_little_protein_and_no_more()
    {
        var band = Bowls.Balance(SettingProtein).Band(Bowls.Weigh(10, (Meal, 200)), Draws.Typical);

        Assert.Equal(new Band(new(0), new(0.01)), band);
    }
}
