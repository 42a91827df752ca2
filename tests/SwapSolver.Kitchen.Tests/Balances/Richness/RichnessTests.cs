using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class RichnessTests
{
    private const string Richness = "richness";

    [Fact]
    public void Richness_is_the_fat_of_every_line_by_batter()
    {
        // USDA SR 26: almonds 49.93 (row 12061), butter 81.11 (01145), egg 9.51 g (01123) of fat in 100 g.
        // 200 g x 0.4993 + 50 g x 0.8111 + 200 g x 0.0951 = 99.86 + 40.555 + 19.02 = 159.435 g in 600 g.
        var loaf = Bowl.Of(("almond-meal", 200), ("butter", 50), ("water", 150)).WithEggs(4);

        Assert.Equal(159.435 / 600, loaf.Reading(Richness)!.Value, 12);
    }

    [Fact]
    public void Doubling_every_line_leaves_richness_unchanged() =>
        Assert.Equal(Loaf.Muffins.Reading(Richness)!.Value, Loaf.Muffins.Scaled(2).Reading(Richness)!.Value, 12);

    [Fact]
    public void A_variant_may_be_fifteen_percent_richer_or_leaner()
    {
        // 50 g of butter in 100 g: 40.555 g of fat, 0.40555; 85 % and 115 % of it.
        var band = Bowls.Balance(Richness).Band(Bowl.Of(("butter", 50), ("water", 50)), Draws.Typical);

        Assert.Equal(0.40555 * 0.85, band.Low!.Value.Value, 12);
        Assert.Equal(0.40555 * 1.15, band.High!.Value.Value, 12);
    }
}
