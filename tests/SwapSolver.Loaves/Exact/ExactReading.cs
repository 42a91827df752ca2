using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Loaves.Exact;

/// <summary>The readings of a formula in fractions, written anew from what each balance's page says of its sums, so that a
/// slip of the rules' own arithmetic would be seen.</summary>
/// <param name="Formula">The formula as printed.</param>
/// <param name="Reference">The formula that bases are counted on.</param>
public sealed record ExactReading(Formula Formula, Formula Reference)
{
    /// <summary>Carbon dioxide of a gram of hexose: two molecules of 180.156 g/mol each [mmol/g].</summary>
    private static readonly Rational CarbonDioxidePerHexose = Rational.Of(2_000_000, 180_156);

    /// <summary>The reading by a balance; null where its basis is nothing.</summary>
    /// <exception cref="ArgumentException">A rule that is not written here.</exception>
    public Rational? By(Balance balance) => balance switch
    {
        Hydration => Ratio(Sum(Fact.Water), Sum(Fact.WaterBound)),
        Leavening => Ratio(Sum(Fact.Acid), Sum(Fact.Base)),
        Gas => Ratio(GasOfSoda + GasOfYeast, Batter(Formula)),
        SettingProtein => Ratio(Sum(facts => Of(facts, Fact.Protein) * Of(facts, Fact.SettingShareOfProtein)), Batter(Formula)),
        Gel => Ratio(Sum(Fact.GelStrength), Batter(Formula)),
        Richness => Ratio(Sum(Fact.Fat), Batter(Formula)),
        Salt => Ratio(Sum(Fact.Sodium) * Rational.Of(5, 2), Batter(Formula)),
        NetCarbohydrate rule => Ratio(Sum(facts => NetCarbohydrateOf(rule.Convention, facts)), Reference.Slices),
        RoleMass rule => Ratio(Mass(Formula, line => line.Ingredient.Role == rule.Role), Mass(Reference, line => line.Ingredient.Role == rule.Role)),
        BatterMass => Ratio(Batter(Formula), Batter(Reference)),
        LeftOut rule => Ratio(Mass(Formula, line => rule.Carries(line.Ingredient)), Batter(Formula)),
        _ => throw new ArgumentException($"the rule of '{balance.Id}' is not written in fractions", nameof(balance)),
    };

    private Rational GasOfSoda => Rational.Min(Sum(Fact.Base), (Sum(Fact.Acid) + Sum(Fact.Base)) / 2);

    private Rational GasOfYeast => Rational.Min(Sum(Fact.YeastGas), Sum(Fact.Fermentable) * CarbonDioxidePerHexose);

    /// <summary>The grams that a line prints.</summary>
    public static Rational Grams(Line line) => Rational.Of((decimal)line.Grams.Value);

    private static Rational? Ratio(Rational top, Rational bottom) => bottom == 0 ? null : top / bottom;

    private static Rational Of(FactSheet facts, Fact fact) => Rational.Of(facts[fact]);

    private static Rational Batter(Formula formula) => Mass(formula, _ => true);

    private static Rational Mass(Formula formula, Func<Line, bool> counts) =>
        formula.Lines.Where(counts).Aggregate((Rational)0, (sum, line) => sum + Grams(line));

    private static Rational NetCarbohydrateOf(NetCarbohydrateConvention convention, FactSheet facts)
    {
        var erythritol = Of(facts, Fact.Erythritol);
        return Rational.Max(
            0,
            Of(facts, Fact.Carbohydrate) - Of(facts, Fact.Fibre) - Of(facts, Fact.OrganicAcid)
            - (Rational.Of(convention.ErythritolTakenOff.Value) / 100 * erythritol)
            - (Rational.Of(convention.OtherPolyolsTakenOff.Value) / 100 * (Of(facts, Fact.Polyols) - erythritol))
            - (Rational.Of(convention.AlluloseTakenOff.Value) / 100 * Of(facts, Fact.Allulose)));
    }

    private Rational Sum(Fact fact) => Sum(facts => Of(facts, fact));

    private Rational Sum(Func<FactSheet, Rational> perGram) =>
        Formula.Lines.Aggregate((Rational)0, (sum, line) => sum + (perGram(line.Ingredient.Typical) * Grams(line)));
}
