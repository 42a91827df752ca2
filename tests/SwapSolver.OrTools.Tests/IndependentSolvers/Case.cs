using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.OrTools.Tests.IndependentSolvers;

/// <summary>A baker's question as a model.</summary>
/// <param name="Name">The question in words.</param>
/// <param name="Model">The model that it is.</param>
internal sealed record Case(string Name, Model Model)
{
    /// <summary>What each loaf is asked to do without.</summary>
    private static readonly string[] Words =
        ["tree-nuts", "egg", "milk", "coconut", "seeds", "psyllium-husk-powder", "cream-of-tartar", "butter"];

    /// <summary>Limits on net carbohydrate [g/slice]: one that most loaves can keep, one that none can.</summary>
    private static readonly double[] Caps = [2, 0.05];

    /// <summary>Every question, in any amount and in steps of the scale.</summary>
    public static IEnumerable<Case> All =>
        from question in Questions
        from wholeSteps in new[] { false, true }
        select new Case(
            wholeSteps ? $"{question.Name}, in steps" : question.Name,
            FormulaModel.Build(question.Problem, wholeSteps).Model);

    private static IEnumerable<(string Name, FormulaProblem Problem)> Questions =>
        Loaf.All.SelectMany(loaf =>
        {
            var leavingOut = new LeavingOut(TestKitchen.Bakehouse.Pantry, TestKitchen.Bakehouse.Phrases);
            return Words.Select(word => ($"{loaf.Name} without {word}", Asked(leavingOut.Of(word)!)))
                .Concat(Caps.Select(cap => ($"{loaf.Name} with {cap} g net carbs at most", Asked(Cap(cap)))))
                .Append(($"{loaf.Name} 1.3 times", Sized(1.3)))
                .Append(($"{loaf.Name} 1.3 times, lower in net carbs", Sized(1.3, Role.Flour, Role.Sweetener, Role.Egg, Role.Liquid, Role.Gel)));

            FormulaProblem Asked(Hold wish) =>
                new Variant(loaf.Formula, [wish], Habits.Usual).Problem(TestKitchen.Bakehouse);

            FormulaProblem Sized(double factor, params Role[] roles) =>
                new Resize(loaf.Formula, new NewSize(factor, 16, null), roles.Length == 0 ? [] : [Cap(1.5)], Habits.Usual)
                    .Problem(TestKitchen.Bakehouse, roles);
        });

    private static Hold Cap(double most)
    {
        var rule = TestKitchen.Bakehouse.Balances.NetCarbohydrate;
        return new Hold(rule.Id, rule, new Band(null, new Level(most)), FromCaller: true);
    }
}
