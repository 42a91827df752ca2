using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

/// <summary>Neutralising value: grams of sodium bicarbonate that 100 g of an acid use up.</summary>
public sealed class NeutralisingValueTests
{
    private static readonly ReferenceTable Values = ReferenceTable.Read("Balances/Leavening/Reference/neutralising-values.csv");

    private static readonly ReferenceTable Batches = ReferenceTable.Read("Balances/Leavening/Reference/neutralising-value-spread.csv");

    public static TheoryData<string> Rows => [.. Values.Names];

    public static TheoryData<string> Spread => [.. Batches.Names];

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_hundred_grams_of_acid_use_up_as_much_soda_as_published(string name)
    {
        var row = Values[name];
        var soda = 100 * Bowls.Typical(row["ingredient"], Fact.Acid) / Bowls.Typical("baking-soda", Fact.Base);

        Assert.True(row.Agrees(soda), row.Against(soda));
    }

    [Theory]
    [MemberData(nameof(Spread))]
    public void What_different_batches_were_published_with_lies_in_our_range(string name)
    {
        var row = Batches[name];
        var range = TestKitchen.Ingredient(row["ingredient"]).RangeOf(Fact.Acid)!.Value;
        var acid = row.Published / 100 * Bowls.Typical("baking-soda", Fact.Base);
        var rounding = row.Tolerance / 100 * Bowls.Typical("baking-soda", Fact.Base);

        ReferenceLedger.Note(row, "the range reaches it", row.Published, Math.Clamp(acid, range.Low, range.High) * 100 / Bowls.Typical("baking-soda", Fact.Base), row.Tolerance);
        Assert.True(range.Low <= acid + rounding && range.High >= acid - rounding, $"{range} mmol/g: {row.Against(range.Typical)}");
    }

    [Fact]
    public void Every_acid_of_the_pantry_stands_in_the_table() => Assert.Empty(
        TestKitchen.Bakehouse.Pantry.Ingredients
            .Where(ingredient => ingredient.Typical[Fact.Acid] > 0 && ingredient.Role != Role.LeaveningBlend)
            .Select(ingredient => ingredient.Id)
            .Except(Values.Rows.Select(row => row["ingredient"])));
}
