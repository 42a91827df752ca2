using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Labels;

public sealed class CountedCarbohydrateTests
{
    private static readonly ReferenceTable Pairs = ReferenceTable.Read("Labels/Reference/carbohydrate.csv");

    public static TheoryData<string> Rows => [.. Pairs.Names];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Fibre_is_within_the_American_line_and_outside_the_European(string name)
    {
        var row = Pairs[name];
        var food = TestKitchen.Bakehouse.Pantry.Ingredients.First(ingredient => ingredient.UsdaFoodNumber == row["food"]);
        var formula = Bowl.Of((food.Id, 100)) with { Slices = 1 };

        Assert.Equal(row.Number("us"), Amount(LabelSheet.Of(formula, TestLabels.Law("us"))), 0.005);
        Assert.Equal(row.Number("eu"), Amount(LabelSheet.Of(formula, TestLabels.Law("eu"))), 0.005);
    }

    [Fact]
    public void Fibre_that_is_off_is_not_taken_off_again()
    {
        var almonds = new CountedCarbohydrate(new PanelAmount(21.55), []);
        var once = almonds.Less(Fact.Fibre, new PanelAmount(12.5))!;

        Assert.Equal(9.05, once.Amount.Value, 1e-9);
        Assert.Equal(once, once.Less(Fact.Fibre, new PanelAmount(12.5)));
    }

    [Fact]
    public void Carbohydrate_that_its_fibre_exceeds_is_on_another_basis_and_is_not_known() =>
        Assert.Null(new CountedCarbohydrate(new PanelAmount(9.05), []).Less(Fact.Fibre, new PanelAmount(12.5)));

    [Fact]
    public void Fibre_that_was_analysed_a_little_above_its_carbohydrate_leaves_none() =>
        Assert.Equal(0, new CountedCarbohydrate(new PanelAmount(80), []).Less(Fact.Fibre, new PanelAmount(81))!.Amount.Value);

    private static double Amount(LabelSheet sheet) => sheet.Figures.Single(figure => figure.Line.Nutrient == Nutrient.Carbohydrate).PerSlice!.Value.Value;
}
