using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Tests.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class GasTests
{
    private const string Gas = "gas";

    private static readonly Ingredient Acid = Invented.Of("acid", Role.Acid, (Fact.Acid, 10));

    private static readonly Ingredient Soda = Invented.Of("soda", Role.Base, (Fact.Base, 10));

    private static readonly Ingredient Yeast = Invented.Of("yeast", Role.Yeast, (Fact.YeastGas, 15));

    private static readonly Ingredient Sugar = Invented.Of("sugar", Role.Sweetener, (Fact.Fermentable, 18.0156));

    private static readonly Ingredient Meal = Invented.Of("meal", Role.Flour);

    [Fact]
    public void Soda_with_all_the_acid_it_needs_gives_all_its_gas()
    {
        // 10 g x 10 mmol/g of soda, as much acid; 100 mmol of gas in 200 g of batter.
        Assert.Equal(0.5, Read((Soda, 10), (Acid, 10), (Meal, 180)), 12);
    }

    [Fact]
    public void Soda_without_acid_gives_half_its_gas_by_heat_alone()
    {
        // 2 NaHCO3 -> Na2CO3 + H2O + CO2: 100 mmol of soda give 50 mmol of gas, in 200 g of batter.
        Assert.Equal(0.25, Read((Soda, 10), (Meal, 190)), 12);
    }

    [Fact]
    public void A_gram_of_soda_gives_half_a_gram_of_gas_with_acid_and_a_quarter_by_heat_alone()
    {
        // Published: 0.52 g by acid (American Society of Baking, chemical leavening formulation); 0.2619 g by heat
        // alone is calculated, 44.009 / (2 x 84.006).
        const double CarbonDioxide = 0.044009;
        var withAcid = Bowl.Of(("baking-soda", 1), ("citric-acid", 1));
        var alone = Bowl.Of(("baking-soda", 1));

        Assert.Equal(0.52, withAcid.Reading(Gas)!.Value * 2 * CarbonDioxide, 2);
        Assert.Equal(0.2619, alone.Reading(Gas)!.Value * CarbonDioxide, 4);
    }

    [Fact]
    public void Half_the_acid_gives_three_quarters_of_the_gas()
    {
        // 50 mmol by acid, and half of the other 50 by heat: 75 mmol in 200 g.
        Assert.Equal(0.375, Read((Soda, 10), (Acid, 5), (Meal, 185)), 12);
    }

    [Fact]
    public void Acid_beyond_what_the_soda_needs_gives_no_more_gas()
    {
        // 100 mmol in 200 g, whether 10 g or 20 g of acid are in it.
        Assert.Equal(0.5, Read((Soda, 10), (Acid, 20), (Meal, 170)), 12);
    }

    [Fact]
    public void Acid_alone_gives_no_gas() => Assert.Equal(0, Read((Acid, 20), (Meal, 180)));

    [Fact]
    public void Yeast_without_sugar_or_starch_gives_no_gas()
    {
        Assert.Equal(0, Read((Yeast, 10), (Meal, 190)));
        Assert.Equal(0, Bowl.Of(("yeast-active-dry", 7), ("almond-meal", 200), ("water", 100)).Reading(Gas)!.Value);
    }

    [Fact]
    public void Sugar_without_yeast_gives_no_gas() => Assert.Equal(0, Read((Sugar, 10), (Meal, 190)));

    [Fact]
    public void A_mole_of_hexose_gives_yeast_two_moles_of_gas()
    {
        // C6H12O6 -> 2 C2H6O + 2 CO2, 180.156 g/mol: 10 g of a sugar with 18.0156 g of hexose in 100 g hold 10 mmol of
        // hexose and give 20 mmol of gas, in 200 g; 10 g of yeast could make 150 mmol.
        Assert.Equal(0.1, Read((Yeast, 10), (Sugar, 10), (Meal, 180)), 12);
    }

    [Fact]
    public void Yeast_gives_no_more_than_it_can_make_in_one_rise()
    {
        // 2 g of yeast x 15 mmol/g = 30 mmol, though 100 g of the sugar would give 200 mmol; in 200 g of batter.
        Assert.Equal(0.15, Read((Yeast, 2), (Sugar, 100), (Meal, 98)), 12);
    }

    [Fact]
    public void A_formula_of_no_mass_has_no_gas_reading() => Assert.Null(Bowls.Weigh(10, (Soda, 0)).Reading(Gas));

    [Fact]
    public void A_tenth_more_or_less_gas_than_the_loaf_that_works_is_allowed()
    {
        // 0.5 mmol/g: from 0.45 to 0.55.
        var band = Bowls.Balance(Gas).Band(Bowls.Weigh(10, (Soda, 10), (Acid, 10), (Meal, 180)), Draws.Typical);

        Assert.Equal(0.45, band.Low!.Value.Value, 12);
        Assert.Equal(0.55, band.High!.Value.Value, 12);
    }

    [Fact]
    public void A_loaf_without_gas_holds_no_variant_back() => Assert.True(
        Bowls.Balance(Gas).Band(Bowls.Weigh(10, (Meal, 180)), Draws.Typical).IsOpen);

    [Fact]
    public void A_powder_by_itself_gives_what_its_own_acid_and_heat_free_and_a_yeast_what_it_finds_in_its_own_bag()
    {
        // 5 mmol of acid on 10 of base: 5 by acid and half of the other 5. 15 mmol could be made of sugar for 2.
        var powder = Invented.Of("powder", Role.LeaveningBlend, (Fact.Acid, 5), (Fact.Base, 10));
        var starter = Invented.Of("starter", Role.Yeast, (Fact.YeastGas, 15), (Fact.Fermentable, 18.0156));
        var both = Invented.Of("both", Role.Yeast, (Fact.Acid, 5), (Fact.Base, 10), (Fact.YeastGas, 15), (Fact.Fermentable, 18.0156));

        Assert.Equal(7.5, Bowls.Balance(Gas).Numerator(powder.Typical).Value, 12);
        Assert.Equal(2, Bowls.Balance(Gas).Numerator(starter.Typical).Value, 12);
        Assert.Equal(9.5, Bowls.Balance(Gas).Numerator(both.Typical).Value, 12);
    }

    [Fact]
    public void Only_the_ceiling_may_refuse_a_loaf_that_would_do()
    {
        var loaf = Bowls.Weigh(10, (Soda, 10), (Acid, 10), (Meal, 180));
        var balance = Bowls.Balance(Gas);

        Assert.All(
            balance.Rows(loaf, balance.Band(loaf, Draws.Typical), Draws.Typical),
            row => Assert.Equal(row.Side == Side.Low, row.Exact));
    }

    private static double Read(params ReadOnlySpan<(Ingredient, double)> lines) => Bowls.Weigh(10, lines).Reading(Gas)!.Value;
}
