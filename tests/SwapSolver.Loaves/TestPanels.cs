using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Data.Foods;
using SwapSolver.Data.Panels;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Panels;

namespace SwapSolver.Loaves;

/// <summary>The shipped rules of panels, and panels written as a packet prints them.</summary>
public static class TestPanels
{
    private static readonly Lazy<PanelRules> ReadRules = new(() => PanelRulesFile.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder)));

    private static readonly Lazy<FoodRules> ReadFoods = new(() => FoodRulesFile.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder)));

    /// <summary>The rules of panels.</summary>
    public static PanelRules Rules => ReadRules.Value;

    /// <summary>What is taken of a food that states only its composition.</summary>
    public static FoodRules Foods => ReadFoods.Value;

    /// <summary>A printed figure that must be one.</summary>
    public static PrintedFigure Figure(string text) =>
        PrintedFigure.TryRead(text, out var figure) ? figure : throw new ArgumentException($"'{text}' is no figure", nameof(text));

    /// <summary>A US panel: <c>Us("30", "energyKcal 170, fat 15, carbohydrate 6")</c>.</summary>
    public static NutritionPanel Us(string serving, string figures) => Of(PanelBasis.UnitedStates, serving, figures);

    /// <summary>A European panel.</summary>
    public static NutritionPanel Eu(string serving, string figures) => Of(PanelBasis.EuropeanUnion, serving, figures);

    /// <summary>A panel of lines by their keys, each with its figure behind it, parted by commas.</summary>
    public static NutritionPanel Of(PanelBasis basis, string serving, string figures) => new(
        basis,
        Figure(serving),
        figures.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(text => text.Split(' ', 2, StringSplitOptions.TrimEntries))
            .ToImmutableDictionary(parts => Enum.Parse<PanelLine>(parts[0], ignoreCase: true), parts => Figure(parts[1])));
}
