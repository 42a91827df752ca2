using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Labels;

/// <summary>The label of a formula by one law.</summary>
/// <param name="Law">The law.</param>
/// <param name="Method">How its energy is counted.</param>
/// <param name="ServingSlices">Slices in a serving.</param>
/// <param name="ServingMass">Mass of a serving as baked [g].</param>
/// <param name="Figures">Its lines in the order of the law.</param>
public sealed record LabelSheet(
    LabelLaw Law, EnergyMethod Method, int ServingSlices, Grams ServingMass, ImmutableArray<LabelFigure> Figures)
{
    /// <summary>Grams of salt that a gram of sodium counts as, by Regulation (EU) No 1169/2011, Annex I.</summary>
    private const double SaltPerSodium = 2.5;

    private const double Milligrams = 1000;

    /// <summary>Required lines of which nothing is known here: an analysis or the packets must say.</summary>
    public IEnumerable<LawLine> NotKnown => Figures.Where(figure => figure.InLoaf is null).Select(figure => figure.Line);

    /// <summary>The label of a formula.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="law">The law.</param>
    /// <param name="method">How energy is counted; null for the law's usual way.</param>
    /// <param name="servingSlices">Slices in a serving, 1 or more.</param>
    public static LabelSheet Of(Formula formula, LabelLaw law, EnergyMethod? method = null, int servingSlices = 1)
    {
        var counted = method ?? law.EnergyMethods[0];
        var loaf = new LoafContents(formula);
        var shares = PortionShares.Of(formula, servingSlices);
        return new LabelSheet(
            law,
            counted,
            servingSlices,
            formula.BakedMass * shares.Serving.Share,
            [
                .. law.Lines
                    .Select(line => new LabelFigure(line, AmountOf(line.Nutrient, loaf, law, counted), shares))
                    .Where(figure => figure.Line.IsRequired || figure.InLoaf is { Value: > 0 }),
            ]);
    }

    /// <summary>How much of a nutrient is in a loaf, in the unit of its line; null where it is not known.</summary>
    public static PanelAmount? AmountOf(Nutrient nutrient, LoafContents loaf, LabelLaw law, EnergyMethod method) => nutrient switch
    {
        Nutrient.EnergyKcal => method.Kcal(loaf),
        Nutrient.EnergyKilojoules => method.Kilojoules(loaf),
        Nutrient.Fat => loaf.Of(Fact.Fat),
        Nutrient.SaturatedFat => loaf.Of(Fact.SaturatedFat),
        Nutrient.Sodium => Times(loaf.Of(Fact.Sodium), Milligrams),
        Nutrient.Salt => Times(loaf.Of(Fact.Sodium), SaltPerSodium),
        Nutrient.Carbohydrate => CarbohydrateOf(loaf, law)?.Amount,
        Nutrient.Fibre => loaf.Of(Fact.Fibre),
        Nutrient.Sugars => loaf.Of(Fact.Sugars),
        Nutrient.Polyols => loaf.Of(Fact.Polyols),
        Nutrient.Starch => loaf.Of(Fact.Starch),
        Nutrient.Protein => loaf.Of(Fact.Protein),
        Nutrient.Calcium => Times(loaf.Of(Fact.Calcium), Milligrams),
        Nutrient.Iron => Times(loaf.Of(Fact.Iron), Milligrams),
        Nutrient.Potassium => Times(loaf.Of(Fact.Potassium), Milligrams),
        // No table that is read here states these; nothing is made up for them.
        Nutrient.TransFat or Nutrient.Cholesterol or Nutrient.AddedSugars or Nutrient.VitaminD => null,
        _ => throw new ArgumentOutOfRangeException(nameof(nutrient), nutrient, "no such nutrient"),
    };

    private static CountedCarbohydrate? CarbohydrateOf(LoafContents loaf, LabelLaw law)
    {
        var counted = loaf.Carbohydrate;
        foreach (var part in law.TakenOffCarbohydrate)
        {
            counted = loaf.Of(part) is { } amount ? counted?.Less(part, amount) : null;
        }

        return counted;
    }

    private static PanelAmount? Times(PanelAmount? amount, double factor) => amount is { } known ? new PanelAmount(known.Value * factor) : null;
}
