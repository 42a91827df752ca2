using System.Collections.Immutable;
using SwapSolver.Kitchen.Panels;
using NutritionPanel = SwapSolver.V1.NutritionPanel;

namespace SwapSolver.Service.Translation;

/// <summary>Which field of the contract a line of a panel is.</summary>
internal static class PanelFields
{
    private static readonly ImmutableArray<(PanelLine Line, int Field)> Fields =
    [
        (PanelLine.EnergyKcal, NutritionPanel.EnergyKcalFieldNumber),
        (PanelLine.EnergyKilojoules, NutritionPanel.EnergyKjFieldNumber),
        (PanelLine.Fat, NutritionPanel.FatGFieldNumber),
        (PanelLine.SaturatedFat, NutritionPanel.SaturatedFatGFieldNumber),
        (PanelLine.Carbohydrate, NutritionPanel.CarbohydrateGFieldNumber),
        (PanelLine.Fibre, NutritionPanel.FibreGFieldNumber),
        (PanelLine.Sugars, NutritionPanel.SugarsGFieldNumber),
        (PanelLine.Polyols, NutritionPanel.PolyolsGFieldNumber),
        (PanelLine.Erythritol, NutritionPanel.ErythritolGFieldNumber),
        (PanelLine.Allulose, NutritionPanel.AlluloseGFieldNumber),
        (PanelLine.Starch, NutritionPanel.StarchGFieldNumber),
        (PanelLine.Protein, NutritionPanel.ProteinGFieldNumber),
        (PanelLine.Salt, NutritionPanel.SaltGFieldNumber),
        (PanelLine.Sodium, NutritionPanel.SodiumMgFieldNumber),
        (PanelLine.Potassium, NutritionPanel.PotassiumMgFieldNumber),
        (PanelLine.Calcium, NutritionPanel.CalciumMgFieldNumber),
        (PanelLine.Iron, NutritionPanel.IronMgFieldNumber),
    ];

    /// <summary>Every line.</summary>
    public static IEnumerable<PanelLine> Lines => Fields.Select(pair => pair.Line);

    /// <summary>The printed figures of a panel, by their lines; blank ones are left out.</summary>
    public static ImmutableDictionary<PanelLine, string> Figures(NutritionPanel panel) => Fields
        .Select(pair => KeyValuePair.Create(pair.Line, (string)NutritionPanel.Descriptor.FindFieldByNumber(pair.Field).Accessor.GetValue(panel)))
        .Where(pair => !string.IsNullOrWhiteSpace(pair.Value))
        .ToImmutableDictionary();

    /// <summary>The path of a line in a request.</summary>
    public static string PathOf(PanelLine? line) => $"panel.{Name(line is { } one ? Fields.First(pair => pair.Line == one).Field : NutritionPanel.ServingGFieldNumber)}";

    private static string Name(int field) => NutritionPanel.Descriptor.FindFieldByNumber(field).JsonName;
}
