using System.Globalization;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.OrTools;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests;

/// <summary>Puts questions to the real solver.</summary>
internal static class Ask
{
    /// <summary>The real search.</summary>
    public static AnswerSearch Search { get; } = new(TestKitchen.Bakehouse, new OrToolsSolver());

    /// <summary>The real solving.</summary>
    public static FormulaSolve Solve { get; } = new(Search.Solver);

    /// <summary>Time that no question of these tests needs.</summary>
    public static Deadline Ample => new(TimeProvider.System, TimeProvider.System.GetUtcNow().AddMinutes(2));

    /// <summary>The wish to do without what a word says.</summary>
    public static Hold Without(string word) =>
        new LeavingOut(TestKitchen.Bakehouse.Pantry, TestKitchen.Bakehouse.Phrases).Of(word)
        ?? throw new ArgumentException($"'{word}' is not known", nameof(word));

    /// <summary>A cap on net carbohydrate [g/slice].</summary>
    public static Hold NetCarbs(double most)
    {
        var rule = TestKitchen.Bakehouse.Balances.NetCarbohydrate;
        return new Hold(rule.Id, rule, new Band(null, new Level(most)), FromCaller: true);
    }

    /// <summary>The question for a variant.</summary>
    public static Variant Variant(Formula formula, params ReadOnlySpan<Hold> wishes) => new(formula, [.. wishes], Habits.Usual);

    /// <summary>What comes of it.</summary>
    public static Outcomes Answer(this Variant question) => question.Answer(Search, Ample, CancellationToken.None);

    /// <summary>The problem that it is.</summary>
    public static FormulaProblem Problem(this Variant question) => question.Problem(TestKitchen.Bakehouse);

    /// <summary>Whether any formula meets a problem, in any amount.</summary>
    public static Outcome CanBeMet(FormulaProblem problem) => Solve.CanBeMet(problem, Ample, CancellationToken.None);

    /// <summary>What a check of one swap says.</summary>
    public static SwapVerdict Check(Formula formula, string from, string? to, double? grams = null) => new SwapCheck(
        formula,
        [
            new Swap(
                TestKitchen.Ingredient(from),
                to is null ? null : TestKitchen.Ingredient(to),
                grams is { } dose ? new Grams(dose) : null),
        ],
        [],
        Habits.Usual).Answer(Search);

    /// <summary>What comes of a check.</summary>
    public static SwapVerdict Answer(this SwapCheck question, AnswerSearch search) =>
        question.Measure(search) is var measured && measured.Balances ? measured.Yes(search) : measured.Repaired(search, Ample, CancellationToken.None);

    /// <summary>What a resize by a factor gives.</summary>
    public static Outcomes Sized(Formula formula, double factor, int slices, params ReadOnlySpan<Hold> wishes) =>
        new Resize(formula, new NewSize(factor, slices, null), [.. wishes], Habits.Usual).Answer(Search, Ample, CancellationToken.None);

    /// <summary>Grams by ingredient in words, to compare two formulas whatever the order of their lines.</summary>
    public static string Weights(Formula formula) => string.Join(", ", formula.Lines
        .OrderBy(line => line.Ingredient.Id, StringComparer.Ordinal)
        .Select(line => string.Create(CultureInfo.InvariantCulture, $"{line.Ingredient.Id} {line.Grams.Value:R}")));
}
