using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Lines;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Translation;
using SwapSolver.V1;
using Domain = SwapSolver.Kitchen.Formulas;
using Fact = SwapSolver.Kitchen.Ingredients.Fact;
using SoakTest = SwapSolver.Kitchen.Foods.SoakTest;

namespace SwapSolver.Service.Stored;

/// <summary>Reads what was measured, and names what cannot be: a slip of the pen would else be learned from.</summary>
internal sealed class TrialReader(Pantry pantry, IngredientLines texts, Bake bake, MeasuringRules measuring, ProblemList problems)
{
    private const double LeastBatter = -5, MostBatter = 60, MostHeight = 500, MostWidth = 1000, MostMass = 100_000;

    private const int MostNote = 2000, MostPhoto = 300, MostSoaks = 20, MostCrumb = 5;

    /// <summary>A tray bake that was weighed with a scale of whole grams may seem to gain one.</summary>
    private const double ScaleGrams = 1;

    /// <summary>What was really baked; where problems were added neither it nor the trial is to be used.</summary>
    /// <param name="trial">The trial.</param>
    /// <param name="formula">The revision that was baked.</param>
    public Domain.Formula? Read(Trial trial, Formula formula)
    {
        var baked = new FormulaReader(pantry, texts, problems).Read(TrialDocument.BakedFormula(trial, formula), "trial").Formula;
        if (problems.Count > 0)
        {
            return null;
        }

        if (!SaysSomething(trial))
        {
            problems.Add("trial", string.Empty, "nothing was measured", "give at least one measure, as minutes and coreCelsius, or a note");
        }

        Masses(trial, baked);
        Oven(trial);
        Between("batterCelsius", trial.HasBatterCelsius, trial.BatterCelsius, LeastBatter, MostBatter, "°C of a batter");
        Between("heightMm", trial.HasHeightMm, trial.HeightMm, 1, MostHeight, "mm of a loaf's height");
        Between("widthMm", trial.HasWidthMm, trial.WidthMm, 1, MostWidth, "mm of a loaf's width");
        Crumb(trial.Crumb);
        Text("note", trial.Note, MostNote);
        Text("photo", trial.Photo, MostPhoto);
        Soaks(trial);
        return baked;
    }

    private static bool SaysSomething(Trial trial) =>
        trial.HasBatterMassG || trial.HasBatterCelsius || trial.HasMinutes || trial.HasCoreCelsius || trial.HasBakedMassG || trial.HasHeightMm || trial.HasWidthMm
        || trial.HasCooledMassG || trial.Crumb is not null || trial.Note.Length > 0 || trial.Photo.Length > 0 || trial.Soaks.Count > 0;

    private void Masses(Trial trial, Domain.Formula baked)
    {
        var lines = baked.BatterMass.Value;
        Between("batterMassG", trial.HasBatterMassG, trial.BatterMassG, lines / 2, Math.Min(MostMass, 2 * lines), "g of a batter whose lines weigh so much");
        var batter = trial.HasBatterMassG ? trial.BatterMassG : lines;
        var water = baked.Lines.Sum(line => line.Grams.Value * (line.Ingredient.RangeOf(Fact.Water)?.High ?? 100) / 100) * batter / lines;
        Between("bakedMassG", trial.HasBakedMassG, trial.BakedMassG, Math.Max(1, batter - water), batter + ScaleGrams, "g of this loaf: an oven takes water away and nothing else");
        Between("cooledMassG", trial.HasCooledMassG, trial.CooledMassG, Math.Max(1, batter - water), (trial.HasBakedMassG ? trial.BakedMassG : batter) + ScaleGrams, "g of this loaf when it has cooled");
    }

    private void Oven(Trial trial)
    {
        var reader = new BakeReader(bake, problems);
        var before = problems.Count;
        var altitude = reader.Altitude(trial.HasAltitudeMetres ? trial.AltitudeMetres : null);
        if (trial.HasMinutes)
        {
            reader.Baked(trial.Minutes, "trial.minutes");
        }

        if (trial.HasCoreCelsius && problems.Count == before)
        {
            Between("coreCelsius", true, trial.CoreCelsius, 40, bake.HighestCore(altitude).Value, "°C of a core: above it the water of a crumb has boiled off at this height");
        }
    }

    private void Crumb(Crumb? crumb)
    {
        Between("crumb.moistness", crumb is { HasMoistness: true }, crumb?.Moistness ?? 0, 1, MostCrumb, "on the scale of 1 (dry) to 5 (gummy)");
        Between("crumb.openness", crumb is { HasOpenness: true }, crumb?.Openness ?? 0, 1, MostCrumb, "on the scale of 1 (dense) to 5 (with caves)");
        Between("crumb.firmness", crumb is { HasFirmness: true }, crumb?.Firmness ?? 0, 1, MostCrumb, "on the scale of 1 (falls apart) to 5 (rubbery)");
    }

    private void Soaks(Trial trial)
    {
        if (trial.Soaks.Count > MostSoaks)
        {
            problems.Add("trial.soaks", trial.Soaks.Count, "soaking tests are too many", $"give at most {MostSoaks}");
            return;
        }

        for (var index = 0; index < trial.Soaks.Count; index++)
        {
            var (soak, path) = (trial.Soaks[index], $"trial.soaks[{index}]");
            if (new LineReader(pantry, problems).IngredientOf(soak.Ingredient, $"{path}.ingredient") is not { } ingredient)
            {
                continue;
            }

            if (!SoakTest.Reads(ingredient))
            {
                problems.Add($"{path}.ingredient", soak.Ingredient, "binds no water by its nature, or dissolves: the test says nothing of it", "test a flour, meal, fibre or gel");
            }

            if (!(soak.DryG >= measuring.LeastDry.Value && soak.DryG <= MostMass))
            {
                problems.Add($"{path}.dryG", soak.DryG, "is not enough, or too much, to weigh well", $"weigh {measuring.LeastDry.Value:0.#} g or more before the soak");
            }
            else if (!(soak.DrainedG >= soak.DryG && (soak.DrainedG - soak.DryG) / soak.DryG <= measuring.MostHeld.Value))
            {
                problems.Add($"{path}.drainedG", soak.DrainedG, $"cannot be left of {soak.DryG} g", $"weigh again after draining: nothing gets lighter by soaking or holds more than {measuring.MostHeld.Value:0} times its weight");
            }
        }
    }

    private void Between(string field, bool isGiven, double value, double least, double most, string what)
    {
        if (isGiven && !(value >= least && value <= most))
        {
            problems.Add($"trial.{field}", value, "cannot be", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"give {least:0.##} to {most:0.##} {what}; measure again, or leave it away"));
        }
    }

    private void Text(string field, string text, int most)
    {
        if (text.Length > most || text.Contains('\0', StringComparison.Ordinal))
        {
            problems.Add($"trial.{field}", text.Replace("\0", string.Empty, StringComparison.Ordinal), "cannot be kept", $"give at most {most} letters");
        }
    }
}
