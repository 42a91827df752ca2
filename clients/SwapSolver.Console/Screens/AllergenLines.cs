using Google.Protobuf.Collections;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>Allergens by list, each with the ingredients that bring it.</summary>
internal static class AllergenLines
{
    /// <summary>Shows both lists and what may be there by cross-contact. Their caution stands among the cautions.</summary>
    public static void Show(Screen screen, AllergenStatement? allergens)
    {
        if (allergens is null)
        {
            return;
        }

        screen.Part("Allergens");
        screen.Item($"Contains (US list): {Words(allergens.Us)}; (EU list): {Words(allergens.Eu)}.");
        if (allergens.MayContain.Count > 0)
        {
            screen.Item($"May contain by cross-contact: {Words(allergens.MayContain)}.");
        }

        if (allergens.NotStated.Count > 0)
        {
            screen.Item($"Never stated, which is not none: {IngredientName.List(allergens.NotStated)}. Read the packet.");
        }
    }

    private static string Words(RepeatedField<AllergenSource> sources) => sources.Count == 0
        ? "none known"
        : string.Join(", ", sources.Select(source => source.Ingredients.Count == 0
            ? IngredientName.Of(source.Allergen)
            : $"{IngredientName.Of(source.Allergen)} ({IngredientName.List(source.Ingredients)})"));
}
