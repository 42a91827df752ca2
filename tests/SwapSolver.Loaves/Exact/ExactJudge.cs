using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Models;

namespace SwapSolver.Loaves.Exact;

/// <summary>Judges printed grams in fractions: every hold, every step of the scale, every count.</summary>
public static class ExactJudge
{
    /// <summary>How far beyond an end of a band a reading still counts as on it, relative to the end: what the solving
    /// promises of its answers.</summary>
    private static readonly Rational Tolerance = Rational.Of(1, 1_000_000);

    /// <summary>What is wrong with a formula, and how far its worst reading lies beyond an end, relative to that end.</summary>
    /// <param name="problem">What was asked.</param>
    /// <param name="formula">The formula as printed.</param>
    public static (ImmutableArray<string> Faults, double Beyond) Judge(FormulaProblem problem, Formula formula)
    {
        var faults = ImmutableArray.CreateBuilder<string>();
        Rational worst = 0;
        var readings = new ExactReading(formula, problem.Reference);
        foreach (var hold in problem.Holds)
        {
            if (readings.By(hold.Balance) is not { } reading)
            {
                continue;
            }

            var beyond = Rational.Max(
                hold.Band.Low is { } low ? Beyond(Rational.Of(low.Value) - reading, low) : 0,
                hold.Band.High is { } high ? Beyond(reading - Rational.Of(high.Value), high) : 0);
            worst = Rational.Max(worst, beyond);
            if (beyond > Tolerance)
            {
                faults.Add($"{hold.Id} reads {reading.Nearly:R}, its band is {hold.Band}");
            }
        }

        faults.AddRange(formula.Lines.Where(line => !IsWeighable(problem, line)).Select(line => $"nobody weighs {line.Grams.Value:R} g of {line.Ingredient.Id}"));
        if (formula.Lines.Count(line => problem.Start.MassOf(line.Ingredient) == Grams.None) is var fresh && fresh > problem.Habits.NewIngredients)
        {
            faults.Add($"{fresh} new ingredients where {problem.Habits.NewIngredients} are allowed");
        }

        return (faults.ToImmutable(), worst == 0 ? 0 : worst.Nearly);
    }

    /// <summary>Relative to the end; where the end is nothing, by itself: nothing means nothing.</summary>
    private static Rational Beyond(Rational by, Level end) =>
        by <= 0 ? 0 : end.Value == 0 ? by / Tolerance : by / Rational.Of(end.Value).Size;

    private static bool IsWeighable(FormulaProblem problem, Line line)
    {
        var before = problem.Start.MassOf(line.Ingredient);
        if (line.Grams == before)
        {
            return true;
        }

        var step = line.Size is { } size
            ? Line.UnitOf(line.Ingredient, size)!.Value
            : problem.Habits.StepOf(line.Ingredient);
        return (ExactReading.Grams(line) / Rational.Of((decimal)step.Value)).IsWhole
            && (line.Grams >= line.Ingredient.Usage.SensibleMinimum || (before > Grams.None && line.Grams > before));
    }
}
