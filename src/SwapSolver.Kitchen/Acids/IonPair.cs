using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Acids;

/// <summary>That an ion keeps company with a form of a dissolved acid and so draws further protons out of it.</summary>
/// <param name="Ion">The ion.</param>
/// <param name="ProtonsGiven">The form: how many protons the acid has given away.</param>
/// <param name="LogConstant">Decimal logarithm of the constant of association at 25 °C, without other salt [kg/mol].</param>
public sealed record IonPair(Ion Ion, int ProtonsGiven, Figure LogConstant);
