using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Acids;

/// <summary>One acid for another, or one bicarbonate for another, at equal millimoles to the soda end point.</summary>
public static class Equivalence
{
    /// <summary>Grams of another acid that use up as much soda.</summary>
    /// <param name="dose">Dose of the first acid [g], 0 or more.</param>
    /// <param name="from">Facts of the first.</param>
    /// <param name="to">Facts of the other.</param>
    /// <returns>The dose; null where the other holds no acid.</returns>
    public static EquivalentDose? OfAcid(Grams dose, FactSheet from, FactSheet to) => Of(Fact.Acid, dose, from, to);

    /// <summary>Grams of another bicarbonate that hold as much carbon dioxide.</summary>
    /// <param name="dose">Dose of the first [g], 0 or more.</param>
    /// <param name="from">Facts of the first.</param>
    /// <param name="to">Facts of the other.</param>
    /// <returns>The dose; null where the other holds no base.</returns>
    public static EquivalentDose? OfBase(Grams dose, FactSheet from, FactSheet to) => Of(Fact.Base, dose, from, to);

    private static EquivalentDose? Of(Fact fact, Grams dose, FactSheet from, FactSheet to)
    {
        if (to[fact] == 0)
        {
            return null;
        }

        var equivalents = dose.Value * from[fact];
        var other = equivalents / to[fact];
        var water = (other * to[Fact.Water]) - (dose.Value * from[Fact.Water]);
        return new EquivalentDose(new Grams(other), new Grams(water), new Millimoles(equivalents));
    }
}
