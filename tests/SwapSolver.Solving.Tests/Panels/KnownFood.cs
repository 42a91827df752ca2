using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Loaves;

namespace SwapSolver.Solving.Tests.Panels;

/// <summary>A composition that is known, for 100 g, to print panels of. What was not measured is not in it.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Truth">The figures, each in the unit of its fact.</param>
internal sealed record KnownFood(string Name, ImmutableDictionary<Fact, double> Truth)
{
    private static readonly ImmutableArray<PanelLine> Required =
        [PanelLine.Fat, PanelLine.SaturatedFat, PanelLine.Carbohydrate, PanelLine.Sugars, PanelLine.Protein];

    private static readonly ImmutableArray<PanelLine> Optional =
        [PanelLine.Fibre, PanelLine.Polyols, PanelLine.Starch, PanelLine.Potassium, PanelLine.Calcium, PanelLine.Iron];

    /// <summary>Energy by the general factors of labels: 4, 9, 4 and 2, polyols 2.4, erythritol 0, allulose 0.4, organic
    /// acid 3, alcohol 7 (Regulation (EU) No 1169/2011, Annex XIV; allulose by the US guidance of 2020).</summary>
    public double GeneralEnergy => (4 * Of(Fact.Protein)) + (9 * Of(Fact.Fat)) + (4 * Available) + (2 * Of(Fact.Fibre))
        + (2.4 * (Of(Fact.Polyols) - Of(Fact.Erythritol))) + (0.4 * Of(Fact.Allulose)) + (3 * Of(Fact.OrganicAcid))
        + (7 * Of(Fact.Alcohol)) + (3 * Of(Fact.Other));

    private double Available => Math.Max(
        0, Of(Fact.Carbohydrate) - Of(Fact.Fibre) - Of(Fact.Polyols) - Of(Fact.Allulose) - Of(Fact.OrganicAcid));

    private double Of(Fact fact) => Truth.GetValueOrDefault(fact);

    /// <summary>A lawful panel of the food; the chance decides what is printed besides the lines that every law asks for.</summary>
    public NutritionPanel Print(PanelBasis basis, double servingGrams, Random chance)
    {
        var printer = new LabelPrinter(chance);
        var isUs = basis == PanelBasis.UnitedStates;
        var figures = ImmutableDictionary.CreateBuilder<PanelLine, PrintedFigure>();
        void Add(PanelLine line, double per100Grams) =>
            figures[line] = TestPanels.Figure(printer.Print(basis, line, per100Grams * servingGrams / 100));
        foreach (var line in Required.Concat(Optional.Where(_ => chance.Next(100) < 60)))
        {
            if (Truth.TryGetValue(PanelFacts.FactOf(line), out var amount))
            {
                Add(line, line == PanelLine.Carbohydrate && !isUs ? Math.Max(0, amount - Of(Fact.Fibre)) : amount);
            }
        }

        Add(PanelLine.EnergyKcal, Of(Fact.Energy));
        if (!isUs)
        {
            Add(PanelLine.EnergyKilojoules, Of(Fact.Energy) * 4.184);
        }

        Add(isUs ? PanelLine.Sodium : PanelLine.Salt, isUs ? Of(Fact.Sodium) : Of(Fact.Sodium) / 400);
        var serving = isUs ? LabelPrinter.PrintServing(servingGrams) : Math.Round(servingGrams).ToString("0");
        return new NutritionPanel(basis, TestPanels.Figure(serving), figures.ToImmutable());
    }
}
