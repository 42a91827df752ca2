using System.Globalization;
using SwapSolver.Data.Tests.Ingredients;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Measures;

/// <summary>A spoon or cup weighs what the table weighs it at, through the whole way from measure to grams.</summary>
public sealed class HouseholdRowTests
{
    private static readonly ReferenceTable Weights = ReferenceTable.Read("Ingredients/Reference/usda-sr-household-weights.csv");

    private static readonly Weighing Weighing = new(ShippedMeasures.Tables, MeasureSystem.UsCustomary);

    public static TheoryData<string, int> Rows
    {
        get
        {
            var rows = new TheoryData<string, int>();
            foreach (var ingredient in ShippedPantry.Pantry.Ingredients)
            {
                foreach (var place in Enumerable.Range(0, Weights.Rows.Length).Where(place => Weights.Rows[place]["ndb_no"] == ingredient.UsdaFoodNumber && IsVolume(Weights.Rows[place]["measure"])))
                {
                    rows.Add(ingredient.Id, place);
                }
            }

            return rows;
        }
    }

    [Fact]
    public void Most_rows_of_our_foods_are_spoons_and_cups() => Assert.True(Rows.Count > 80);

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_spoon_or_cup_weighs_what_the_table_weighs_it_at(string id, int place)
    {
        var row = Weights.Rows[place];
        var words = WordsOf(row["measure"]);
        var measured = new Measured(Amount.Of(row.Number("amount")), UnitOf(words), null, null, [.. words]);
        var weighed = Weighing.Weigh(measured, TestKitchen.Ingredient(id)).Grams!.Value.Typical.Value;
        Assert.True(Math.Abs(weighed - double.Parse(row["grams"], CultureInfo.InvariantCulture)) < 1e-9, $"{weighed} g against {row.Text} ({row.Source})");
    }

    private static bool IsVolume(string measure) => UnitOf(WordsOf(measure)) is not null;

    private static VolumeUnit? UnitOf(string[] words) => ShippedMeasures.Tables.Volumes
        .FirstOrDefault(unit => unit.Names.Any(name => words.Take(name.Split(' ').Length).SequenceEqual(name.Split(' '))));

    private static string[] WordsOf(string measure) => measure.Split('(')[0].ToLowerInvariant().Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
}
