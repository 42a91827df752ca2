using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What the time of a bake would be with one thing done otherwise.</summary>
internal static class BakeVariationTable
{
    /// <summary>Shows them; nothing where there are none.</summary>
    public static void Show(Screen screen, IReadOnlyList<BakeVariation> variations)
    {
        if (variations.Count == 0)
        {
            return;
        }

        screen.Part("Done otherwise, one thing at a time");
        var table = new PlainTable().Words("what").Figures("times").Figures("minutes");
        foreach (var variation in variations)
        {
            table.Row(variation.DisplayName, $"{Share(variation.Ratio.Value)} ({Share(variation.Ratio.Low)} to {Share(variation.Ratio.High)})", BakeScreen.Range(variation.Minutes));
        }

        screen.Table(table);
    }

    private static string Share(double share) => share.ToString("0.00", CultureInfo.InvariantCulture);
}
