using System.Globalization;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Replacing;

/// <summary>The kitchen rule by which soda and cream of tartar make a spoon of powder, and what it leaves of the soda.</summary>
/// <param name="Bakehouse">Facts and words.</param>
internal sealed record SpoonRule(Bakehouse Bakehouse)
{
    private const string Teaspoon = "tsp", CreamOfTartar = "cream-of-tartar";

    /// <summary>The word on it where its two parts are what comes in; null elsewhere.</summary>
    public string? Say(ReplacedLeavening replaced)
    {
        var soda = replaced.Doses.Select(dose => dose.Ingredient).FirstOrDefault(one => one.Role == Role.Base);
        var acid = replaced.Doses.Select(dose => dose.Ingredient).FirstOrDefault(one => one.Id == CreamOfTartar);
        if (soda is null || acid is null || SpoonOf(soda) is not { } sodaSpoon || SpoonOf(acid) is not { } acidSpoon)
        {
            return null;
        }

        var practice = Bakehouse.Rise.Practice;
        var used = practice.RuleAcidTeaspoons.Range.Typical * acidSpoon * acid.Typical[Fact.Acid]
            / (practice.RuleSodaTeaspoons.Range.Typical * sodaSpoon * soda.Typical[Fact.Base]);
        return Bakehouse.Phrases.Say("replace-spoon-rule", ("value", (100 * used).ToString("0", CultureInfo.InvariantCulture)));
    }

    private static double? SpoonOf(Ingredient ingredient) =>
        ingredient.HouseholdMeasures.FirstOrDefault(measure => measure is { Measure: Teaspoon, Amount: 1 })?.Grams.Value;
}
