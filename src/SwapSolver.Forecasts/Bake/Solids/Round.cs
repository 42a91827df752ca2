namespace SwapSolver.Forecasts;

/// <summary>A round loaf, cut into rings.</summary>
/// <param name="Radius">Radius of its foot [m].</param>
/// <param name="Height">Height [m]; at the middle where it is domed.</param>
/// <param name="IsDomed">Whether it is half an egg on its flat side rather than a drum.</param>
internal sealed record Round(double Radius, double Height, bool IsDomed)
{
    /// <summary>The cells.</summary>
    /// <param name="fineness">Cells in the radius, or in half the height where that is less.</param>
    public Solid Cut(int fineness)
    {
        var size = Math.Min(Radius, Height / 1.5) / fineness;
        var (rings, layers) = (CellCount.Of(Radius, size, fineness, 3 * fineness), CellCount.Of(Height, size, fineness, 3 * fineness));
        if (IsDomed)
        {
            return new RoundDome(Radius, Height).Cut(rings, layers);
        }

        var (dr, dz) = (Radius / rings, Height / layers);
        var solid = new Solid();
        for (var cell = 0; cell < rings * layers; cell++)
        {
            solid.AddCell(Ring(cell / layers, dr) * dz);
        }

        for (var ring = 0; ring < rings; ring++)
        {
            for (var layer = 0; layer < layers; layer++)
            {
                var here = (ring * layers) + layer;
                solid.Join(here, ring + 1 < rings ? here + layers : null, Face.Side, 2 * Math.PI * (ring + 1) * dr * dz, dr);
                solid.Join(here, layer + 1 < layers ? here + 1 : null, Face.Top, Ring(ring, dr), dz);
                if (layer == 0)
                {
                    solid.AddSkin(here, Face.Under, Ring(ring, dr), dz / 2);
                }
            }
        }

        for (var layer = 0; layer < layers; layer++)
        {
            solid.AddToAxis(layer, rings > 1 ? layers + layer : -1);
        }

        return solid;
    }

    private static double Ring(int ring, double width) => Math.PI * width * width * ((2 * ring) + 1);
}
