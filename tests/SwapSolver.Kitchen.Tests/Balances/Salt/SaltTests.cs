using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class SaltTests
{
    private const string Salt = "salt";

    [Fact]
    public void Table_salt_reads_as_97_percent_of_itself_by_the_label_rule()
    {
        // Regulation (EU) No 1169/2011: salt is sodium x 2.5. USDA SR 26, row 02047: 38 758 mg of sodium in 100 g;
        // 38.758 x 2.5 = 96.9 g. The exact ratio would be 2.542: the rule is the law's, not chemistry's.
        Assert.Equal(0.969, Bowl.Of(("salt", 100)).Reading(Salt)!.Value, 4);
    }

    [Fact]
    public void Soda_brings_salt_too()
    {
        // USDA SR 26: soda has 27 360 mg of sodium in 100 g (row 18372), tap water 4 mg (row 14411).
        // 5 g x 0.2736 x 2.5 = 3.42 g and 95 g x 0.00004 x 2.5 = 0.0095 g, in 100 g of batter.
        Assert.Equal(0.034295, Bowl.Of(("baking-soda", 5), ("water", 95)).Reading(Salt)!.Value, 12);
    }

    [Fact]
    public void Potassium_bicarbonate_leavens_without_salt() =>
        Assert.Equal(0, Bowls.Typical("potassium-bicarbonate", Fact.Sodium), 4);

    [Fact]
    public void A_loaf_has_no_limit_on_salt_unless_the_baker_sets_one() =>
        Assert.True(Bowls.Balance(Salt).Band(Loaf.Walnut, Draws.Typical).IsOpen);
}
