using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts;

/// <summary>Runs bakes: from a formula to its body, its crumb, its oven and its rack.</summary>
/// <param name="Practice">What the forecast goes by.</param>
/// <param name="Pressure">Local pressure of the air.</param>
/// <param name="IsColdStart">Whether the oven is cold when the loaf goes in.</param>
/// <param name="Draw">Which facts of the ingredients are looked at.</param>
internal sealed record BakeModel(BakePractice Practice, Pascals Pressure, bool IsColdStart, Draw Draw)
{
    /// <summary>Longest bake and longest cooling that are waited for [s]: of a loaf of tons.</summary>
    internal const double LongestBake = 60 * 86_400.0, LongestCooling = 60 * 86_400.0;

    /// <summary>Formula of handbooks for still air: 1.32 (difference by width) to the power of a quarter [W/(m2 K)].</summary>
    private const double StillAir = 1.32;

    /// <summary>Where densities of the parts are taken for the porosity [°C].</summary>
    private const double Room = 25;

    /// <summary>Least volume of bubbles that is believed [1]: a heavier loaf than its parts is taken as without any.</summary>
    private const double LeastPorosity = 0.02;

    /// <summary>Water below which the pores of a batter hold no steam to speak of [1, of its mass].</summary>
    private const double DryBelow = 0.05;

    /// <summary>How far a probe that reads too low may still be told from boiling [K].</summary>
    private const double NearestBoiling = 0.15;

    // Of one forecast: its formulas, and where their water boils, are few, and each is baked some dozens of times.
    private readonly Dictionary<Formula, MatterTable> matters = new(ReferenceEqualityComparer.Instance);

    private readonly Dictionary<double, double[]> vapours = [];

    private readonly Dictionary<(LoafBody Body, int Fineness), Solid> solids = [];

    /// <summary>One bake.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="core">Core target [°C], below the local boiling point.</param>
    /// <param name="doubts">Which figure is moved.</param>
    /// <param name="fineness">Cells in half the width.</param>
    /// <param name="toSlice">Whether its cooling is run too.</param>
    /// <param name="isDrawn">Whether its core is noted at every step.</param>
    public BakeRun Run(Formula formula, Celsius core, Doubts doubts, int fineness, bool toSlice, bool isDrawn = false)
    {
        var density = doubts.Of("density of the baked loaf", Practice.Crumb.BakedDensityKgPerM3);
        var body = LoafBody.Of(formula, density, Practice.Oven, doubts);
        var crumb = CrumbOf(formula, density, doubts);
        var flow = new HeatFlow(Cut(body, fineness), crumb, doubts.Of("temperature of the batter", Practice.Oven.StartCelsius));
        var target = Math.Min(core.Value + doubts.Of("the probe", Practice.Oven.ProbeKelvin), crumb.Boiling - NearestBoiling);
        var oven = OvenOf(formula, body, crumb, doubts);
        List<CoreReading>? inOven = isDrawn ? [] : null, onRack = isDrawn ? [] : null;
        var baked = oven.At(LongestBake) > target ? flow.Until(oven, () => flow.Coldest, target, LongestBake, inOven) : null;
        var lost = (flow.Boiled + flow.Dried) / (flow.Volume * density);
        var cooled = baked is not null && toSlice
            ? flow.Until(RackOf(body, doubts), () => flow.Warmest, Practice.Rack.SliceCelsius.Range.Typical, LongestCooling, onRack)
            : null;
        return new BakeRun(baked, cooled, lost, [.. inOven ?? []], [.. onRack ?? []]);
    }

