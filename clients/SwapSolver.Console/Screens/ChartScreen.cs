using System.Globalization;
using Spectre.Console;
using SwapSolver.V1;
using Verdict = SwapSolver.V1.CheckSwapResponse.Types.Verdict;

namespace SwapSolver.Console.Screens;

/// <summary>A chart of swaps, a table for each ingredient of the formula.</summary>
internal static class ChartScreen
{
    /// <summary>Shows the pairs, those that balance first.</summary>
    public static void Show(Screen screen, IReadOnlyList<ChartSwapsResponse> pairs)
    {
        foreach (var group in pairs.GroupBy(pair => pair.Ingredient))
        {
            screen.Part($"In place of {group.First().DisplayName}");
            var table = new PlainTable().Words("what").Marks("balances").Figures("dose").Figures("of 100").Words("why");
            foreach (var pair in group.OrderBy(pair => pair.Verdict))
            {
                table.Row(
                    Style.Plain,
                    pair.Replacement.Length == 0 ? "nothing" : pair.ReplacementDisplayName,
                    Words(pair.Verdict),
                    pair is { HasDoseGrams: true, Replacement.Length: > 0 } ? $"{Amount.Grams(pair.DoseGrams)} g" : "",
                    (pair.ChanceOfBalance * 100).ToString("0", CultureInfo.InvariantCulture),
                    string.Join(' ', pair.Cautions.Prepend(pair.Reason)));
            }

            screen.Table(table);
        }

        screen.Gap();
        screen.Sentence("of 100: kitchens in which every band holds, as ingredients vary. Judged by the facts of the ingredients; check the label of every packet, and bake a trial first.");
        if (pairs[^1].Pairs > pairs.Count)
        {
            screen.Warning($"{pairs.Count} of {pairs[^1].Pairs} pairs were judged.");
        }
    }

    private static string Words(Verdict verdict) => verdict switch
    {
        Verdict.Balances => "yes",
        Verdict.BalancesWithRepair => "with repair",
        Verdict.DoesNotBalance => "no",
        _ => "",
    };
}
