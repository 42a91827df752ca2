using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Nutrition;

/// <summary>What is in one portion of a baked formula. Nothing is rounded here; null is what cannot be told because a line of
/// the formula does not state it.</summary>
/// <param name="EnergyKcal">Energy, the ingredients' own figures added up [kcal].</param>
/// <param name="Fat">Fat [g].</param>
/// <param name="SaturatedFat">Saturated fat [g].</param>
/// <param name="Carbohydrate">Carbohydrate by difference, fibre within [g].</param>
/// <param name="Fibre">Fibre [g].</param>
/// <param name="Sugars">Sugars [g].</param>
/// <param name="Polyols">Polyols [g].</param>
/// <param name="Protein">Protein [g].</param>
/// <param name="Sodium">Sodium [g].</param>
/// <param name="NetCarbohydrate">Net carbohydrate by the convention in use [g].</param>
/// <param name="Water">Water after the oven [g].</param>
/// <param name="Mass">Mass after the oven [g].</param>
public sealed record Portion(
    Level EnergyKcal,
    Grams Fat,
    Grams? SaturatedFat,
    Grams Carbohydrate,
    Grams? Fibre,
    Grams? Sugars,
    Grams Polyols,
    Grams Protein,
    Grams? Sodium,
    Grams? NetCarbohydrate,
    Grams Water,
    Grams Mass)
{
    /// <summary>The whole loaf. Bake loss is water: nutrients stay, mass goes.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="netCarbohydrate">The balance whose convention counts net carbohydrate.</param>
    public static Portion WholeLoaf(Formula formula, NetCarbohydrate netCarbohydrate)
    {
        double Sum(Func<FactSheet, double> perGram) =>
            formula.Lines.Sum(line => perGram(line.Ingredient.Typical) * line.Grams.Value);

        Grams Of(Fact fact) => new(Sum(facts => facts[fact]));

        Grams? IfStated(Fact fact) => formula.States(fact) ? Of(fact) : null;

        var lost = formula.BatterMass - formula.BakedMass;
        return new Portion(
            new Level(Sum(facts => facts[Fact.Energy])),
            Of(Fact.Fat),
            IfStated(Fact.SaturatedFat),
            Of(Fact.Carbohydrate),
            IfStated(Fact.Fibre),
            IfStated(Fact.Sugars),
            Of(Fact.Polyols),
            Of(Fact.Protein),
            IfStated(Fact.Sodium),
            netCarbohydrate.Reads.All(formula.States) ? new Grams(Sum(facts => netCarbohydrate.Numerator(facts).Value)) : null,
            new Grams(Math.Max(0, (Of(Fact.Water) - lost).Value)),
            formula.BakedMass);
    }

    /// <summary>A share of this portion, as one slice of a loaf.</summary>
    /// <param name="share">0 or more.</param>
    public Portion Share(double share) => new(
        new Level(EnergyKcal.Value * share),
        Fat * share,
        SaturatedFat * share,
        Carbohydrate * share,
        Fibre * share,
        Sugars * share,
        Polyols * share,
        Protein * share,
        Sodium * share,
        NetCarbohydrate * share,
        Water * share,
        Mass * share);
}
