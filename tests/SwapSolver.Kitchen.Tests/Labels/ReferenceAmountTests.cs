using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Labels;

public sealed class ReferenceAmountTests
{
    private static readonly ReferenceTable Slices = ReferenceTable.Read("Labels/Reference/slices-in-a-serving.csv");

    private static readonly ReferenceTable Servings = ReferenceTable.Read("Labels/Reference/servings-in-a-container.csv");

    public static TheoryData<string> SliceRows => [.. Slices.Names];

    public static TheoryData<string> ServingRows => [.. Servings.Names];

    [Theory]
    [MemberData(nameof(SliceRows))]
    public void Slices_make_a_serving_by_their_share_of_the_reference_amount(string name)
    {
        var row = Slices[name];
        var amount = new ReferenceAmount("bread", new Grams(row.Number("reference")), "test", Mark.Published);

        Assert.Equal(((int)row.Number("least"), (int)row.Number("most")), amount.ServingOf(new Grams(row.Number("slice"))));
    }

    [Theory]
    [MemberData(nameof(ServingRows))]
    public void Servings_of_a_container_are_halves_up_to_five_and_whole_beyond(string name)
    {
        var row = Servings[name];

        Assert.Equal(row.Number("printed"), ReferenceAmount.ServingsPrinted(new PanelAmount(row.Number("servings"))).Value);
    }

    [Fact]
    public void A_serving_of_bread_is_fifty_grams_in_the_United_States() =>
        // 21 CFR 101.12 by a public copy: bread 50 g, brownies 40 g, waffles 85 g.
        Assert.Equal([50, 40, 85], new[] { "bread and rolls", "brownies", "waffles" }.Select(food => TestLabels.Law("us").ReferenceAmounts.Single(amount => amount.Food == food).Amount.Value));
}
