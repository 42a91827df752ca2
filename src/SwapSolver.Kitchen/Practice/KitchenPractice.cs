using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Practice;

/// <summary>Habits of the trade that a formula is solved by, from <c>data/practice/solving.json</c>.</summary>
/// <param name="LowCarbohydrateFlour">Net carbohydrate up to which a flour is offered to a low-carb loaf [g/g].</param>
/// <param name="CarbohydrateOverReference">How far beyond the reference's own flours an offered flour may go [%].</param>
/// <param name="SetsLikeEgg">Share of the protein that must set for an ingredient to be tried in an egg's place [%].</param>
/// <param name="MoistFoodWater">Water from which a food counts as moist [%].</param>
/// <param name="PlainWater">Water from which a liquid is water and nothing else [%].</param>
/// <param name="FloursOfBatter">Share of the batter that flours are taken to be where a formula has none [%].</param>
/// <param name="LeastOfALine">Share of itself that a line keeps at the least [%].</param>
/// <param name="SeasoningOfBatter">Share of the batter below which a flavour is a seasoning and not a food [%].</param>
/// <param name="SizeTolerance">How far a batter may miss the size asked for, either way [%].</param>
/// <param name="OwnFoodsOfARole">Most of a kitchen's own foods that a formula is offered in one role; those that the caller
/// names come besides [1].</param>
public sealed record KitchenPractice(
    PerGram LowCarbohydrateFlour,
    Percent CarbohydrateOverReference,
    Percent SetsLikeEgg,
    Percent MoistFoodWater,
    Percent PlainWater,
    Percent FloursOfBatter,
    Percent LeastOfALine,
    Percent SeasoningOfBatter,
    Percent SizeTolerance,
    int OwnFoodsOfARole);
