using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Replacing;

/// <summary>Asks what stands in for leavening.</summary>
internal static class ReplacedDoses
{
    /// <summary>What stands in for a dose by itself.</summary>
    public static Outcomes Of(string from, double grams, params ReadOnlySpan<string> with) => Of(null, from, grams, 0, with);

    /// <summary>What stands in within a formula.</summary>
    public static Outcomes In(Formula formula, string from, params ReadOnlySpan<string> with) => Of(formula, from, 0, 0, with);

    /// <summary>What stands in for the part that is not in stock.</summary>
    public static Outcomes Of(Formula? formula, string from, double grams, double stock, params ReadOnlySpan<string> with)
    {
        var named = with.ToArray();
        return new Replacement(
            formula,
            TestKitchen.Ingredient(from),
            new Grams(grams),
            new Grams(stock),
            [.. named.Select(TestKitchen.Ingredient)],
            [],
            Habits.Usual).Answer(Ask.Search, Ask.Ample, CancellationToken.None);
    }

    /// <summary>Grams of an ingredient in an answer.</summary>
    public static double Grams(this Answer answer, string id) => answer.Formula.MassOf(TestKitchen.Ingredient(id)).Value;

    /// <summary>Acid, or bicarbonate, of a formula [mmol].</summary>
    public static double Sum(this Formula formula, Fact fact) => formula.Lines.Sum(line => line.Ingredient.Typical[fact] * line.Grams.Value);
}
