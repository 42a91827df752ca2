using System.Numerics;

namespace SwapSolver.Forecasts;

/// <summary>
/// Heat in a loaf, step by step: conduction between its cells, transfer at its skin, and water that boils off where a cell
/// would pass the boiling point. What boiled does not come back. Finite volumes, explicit, at the longest stable step. Several cells are
/// worked out at once, so there are a few behind the last that hold nothing.
/// </summary>
internal sealed class HeatFlow
{
    /// <summary>Share of the longest stable step that is taken [1], and the longest step of all [s].</summary>
    private const double OfStable = 0.9, LongestStep = 120;

    /// <summary>Most of a cell that the front passes in one step, and the least crust that lies before it [1, of the cell].</summary>
    private const double FrontStep = 0.05;

    private readonly Crumb crumb;
    private readonly int count;
    private readonly double[] volume, celsius, water, conductivity, outward, inward, heat, heatRise, gain, give, warming, flow, exchange;
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
        count = solid.Volumes.Count;
        var room = (count + Vector<double>.Count - 1) / Vector<double>.Count * Vector<double>.Count;
        double[] Filled(double value) => [.. Enumerable.Repeat(value, room)];
        (celsius, conductivity, heat, heatRise) = (Filled(start), Filled(1), Filled(1), new double[room]);
        volume = [.. solid.Volumes, .. Enumerable.Repeat(1.0, room - count)];
        water = new double[room];
        water.AsSpan(0, count).Fill(crumb.WaterDensity);
        (outward, inward, gain, give, warming) = (new double[room], new double[room], new double[room], new double[room], new double[room]);
        walls = solid.Rows;
        (flow, exchange) = (new double[walls.Longest], new double[walls.Longest]);
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
    public double Volume => volume.Take(count).Sum();

    /// <summary>Water within [kg].</summary>
    public double Water => Enumerable.Range(0, count).Sum(cell => volume[cell] * water[cell]);

    /// <summary>Heat within, above 0 °C [J].</summary>
    public double Enthalpy => Enumerable.Range(0, count).Sum(cell => volume[cell] * crumb.EnthalpyAt(celsius[cell], water[cell]));

    /// <summary>Temperature of each cell [°C].</summary>
    public IReadOnlyList<double> Celsius => new ArraySegment<double>(celsius, 0, count);

    /// <summary>Water of each cell [kg/m3].</summary>
    public IReadOnlyList<double> WaterDensities => new ArraySegment<double>(water, 0, count);

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
        walls.Conduct(celsius, water, outward, inward, gain, give, flow, exchange);
        var taken = skin.Transfer(surroundings, seconds, body, gain, give);
        var step = Math.Min(Math.Min(most, LongestStep), OfStable * LongestStable());
        HeatTaken += taken * step;
        Warm(step);
        if (surroundings.Drying.Most > 0)
        {
            // What dries off was warmed with the rest, so it goes as warm as the rest is now.
            var (gone, heatGone) = skin.Dry(step, surroundings.Drying.Most, body, volume, crumb.HeatOfWater);
            Dried += gone;
            SteamHeat += heatGone;
        }

