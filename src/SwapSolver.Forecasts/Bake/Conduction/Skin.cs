namespace SwapSolver.Forecasts;

/// <summary>The skin of a loaf: what goes in and out through it, and what dries off it before it boils.</summary>
internal sealed class Skin
{
    /// <summary>Stefan and Boltzmann's constant [W/(m2 K4)], by definition of the SI.</summary>
    private const double StefanBoltzmann = 5.670374419e-8;

    private const double ZeroCelsius = 273.15;

    private readonly int[] cells;
    private readonly double[] areas, depths, celsius, dried, rates, latent;
    private readonly Face[] faces;

    /// <summary>The skin of a body of one temperature [°C].</summary>
    public Skin(Solid solid, double start)
    {
        cells = [.. solid.Skins.Select(skin => skin.Cell)];
        areas = [.. solid.Skins.Select(skin => skin.Area)];
        depths = [.. solid.Skins.Select(skin => skin.Depth)];
        faces = [.. solid.Skins.Select(skin => skin.Face)];
        celsius = [.. cells.Select(_ => start)];
        (dried, rates, latent) = (new double[cells.Length], new double[cells.Length], new double[cells.Length]);
    }

    /// <summary>Lets heat through for one step yet to be taken.</summary>
    /// <param name="surroundings">Where the loaf is.</param>
    /// <param name="seconds">Time since it came in [s].</param>
    /// <param name="body">The cells beneath.</param>
    /// <param name="gain">Takes what each cell gains [W].</param>
    /// <param name="give">Takes what each cell could give to the skin for each kelvin [W/K].</param>
    /// <returns>Heat that comes in [W], with what goes off again with steam.</returns>
    public double Transfer(Surroundings surroundings, double seconds, SkinBody body, double[] gain, double[] give)
    {
        var outside = surroundings.At(seconds);
        var outsideKelvin = outside + ZeroCelsius;
        var withSteam = 1 / (1 - surroundings.EvaporatedShare);
        var drying = surroundings.Drying;
        // By side, as few as they are: asking for them at every piece of skin would cost more than the rest.
        ReadOnlySpan<double> emissivities = [surroundings.Emissivities(Face.Top), surroundings.Emissivities(Face.Side), surroundings.Emissivities(Face.Under)];
        ReadOnlySpan<bool> dries = [drying.IsOpen(Face.Top), drying.IsOpen(Face.Side), drying.IsOpen(Face.Under)];
        var taken = 0.0;
        for (var skin = 0; skin < cells.Length; skin++)
        {
            var (cell, face) = (cells[skin], (int)faces[skin]);
            // The skin of the step before: it moves by less than a kelvin in one.
            var before = celsius[skin];
            var skinKelvin = before + ZeroCelsius;
            var radiation = emissivities[face] * StefanBoltzmann * ((skinKelvin * skinKelvin) + (outsideKelvin * outsideKelvin)) * (skinKelvin + outsideKelvin);
            var convection = surroundings.ConvectionAt(before, outside);
            var transfer = (radiation + convection) * withSteam;
            var within = depths[skin] * body.Outward[cell];
            var (here, steam) = (body.Celsius[cell], 0.0);
            rates[skin] = 0;
            if (dries[face] && dried[skin] < drying.Most && here < body.Boiling && body.Water[cell] > body.CrustWater)
            {
                var (rate, slope) = drying.At(before, outside, convection, dried[skin]);
                latent[skin] = SaturatedWater.HeatOfVaporisation(before);
                // What comes in goes on inward or off with steam. That grows so steeply that it is taken along its slope.
                var now = (here + (within * ((transfer * outside) - (latent[skin] * (rate - (slope * before)))))) / (1 + (within * (transfer + (latent[skin] * slope))));
                rates[skin] = Math.Max(0, rate + (slope * (now - before)));
                steam = rates[skin] * latent[skin];
            }

            var exchange = transfer <= 0 ? 0 : 1 / ((1 / transfer) + within);
            var inward = exchange <= 0 ? 0 : exchange * (outside - here - (steam / transfer));
            celsius[skin] = here + (inward * within);
            gain[cell] += inward * areas[skin];
            give[cell] += exchange * areas[skin];
            taken += (inward + steam) * areas[skin];
        }

        return taken;
    }

    /// <summary>Lets water dry off for a step.</summary>
    /// <param name="step">The step [s].</param>
    /// <param name="most">What a skin can give before water has to come from deeper [kg/m2].</param>
    /// <param name="body">The cells beneath.</param>
    /// <param name="volume">Their volumes [m3].</param>
    /// <param name="heatOfWater">Heat of a kilogram of water above 0 °C, by its temperature [°C to J/kg].</param>
    /// <returns>Water that went [kg] and heat that it took along, above water at 0 °C [J].</returns>
    public (double Water, double Heat) Dry(double step, double most, SkinBody body, double[] volume, Func<double, double> heatOfWater)
    {
        var (gone, heat) = (0.0, 0.0);
        for (var skin = 0; skin < cells.Length; skin++)
        {
            if (rates[skin] <= 0)
            {
                continue;
            }

            var cell = cells[skin];
            var mass = rates[skin] * step * areas[skin];
            dried[skin] = Math.Min(most, dried[skin] + (rates[skin] * step));
            body.Water[cell] -= mass / volume[cell];
            gone += mass;
            heat += mass * (latent[skin] + heatOfWater(body.Celsius[cell]));
        }

        return (gone, heat);
    }
}
