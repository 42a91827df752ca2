using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Panels;

/// <summary>Which fact of an ingredient a line of a panel speaks of.</summary>
public static class PanelFacts
{
    /// <summary>The facts that are a food's composition, in the order of <see cref="Fact.All"/>.</summary>
    public static readonly ImmutableArray<Fact> Composition =
    [
        Fact.Water, Fact.Protein, Fact.Fat, Fact.SaturatedFat, Fact.Carbohydrate, Fact.Fibre, Fact.Sugars, Fact.Polyols,
        Fact.Erythritol, Fact.Allulose, Fact.Starch, Fact.OrganicAcid, Fact.Ash, Fact.Alcohol, Fact.Other, Fact.Energy, Fact.Sodium,
        Fact.Potassium, Fact.Calcium, Fact.Iron,
    ];

    /// <summary>The fact of a line: salt speaks of sodium, and kilojoules of energy.</summary>
    public static Fact FactOf(PanelLine line) => line switch
    {
        PanelLine.EnergyKcal or PanelLine.EnergyKilojoules => Fact.Energy,
        PanelLine.Fat => Fact.Fat,
        PanelLine.SaturatedFat => Fact.SaturatedFat,
        PanelLine.Carbohydrate => Fact.Carbohydrate,
        PanelLine.Fibre => Fact.Fibre,
        PanelLine.Sugars => Fact.Sugars,
        PanelLine.Polyols => Fact.Polyols,
        PanelLine.Erythritol => Fact.Erythritol,
        PanelLine.Allulose => Fact.Allulose,
        PanelLine.Starch => Fact.Starch,
        PanelLine.Protein => Fact.Protein,
        PanelLine.Salt or PanelLine.Sodium => Fact.Sodium,
        PanelLine.Potassium => Fact.Potassium,
        PanelLine.Calcium => Fact.Calcium,
        PanelLine.Iron => Fact.Iron,
        _ => throw new ArgumentOutOfRangeException(nameof(line), line, "no such line"),
    };
}
