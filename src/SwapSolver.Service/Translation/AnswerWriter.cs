using SwapSolver.Kitchen.Formulas;
using SwapSolver.Solving;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Service.Translation;

/// <summary>Writes answers in the contract's words.</summary>
internal sealed class AnswerWriter(Bakehouse bakehouse)
{
    /// <summary>The answer.</summary>
    public V1.Answer Write(Answer answer)
    {
        var written = new V1.Answer
        {
            Formula = FormulaWriter.Write(answer.Formula),
            ChanceOfBalance = answer.ChanceOfBalance,
            Nutrition = Nutrition(answer.Formula),
            Allergens = Allergens(answer.Formula),
            BestSoFar = answer.IsBestSoFar,
            Replacement = answer.Replaced is { } replaced ? ReplacementWriter.Write(replaced) : null,
        };
        written.Readings.AddRange(answer.Readings.Select(ReadingWriter.Write));
        written.Changes.AddRange(answer.Changes.Select(Write));
        written.Cautions.AddRange(answer.Cautions);
        written.Binding.AddRange(answer.Binding);
        written.Notes.AddRange(answer.Notes);
        written.ModelMps = answer.Model;
        written.Slack.AddRange(answer.Slack.Select(slack => new V1.Slack
        {
            Balance = slack.Balance.Id,
            Further = slack.Further.Value,
            Unit = slack.Balance.Settings.Unit,
            Ingredient = ResourceName.Of(slack.Ingredient),
            BeforeGrams = slack.Before.Value,
            AfterGrams = slack.After.Value,
            Words = slack.Words,
        }));
        written.Decisive.AddRange(answer.Decisive.Select(fact => new V1.DecisiveFact
        {
            Ingredient = ResourceName.Of(fact.Ingredient),
            Fact = fact.Fact.Id,
            Share = fact.Share,
            Words = fact.Words,
        }));
        return written;
    }

    /// <summary>One of the wishes that fight each other.</summary>
    public static V1.Conflict Write(Conflict conflict)
    {
        var written = new V1.Conflict
        {
            Wish = conflict.Wish,
            Words = conflict.Words,
            Formula = conflict.Formula is { } formula ? FormulaWriter.Write(formula) : null,
        };
        if (conflict.RelaxedValue is { } value)
        {
            written.RelaxedValue = value.Value;
        }

        return written;
    }

    /// <summary>Nutrition of a formula.</summary>
    public V1.Nutrition Nutrition(Formula formula) =>
        NutritionWriter.Write(formula, bakehouse.Balances.NetCarbohydrate, bakehouse.Phrases.Say("energy-method"));

    /// <summary>Allergens of a formula.</summary>
    public V1.AllergenStatement Allergens(Formula formula) =>
        AllergenWriter.Write(formula, bakehouse.Phrases.Say("caution-allergen-lists"));

    /// <summary>One line that differs.</summary>
    public static V1.Change Write(Change change)
    {
        var written = new V1.Change
        {
            Ingredient = ResourceName.Of(change.Ingredient),
            BeforeGrams = change.Before.Value,
            AfterGrams = change.After.Value,
            Reason = change.Reason,
            DisplayName = change.Ingredient.Name,
        };
        if (change.BeforeCount is { } before)
        {
            written.BeforeCount = Math.Round(before, 6);
        }

        if (change.AfterCount is { } after)
        {
            written.AfterCount = Math.Round(after, 6);
        }

        return written;
    }
}
