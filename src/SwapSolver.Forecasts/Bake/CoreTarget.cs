using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>The core temperature that a bake goes to.</summary>
/// <param name="Core">It [°C].</param>
/// <param name="IsLowered">Whether it was lowered because water boils below what was asked for.</param>
/// <param name="IsRaised">Whether it was raised because egg is not safe below.</param>
internal sealed record CoreTarget(Celsius Core, bool IsLowered, bool IsRaised)
{
    /// <summary>Boiling point at sea level, from which a target that is asked for is counted [°C].</summary>
    private static readonly Celsius AtSea = SaturatedWater.BoilingPointAt(Pascals.Atmosphere);

    /// <summary>The highest core temperature that can be asked for where water boils so [°C].</summary>
    public static Celsius Highest(Celsius boiling, CorePractice practice) => new(boiling.Value - practice.NearestBoilingKelvin.Range.Typical);

    /// <summary>The target for a formula.</summary>
    /// <param name="asked">What was asked for [°C]; null where nothing was.</param>
    /// <param name="boiling">Local boiling point of water [°C].</param>
    /// <param name="formula">The formula.</param>
    /// <param name="practice">What a core is baked to.</param>
    public static CoreTarget Of(Celsius? asked, Celsius boiling, Formula formula, CorePractice practice)
    {
        var below = practice.BelowBoilingKelvin.Range;
        var isLowered = asked is { } high && high.Value > Highest(boiling, practice).Value;
        var core = asked is { } wanted && !isLowered
            ? wanted.Value
            // A bake that ends so far below boiling at the sea ends as far below it here.
            : boiling.Value - (asked is { } fromSea ? Math.Clamp(AtSea.Value - fromSea.Value, below.Low, below.High) : below.Typical);
        var safe = practice.EggSafeCelsius.Range.Typical;
        var isRaised = core < safe && HasEgg(formula);
        return new CoreTarget(new Celsius(isRaised ? safe : core), isLowered, isRaised);
    }

    /// <summary>Whether egg is in the bowl.</summary>
    public static bool HasEgg(Formula formula) =>
        formula.Lines.Any(line => line.Grams.Value > 0 && line.Ingredient.Allergens.Carries("egg"));
}
