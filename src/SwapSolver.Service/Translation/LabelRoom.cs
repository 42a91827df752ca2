using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Service.Translation;

/// <summary>What labels are written with.</summary>
/// <param name="Laws">The laws.</param>
/// <param name="Phrases">The words of cards.</param>
internal sealed record LabelRoom(LabelLaws Laws, Phrases Phrases);
