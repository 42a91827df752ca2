using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

/// <summary>Leavening problems that others have set and answered, worked on our facts.</summary>
public sealed class WorkedExampleTests
{
    /// <summary>Molar mass of carbon dioxide [g/mmol]; IUPAC abridged atomic masses.</summary>
    private const double CarbonDioxide = 0.044009;

    private static readonly ReferenceTable Examples =
        ReferenceTable.Read("Balances/Leavening/Reference/leavening-worked-examples.csv");

    private static double SodaBase => Bowls.Typical("baking-soda", Fact.Base);

    [Theory]
    [InlineData("W1", "cream-of-tartar", 8.0)]
    [InlineData("W10-soda", "buttermilk", 245)]
    [InlineData("W10-rule", "buttermilk", 245)]
    [InlineData("W12-soda", "cream-of-tartar", 5.25)]
    public void So_much_acid_uses_up_so_much_soda(string example, string acid, double grams) =>
        AssertAgrees(example, grams * Bowls.Typical(acid, Fact.Acid) / SodaBase);

    [Theory]
    [InlineData("W2", "sodium-acid-pyrophosphate", 2)]
    [InlineData("W6-acid", "citric-acid", 0.920)]
    [InlineData("W9-cream-of-tartar", "cream-of-tartar", 1)]
    [InlineData("W9-sodium-acid-pyrophosphate", "sodium-acid-pyrophosphate", 1)]
    [InlineData("W9-monocalcium-phosphate", "monocalcium-phosphate", 1)]
    [InlineData("W9-glucono-delta-lactone", "glucono-delta-lactone", 1)]
    public void So_much_soda_needs_so_much_acid(string example, string acid, double grams) =>
        AssertAgrees(example, grams * SodaBase / Bowls.Typical(acid, Fact.Acid));

    [Fact]
    public void One_and_three_quarter_spoons_of_cream_of_tartar_need_half_a_spoon_of_soda()
    {
        var spoon = TestKitchen.Ingredient("baking-soda").HouseholdMeasures
            .Single(measure => measure.Measure == "tsp" && measure.Amount == 1).Grams.Value;

        AssertAgrees("W12-spoons", 5.25 * Bowls.Typical("cream-of-tartar", Fact.Acid) / SodaBase / spoon);
    }

    [Fact]
    public void Ten_grams_of_a_powder_with_a_sixth_of_soda_give_three_quarters_of_a_litre_of_gas()
    {
        // 0.750 L x 1.20 g/L = 0.900 g of gas; 1000 g of powder hold 168 g of soda, and acid in plenty frees all its gas.
        var kilogram = Bowl.Of(("baking-soda", 168), ("cream-of-tartar", 832));
        var gasOfOneGram = kilogram.Reading("gas")!.Value * CarbonDioxide;

        AssertAgrees("W3", 0.750 * 1.20 / gasOfOneGram);
    }

    [Fact]
    public void The_acid_that_runs_out_first_sets_the_gas_that_it_frees() =>
        AssertAgrees("W4", Math.Min(Bowls.Typical("citric-acid", Fact.Acid) * 1.0, SodaBase * 2.6) * CarbonDioxide);

    [Fact]
    public void All_the_gas_of_a_soda_tablet_comes_out_where_its_acid_suffices()
    {
        // 920 mg of soda need 701.4 mg of citric acid (W6-acid); 710 mg are a little more than enough.
        var tablet = Bowl.Of(("baking-soda", 0.920), ("citric-acid", 0.710));

        AssertAgrees("W6-gas", tablet.Reading("gas")!.Value * tablet.BatterMass.Value * CarbonDioxide);
    }

    private static void AssertAgrees(string example, double figure)
    {
        var row = Examples.Rows.Single(row => row["example"] == example);
        Assert.True(row.Agrees(figure), row.Against(figure));
    }
}
