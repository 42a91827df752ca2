using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Forecasts.Tests;

/// <summary>Leavening problems that others have set, worked by the forecast.</summary>
public sealed class WorkedExampleTests
{
    private const double CarbonDioxide = 44.009, Soda = 84.006;

    private static readonly ReferenceTable Examples = ReferenceTable.Read("Rise/Reference/worked-examples.csv");

    private static readonly Formula OneGram = Bowl.Of(("water", 100), ("baking-soda", 1), ("citric-acid", 2));

    [Fact]
    public void One_gram_of_soda_frees_its_millimoles() => AssertAgrees("gas-mmol", OneGram.Rises().Freed.Total.Value);

    [Fact]
    public void One_gram_of_soda_fills_three_tenths_of_a_litre() => AssertAgrees("gas-25", OneGram.Rises().VolumeAtBowl.Value);

    [Fact]
    public void In_boiling_heat_it_fills_a_quarter_more() =>
        AssertAgrees("gas-100", GasLaw.VolumeOf(OneGram.Rises().Freed.Total, new Celsius(100), Pascals.Atmosphere).Value);

    [Fact]
    public void The_acid_that_runs_out_first_sets_the_gas() =>
        AssertAgrees("W4", ByAcid(Bowl.Of(("water", 100), ("citric-acid", 1.0), ("baking-soda", 2.6))) * CarbonDioxide / 1000);

    [Fact]
    public void A_tablet_with_acid_enough_gives_all_its_gas() =>
        AssertAgrees("W6", ByAcid(Bowl.Of(("water", 100), ("citric-acid", 0.71), ("baking-soda", 0.920))) * CarbonDioxide / 1000);

    [Theory]
    [InlineData("W7", 5.32, 350)]
    [InlineData("W7b", 7.98, 375)]
    public void Sour_milk_and_soda_in_a_hot_oven_fill_litres(string example, double soda, double fahrenheit)
    {
        // The problem takes solid crystal for a spoon of soda, and acid enough.
        var freed = Bowl.Of(("water", 100), ("lactic-acid-88", 12), ("baking-soda", soda)).Rises().Freed.Total;

        AssertAgrees(example, GasLaw.VolumeOf(freed, new Celsius((fahrenheit - 32) / 1.8), Pascals.Atmosphere).Value / 1000);
    }

    [Fact]
    public void A_tablet_with_two_acids_leaves_the_soda_that_neither_uses()
    {
        var tablet = Bowl.Of(("water", 100), ("citric-acid", 0.886), ("ascorbic-acid", 0.370), ("baking-soda", 1.991));
        var rise = tablet.Rises();

        AssertAgrees("W8", rise.SodaLeftPer100Grams.Typical.Value / 100 * tablet.BakedMass.Value * 1000);
        AssertAgrees("W8-gas", ByAcid(tablet) * CarbonDioxide);
    }

    [Fact]
    public void An_old_formulary_with_three_times_the_acid_is_a_trap_and_the_forecast_says_so()
    {
        var loaf = Bowl.Of(("almond-meal", 200), ("water", 200), ("tartaric-acid", 12), ("baking-soda", 4)).WithEggs(3);
        var portions = LeaveningPortions.Of(ForecastKitchen.Batter(loaf).Lines, Mixture.Chemistry, Doubts.None());

        AssertAgrees("W13", portions.Acid / portions.Soda);
        Assert.True(loaf.Rises().Says("rise-sour"));
    }

    [Fact]
    public void The_kitchen_rule_for_a_spoon_of_powder_leaves_two_fifths_of_its_soda() =>
        AssertAgrees("rule-58", Bowl.Of(("water", 100), ("baking-soda", 1.15), ("cream-of-tartar", 1.5)).Rises().Neutralised!.Value.Value.Value);

    [Fact]
    public void A_powder_of_two_parts_bitartrate_to_one_of_soda_leaves_a_tenth_of_the_soda()
    {
        var powder = Bowl.Of(("cream-of-tartar", 50), ("baking-soda", 25), ("cornstarch", 25));

        AssertAgrees("tartrate-available", ByAcid(powder) * CarbonDioxide / 1000);
        AssertAgrees("tartrate-left", 100 - powder.Rises().Neutralised!.Value.Value.Value);
    }

    [Fact]
    public void An_alum_powder_frees_what_an_old_formulary_prints()
    {
        // 15 g of anhydrous ammonium alum, 237.14 g/mol, three protons; as vinegar of equal acid, for the pantry has no alum.
        var alum = 15 / 237.14 * 3 * 1000;
        var vinegar = alum / TestKitchen.Ingredient("vinegar-distilled").Typical[Fact.Acid];

        AssertAgrees("W14", ByAcid(Bowl.Of(("vinegar-distilled", vinegar), ("baking-soda", 18))) * CarbonDioxide / 1000);
    }

    [Fact]
    public void Heat_alone_frees_a_quarter_of_the_mass_of_soda_as_gas() =>
        AssertAgrees("heat-only", Bowl.Of(("water", 100), ("baking-soda", 100)).Rises().Freed.ByHeat.Value * CarbonDioxide / 1000);

    [Fact]
    public void A_gram_of_soda_is_a_gram_over_its_molar_mass() => Assert.Equal(1000 / Soda, OneGram.Rises().Freed.Total.Value, 0.02);

    /// <summary>Gas that acid frees [mmol].</summary>
    private static double ByAcid(Formula formula) => formula.Rises().Freed is var freed
        ? (freed.InMixing + freed.OnBench + freed.InOven).Value
        : 0;

    private static void AssertAgrees(string example, double figure)
    {
        var row = Examples.Rows.Single(row => row["example"] == example);
        Assert.True(row.Agrees(figure), row.Against(figure));
    }
}
