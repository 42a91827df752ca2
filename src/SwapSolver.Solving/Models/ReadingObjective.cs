using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Models;

/// <summary>A model that moves one reading as far as it goes, in place of changing least.</summary>
/// <param name="Balance">The rule whose reading it is; a ratio of two sums.</param>
/// <param name="Better">The way that it is to move.</param>
/// <param name="Reference">The formula that the basis is counted on.</param>
internal sealed record ReadingObjective(Balance Balance, Better Better, Formula Reference)
{
    /// <summary>Whether the basis is a number of slices or loaves: the reading is then a sum, and the best of it is found
    /// in one solve.</summary>
    public bool IsSum(FormulaModel model)
    {
        var basis = Balance.Basis(Reference);
        return model.Lines.All(line => basis.PerGram(line.Ingredient.Typical).Value == 0);
    }

    /// <summary>The same model whose best point has a better reading than a level, where there is any. A ratio n/d is better
    /// than a level exactly where n - level d is on the better side of nothing, and that is linear.</summary>
    /// <param name="model">The model.</param>
    /// <param name="level">The level to beat.</param>
    public Model In(FormulaModel model, Level level)
    {
        var basis = Balance.Basis(Reference);
        var sign = Better == Better.Lower ? 1 : -1;
        var grams = model.Lines.ToDictionary(
            line => line.Column,
            line => line.GramsPerUnit * (Balance.Numerator(line.Ingredient.Typical).Value - (level.Value * basis.PerGram(line.Ingredient.Typical).Value)));
        // Brought to the size of one line of the reference, so that a gap of the solver means the same for every reading.
        var scale = Reference.Lines.Sum(line => Math.Abs(Balance.Numerator(line.Ingredient.Typical).Value) * line.Grams.Value);
        return model.Model with
        {
            Columns =
            [
                .. model.Model.Columns.Select((column, place) => column with
                {
                    Cost = grams.TryGetValue(place, out var one) ? sign * one / (scale > 0 ? scale : 1) * Magnified : 0,
                }),
            ],
        };
    }

    /// <summary>The same, of a level that was reached, with a row that lets in nothing worse: a solver then needs no point of its
    /// own to leave out by, and that there is nothing better is mostly plain at once.</summary>
    public Model Beyond(FormulaModel model, Level reached)
    {
        var better = In(model, reached);
        return better with
        {
            Rows =
            [
                .. better.Rows,
                new ModelRow(
                    $"no_worse_{better.Rows.Count}",
                    [.. better.Columns.Select((column, place) => new Term(place, column.Cost)).Where(term => term.Coefficient != 0)],
                    double.NegativeInfinity,
                    0),
            ],
        };
    }

    /// <summary>Size of the objective, as large as a reference's whole reading. Solvers stop at a gap of about one in ten
    /// thousand million by itself; a hundred keeps that far below a step of the scale.</summary>
    private const double Magnified = 100;
}
