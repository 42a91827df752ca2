using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Nutrition;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Service.Translation;

/// <summary>Writes nutrition in the contract's words.</summary>
internal static class NutritionWriter
{
    private const double Milligrams = 1000;

    private const double HundredGrams = 100;

    /// <summary>Nutrition of a formula by slice, by 100 g and by loaf.</summary>
    public static V1.Nutrition Write(Formula formula, NetCarbohydrate netCarbohydrate, string energyMethod)
    {
        var loaf = Portion.WholeLoaf(formula, netCarbohydrate);
        return new V1.Nutrition
        {
            PerSlice = Write(loaf.Share(1.0 / formula.Slices)),
            Per100G = Write(loaf.Share(HundredGrams / formula.BakedMass.Value)),
            PerLoaf = Write(loaf),
            NetCarbsConvention = netCarbohydrate.Convention.Name,
            EnergyMethod = energyMethod,
        };
    }

    private static V1.NutritionFacts Write(Portion portion)
    {
        var written = new V1.NutritionFacts
        {
            EnergyKcal = portion.EnergyKcal.Value,
            FatG = portion.Fat.Value,
            CarbohydrateG = portion.Carbohydrate.Value,
            PolyolsG = portion.Polyols.Value,
            ProteinG = portion.Protein.Value,
            WaterG = portion.Water.Value,
            MassG = portion.Mass.Value,
        };
        IfKnown(portion.SaturatedFat, grams => written.SaturatedFatG = grams);
        IfKnown(portion.Fibre, grams => written.FibreG = grams);
        IfKnown(portion.Sugars, grams => written.SugarsG = grams);
        IfKnown(portion.Sodium, grams => written.SodiumMg = grams * Milligrams);
        IfKnown(portion.NetCarbohydrate, grams => written.NetCarbsG = grams);
        return written;
    }

    private static void IfKnown(Grams? figure, Action<double> write)
    {
        if (figure is { } known)
        {
            write(known.Value);
        }
    }
}
