using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Forecasts;

/// <summary>One line of a batter as a forecast reads it.</summary>
/// <param name="Facts">Its facts, as they were drawn.</param>
/// <param name="Grams">Its mass [g], above 0.</param>
/// <param name="Leavener">What is known of it as an acid, a base or a powder; null where it is none.</param>
/// <param name="Buffer">What is known of it as a buffer; null for a leavener, and where the guess is taken.</param>
internal readonly record struct BatterLine(FactSheet Facts, double Grams, Leavener? Leavener, FoodBuffer? Buffer)
{
    /// <summary>Molar masses of sodium and potassium [g/mmol]; iupac-atomic-masses.</summary>
    private const double Sodium = 0.022990, Potassium = 0.039098;

    /// <summary>Its salt, as ions of one charge [mmol/g].</summary>
    public double InertSalt { get; } = (Salt(Facts, Fact.Sodium) / Sodium) + (Salt(Facts, Fact.Potassium) / Potassium);

    /// <summary>Whether it has acid or soda wherever in their ranges these facts stand: most lines have neither, for certain.</summary>
    public bool MayLeaven { get; } = Leavener is not null || MayHave(Fact.Acid, Facts) || MayHave(Fact.Base, Facts);

    /// <summary>A food that does not state its salt adds none: the pH moves by hundredths, and there is a pH to tell.</summary>
    private static double Salt(FactSheet facts, Fact fact) => facts.Ingredient.RangeOf(fact) is null ? 0 : facts[fact];

    private static bool MayHave(Fact fact, FactSheet facts) =>
        facts[fact] != 0 || FactSheet.FactAt(facts.Ingredient, fact, 0) != 0 || FactSheet.FactAt(facts.Ingredient, fact, 1) != 0;
}
