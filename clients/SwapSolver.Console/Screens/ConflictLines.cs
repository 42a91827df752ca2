using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The wishes that fight each other, a sentence each.</summary>
internal static class ConflictLines
{
    /// <summary>Shows the wishes; nothing where none is named.</summary>
    public static void Show(Screen screen, IReadOnlyCollection<Conflict> conflict)
    {
        if (conflict.Count == 0)
        {
            return;
        }

        screen.Part(conflict.Count == 1 ? "What stands in the way" : "What stands in the way, together");
        foreach (var wish in conflict)
        {
            screen.Item($"{Words(wish)}");
        }
    }

    private static string Words(Conflict wish) => wish switch
    {
        { Words.Length: > 0 } => wish.Words,
        { HasRelaxedValue: true } => $"{wish.Wish}: {Write(wish.RelaxedValue)} would do if only this gave way.",
        _ => wish.Wish,
    };

    private static string Write(double figure) => figure.ToString("0.##", CultureInfo.InvariantCulture);
}
