using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Loaves;

/// <summary>Invented loaves that tests bake with. None of them is in <c>data/formulas/</c>.</summary>
public static class Loaf
{
    /// <summary>A walnut loaf with psyllium and cream of tartar.</summary>
    public static Formula Walnut { get; } = Bowl.Of(
        ("walnut-meal", 200), ("flaxseed-ground", 40), ("psyllium-husk-powder", 18), ("water", 220), ("butter", 20),
        ("baking-soda", 5), ("cream-of-tartar", 11), ("salt", 5)).WithEggs(4);

    /// <summary>A sunflower bread with pumpkin seed and vinegar.</summary>
    public static Formula Sunflower { get; } = Bowl.Of(
        ("sunflower-seed-flour", 180), ("pumpkin-seed-flour", 60), ("psyllium-husk", 30), ("water", 230),
        ("vinegar-distilled", 20), ("baking-soda", 4), ("cream-of-tartar", 5.6), ("salt", 6)).WithEggs(3);

    /// <summary>Muffins with baking powder and almond drink.</summary>
    public static Formula Muffins { get; } = Bowl.Of(
        ("almond-flour-blanched", 220), ("butter", 80), ("erythritol", 90), ("almond-drink-unsweetened", 120),
        ("baking-powder-double-acting", 9), ("xanthan-gum", 2), ("salt", 2)).WithEggs(3);

    /// <summary>A cocoa cake with sour cream.</summary>
    public static Formula CocoaCake { get; } = Bowl.Of(
        ("almond-flour-blanched", 180), ("coconut-flour", 15), ("cocoa-natural", 40), ("butter", 100), ("sour-cream", 100),
        ("erythritol", 140), ("water", 40), ("baking-soda", 2.5), ("cream-of-tartar", 3), ("salt", 2)).WithEggs(4);

    /// <summary>A yeast loaf with a spoon of honey for the yeast.</summary>
    public static Formula Yeast { get; } = Bowl.Of(
        ("almond-meal", 150), ("wheat-gluten", 40), ("flaxseed-ground", 40), ("psyllium-husk-powder", 12), ("water", 210),
        ("honey", 8), ("yeast-active-dry", 7), ("olive-oil", 15), ("salt", 5)).WithEggs(1);

    /// <summary>Every loaf, with its name.</summary>
    public static IReadOnlyList<(string Name, Formula Formula)> All { get; } =
    [
        (nameof(Walnut), Walnut), (nameof(Sunflower), Sunflower), (nameof(Muffins), Muffins), (nameof(CocoaCake), CocoaCake),
        (nameof(Yeast), Yeast),
    ];
}
