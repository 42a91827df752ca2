namespace SwapSolver.Forecasts;

/// <summary>Half an egg that stands on a round foot, cut into rings.</summary>
/// <param name="Radius">Radius of its foot [m].</param>
/// <param name="Height">Height in the middle [m].</param>
internal sealed record RoundDome(double Radius, double Height)
{
    /// <summary>Parts of a ring over which its height is summed up; pieces of the dome for each cell.</summary>
    private const int Parts = 16;

    /// <summary>The cells.</summary>
    /// <param name="rings">Rings in the radius.</param>
    /// <param name="layers">Layers in the height.</param>
    public Solid Cut(int rings, int layers)
    {
        var (dr, dz) = (Radius / rings, Height / layers);
        var cells = new DomeCells((Radius, double.PositiveInfinity, Height), (rings, 1, layers), (dr, 1, dz));
        for (var ring = 0; ring < rings; ring++)
        {
            cells.Stand(ring, 0, Disc((ring + 1) * dr) - Disc(ring * dr));
            for (var part = 0; part < Parts; part++)
            {
                var (within, without) = ((ring + ((double)part / Parts)) * dr, (ring + ((part + 1.0) / Parts)) * dr);
                var (area, top) = (Disc(without) - Disc(within), HeightAt((within + without) / 2));
                for (var layer = 0; layer < layers; layer++)
                {
                    cells.Hold(ring, 0, layer, area * Math.Clamp(top - (layer * dz), 0, dz));
                }
            }
        }

        Cover(cells, Math.Max(rings, layers) * Parts);
        return Joined(cells, rings, layers, dr, dz);
    }

    private void Cover(DomeCells cells, int pieces)
    {
        // Even turns from the rim to the top: no ring and no layer is passed over, however flat the dome.
        var turn = Math.PI / 2 / pieces;
        for (var piece = 0; piece < pieces; piece++)
        {
            var (rise, reach) = Math.SinCos((piece + 0.5) * turn);
            var slant = Math.Sqrt((Height * Height * reach * reach) + (Radius * Radius * rise * rise));
            cells.Cover(Radius * reach, 0, Height * rise, 2 * Math.PI * Radius * reach * slant * turn);
        }
    }

    private Solid Joined(DomeCells cells, int rings, int layers, double dr, double dz)
    {
        var solid = cells.Body();
        for (var ring = 0; ring < rings; ring++)
        {
            for (var layer = 0; layer < layers; layer++)
            {
                var here = cells.Cell(ring, 0, layer);
                if (here < 0)
                {
                    continue;
                }

                if (cells.Cell(ring + 1, 0, layer) is >= 0 and var outer)
                {
                    var edge = (ring + 1) * dr;
                    solid.AddWall(here, outer, 2 * Math.PI * edge * Math.Clamp(HeightAt(edge) - (layer * dz), 0, dz), dr);
                }

                if (cells.Cell(ring, 0, layer + 1) is >= 0 and var upper)
                {
                    var share = (layer + 1) * dz / Height;
                    var edge = Math.Min((ring + 1) * dr, Radius * Math.Sqrt(1 - (share * share)));
                    solid.AddWall(here, upper, Disc(edge) - Disc(ring * dr), dz);
                }
            }
        }

        for (var layer = 0; layer < layers && cells.Cell(0, 0, layer) >= 0; layer++)
        {
            solid.AddToAxis(cells.Cell(0, 0, layer), cells.Cell(1, 0, layer));
        }

        return solid;
    }

    private double HeightAt(double radius) => Height * Math.Sqrt(Math.Max(0, 1 - (radius * radius / (Radius * Radius))));

    private static double Disc(double radius) => Math.PI * radius * radius;
}
