using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Learning;
using SwapSolver.Service.Translation;
using Domain = SwapSolver.Kitchen.Formulas;
using Ingredient = SwapSolver.Kitchen.Ingredients.Ingredient;

namespace SwapSolver.Service.Learned;

/// <summary>Which kitchen tests would sharpen the answers about a formula most. Each answer is as wide as the fact that it hangs
/// on; the widths are made comparable by what a baker would notice.</summary>
internal sealed class NextTests(LearningRules rules, IReadOnlyList<LearnedOne> learned, Func<string, Ingredient?> find)
{
    private const int Most = 3;

    /// <summary>At most three, the most helpful first.</summary>
    /// <param name="name">Name of the formula; empty where it was given inline.</param>
    /// <param name="formula">The formula.</param>
    public IReadOnlyList<TestWorth> For(string name, Domain.Formula formula)
    {
        var tests = new List<TestWorth> { Worth(rules.OvenFactor, 1, rules.Matters.OvenFactor), Loss(name) };
        if (formula.Lines.Any(line => line.Ingredient.RangeOf(Fact.Base) is { Typical: > 0 }))
        {
            tests.Add(Worth(rules.GasKept, 1, rules.Matters.GasKept));
        }

        tests.AddRange(Bags(formula));
        return [.. tests.OrderByDescending(test => test.Worth).ThenBy(test => test.Fact.Id, StringComparer.Ordinal).Take(Most)];
    }

    /// <summary>What a loaf weighs hangs on its loss: a point of loss is a point of what is left.</summary>
    private TestWorth Loss(string name)
    {
        var fact = name.Length > 0 ? rules.BakeLossOf(ResourceName.FormulaParts(name).Id) : rules.BakeLoss;
        var loss = KitchenLearning.BeliefOf(fact, learned).Told().Typical / 100;
        return Worth(fact, loss / (1 - loss), rules.Matters.BakeLoss);
    }

    /// <summary>Hydration hangs on each bag by its share of the water bound.</summary>
    private IEnumerable<TestWorth> Bags(Domain.Formula formula)
    {
        var bound = formula.Lines.GroupBy(line => line.Ingredient.Id)
            .Select(lines => (Id: lines.Key, Water: lines.Sum(line => line.Grams.Value * (line.Ingredient.RangeOf(Fact.WaterBound)?.Typical ?? 0))))
            .Where(bag => bag.Water > 0)
            .ToList();
        var all = bound.Sum(bag => bag.Water);
        return from bag in bound
               let ingredient = find(bag.Id)
               where ingredient is not null
               let fact = rules.WaterBoundOf(ingredient)
               where fact is not null
               select Worth(fact, bag.Water / all, rules.Matters.WaterBound);
    }

    private TestWorth Worth(LearnableFact fact, double effect, double matters) => TestWorth.Of(fact, KitchenLearning.BeliefOf(fact, learned), effect, matters);
}
