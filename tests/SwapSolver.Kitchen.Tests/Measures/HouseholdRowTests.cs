using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Tests.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Measures;

/// <summary>The words of a table's household weights, taken apart.</summary>
public sealed class HouseholdRowTests
{
    [Theory]
    [InlineData("cup", "cup", "")]
    [InlineData("cup, ground", "cup", "ground")]
    [InlineData("cup, whole (shelled)", "cup", "whole")]
    [InlineData("tbsp, unsifted", "tablespoon", "unsifted")]
    // How large the cup is, and how large the pieces are, is no form.
    [InlineData("cup, 8 fl oz", "cup", "")]
    [InlineData("cup, 1/2-inch pieces, chopped", "cup", "pieces chopped")]
    public void A_measure_is_a_unit_and_perhaps_a_form(string measure, string unit, string form)
    {
        var row = Of(1, measure, 120);
        Assert.Equal((unit, form), (row.Unit?.Id, string.Join(' ', row.Form)));
        Assert.Equal(120, row.Each.Value);
    }

    [Fact]
    public void What_is_no_measure_of_volume_is_a_thing_with_its_form()
    {
        var row = Of(2, "slice, large (1/4 inch thick)", 30);
        Assert.Null(row.Unit);
        Assert.Equal(("slice", "large"), (row.Head, string.Join(' ', row.Form)));
        // Two of them weigh 30 g.
        Assert.Equal(15, row.Each.Value);
    }

    [Fact]
    public void Without_a_word_the_plain_row_is_meant_then_the_ground_one_and_an_unusual_form_last()
    {
        string[] measures = ["cup, chopped", "cup, sifted", "cup", "cup, mashed", "cup, ground"];
        Assert.Equal(
            ["cup", "cup, ground", "cup, sifted", "cup, mashed", "cup, chopped"], measures.OrderBy(measure => Of(1, measure, 100).Rank));
    }

    private static HouseholdRow Of(decimal amount, string measure, double grams)
    {
        var ingredient = Invented.Of("thing", Role.Flour, (Fact.Fat, 10));
        var weighed = ingredient.With(ingredient.Figures, [new HouseholdMeasure(amount, measure, new Grams(grams), "invented", Mark.Practice)]);
        return Assert.Single(HouseholdRow.Of(weighed, TestCards.Room.Measures.Volumes));
    }
}
