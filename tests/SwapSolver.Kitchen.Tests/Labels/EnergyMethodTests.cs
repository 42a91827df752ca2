using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Labels;

public sealed class EnergyMethodTests
{
    private static readonly ReferenceTable Energies = ReferenceTable.Read("Labels/Reference/energy-by-method.csv");

    private static readonly ReferenceTable Factors = ReferenceTable.Read("Labels/Reference/energy-factors.csv");

    public static TheoryData<string> EnergyRows => [.. Energies.Names];

    public static TheoryData<string> FactorRows => [.. Factors.Names];

    [Theory]
    [MemberData(nameof(EnergyRows))]
    public void Seeds_cocoa_and_egg_have_the_energy_of_the_method_that_is_named(string name)
    {
        var row = Energies[name];
        var food = TestKitchen.Bakehouse.Pantry.Ingredients.First(ingredient => ingredient.UsdaFoodNumber == row["food"]);
        var loaf = new LoafContents(Bowl.Of((food.Id, 100)));
        var method = TestLabels.Method(row["method"]);
        var energy = (row["unit"] == "kJ" ? method.Kilojoules(loaf) : method.Kcal(loaf))!.Value.Value;
        // The table counts organic acids as carbohydrate; the regulation has a factor of their own.
        var acids = loaf.Of(Fact.OrganicAcid)!.Value.Value;
        var counted = row["method"] == "eu-general" ? energy + (acids * (row["unit"] == "kJ" ? 17 - 13 : 4 - 3)) : energy;

        Assert.True(row.Agrees(counted), row.Against(counted));
    }

    [Theory]
    [MemberData(nameof(FactorRows))]
    public void A_factor_is_the_one_of_the_law(string name)
    {
        var row = Factors[name];
        var method = TestLabels.Method(row["method"]);
        var factors = row["unit"] == "kJ" ? method.KilojoulesPerGram! : method.KcalPerGram!;

        Assert.Equal(row.Number("factor"), factors.Single(pair => pair.Key.Id == row["fact"]).Value.Value);
    }

    /// <summary>UVALive 4192, 'Close Enough Computations': 12.1 g fat, 30.6 g carbohydrate, 4.7 g protein are 250.1 kcal, which
    /// prints 250; counted from the rounded 12, 31 and 5 it would be 252.</summary>
    [Fact]
    public void Energy_is_counted_before_anything_is_rounded()
    {
        var counted = (4 * 4.7) + (4 * 30.6) + (9 * 12.1);

        Assert.Equal(250.1, counted, 1e-9);
        Assert.Equal("250", TestLabels.Line("us", "energyKcal").Rounding.Print(new PanelAmount(counted)).Text);
        Assert.Equal(252, (4 * 5) + (4 * 31) + (9 * 12));
    }

    [Fact]
    public void Erythritol_gives_none_by_the_European_factors_and_two_tenths_by_the_Canadian()
    {
        var loaf = new LoafContents(Bowl.Of(("erythritol", 100)));
        var grams = loaf.Of(Fact.Erythritol)!.Value.Value;
        var rest = loaf.Of(Fact.Carbohydrate)!.Value.Value - loaf.Of(Fact.Polyols)!.Value.Value;

        Assert.Equal(4 * rest, TestLabels.Method("eu-general").Kcal(loaf)!.Value.Value, 1e-9);
        Assert.Equal((0.2 * grams) + (4 * rest), TestLabels.Method("ca-general").Kcal(loaf)!.Value.Value, 1e-9);
    }

    [Fact]
    public void A_method_that_counts_kilojoules_only_names_no_kilocalories() =>
        Assert.Null(TestLabels.Method("au-nz-general").Kcal(new LoafContents(Loaf.Muffins)));
}
