using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Learning;

/// <summary>What a kitchen can learn of itself, and how far its measurements are trusted.</summary>
/// <param name="OvenFactor">Baking time by the time that is foretold.</param>
/// <param name="BakeLoss">Water lost in the oven, of the batter; each formula has its own.</param>
/// <param name="GasKept">Share of the gas that the crumb keeps.</param>
/// <param name="Loaf">How a loaf's volume is read off a ruler.</param>
/// <param name="WaterBound">How a bag's water is learned; its published range is that of the ingredient.</param>
/// <param name="Matters">How wide each answer may be before it matters.</param>
public sealed record LearningRules(
    LearnableFact OvenFactor, LearnableFact BakeLoss, LearnableFact GasKept, LoafReading Loaf, SoakLearning WaterBound, WidthsThatMatter Matters)
{
    private const string Water = "water-bound.", Loss = "bake-loss.";

    /// <summary>The bake loss of one formula.</summary>
    /// <param name="formula">Id of the formula.</param>
    public LearnableFact BakeLossOf(string formula) => BakeLoss with { Id = Loss + formula, Title = $"{BakeLoss.Title}: {formula}" };

    /// <summary>What can be learned of a bag; null where nothing is published of its water.</summary>
    public LearnableFact? WaterBoundOf(Ingredient ingredient)
    {
        if (ingredient.RangeOf(Fact.WaterBoundCentrifuge) is not { Typical: > 0 } published || ingredient.RangeOf(Fact.WaterBound) is not { Typical: > 0 })
        {
            return null;
        }

        var most = Math.Max(published.High, Math.Min(Fact.WaterBoundCentrifuge.Most, published.Typical * WaterBound.MostTimesTypical));
        return new LearnableFact(
            Water + ingredient.Id, $"{WaterBound.Title}: {ingredient.Name}", WaterBound.Unit, published, new(0, published.Typical, most), WaterBound.Scatter);
    }

    /// <summary>The ingredient of a fact's id; null where the fact is not of a bag.</summary>
    public static string? IngredientOf(string fact) => fact.StartsWith(Water, StringComparison.Ordinal) ? fact[Water.Length..] : null;
}

/// <summary>How a loaf's volume is read off a ruler.</summary>
/// <param name="BatterDensityGPerMl">Batter without its gas [g/mL].</param>
/// <param name="DomeShare">A domed loaf by the box around it [1].</param>
public sealed record LoafReading(double BatterDensityGPerMl, double DomeShare);

/// <summary>How a bag's water is learned.</summary>
/// <param name="Title">What it is, in words.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="MostTimesTypical">No bag holds more than so many times what was published [1].</param>
/// <param name="Scatter">By how much one test scatters, as a share of the typical value.</param>
public sealed record SoakLearning(string Title, string Unit, double MostTimesTypical, double Scatter);

/// <summary>How wide each answer may be before it matters [% of the answer].</summary>
/// <param name="OvenFactor">Baking time.</param>
/// <param name="BakeLoss">Mass and figures by 100 g.</param>
/// <param name="GasKept">Rise.</param>
/// <param name="WaterBound">Hydration.</param>
public sealed record WidthsThatMatter(double OvenFactor, double BakeLoss, double GasKept, double WaterBound);
