using SwapSolver.Kitchen.Quantities;
using SwapSolver.Learning;
using SwapSolver.V1;
using SoakTest = SwapSolver.Kitchen.Foods.SoakTest;

namespace SwapSolver.Service.Learned;

/// <summary>What one trial says of the facts that a kitchen can learn.</summary>
internal static class TrialEvidence
{
    /// <summary>Each fact that the trial says something of.</summary>
    /// <param name="trial">The trial.</param>
    /// <param name="formula">Id of its formula.</param>
    /// <param name="rules">What can be learned.</param>
    /// <param name="find">An ingredient as nobody measured it; null where it is not known any more.</param>
    public static IEnumerable<(LearnableFact Fact, Evidence Evidence)> Of(
        Trial trial, string formula, LearningRules rules, Func<string, Kitchen.Ingredients.Ingredient?> find)
    {
        if (trial is { HasMinutes: true, Foretold: { HasMinutes: true, Minutes: > 0 } foretold })
        {
            yield return (rules.OvenFactor, rules.OvenFactor.Measured(trial.Minutes / foretold.Minutes));
        }

        if (trial is { HasBatterMassG: true, HasBakedMassG: true })
        {
            var loss = rules.BakeLossOf(formula);
            yield return (loss, loss.Measured(100 * (1 - (trial.BakedMassG / trial.BatterMassG))));
        }

        if (trial is { HasBatterMassG: true, Foretold: { HasLoafMillilitres: true, GasMillilitres: > 0 } risen })
        {
            yield return (rules.GasKept, rules.GasKept.Measured((risen.LoafMillilitres - (trial.BatterMassG / rules.Loaf.BatterDensityGPerMl)) / risen.GasMillilitres));
        }

        foreach (var soak in trial.Soaks)
        {
            if (find(Translation.ResourceName.IngredientId(soak.Ingredient)) is { } ingredient && rules.WaterBoundOf(ingredient) is { } water)
            {
                yield return (water, water.Measured(new SoakTest(new Grams(soak.DryG), new Grams(soak.DrainedG)).Held.Value));
            }
        }
    }
}
