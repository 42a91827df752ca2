using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Answers;

/// <summary>The independent judge: looks at the printed grams alone and never asks the solver.</summary>
public static class Recheck
{
    /// <summary>What a formula breaks: ids of wishes, and of lines that no baker would weigh so; empty where it is good.</summary>
    /// <param name="problem">What was asked.</param>
    /// <param name="formula">The formula as printed.</param>
    public static ImmutableArray<string> Broken(FormulaProblem problem, Formula formula) =>
    [
        .. BrokenHolds(problem.Holds, problem.Reference, formula, Draws.Typical)
            .Select(hold => hold.Id)
            .Where(id => !problem.MayGiveWay.Contains(id)),
        .. formula.Lines.Where(line => !IsWeighable(problem, line)).Select(line => $"line:{line.Ingredient.Id}"),
        .. NewIngredients(problem.Start, formula).Length > problem.Habits.NewIngredients ? ["new-ingredients"] : Array.Empty<string>(),
    ];

    /// <summary>The wishes whose band a formula's reading misses.</summary>
    /// <param name="holds">The wishes.</param>
    /// <param name="reference">The formula that bases are counted on.</param>
    /// <param name="formula">The formula that is judged.</param>
    /// <param name="draw">Which sheet of each ingredient is read.</param>
    public static IEnumerable<Hold> BrokenHolds(
        ImmutableArray<Hold> holds, Formula reference, Formula formula, Draw draw) =>
        holds.Where(hold =>
            hold.Balance.Read(formula, reference, draw) is { } level && hold.Band.Of(level) != Standing.Inside);

    /// <summary>Ingredients that the start has not.</summary>
    public static ImmutableArray<Ingredient> NewIngredients(Formula start, Formula formula) =>
    [
        .. formula.Lines.Select(line => line.Ingredient).Where(ingredient => start.MassOf(ingredient) == Grams.None),
    ];

    /// <summary>How many lines differ from the start.</summary>
    public static int ChangedLines(Formula start, Formula formula) =>
        start.Lines.Concat(formula.Lines).Select(line => line.Ingredient).Distinct()
            .Count(ingredient => start.MassOf(ingredient) != formula.MassOf(ingredient));

    /// <summary>Whether a line is unmoved, or comes in whole eggs or steps of the scale and in no less than is worth weighing.</summary>
    private static bool IsWeighable(FormulaProblem problem, Line line)
    {
        var before = problem.Start.MassOf(line.Ingredient);
        if (line.Grams == before || problem.Fixed.ContainsKey(line.Ingredient))
        {
            return true;
        }

        var least = line.Ingredient.Usage.SensibleMinimum;
        if (line.Grams < least && (before == Grams.None || line.Grams < before))
        {
            return false;
        }

        var step = line.Count is not null && line.Size is { } size
            ? Line.UnitOf(line.Ingredient, size)!.Value.Value
            : problem.Habits.StepOf(line.Ingredient).Value;
        return (decimal)line.Grams.Value % (decimal)step == 0;
    }
}
