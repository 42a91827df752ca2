using SwapSolver.Data.Files;
using SwapSolver.Data.Forecasts;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Forecasts.Tests;

/// <summary>The forecasts of the shipped data.</summary>
internal static class ForecastKitchen
{
    public static readonly Metres SeaLevel = new(0);

    public static readonly RisePractice Practice = ForecastFiles.ReadRise(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder));

    public static readonly Acidity Acidity = new(Mixture.Chemistry, ForecastFiles.ReadAcidity(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder)));

    public static readonly Rise Rise = new(Acidity, Practice, TestKitchen.Bakehouse.Phrases);

    /// <summary>A formula as a forecast reads it.</summary>
    public static Batter Batter(Formula formula) => Forecasts.Batter.Of(formula, Mixture.Chemistry, Draws.Typical);

    /// <summary>pH of batter and crumb at sea level; the formula has water.</summary>
    public static AcidityForecast Ph(this Formula formula) => Acidity.Foretell(formula, Pascals.Atmosphere, Draws.Typical)!;

    /// <summary>The rise of a formula, handled as usual.</summary>
    public static RiseForecast Rises(this Formula formula, Func<RiseConditions, RiseConditions>? but = null) =>
        Rise.Foretell(formula, (but ?? (usual => usual))(RiseConditions.Usual(Practice, SeaLevel)), Draws.Typical);

    /// <summary>Whether a forecast cautions by a sentence.</summary>
    public static bool Says(this RiseForecast forecast, string id) => forecast.Cautions.Any(caution => caution.Id == id);
}
