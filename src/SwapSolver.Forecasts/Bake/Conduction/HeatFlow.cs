namespace SwapSolver.Forecasts;

/// <summary>
/// Heat in a loaf, step by step: conduction between its cells, transfer at its skin, and water that boils off where a cell
/// would pass the boiling point. What boiled does not come back. Finite volumes, explicit, at the longest stable step.
/// </summary>
internal sealed class HeatFlow
{
    /// <summary>Stefan and Boltzmann's constant [W/(m2 K4)], by definition of the SI.</summary>
    private const double StefanBoltzmann = 5.670374419e-8;

    private const double ZeroCelsius = 273.15;

    /// <summary>Share of the longest stable step that is taken [1], and the longest step of all [s].</summary>
    private const double OfStable = 0.9, LongestStep = 120;

    private readonly Crumb crumb;
    private readonly double[] volume, celsius, water, outward, inward, heat, gain;
    private readonly int[] one, other, axis, skinCell;
    private readonly double[] way, skinArea, skinDepth, skinCelsius;
    private readonly Face[] skinFace;
    private readonly double exchange;
    private double fastest;

    /// <summary>Sets a loaf of one temperature.</summary>
    /// <param name="solid">Its cells.</param>
    /// <param name="crumb">What it is made of.</param>
    /// <param name="start">Its temperature [°C].</param>
    public HeatFlow(Solid solid, Crumb crumb, double start)
    {
        this.crumb = crumb;
        volume = [.. solid.Volumes];
        celsius = [.. volume.Select(_ => start)];
        water = [.. volume.Select(_ => crumb.WaterDensity)];
        (outward, inward, heat, gain) = (new double[volume.Length], new double[volume.Length], new double[volume.Length], new double[volume.Length]);
        one = [.. solid.Walls.Select(wall => wall.One)];
        other = [.. solid.Walls.Select(wall => wall.Other)];
        way = [.. solid.Walls.Select(wall => wall.Way)];
        axis = [.. solid.Axis];
        skinCell = [.. solid.Skins.Select(skin => skin.Cell)];
        skinArea = [.. solid.Skins.Select(skin => skin.Area)];
        skinDepth = [.. solid.Skins.Select(skin => skin.Depth)];
        skinFace = [.. solid.Skins.Select(skin => skin.Face)];
        skinCelsius = [.. skinCell.Select(_ => start)];
        exchange = solid.LargestExchange();
    }

    /// <summary>Heat taken in through the skin since the start [J]; negative where more was given off.</summary>
    public double HeatTaken { get; private set; }

    /// <summary>Water boiled off since the start [kg].</summary>
    public double Boiled { get; private set; }

    /// <summary>Volume of the body [m3].</summary>
    public double Volume => volume.Sum();

    /// <summary>Water within [kg].</summary>
    public double Water => Enumerable.Range(0, volume.Length).Sum(cell => volume[cell] * water[cell]);

    /// <summary>Heat within, above 0 °C [J].</summary>
    public double Enthalpy => Enumerable.Range(0, volume.Length).Sum(cell => volume[cell] * crumb.EnthalpyAt(celsius[cell], water[cell]));

    /// <summary>Temperature of each cell [°C].</summary>
    public IReadOnlyList<double> Celsius => celsius;

    /// <summary>Water of each cell [kg/m3].</summary>
    public IReadOnlyList<double> WaterDensities => water;

    /// <summary>The coldest of the axis [°C].</summary>
    public double Coldest => axis.Min(cell => celsius[cell]);

    /// <summary>The warmest of the axis [°C].</summary>
    public double Warmest => axis.Max(cell => celsius[cell]);

    /// <summary>Lets heat flow until the core reaches a temperature.</summary>
    /// <param name="surroundings">Where the loaf is.</param>
    /// <param name="core">The core.</param>
    /// <param name="target">The temperature [°C]; from below where the core is colder, else from above.</param>
    /// <param name="longest">Longest time that is waited [s].</param>
    /// <param name="readings">Takes the core at every step.</param>
    /// <returns>The time [s]; null where it is not reached.</returns>
    public double? Until(Surroundings surroundings, Func<double> core, double target, double longest, List<CoreReading>? readings = null)
    {
        var (seconds, before) = (0.0, core());
        var rising = before < target;
        readings?.Add(new CoreReading(0, before));
        while (seconds < longest)
        {
            var step = Step(surroundings, seconds);
            seconds += step;
            var now = core();
            readings?.Add(new CoreReading(seconds, now));
            if (rising ? now >= target : now <= target)
            {
                return now == before ? seconds : seconds - (step * (now - target) / (now - before));
            }

            before = now;
        }

        return null;
    }

    /// <summary>Lets heat flow for a time [s].</summary>
    public void For(Surroundings surroundings, double time)
    {
        for (var seconds = 0.0; seconds < time;)
        {
            seconds += Step(surroundings, seconds, time - seconds);
        }
    }

