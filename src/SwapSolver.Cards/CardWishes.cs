using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Cards;

/// <summary>What is asked of a card.</summary>
/// <param name="Law">Whose law its label follows.</param>
/// <param name="Method">How energy is counted.</param>
/// <param name="ServingSlices">Slices in a serving.</param>
/// <param name="Measures">Whose cups and spoons stand beside the grams; null for none.</param>
/// <param name="Locale">How numbers and temperatures are written.</param>
/// <param name="Version">The baker's word for the version; empty for a fingerprint.</param>
/// <param name="VariantOf">The formula that this is a variant of; null where it is none.</param>
public sealed record CardWishes(
    LabelLaw Law, EnergyMethod Method, int ServingSlices, MeasureSystem? Measures, Locale Locale, string Version, Formula? VariantOf);
