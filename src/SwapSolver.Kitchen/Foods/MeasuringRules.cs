using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Foods;

/// <summary>How far this kitchen's own tests may be trusted, from <c>data/practice/measuring.json</c>.</summary>
/// <param name="SoakSpread">How far a soaking test may miss, either way [%].</param>
/// <param name="LeastDry">Least that a kitchen scale weighs well enough for the test [g].</param>
/// <param name="MostHeld">More water than any ingredient holds [g/g].</param>
/// <param name="AcidGroup">Group whose labels state an acidity.</param>
/// <param name="AciditySpread">How far a label's acidity may miss, either way [%].</param>
/// <param name="LeastAcidity">Least acidity of a label [g/100 mL].</param>
/// <param name="MostAcidity">Most acidity of a label [g/100 mL].</param>
public sealed record MeasuringRules(
    Percent SoakSpread, Grams LeastDry, PerGram MostHeld, string AcidGroup, Percent AciditySpread, Percent LeastAcidity, Percent MostAcidity);
