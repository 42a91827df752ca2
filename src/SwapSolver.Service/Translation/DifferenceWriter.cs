using SwapSolver.Solving;
using SwapSolver.V1;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>Writes what changed from one formula to another in the contract's words.</summary>
internal sealed class DifferenceWriter(Bakehouse bakehouse)
{
    private const double Nothing = 1e-9;

    /// <summary>What changed.</summary>
    /// <param name="before">The first, each ingredient in one line.</param>
    /// <param name="after">The second, likewise.</param>
    /// <param name="goals">What the second was to reach.</param>
    public DiffRevisionsResponse Write(Domain.Formula before, Domain.Formula after, IEnumerable<string> goals)
    {
        var answers = new AnswerWriter(bakehouse);
        var written = new DiffRevisionsResponse
        {
            Before = FormulaWriter.Write(before),
            After = FormulaWriter.Write(after),
            NutritionBefore = answers.Nutrition(before),
            NutritionAfter = answers.Nutrition(after),
        };
        written.Lines.AddRange(after.Lines.Concat(before.Lines).Select(line => line.Ingredient).DistinctBy(ingredient => ingredient.Id).Select(one => Line(one, before, after)).OfType<LineDifference>());
        written.Readings.AddRange(bakehouse.Balances.Targetable.Select(balance => Reading(balance, before, after)).OfType<ReadingDifference>());
        written.Goals.AddRange(goals.Select(new GoalReader(bakehouse, before, after).Read));
        return written;
    }

    private static LineDifference? Line(Kitchen.Ingredients.Ingredient ingredient, Domain.Formula before, Domain.Formula after)
    {
        double? GramsIn(Domain.Formula formula) =>
            formula.Lines.Where(line => line.Ingredient.Id == ingredient.Id).ToList() is { Count: > 0 } lines ? lines.Sum(line => line.Grams.Value) : null;

        var (was, now) = (GramsIn(before), GramsIn(after));
        if (was is { } one && now is { } other && Math.Abs(one - other) < Nothing)
        {
            return null;
        }

        var written = new LineDifference { Ingredient = ResourceName.Of(ingredient), DisplayName = ingredient.Name };
        if (was is { } grams)
        {
            written.BeforeGrams = grams;
        }

        if (now is { } left)
        {
            written.AfterGrams = left;
        }

        return written;
    }

    private static ReadingDifference? Reading(Kitchen.Balances.Balance balance, Domain.Formula before, Domain.Formula after)
    {
        var (was, now) = (GoalReader.ReadingOf(balance, before, before), GoalReader.ReadingOf(balance, after, before));
        if (was is null && now is null)
        {
            return null;
        }

        var written = new ReadingDifference { Balance = balance.Id, Title = balance.Settings.Title, Unit = balance.Settings.Unit };
        if (was is { } one)
        {
            written.Before = one;
        }

        if (now is { } other)
        {
            written.After = other;
        }

        return written;
    }
}
