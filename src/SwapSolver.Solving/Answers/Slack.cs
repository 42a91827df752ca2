using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Answers;

/// <summary>What a little more room in a band would buy, with the same ingredients and eggs.</summary>
/// <param name="Balance">The balance whose band stands in the way.</param>
/// <param name="Side">The side of the band.</param>
/// <param name="Further">How much further the reading would go [unit of the balance].</param>
/// <param name="Ingredient">The line that would move most.</param>
/// <param name="Before">Its grams now, before rounding to the scale [g].</param>
/// <param name="After">Its grams then [g].</param>
/// <param name="Foretold">What the dual value of the row says that the objective would fall by.</param>
/// <param name="Gained">What it falls by when it is solved again.</param>
/// <param name="Words">The same in kitchen words.</param>
public sealed record Slack(
    Balance Balance, Side Side, Level Further, Ingredient Ingredient, Grams Before, Grams After, double Foretold, double Gained, string Words);
