using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Acids;

/// <summary>Something dissolved that gives its protons step by step, as tartaric acid does.</summary>
/// <param name="Id">Its id, as <c>tartaric</c>.</param>
/// <param name="Name">Plain name.</param>
/// <param name="ChargeWithAllProtons">Charge while it still has all its protons [elementary charges].</param>
/// <param name="ProtonsToSoda">How many of them it has given at the soda end point.</param>
/// <param name="Pkas">Exponent of each step at 25 °C and without other salt, in rising order [pKa].</param>
/// <param name="Pairs">Ions that keep company with one of its forms; empty for most.</param>
public sealed record Dissociation(
    string Id,
    string Name,
    int ChargeWithAllProtons,
    int ProtonsToSoda,
    ImmutableArray<Figure> Pkas,
    ImmutableArray<IonPair> Pairs)
{
    /// <summary>Most protons that are reckoned with [1]: ten to the pH, to that power, is still a number at any pH of a kitchen.</summary>
    public const int MostSteps = 12;
}
