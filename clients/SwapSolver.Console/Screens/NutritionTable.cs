using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>Nutrition by slice, by 100 g and by loaf.</summary>
internal static class NutritionTable
{
    private static readonly (string Name, string Format, Func<NutritionFacts, double?> Read)[] Rows =
    [
        ("mass, baked [g]", "0", facts => facts.MassG),
        ("energy [kcal]", "0", facts => facts.EnergyKcal),
        ("net carbs [g]", "0.0", facts => facts.HasNetCarbsG ? facts.NetCarbsG : null),
        ("carbohydrate, fibre included [g]", "0.0", facts => facts.CarbohydrateG),
        ("fibre [g]", "0.0", facts => facts.HasFibreG ? facts.FibreG : null),
        ("sugars [g]", "0.0", facts => facts.HasSugarsG ? facts.SugarsG : null),
        ("polyols [g]", "0.0", facts => facts.PolyolsG),
        ("fat [g]", "0.0", facts => facts.FatG),
        ("saturated fat [g]", "0.0", facts => facts.HasSaturatedFatG ? facts.SaturatedFatG : null),
        ("protein [g]", "0.0", facts => facts.ProteinG),
        ("sodium [mg]", "0", facts => facts.HasSodiumMg ? facts.SodiumMg : null),
        ("water [g]", "0.0", facts => facts.WaterG),
    ];

    private const string NotKnown = "not known";

    /// <summary>Shows the portions that the service sent.</summary>
    public static void Show(Screen screen, Nutrition? nutrition)
    {
        if (nutrition is null)
        {
            return;
        }

        var table = new PlainTable().Words("");
        var portions = new List<NutritionFacts>();
        Add("slice", nutrition.PerSlice);
        Add("100 g", nutrition.Per100G);
        Add("loaf", nutrition.PerLoaf);
        foreach (var (name, format, read) in Rows)
        {
            table.Row([name, .. portions.Select(facts => read(facts)?.ToString(format, CultureInfo.InvariantCulture) ?? NotKnown)]);
        }

        screen.Part("Nutrition, not rounded by any label law");
        screen.Table(table);
        CountingLine.Show(screen, nutrition);

        void Add(string name, NutritionFacts? facts)
        {
            if (facts is not null)
            {
                table.Figures(name);
                portions.Add(facts);
            }
        }
    }
}
