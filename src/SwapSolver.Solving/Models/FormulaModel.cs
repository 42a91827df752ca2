using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Models;

/// <summary>A model whose columns are the grams of a formula.</summary>
/// <param name="Model">The model.</param>
/// <param name="Lines">The columns that are lines, those of the start first.</param>
/// <param name="Bands">The rows that hold bands.</param>
public sealed record FormulaModel(Model Model, ImmutableArray<LineColumn> Lines, ImmutableArray<BandRow> Bands)
{
    /// <summary>Builds the model of a problem.</summary>
    /// <param name="problem">What is to be found.</param>
    /// <param name="wholeSteps">Whether every line comes in steps of the scale; else in any amount, to be rounded after.</param>
    public static FormulaModel Build(FormulaProblem problem, bool wholeSteps)
    {
        var builder = new ModelBuilder();
        var lines = new LineColumns(problem, builder, wholeSteps).Add();
        var rows = new BandRows(problem, builder, lines);
        var bands = rows.AddBands();
        rows.AddScenarios();
        new CoverRows(builder, lines).Add();
        rows.AddAnchors();
        rows.AddNetCarbohydrateRise();
        return new FormulaModel(builder.Build(), lines, bands);
    }

    /// <summary>The formula at a point of the model, in steps of the scale.</summary>
    /// <param name="problem">The problem that the model is of.</param>
    /// <param name="values">One value a column.</param>
    public Formula At(FormulaProblem problem, IReadOnlyList<double> values)
    {
        var grams = Lines.ToDictionary(
            line => line.Ingredient,
            line => Rounded(problem, line, values[line.Column] * line.GramsPerUnit));
        var kept = problem.Start.Lines
            .Where(line => grams.TryGetValue(line.Ingredient, out var mass) && mass > Grams.None)
            .Select(line => line with { Grams = grams[line.Ingredient], Size = SizeOf(line.Ingredient) });
        var added = Lines
            .Where(line => line.IsNew && grams[line.Ingredient] > Grams.None)
            .Select(line => new Line(line.Ingredient, grams[line.Ingredient], line.Size));
        return problem.Reference with { Lines = [.. kept, .. added] };
    }

    private EggSize? SizeOf(Ingredient ingredient) => Lines.First(line => line.Ingredient.Equals(ingredient)).Size;

    private static Grams Rounded(FormulaProblem problem, LineColumn line, double grams)
    {
        // A line that did not move keeps the baker's own figure, be it on the scale's grid or not.
        if (problem.Fixed.TryGetValue(line.Ingredient, out var given))
        {
            return given;
        }

        var before = problem.Start.MassOf(line.Ingredient);
        if (Math.Abs(grams - before.Value) < 1e-6)
        {
            return before;
        }

        var step = line.Size is null ? problem.Habits.StepOf(line.Ingredient).Value : line.GramsPerUnit;
        return OnStep(grams, step);
    }

    /// <summary>The nearest whole number of steps, free of binary dust.</summary>
    internal static Grams OnStep(double grams, double step) =>
        new((double)((decimal)Math.Round(grams / step, MidpointRounding.AwayFromZero) * (decimal)step));
}
