using System.Globalization;
using SwapSolver.V1;

namespace SwapSolver.Console.Screens;

/// <summary>What was baked and measured.</summary>
internal static class TrialScreen
{
    /// <summary>Says that a trial was written down, and what it comes to.</summary>
    public static void Show(Screen screen, Trial trial)
    {
        screen.Sentence($"Written down as {trial.Name}: {Words(trial)}.");
        screen.Sentence("What it taught: swapsolver trial learned");
    }

    /// <summary>Shows trials, newest first.</summary>
    public static void ShowAll(Screen screen, ListTrialsResponse response)
    {
        if (response.Trials.Count == 0)
        {
            screen.Sentence("No trial of this formula was written down yet.");
        }

        foreach (var trial in response.Trials)
        {
            screen.Item($"{trial.Name[(trial.Name.LastIndexOf('/') + 1)..]}  {MomentText.Of(trial.CreateTime)}  revision {trial.Revision}: {Words(trial)}");
        }
    }

    private static string Words(Trial trial)
    {
        var parts = new List<string>();
        void Add(bool isGiven, double figure, string words)
        {
            if (isGiven)
            {
                parts.Add(string.Format(CultureInfo.InvariantCulture, words, figure));
            }
        }

        Add(trial.HasBatterMassG, trial.BatterMassG, "batter {0:0.#} g");
        Add(trial.HasBatterCelsius, trial.BatterCelsius, "at {0:0.#} °C");
        Add(trial.HasMinutes, trial.Minutes, "{0:0.#} minutes");
        Add(trial.Foretold?.HasMinutes == true, trial.Foretold?.Minutes ?? 0, "({0:0} foretold)");
        Add(trial.HasCoreCelsius, trial.CoreCelsius, "core {0:0.#} °C");
        Add(trial.HasBakedMassG, trial.BakedMassG, "baked {0:0.#} g");
        Add(trial.HasCooledMassG, trial.CooledMassG, "cooled {0:0.#} g");
        Add(trial.HasHeightMm, trial.HeightMm, "{0:0.#} mm high");
        Add(trial.HasWidthMm, trial.WidthMm, "{0:0.#} mm wide");
        if (trial.Crumb is { } crumb)
        {
            Add(crumb.HasMoistness, crumb.Moistness, "moistness {0:0} of 5");
            Add(crumb.HasOpenness, crumb.Openness, "openness {0:0} of 5");
            Add(crumb.HasFirmness, crumb.Firmness, "firmness {0:0} of 5");
        }

        parts.AddRange(trial.Soaks.Select(soak => string.Create(CultureInfo.InvariantCulture, $"{IngredientName.Id(soak.Ingredient)} soaked {soak.DryG:0.#} to {soak.DrainedG:0.#} g")));
        if (trial.Note.Length > 0)
        {
            parts.Add(trial.Note);
        }

        return string.Join(", ", parts);
    }
}
