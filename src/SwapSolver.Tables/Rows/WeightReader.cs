using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Tables.Columns;

namespace SwapSolver.Tables.Rows;

/// <summary>Reads household weights.</summary>
/// <param name="rules">Names the source.</param>
internal sealed class WeightReader(FoodRules rules)
{
    private const double MostGrams = 100_000;

    private const int MostLetters = 100;

    /// <summary>The weight of a row of household weights; null where it has problems, which are then added.</summary>
    public WeightRow? Read(TableRow row)
    {
        var id = IdOf(row);
        var amount = AmountOf(row);
        var measure = PlainText.Read(row, WeightColumns.Measure, MostLetters);
        var grams = GramsOf(row, WeightColumns.Grams);
        return id is not null && amount is { } count && measure is not null && grams is { } mass
            ? new WeightRow(row.Line, id, Measure(count, measure, mass))
            : null;
    }

    /// <summary>A measure that stands in the row of its food; null where there is none. The result is false where it
    /// cannot be read; the problems are then added.</summary>
    public bool TryRead(TableRow row, string weightColumn, string measureColumn, out HouseholdMeasure? measure)
    {
        measure = null;
        if (row[weightColumn].Length == 0 || row[measureColumn].Length == 0)
        {
            return true;
        }

        if (PlainText.Read(row, measureColumn, MostLetters) is not { } text || GramsOf(row, weightColumn) is not { } grams)
        {
            return false;
        }

        var (amount, words) = MeasureWords.Read(text);
        measure = Measure(amount, words, grams);
        return true;
    }

    private HouseholdMeasure Measure(decimal amount, string measure, Grams grams) =>
        new(amount, measure, grams, rules.TableSource, Mark.Published);

    private static string? IdOf(TableRow row)
    {
        if (row[FoodColumns.Id].Length > 0)
        {
            return FoodIds.Given(row);
        }

        if (!FoodIds.TryNumber(row, out var number))
        {
            return null;
        }

        if (number is null)
        {
            row.RefuseAll(FoodColumns.Number, "the row names no food", $"give its {FoodColumns.Number} or its {FoodColumns.Id}");
        }

        return number is null ? null : FoodId.OfNumber(number);
    }

    private static decimal? AmountOf(TableRow row)
    {
        if (MeasureWords.Amount(row[WeightColumns.Amount]) is { } amount)
        {
            return amount;
        }

        row.Refuse(WeightColumns.Amount, "is no amount", $"write how many of the measure, above 0 and at most {MeasureWords.MostAmount}, as 1 or .5");
        return null;
    }

    private static Grams? GramsOf(TableRow row, string column)
    {
        if (row[column].Length == 0)
        {
            row.RefuseAll(column, $"the {row.Header.Printed(column)} is missing", "write what the measure weighs in grams");
            return null;
        }

        if (PrintedNumber.Read(row, column, MostGrams, "g") is not { } grams)
        {
            return null;
        }

        if (grams > 0)
        {
            return new Grams(grams);
        }

        row.Refuse(column, "weighs nothing", "write what the measure weighs in grams");
        return null;
    }
}
