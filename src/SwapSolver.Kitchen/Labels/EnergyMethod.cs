using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Labels;

/// <summary>How the energy of a label is counted.</summary>
/// <param name="Id">Its id, as <c>eu-general</c>.</param>
/// <param name="Name">The method in words.</param>
/// <param name="KcalPerGram">Factors [kcal/g] by fact; null where it counts in kilojoules only. Both null: the ingredients'
/// own figures are added up.</param>
/// <param name="KilojoulesPerGram">Factors [kJ/g] by fact; null where it counts in kilocalories only.</param>
public sealed record EnergyMethod(
    string Id, string Name, ImmutableDictionary<Fact, PerGram>? KcalPerGram, ImmutableDictionary<Fact, PerGram>? KilojoulesPerGram)
{
    /// <summary>What is counted by a factor of its own where the method has one, and as carbohydrate where it has none.</summary>
    private static readonly ImmutableArray<Fact> PartsOfCarbohydrate = [Fact.Fibre, Fact.Polyols, Fact.Allulose, Fact.OrganicAcid];

    /// <summary>Energy of what is in a loaf [kcal]; null where it cannot be told.</summary>
    public PanelAmount? Kcal(LoafContents loaf) =>
        KcalPerGram is { } factors ? Sum(loaf, factors)
        : KilojoulesPerGram is null ? loaf.Of(Fact.Energy)
        : null;

    /// <summary>Energy of what is in a loaf [kJ]; null where it cannot be told.</summary>
    public PanelAmount? Kilojoules(LoafContents loaf) => KilojoulesPerGram is { } factors ? Sum(loaf, factors) : null;

    private static PanelAmount? Sum(LoafContents loaf, ImmutableDictionary<Fact, PerGram> factors)
    {
        double? energy = 0;
        double? carbohydrate = loaf.Of(Fact.Carbohydrate)?.Value;
        foreach (var part in PartsOfCarbohydrate.Where(factors.ContainsKey))
        {
            carbohydrate -= loaf.Of(part)?.Value;
        }

        foreach (var (fact, factor) in factors)
        {
            var grams = fact == Fact.Carbohydrate ? carbohydrate
                : fact == Fact.Polyols && factors.ContainsKey(Fact.Erythritol) ? loaf.Of(Fact.Polyols)?.Value - loaf.Of(Fact.Erythritol)?.Value
                : loaf.Of(fact)?.Value;
            energy += factor.Value * grams;
        }

        return energy is { } known ? new PanelAmount(Math.Max(0, known)) : null;
    }
}
