using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Tests.Balances;

/// <summary>The shipped pantry in a kitchen that wrote down a price for everything. The prices are invented.</summary>
internal static class PricedShelf
{
    /// <summary>Every ingredient with a price.</summary>
    public static ImmutableArray<Ingredient> Ingredients { get; } = [.. TestKitchen.Bakehouse.Pantry.Ingredients.Select(ingredient => ingredient.Priced(1 + ingredient.Id.Length))];

    /// <summary>An ingredient with its invented price.</summary>
    public static Ingredient Ingredient(string id) => Ingredients.Single(ingredient => ingredient.Id == id);

    /// <summary>The same ingredient at a price [money/kg].</summary>
    public static Ingredient Priced(this Ingredient ingredient, double perKilogram) => ingredient.With(
        [KeyValuePair.Create(Fact.Price, new Figure(new Range(perKilogram, perKilogram, perKilogram), "invented", Mark.Practice, null))],
        ingredient.HouseholdMeasures);

    /// <summary>The same formula with the invented price of every line.</summary>
    public static Formula Priced(this Formula formula) =>
        formula with { Lines = [.. formula.Lines.Select(line => line with { Ingredient = Ingredient(line.Ingredient.Id) })] };
}
