using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Service.Faults;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>Refuses to solve with an ingredient of which a fact is not known that the rules read.</summary>
internal static class KnownFacts
{
    /// <summary>Names every line of the formula that cannot be solved with.</summary>
    public static void Require(BalanceList balances, Domain.Formula? formula, ProblemList problems)
    {
        foreach (var ingredient in formula?.Lines.Select(line => line.Ingredient).Distinct() ?? [])
        {
            Require(balances, ingredient, "formula.lines", problems);
        }
    }

    /// <summary>Names the ingredient where it cannot be solved with.</summary>
    public static void Require(BalanceList balances, Ingredient? ingredient, string path, ProblemList problems)
    {
        if (ingredient is not null && balances.Unknown(ingredient) is { IsEmpty: false } unknown)
        {
            problems.Add(
                path, ResourceName.Of(ingredient), $"cannot be solved with: {string.Join(", ", unknown)} is not known", "add it to the table or packet that the ingredient came from, or name another ingredient");
        }
    }
}
