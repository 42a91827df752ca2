using CsCheck;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Acids;

public sealed class EquivalenceTests
{
    private static readonly ReferenceTable Doses = ReferenceTable.Read("Acids/Reference/equivalent-doses.csv");

    private static readonly Ingredient[] Acids =
        [.. TestKitchen.Bakehouse.Pantry.Ingredients.Where(ingredient => ingredient.Role == Role.Acid)];

    public static TheoryData<string> Rows => [.. Doses.Names];

    [Theory]
    [MemberData(nameof(Rows))]
    public void So_much_of_one_acid_stands_for_so_much_of_another(string name)
    {
        var row = Doses[name];
        var found = Equivalence.OfAcid(new Grams(row.Number("grams")), Facts(row["from"]), Facts(row["to"]))!;

        Assert.True(row.Agrees(found.Dose.Value), row.Against(found.Dose.Value));
        Assert.Equal(row.Number("mmol"), found.Equivalents.Value, 0.05);
        Assert.Equal(row.Number("water"), found.WaterMore.Value, 0.5);
    }

    [Fact]
    public void There_and_back_again_is_the_first_dose() => Pairs.Sample(pair =>
    {
        var there = Equivalence.OfAcid(new Grams(pair.Grams), Acids[pair.From].Typical, Acids[pair.To].Typical)!;
        var back = Equivalence.OfAcid(there.Dose, Acids[pair.To].Typical, Acids[pair.From].Typical)!;

        Assert.Equal(pair.Grams, back.Dose.Value, 1e-9 * Math.Max(1, pair.Grams));
        Assert.Equal(there.Equivalents.Value, back.Equivalents.Value, 1e-9);
        Assert.Equal(-there.WaterMore.Value, back.WaterMore.Value, 1e-6);
    });

    [Fact]
    public void Equivalents_are_kept() => Pairs.Sample(pair =>
    {
        var to = Acids[pair.To].Typical;
        var found = Equivalence.OfAcid(new Grams(pair.Grams), Acids[pair.From].Typical, to)!;

        Assert.Equal(pair.Grams * Acids[pair.From].Typical[Fact.Acid], found.Dose.Value * to[Fact.Acid], 1e-9);
    });

    [Fact]
    public void Twelve_grams_of_potassium_bicarbonate_stand_for_ten_of_soda()
    {
        // 100.114 / 84.006 = 1.192, IUPAC atomic masses; the trade prints 1.19 (American Society of Baking).
        var found = Equivalence.OfBase(new Grams(10), Facts("baking-soda"), Facts("potassium-bicarbonate"))!;

        Assert.Equal(11.9, found.Dose.Value, 0.05);
    }

    [Fact]
    public void What_is_not_sour_takes_no_acids_place() =>
        Assert.Null(Equivalence.OfAcid(new Grams(6), Facts("cream-of-tartar"), Facts("water")));

    private static Gen<(double Grams, int From, int To)> Pairs =>
        Gen.Select(Gen.Double[0.1, 100], Gen.Int[0, Acids.Length - 1], Gen.Int[0, Acids.Length - 1]);

    private static FactSheet Facts(string id) => TestKitchen.Ingredient(id).Typical;
}