    private double Step(Surroundings surroundings, double seconds, double most = LongestStep)
    {
        Weigh();
        var step = Math.Min(Math.Min(most, LongestStep), OfStable / (exchange * fastest));
        Array.Clear(gain);
        Conduct();
        var taken = Transfer(surroundings, seconds);
        HeatTaken += taken * step;
        Warm(step);
        return step;
    }

    /// <summary>
    /// Resistivity and heat capacity of every cell, and the fastest that heat can spread in any. A cell that dries holds the
    /// front, as deep as the cell is dry: from outward heat comes through that much crust, inward there is crumb.
    /// </summary>
    private void Weigh()
    {
        var most = 0.0;
        var (crust, wetDensity, crustDensity) = (1 / crumb.CrustConductivity, crumb.WaterDensity, crumb.CrustWaterDensity);
        var toDry = wetDensity > 0 ? 1 / (wetDensity - crustDensity) : 0;
        for (var cell = 0; cell < celsius.Length; cell++)
        {
            var isDry = wetDensity > 0 && water[cell] <= crustDensity;
            // Until it is dry its water is held to warm and cool it: it stands at the boiling point, where that makes no difference.
            var (conductivity, capacity) = crumb.At(celsius[cell], isDry ? crustDensity : wetDensity);
            var wet = 1 / conductivity;
            var dried = (wetDensity - water[cell]) * toDry;
            // The resistivity is that of half a cell: a front at the far wall has two halves of crust before it.
            outward[cell] = isDry ? crust : wet + (dried * ((2 * crust) - wet));
            inward[cell] = isDry ? crust : wet;
            heat[cell] = capacity;
            most = Math.Max(most, 1 / inward[cell]);
        }

        fastest = 0;
        for (var cell = 0; cell < heat.Length; cell++)
        {
            // A wall conducts at most twice as well as the worse of its two sides, and no better than the better.
            fastest = Math.Max(fastest, Math.Min(most, 2 / Math.Min(inward[cell], outward[cell])) / heat[cell]);
        }
    }

    private void Conduct()
    {
        for (var wall = 0; wall < way.Length; wall++)
        {
            var (a, b) = (one[wall], other[wall]);
            // The drier of two neighbours lies outward.
            var resistivity = (water[b] < water[a] ? outward[a] : inward[a]) + (water[a] < water[b] ? outward[b] : inward[b]);
            var flow = 2 * way[wall] * (celsius[b] - celsius[a]) / resistivity;
            gain[a] += flow;
            gain[b] -= flow;
        }
    }

    private double Transfer(Surroundings surroundings, double seconds)
    {
        var outside = surroundings.At(seconds);
        var outsideKelvin = outside + ZeroCelsius;
        var withSteam = 1 / (1 - surroundings.EvaporatedShare);
        var (top, side, under) = (surroundings.Emissivities(Face.Top), surroundings.Emissivities(Face.Side), surroundings.Emissivities(Face.Under));
        var taken = 0.0;
        for (var skin = 0; skin < skinCell.Length; skin++)
        {
            var cell = skinCell[skin];
            var emissivity = skinFace[skin] switch { Face.Top => top, Face.Side => side, _ => under };
            // The skin of the step before: it moves by less than a kelvin in one.
            var skinKelvin = skinCelsius[skin] + ZeroCelsius;
            var radiation = emissivity * StefanBoltzmann * ((skinKelvin * skinKelvin) + (outsideKelvin * outsideKelvin)) * (skinKelvin + outsideKelvin);
            var convection = surroundings.ConvectionPower > 0
                ? surroundings.Convection * Math.Pow(Math.Abs(skinCelsius[skin] - outside), surroundings.ConvectionPower)
                : surroundings.Convection;
            var transfer = (radiation + convection) * withSteam;
            var within = skinDepth[skin] * outward[cell];
            var flux = transfer <= 0 ? 0 : (outside - celsius[cell]) / ((1 / transfer) + within);
            skinCelsius[skin] = celsius[cell] + (flux * within);
            gain[cell] += flux * skinArea[skin];
            taken += flux * skinArea[skin];
        }

        return taken;
    }

    private void Warm(double step)
    {
        var (boiling, latent, kept) = (crumb.Boiling, crumb.Latent, crumb.CrustWaterDensity);
        var boiled = 0.0;
        for (var cell = 0; cell < celsius.Length; cell++)
        {
            var now = celsius[cell] + (gain[cell] * step / (volume[cell] * heat[cell]));
            var free = water[cell] - kept;
            if (now > boiling && free > 0)
            {
                var surplus = (now - boiling) * heat[cell];
                var gone = Math.Min(free, surplus / latent);
                water[cell] -= gone;
                boiled += gone * volume[cell];
                now = boiling;
                if (gone == free)
                {
                    now += (surplus - (gone * latent)) / crumb.At(boiling, kept).Heat;
                }
            }

            celsius[cell] = now;
        }

        Boiled += boiled;
    }
}
