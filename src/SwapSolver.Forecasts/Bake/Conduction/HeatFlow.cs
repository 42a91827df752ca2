namespace SwapSolver.Forecasts;

/// <summary>
/// Heat in a loaf, step by step: conduction between its cells, transfer at its skin, and water that boils off where a cell
/// would pass the boiling point. What boiled does not come back. Finite volumes, explicit, at the longest stable step.
/// </summary>
internal sealed class HeatFlow
{
    /// <summary>Share of the longest stable step that is taken [1], and the longest step of all [s].</summary>
    private const double OfStable = 0.9, LongestStep = 120;

    /// <summary>Most of a cell that the front passes in one step, and the least crust that lies before it [1, of the cell].</summary>
    private const double FrontStep = 0.05;

    private readonly Crumb crumb;
    private readonly double[] volume, celsius, water, outward, inward, heat, gain, give, warming;
    private readonly bool[] isFront;
    private readonly AxisCell[] axis;
    private readonly WallRows walls;
    private readonly Skin skin;
    private readonly SkinBody body;

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
        (outward, inward, heat) = (new double[volume.Length], new double[volume.Length], new double[volume.Length]);
        (gain, give, warming, isFront) = (new double[volume.Length], new double[volume.Length], new double[volume.Length], new bool[volume.Length]);
        walls = new WallRows(solid.Walls);
        axis = [.. solid.Axis];
        skin = new Skin(solid, start);
        body = new SkinBody(celsius, water, outward, crumb.Boiling, crumb.CrustWaterDensity);
    }

    /// <summary>Heat taken in through the skin since the start [J]; negative where more was given off.</summary>
    public double HeatTaken { get; private set; }

    /// <summary>Water boiled off since the start [kg].</summary>
    public double Boiled { get; private set; }

    /// <summary>Water that dried off the skin before it boiled, since the start [kg].</summary>
    public double Dried { get; private set; }

    /// <summary>Heat that water took along since the start, above water at 0 °C [J].</summary>
    public double SteamHeat { get; private set; }

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
    public double Coldest => -Peak(-1);

    /// <summary>The warmest of the axis [°C].</summary>
    public double Warmest => Peak(1);

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
            // Between the cells the core is drawn by a curve, which may dip as the first heat comes near; a core does not.
            var now = rising ? Math.Max(before, core()) : Math.Min(before, core());
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

    /// <summary>The greatest of the axis, with this sign; between three cells it is that of the parabola through them.</summary>
    private double Peak(int sign)
    {
        var at = 0;
        for (var place = 1; place < axis.Length; place++)
        {
            at = sign * celsius[axis[place].Cell] > sign * celsius[axis[at].Cell] ? place : at;
        }

        var peak = sign * axis[at].On(celsius);
        if (at == 0 || at == axis.Length - 1)
        {
            return peak;
        }

        var (below, here, above) = (sign * celsius[axis[at - 1].Cell], sign * celsius[axis[at].Cell], sign * celsius[axis[at + 1].Cell]);
        var bend = below - (2 * here) + above;
        return bend < 0 ? peak - ((above - below) * (above - below) / (8 * bend)) : peak;
    }

    private double Step(Surroundings surroundings, double seconds, double most = LongestStep)
    {
        Weigh();
        Array.Clear(gain);
        Array.Clear(give);
        walls.Conduct(celsius, water, outward, inward, gain, give);
        var taken = skin.Transfer(surroundings, seconds, body, gain, give);
        var step = Math.Min(Math.Min(most, LongestStep), OfStable * LongestStable());
        HeatTaken += taken * step;
        if (surroundings.Drying.Most > 0)
        {
            var (gone, heatGone) = skin.Dry(step, surroundings.Drying.Most, body, volume, crumb.HeatOfWater);
            Dried += gone;
            SteamHeat += heatGone;
        }

        Warm(step);
        return step;
    }

    /// <summary>
    /// Resistivity and heat capacity of every cell, on the side of the skin and on that of the core. In a cell that boils the
    /// front stands as deep as the cell is dry, and is as hot as water boils: from outward heat comes through that much crust,
    /// inward there is the rest of the cell. Elsewhere its temperature is that of its middle.
    /// </summary>
    private void Weigh()
    {
        var (crust, wetDensity, crustDensity) = (1 / crumb.CrustConductivity, crumb.WaterDensity, crumb.CrustWaterDensity);
        var toDry = wetDensity > 0 ? 1 / (wetDensity - crustDensity) : 0;
        for (var cell = 0; cell < celsius.Length; cell++)
        {
            var isDry = wetDensity > 0 && water[cell] <= crustDensity;
            var (conductivity, capacity) = crumb.At(celsius[cell], water[cell]);
            var wet = 1 / conductivity;
            var dried = (wetDensity - water[cell]) * toDry;
            isFront[cell] = !isDry && wetDensity > 0 && celsius[cell] >= crumb.Boiling;
            // The resistivity is that of half a cell: a front at the far wall has two halves of crust before it.
            (outward[cell], inward[cell]) = isDry ? (crust, crust)
                : isFront[cell] ? (2 * Math.Max(FrontStep, dried) * crust, 2 * (1 - dried) * wet)
                : (wet + (dried * ((2 * crust) - wet)), wet);
            heat[cell] = capacity;
            warming[cell] = 1 / (volume[cell] * capacity);
        }
    }

    /// <summary>
    /// The longest step in which no cell gives more than it has over its neighbours [s]. A cell that boils stays as warm as it
    /// is; there the front must not run ahead of the crust that it leaves behind.
    /// </summary>
    private double LongestStable()
    {
        var (quickest, longest) = (0.0, double.PositiveInfinity);
        var front = FrontStep * (crumb.WaterDensity - crumb.CrustWaterDensity) * crumb.Latent;
        for (var cell = 0; cell < celsius.Length; cell++)
        {
            if (isFront[cell] && gain[cell] >= 0)
            {
                longest = Math.Min(longest, volume[cell] * front / gain[cell]);
            }
            else
            {
                quickest = Math.Max(quickest, give[cell] * warming[cell]);
            }
        }

        return Math.Min(longest, 1 / quickest);
    }

    private void Warm(double step)
    {
        var (boiling, latent, kept) = (crumb.Boiling, crumb.Latent, crumb.CrustWaterDensity);
        var boiled = 0.0;
        for (var cell = 0; cell < celsius.Length; cell++)
        {
            var now = celsius[cell] + (gain[cell] * step * warming[cell]);
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
        SteamHeat += boiled * crumb.SteamEnthalpy;
    }
}
