using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Solving;

/// <summary>Everything that is known when a question comes in: facts, rules, words.</summary>
/// <param name="Pantry">The ingredients.</param>
/// <param name="Balances">The rules of the kitchen.</param>
/// <param name="Phrases">The words of answers and cautions.</param>
/// <param name="Practice">The habits of the trade.</param>
/// <param name="Rise">The forecasts of acidity and rise.</param>
/// <param name="Bake">The forecast of the bake.</param>
/// <param name="Goals">What the words of bakers mean in readings.</param>
public sealed record Bakehouse(
    Pantry Pantry, BalanceList Balances, Phrases Phrases, KitchenPractice Practice, Rise Rise, Bake Bake, GoalList Goals);
