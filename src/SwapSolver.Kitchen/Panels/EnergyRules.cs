using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Panels;

/// <summary>How energy follows from what is in a food. By which factors a maker counted is not printed, so each is a
/// range; its typical value is the general factor.</summary>
/// <param name="KcalPerGram">Energy by fact [kcal/g]; that of carbohydrate is for what is neither fibre, polyol, allulose
/// nor organic acid.</param>
/// <param name="KcalPerGramOfErythritol">Energy of erythritol by the general factors [kcal/g].</param>
/// <param name="Allowance">How far a maker's energy may lie outside of what the factors give [%].</param>
/// <param name="KilojoulesPerKcal">How the two energies of one panel stand to each other [kJ/kcal].</param>
public sealed record EnergyRules(
    ImmutableDictionary<Fact, Range> KcalPerGram,
    PerGram KcalPerGramOfErythritol,
    Percent Allowance,
    Range KilojoulesPerKcal);
