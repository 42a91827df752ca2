using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

/// <summary>Short ways to weigh things into a bowl and to read it.</summary>
internal static class Bowls
{
    private static readonly BalanceList Balances = TestKitchen.Bakehouse.Balances;

    /// <summary>A formula of anything, cut into so many slices.</summary>
    public static Formula Weigh(int slices, params ReadOnlySpan<(Ingredient Ingredient, double Grams)> lines)
    {
        var made = ImmutableArray.CreateBuilder<Line>();
        foreach (var (ingredient, grams) in lines)
        {
            made.Add(new Line(ingredient, new Grams(grams)));
        }

        return new Formula("Invented loaf", made.ToImmutable(), slices, null, null, null);
    }

    /// <summary>The shipped balance of an id.</summary>
    public static Balance Balance(string id) => Balances.Targetable.Single(balance => balance.Id == id);

    /// <summary>What a shipped balance reads of a formula by itself.</summary>
    public static double? Reading(this Formula formula, string balance) =>
        Balance(balance).Read(formula, formula, Draws.Typical)?.Value;

    /// <summary>A fact of a shipped ingredient as its typical sheet has it.</summary>
    public static double Typical(string id, Fact fact) => TestKitchen.Ingredient(id).Typical[fact];
}
