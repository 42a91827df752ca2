using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>The formula in its new size.</summary>
internal static class ResizeScreen
{
    /// <summary>Shows how much larger the loaf is, then the answers and how the first of them bakes.</summary>
    public static void Show(Screen screen, ResizeFormulaResponse response)
    {
        if (ModelText.Show(screen, response.Answers))
        {
            return;
        }

        LinesRead.Show(screen, response.LinesRead);
        if (response.Factor > 0)
        {
            screen.Sentence($"The batter is {response.Factor:0.##} times the formula's; 'before' below is the formula at that size.");
        }

        AnswersScreen.Show(screen, response.Answers, response.Conflict, response.Nearest);
        if (response.Bake is { } bake)
        {
            ShowBake(screen, bake, [.. response.Answers.SelectMany(answer => answer.Cautions)]);
        }
    }

    private static void ShowBake(Screen screen, BakeChange bake, IReadOnlyCollection<string> said)
    {
        screen.Part("In the oven");
        screen.Item(
            $"{Write(bake.Ratio.Value)} times the minutes of the loaf as it stands ({Write(bake.Ratio.Low)} to {Write(bake.Ratio.High)}), to a core of {bake.CoreTargetCelsius.ToString("0.#", CultureInfo.InvariantCulture)} °C: {BakeScreen.Range(bake.AfterMinutes)} in place of {BakeScreen.Range(bake.BeforeMinutes)}");
        screen.Item($"probe the core from minute {bake.ProbeFromMinute.ToString("0", CultureInfo.InvariantCulture)}");
        if (bake.CoolToSliceMinutes is { } cooling)
        {
            screen.Item($"on a rack, out of its tin, it may be sliced after {BakeScreen.Range(cooling)} minutes");
        }

        TinLines.Show(screen, bake.Fill);
        Cautions.Show(screen, [.. bake.Cautions.Except(said)]);
    }

    private static string Write(double factor) => factor.ToString("0.00", CultureInfo.InvariantCulture);
}
