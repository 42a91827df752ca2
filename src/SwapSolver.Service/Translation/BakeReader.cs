using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Service.Faults;
using Domain = SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Service.Translation;

/// <summary>Reads how something is baked, and names what cannot be.</summary>
internal sealed class BakeReader(Bake bake, ProblemList problems)
{
    private const double LeastCore = 40, MostCore = 110;

    private const double MostMinutes = 1440;

    /// <summary>Height of the kitchen above the sea.</summary>
    /// <param name="metres">The height [m]; null at the sea.</param>
    public Metres Altitude(double? metres)
    {
        var (lowest, highest) = (StandardAtmosphere.Lowest.Value, StandardAtmosphere.Highest.Value);
        if (metres is { } given && !(given >= lowest && given <= highest))
        {
            problems.Add("altitudeMetres", given, "is no height of a kitchen", $"give {lowest} to {highest} m above the sea");
            return new Metres(0);
        }

        return new Metres(metres ?? 0);
    }

    /// <summary>A core temperature that is asked for; null where none is.</summary>
    public Celsius? Core(double? celsius, string path)
    {
        if (celsius is { } given && !(given is >= LeastCore and <= MostCore))
        {
            problems.Add(path, given, "is no core temperature of a bake", $"give {LeastCore} to {MostCore} °C, as 96");
        }

        return celsius is { } core ? new Celsius(core) : null;
    }

    /// <summary>How long something baked.</summary>
    public Minutes Baked(double minutes, string path)
    {
        if (!(minutes is > 0 and <= MostMinutes))
        {
            problems.Add(path, minutes, "is no time of a bake", $"give more than 0, at most {MostMinutes} minutes");
        }

        return new Minutes(minutes);
    }

    /// <summary>A known bake; null where none is given or where it cannot be.</summary>
    /// <param name="known">The bake.</param>
    /// <param name="formula">Its formula; null where it could not be read.</param>
    /// <param name="altitude">Height of the kitchen.</param>
    public KnownBake? Known(V1.KnownBake? known, Domain.Formula? formula, Metres altitude)
    {
        if (known is null)
        {
            return null;
        }

        var baked = Baked(known.Minutes, "anchor.minutes");
        var core = Core(known.CoreCelsius, "anchor.coreCelsius")!.Value;
        var highest = bake.HighestCore(altitude);
        if (core.Value > highest.Value && core.Value <= MostCore)
        {
            problems.Add(
                "anchor.coreCelsius", core.Value, "was not reached: water boils below it at this height", $"give at most {highest.Value:0.0} °C, or the height of this kitchen");
        }

        return formula is null ? null : new KnownBake(formula, baked, core);
    }

    /// <summary>Names every ingredient whose water is not known: how it bakes hangs on that.</summary>
    public void RequireWater(Domain.Formula? formula, string path)
    {
        foreach (var ingredient in formula?.Lines.Select(line => line.Ingredient).Distinct().Where(ingredient => ingredient.RangeOf(Fact.Water) is null) ?? [])
        {
            problems.Add(
                path, ResourceName.Of(ingredient), $"cannot be forecast with: {Fact.Water.Id} is not known", "add it to the table or packet that the ingredient came from, or name another ingredient");
        }
    }
}
