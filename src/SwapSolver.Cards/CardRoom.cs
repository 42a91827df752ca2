using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Cards;

/// <summary>What cards are printed with.</summary>
/// <param name="Laws">The laws on labels.</param>
/// <param name="Phrases">The words of cards.</param>
/// <param name="Measures">What is known of measures.</param>
/// <param name="Dials">How ovens are set.</param>
/// <param name="Locales">How numbers are written.</param>
public sealed record CardRoom(LabelLaws Laws, Phrases Phrases, MeasureTables Measures, OvenDials Dials, Locales Locales);
