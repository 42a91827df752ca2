using System.Globalization;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Loaves;

namespace SwapSolver.Lines.Tests;

/// <summary>Pieces, packets and containers weigh what the table weighs them at, from the text to the grams.</summary>
public sealed class PieceRowTests
{
    private static readonly ReferenceTable Weights = ReferenceTable.Read("Reference/usda-sr-household-weights.csv");

    private static readonly ReferenceTable Lines = ReferenceTable.Read("Reference/lines-of-pieces.csv");

    public static TheoryData<string> Names => [.. Lines.Names];

    [Fact]
    public void Every_row_of_our_foods_that_is_no_spoon_or_cup_has_a_line() => Assert.Empty(
        Weights.Rows
            .Where(row => TestKitchen.Bakehouse.Pantry.Ingredients.Any(ingredient => ingredient.UsdaFoodNumber == row["ndb_no"]) && !IsVolume(row["measure"]))
            .Select(row => (row["ndb_no"], row["measure"]))
            .Except(Lines.Rows.Select(line => (line["ndb_no"], line["measure"]))));

    [Theory]
    [MemberData(nameof(Names))]
    public void A_piece_weighs_what_the_table_weighs_it_at(string name)
    {
        var line = Lines[name];
        var row = Weights.Rows.Single(row => row["ndb_no"] == line["ndb_no"] && row["measure"] == line["measure"]);
        var reading = Assert.Single(TestLines.Reader.Read(line["text"], MeasureSystem.UsCustomary));
        var decimals = row["grams"].Contains('.', StringComparison.Ordinal) ? row["grams"].Split('.')[1].Length : 0;

        Assert.True(reading.Ingredient?.UsdaFoodNumber == row["ndb_no"], $"{reading}");
        ReferenceLedger.Note(
            row, line["text"], double.Parse(row["grams"], CultureInfo.InvariantCulture), reading.Grams?.Typical.Value ?? double.NaN, 0.5 * Math.Pow(10, -decimals));
        Assert.True(
            reading.Grams is { } grams && Math.Abs(grams.Typical.Value - double.Parse(row["grams"], CultureInfo.InvariantCulture)) <= (0.5 * Math.Pow(10, -decimals)) + 1e-9,
            $"{reading} against {row.Text} ({row.Source})");
    }

    private static bool IsVolume(string measure)
    {
        var words = measure.ToLowerInvariant().Split([' ', ',', '('], StringSplitOptions.RemoveEmptyEntries);
        return TestLines.Tables.Volumes.Any(unit => unit.Names.Any(name => words.Take(name.Split(' ').Length).SequenceEqual(name.Split(' '))));
    }
}
