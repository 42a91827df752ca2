using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Answers;

/// <summary>What one gram of an ingredient adds to a balance, by kitchen; one figure where all kitchens have the same.</summary>
/// <param name="Parts">The sums of each part of the balance, as its own <see cref="Balance.Parts"/>.</param>
/// <param name="Basis">What it is counted on.</param>
internal sealed record SampledCoefficients(ImmutableArray<ImmutableArray<double[]>> Parts, double[] Basis)
{
    /// <summary>Whether it adds nothing in any kitchen.</summary>
    public bool IsNone { get; } = Basis is [0] && Parts.All(sums => sums.All(sum => sum is [0]));

    /// <summary>The coefficients, by the same functions that measure a formula and constrain the solver.</summary>
    public static SampledCoefficients Of(Balance balance, Formula reference, FactSheets sheets, int kitchens) => new(
        [.. balance.Parts.Select(sums => sums.Select(sum => ByKitchen(sum, sheets, kitchens)).ToImmutableArray())],
        ByKitchen(balance.Basis(reference).PerGram, sheets, kitchens));

    private static double[] ByKitchen(Func<FactSheet, PerGram> ofOneGram, FactSheets sheets, int kitchens)
    {
        var first = ofOneGram(sheets.At(0)).Value;
        // Most are the same in all kitchens, and need no room for each.
        double[]? values = null;
        for (var kitchen = 1; kitchen < kitchens; kitchen++)
        {
            var value = ofOneGram(sheets.At(kitchen)).Value;
            if (values is null && !value.Equals(first))
            {
                values = new double[kitchens];
                Array.Fill(values, first, 0, kitchen);
            }

            values?[kitchen] = value;
        }

        return values ?? [first];
    }
}