        return step;
    }

    /// <summary>
    /// Resistivity and heat capacity of every cell, on the side of the skin and on that of the core. In a cell that boils the
    /// front stands as deep as the cell is dry, and is as hot as water boils: from outward heat comes through that much crust,
    /// inward there is the rest of the cell. Elsewhere its temperature is that of its middle.
    /// </summary>
    private void Weigh()
    {
        var (temperatures, waters) = (celsius, water);
        for (var cell = 0; cell < count; cell++)
        {
            (conductivity[cell], heat[cell], heatRise[cell]) = crumb.At(temperatures[cell], waters[cell]);
        }

        var (crust, twoCrusts, one, two) = (new Vector<double>(1 / crumb.CrustConductivity), new Vector<double>(2 / crumb.CrustConductivity), Vector<double>.One, new Vector<double>(2));
        var (wetDensity, least) = (new Vector<double>(crumb.WaterDensity), new Vector<double>(FrontStep));
        var toDry = new Vector<double>(crumb.WaterDensity > 0 ? 1 / (crumb.WaterDensity - crumb.CrustWaterDensity) : 0);
        for (var at = 0; at < celsius.Length; at += Vector<double>.Count)
        {
            var (here, wet) = (new Vector<double>(water, at), one / new Vector<double>(conductivity, at));
            var dried = (wetDensity - here) * toDry;
            var (isDry, isFront) = (IsDry(here), IsFront(at));
            // The resistivity is that of half a cell: a front at the far wall has two halves of crust before it.
            var fromSkin = Vector.ConditionalSelect(isFront, two * Vector.Max(least, dried) * crust, wet + (dried * (twoCrusts - wet)));
            var fromCore = Vector.ConditionalSelect(isFront, two * (one - dried) * wet, wet);
            Vector.ConditionalSelect(isDry, crust, fromSkin).CopyTo(outward, at);
            Vector.ConditionalSelect(isDry, crust, fromCore).CopyTo(inward, at);
            (one / (new Vector<double>(volume, at) * new Vector<double>(heat, at))).CopyTo(warming, at);
        }
    }

    /// <summary>Which of some cells are crust.</summary>
    private Vector<long> IsDry(Vector<double> here) =>
        crumb.WaterDensity > 0 ? Vector.LessThanOrEqual(here, new Vector<double>(crumb.CrustWaterDensity)) : Vector<long>.Zero;

    /// <summary>Which of the cells from one on boil.</summary>
    private Vector<long> IsFront(int at) => crumb.WaterDensity > 0
        ? Vector.AndNot(Vector.GreaterThanOrEqual(new Vector<double>(celsius, at), new Vector<double>(crumb.Boiling)), IsDry(new Vector<double>(water, at)))
        : Vector<long>.Zero;

    /// <summary>
    /// The longest step in which no cell gives more than it has over its neighbours [s]. A cell that boils stays as warm as it
    /// is; there the front must not run ahead of the crust that it leaves behind.
    /// </summary>
    private double LongestStable()
    {
        var (quickest, longest) = (Vector<double>.Zero, new Vector<double>(double.PositiveInfinity));
        var front = new Vector<double>(FrontStep * (crumb.WaterDensity - crumb.CrustWaterDensity) * crumb.Latent);
        for (var at = 0; at < celsius.Length; at += Vector<double>.Count)
        {
            var gains = new Vector<double>(gain, at);
            var boils = Vector.BitwiseAnd(IsFront(at), Vector.GreaterThanOrEqual(gains, Vector<double>.Zero));
            quickest = Vector.Max(quickest, Vector.ConditionalSelect(boils, Vector<double>.Zero, new Vector<double>(give, at) * new Vector<double>(warming, at)));
            longest = Vector.ConditionalSelect(boils, Vector.Min(longest, new Vector<double>(volume, at) * front / gains), longest);
        }

        var step = double.PositiveInfinity;
        for (var lane = 0; lane < Vector<double>.Count; lane++)
        {
            step = Math.Min(step, Math.Min(longest[lane], 1 / quickest[lane]));
        }

        return step;
    }

    private void Warm(double step)
    {
        var (boiling, steps, half) = (new Vector<double>(crumb.Boiling), new Vector<double>(step), new Vector<double>(0.5));
        for (var at = 0; at < celsius.Length; at += Vector<double>.Count)
        {
            var (before, first) = (new Vector<double>(celsius, at), new Vector<double>(gain, at) * steps * new Vector<double>(warming, at));
            // Warmer, it takes more heat for the next kelvin: what the capacity of the start would warm is too much by that.
            var now = before + (first * (Vector<double>.One - (first * half * new Vector<double>(heatRise, at) / new Vector<double>(heat, at))));
            if (Vector.GreaterThanAny(now, boiling))
            {
                for (var lane = 0; lane < Vector<double>.Count; lane++)
                {
                    Settle(at + lane, now[lane]);
                }
            }
            else
            {
                now.CopyTo(celsius, at);
            }
        }
    }

    /// <summary>Where a cell would be warmer than its water boils, some of that water goes instead.</summary>
    private void Settle(int cell, double now)
    {
        var (boiling, latent, kept) = (crumb.Boiling, crumb.Latent, crumb.CrustWaterDensity);
        var free = water[cell] - kept;
        if (now > boiling && free > 0)
        {
            var surplus = crumb.EnthalpyAt(now, water[cell]) - crumb.EnthalpyAt(boiling, water[cell]);
            var gone = Math.Min(free, surplus / latent);
            water[cell] -= gone;
            Boiled += gone * volume[cell];
            SteamHeat += gone * volume[cell] * crumb.SteamEnthalpy;
            now = boiling;
            if (gone == free)
            {
                now += (surplus - (gone * latent)) / crumb.At(boiling, kept).Heat;
            }
        }

        celsius[cell] = now;
    }
}
