using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Panels;

/// <summary>What is known of nutrition panels, from <c>data/labels/panel-rounding.json</c>.</summary>
/// <param name="ByBasis">What each law says.</param>
/// <param name="Energy">How energy follows.</param>
/// <param name="Tolerance">How far sums of separate analyses may miss, of 100 g [%].</param>
/// <param name="UsualAsh">Ash of a food of which nothing is known [%].</param>
/// <param name="AshPerMineral">Least ash that a mineral leaves [g/g]: it never stands alone.</param>
/// <param name="SodiumPerSalt">How salt and sodium stand to each other [mg sodium in 1 g of salt].</param>
/// <param name="MostServing">Largest serving that is read [g].</param>
public sealed record PanelRules(
    ImmutableDictionary<PanelBasis, BasisRules> ByBasis,
    EnergyRules Energy,
    Percent Tolerance,
    Percent UsualAsh,
    ImmutableDictionary<Fact, PerGram> AshPerMineral,
    PanelAmount SodiumPerSalt,
    Grams MostServing)
{
    /// <summary>The key of a line in data and requests.</summary>
    public string IdOf(PanelLine line) => ByBasis[PanelBasis.UnitedStates].Words[line].Id;

    /// <summary>What a printed figure may stand for, in the unit of its line.</summary>
    public Range IntervalOf(PanelBasis basis, PanelLine line, PrintedFigure figure) =>
        ByBasis[basis].Rounding[line].IntervalOf(figure);

    /// <summary>What the figures of a panel are for [g].</summary>
    public Range ServingOf(NutritionPanel panel)
    {
        var printed = panel.Serving.Value.Value;
        return panel.IsPerHundredGrams
            ? new Range(printed, printed, printed)
            : ByBasis[panel.Basis].Serving.IntervalOf(panel.Serving);
    }
}