    /// <summary>What the loaf of a formula is made of.</summary>
    internal Crumb CrumbOf(Formula formula, double density, Doubts doubts)
    {
        var table = TableOf(formula);
        var matter = table.Matter;
        var porosity = Math.Max(LeastPorosity, 1 - (density / matter.DensityAt(Room)));
        var boiling = SaturatedWater.BoilingPointAt(Pressure).Value + doubts.Of("boiling point of the batter", Practice.Crumb.BoilingRiseKelvin);
        var factor = doubts.Of("conductivity of the crumb", Practice.Crumb.ConductivityPercent) / 100;
        var (dry, water) = (density * (1 - matter.Composition.Water), density * matter.Composition.Water);
        var share = water > DryBelow * density ? doubts.Of("steam in the pores", Practice.Crumb.VapourSharePercent) / 100 : 0;
        return new Crumb(table.WetConductivity(VapourAt(boiling), boiling, porosity, share, factor), table.Heats)
        {
            DryDensity = dry,
            WaterDensity = water,
            CrustWaterDensity = Math.Min(dry * doubts.Of("water of the crust", Practice.Crumb.CrustWaterPercentOfDry) / 100, water / 2),
            CrustConductivity = doubts.Of("conductivity of the crust", Practice.Crumb.CrustConductivityWPerMK),
            Boiling = boiling,
            Latent = SaturatedWater.HeatOfVaporisation(boiling),
        };
    }

    private Solid Cut(LoafBody body, int fineness) =>
        solids.TryGetValue((body, fineness), out var known) ? known : solids[(body, fineness)] = body.Cut(fineness);

    private MatterTable TableOf(Formula formula) =>
        matters.TryGetValue(formula, out var known)
            ? known
            : matters[formula] = new MatterTable(new CondensedMatter(Composition.Of(formula, Draw), Practice.Components));

    /// <summary>What steam adds to the conductivity of a bubble at each temperature of the table [W/(m K)].</summary>
    private double[] VapourAt(double boiling) =>
        vapours.TryGetValue(boiling, out var known)
            ? known
            : vapours[boiling] = [.. HeatTable.Temperatures.Select(celsius => PorousMatter.VapourConductivity(celsius, Pressure.Value, boiling))];

    private Surroundings OvenOf(Formula formula, LoafBody body, Crumb crumb, Doubts doubts)
    {
        var oven = Practice.Oven;
        var dial = formula.Oven?.Dial.Value ?? doubts.Of("the dial", oven.DialCelsius);
        var hot = dial + doubts.Of("what the oven misses its dial by", oven.OffsetKelvin);
        var air = formula.Oven is { Fan: true }
            ? doubts.Of("air of the fan", oven.FanWPerM2K)
            : doubts.Of("still air of the oven", oven.StillAirWPerM2K);
        var crust = doubts.Of("emissivity of the crust", oven.CrustEmissivity);
        var tin = doubts.Of("emissivity of the tin", oven.TinEmissivity);
        var start = Practice.Rack.RoomCelsius.Range.Typical;
        var heatsUp = IsColdStart ? 60 * doubts.Of("heating up", oven.ColdStartMinutes) : 0;
        return new Surroundings(
            seconds => seconds >= heatsUp ? hot : start + ((hot - start) * seconds / heatsUp),
            air,
            0,
            face => face == Face.Under || (face == Face.Side && body.IsInTin) ? tin : crust,
            0,
            new SkinDrying(
                doubts.Of("water that dries off the skin", oven.SkinDryingKgPerM2),
                Pressure.Value,
                Pressure.Value / SaturatedWater.PressureAt(new Celsius(crumb.Boiling)).Value,
                face => face == Face.Top || (face == Face.Side && !body.IsInTin)));
    }

    private Surroundings RackOf(LoafBody body, Doubts doubts)
    {
        var rack = Practice.Rack;
        var room = doubts.Of("temperature of the kitchen", rack.RoomCelsius);
        var air = StillAir * Math.Pow(1 / body.Width, Surroundings.StillAirPower) * doubts.Of("still air about the rack", rack.StillAirPercent) / 100;
        var crust = doubts.Of("emissivity of the crust", Practice.Oven.CrustEmissivity);
        return new Surroundings(_ => room, air, Surroundings.StillAirPower, _ => crust, doubts.Of("steam on the rack", rack.EvaporatedPercent) / 100, SkinDrying.None);
    }
}
