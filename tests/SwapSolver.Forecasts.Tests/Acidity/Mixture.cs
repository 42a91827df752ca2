using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Data.Acids;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Forecasts.Tests;

/// <summary>Solutions that reference tables write as <c>potassium=0.05;citric=0.05</c>.</summary>
internal static class Mixture
{
    /// <summary>The shipped chemistry of leavening.</summary>
    public static readonly LeaveningChemistry Chemistry =
        AcidFiles.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder), TestKitchen.Bakehouse.Pantry);

    /// <summary>Acids of standard solutions that no baker uses; pKa as in the handbooks of the standards, from memory.</summary>
    private static readonly Dictionary<string, Dissociation> OfTheLaboratory = new()
    {
        ["phthalic"] = Acid("phthalic", 2.950, 5.408),
        ["oxalic"] = Acid("oxalic", 1.25, 4.266),
    };

    /// <summary>What is in a text, in mol/kg.</summary>
    public static Dictionary<string, double> Parts(string composition) => composition
        .Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        .Select(part => part.Split('='))
        .ToDictionary(part => part[0], part => double.Parse(part[1], CultureInfo.InvariantCulture));

    /// <summary>The solution of a row: its composition, and what stands over it.</summary>
    public static Solution Of(ReferenceRow row)
    {
        var parts = Parts(row["composition"]);
        return row["over"] switch
        {
            "closed" => Of(parts),
            "bowl" => Of(parts) with { CarbonDioxide = InBowl(parts.GetValueOrDefault("carbonic")) },
            var pressure => Of(parts, double.Parse(pressure, CultureInfo.InvariantCulture)),
        };
    }

    /// <summary>A solution of such parts.</summary>
    /// <param name="parts">Names and mol/kg.</param>
    /// <param name="carbonDioxideAtm">Pressure of carbon dioxide that is held [atm]; null in a closed vessel.</param>
    public static Solution Of(IReadOnlyDictionary<string, double> parts, double? carbonDioxideAtm = null)
    {
        var carbonic = Chemistry.Dissociations["carbonic"];
        return new Solution(
            Chemistry.Constants,
            [
                .. parts.Where(part => !Chemistry.Ions.ContainsKey(part.Key) && part.Key != carbonic.Id)
                    .Select(part => new Solute(OfTheLaboratory.GetValueOrDefault(part.Key) ?? Chemistry.Dissociations[part.Key], part.Value)),
            ],
            [.. parts.Where(part => Chemistry.Ions.ContainsKey(part.Key)).Select(part => new FreeIon(Chemistry.Ions[part.Key], part.Value))],
            carbonDioxideAtm is { } held
                ? new CarbonDioxideAbove(carbonic, double.PositiveInfinity, held, 0)
                : new CarbonDioxideAbove(carbonic, parts.GetValueOrDefault(carbonic.Id), double.PositiveInfinity, 0));
    }

    /// <summary>Carbon dioxide that shares itself out with the air of a mixed batter, at sea level.</summary>
    private static CarbonDioxideAbove InBowl(double total) => new(
        Chemistry.Dissociations["carbonic"],
        total,
        1,
        ForecastKitchen.Acidity.Practice.AirBeatenInLitresPerKgWater.Range.Typical * GasLaw.AmountIn(Pascals.Atmosphere).Value / 1000);

    private static Dissociation Acid(string id, params ReadOnlySpan<double> pkas)
    {
        var steps = ImmutableArray.CreateBuilder<Figure>();
        foreach (var pka in pkas)
        {
            steps.Add(new Figure(new Range(pka, pka, pka), "memory", Mark.Memory, null));
        }

        return new Dissociation(id, id, 0, pkas.Length, steps.ToImmutable(), []);
    }
}
