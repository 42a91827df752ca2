using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>All of a loaf that its bake hangs on: loaves alike in this bake alike, whatever they are called and whoever asks.</summary>
/// <param name="Composition">What its batter is made of.</param>
/// <param name="Mass">How much of it there is.</param>
/// <param name="Shape">What it is baked in; null where not said.</param>
/// <param name="Oven">Its oven; null where not said.</param>
/// <param name="Core">The core temperature that it is baked to.</param>
/// <param name="Pressure">Pressure of the air.</param>
/// <param name="IsColdStart">Whether the oven is cold when it goes in.</param>
/// <param name="ToSlice">Whether its cooling is asked for too.</param>
internal sealed record LoafToBake(
    Composition Composition, Grams Mass, Shape? Shape, Oven? Oven, Celsius Core, Pascals Pressure, bool IsColdStart, bool ToSlice);
