using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Solving.Tests;

/// <summary>The readings of a formula by the test's own arithmetic: grams times the typical figures of the pantry, and
/// molar masses for what leavens. It asks no balance, no fact sheet and no solver.</summary>
/// <param name="formula">The formula as printed.</param>
internal sealed class Tally(Formula formula)
{
    /// <summary>Hexose [g/mol]; each gives two molecules of gas.</summary>
    private const double Hexose = 180.156;

    /// <summary>Batter [g].</summary>
    public double Batter => formula.Lines.Sum(line => line.Grams.Value);

    /// <summary>Water by water bound; NaN where nothing binds any.</summary>
    public double Hydration => Hundredths(Fact.Water) / Sum(Fact.WaterBound);

    /// <summary>Acid [mmol].</summary>
    public double Acid => formula.Lines.Sum(line =>
        line.Grams.Value * (Molecules.Acid(line.Ingredient.Id) ?? Figure(line.Ingredient, Fact.Acid)));

    /// <summary>Base [mmol].</summary>
    public double Base => formula.Lines.Sum(line =>
        line.Grams.Value * (Molecules.Base(line.Ingredient.Id) ?? Figure(line.Ingredient, Fact.Base)));

    /// <summary>Acid by base; NaN or endless where there is no base.</summary>
    public double Leavening => Acid / Base;

    /// <summary>Gas [mmol/g batter].</summary>
    public double Gas =>
        (Math.Min(Base, (Acid + Base) / 2) + Math.Min(Sum(Fact.YeastGas), Hundredths(Fact.Fermentable) * 2000 / Hexose)) / Batter;

    /// <summary>Protein that sets [g/g batter].</summary>
    public double SettingProtein => formula.Lines.Sum(line => line.Grams.Value
        * Figure(line.Ingredient, Fact.Protein) / 100 * Figure(line.Ingredient, Fact.SettingShareOfProtein)) / Batter;

    /// <summary>Psyllium powder that all gels stand for [g/g batter].</summary>
    public double Gel => Sum(Fact.GelStrength) / Batter;

    /// <summary>Fat [g/g batter].</summary>
    public double Richness => Hundredths(Fact.Fat) / Batter;

    /// <summary>Net carbohydrate [g/slice]: carbohydrate less fibre, organic acid, erythritol, allulose and half of the
    /// other polyols, and no ingredient below nothing.</summary>
    public double NetCarbs => formula.Lines.Sum(line =>
    {
        double Of(Fact fact) => Figure(line.Ingredient, fact);
        var net = Of(Fact.Carbohydrate) - Of(Fact.Fibre) - Of(Fact.OrganicAcid) - Of(Fact.Erythritol) - Of(Fact.Allulose)
            - ((Of(Fact.Polyols) - Of(Fact.Erythritol)) / 2);
        return line.Grams.Value / 100 * Math.Max(0, net);
    }) / formula.Slices;

    /// <summary>Mass of a role [g].</summary>
    public double Role(Role role) => formula.Lines.Where(line => line.Ingredient.Role == role).Sum(line => line.Grams.Value);

    private double Sum(Fact fact) => formula.Lines.Sum(line => line.Grams.Value * Figure(line.Ingredient, fact));

    private double Hundredths(Fact fact) => Sum(fact) / 100;

    private static double Figure(Ingredient ingredient, Fact fact) => ingredient.RangeOf(fact)!.Value.Typical;
}
