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
        var (dr, dz) = (Radius / rings, Height / layers);
        var kept = 0.0;
        for (var ring = 0; ring < rings; ring++)
        {
            for (var layer = 0; layer < layers; layer++)
            {
                kept += Holds(ring, layer, dr, dz) ? Ring(ring, dr) * dz : 0;
            }
        }

        // A body of steps gets the volume that the smooth one has.
        var stretch = Volume / kept;
        var solid = new Solid();
        var cells = new int[rings, layers];
        for (var ring = 0; ring < rings; ring++)
        {
            for (var layer = 0; layer < layers; layer++)
            {
                cells[ring, layer] = Holds(ring, layer, dr, dz) ? solid.AddCell(Ring(ring, dr) * dz * stretch) : -1;
                if (ring == 0 && cells[ring, layer] >= 0)
                {
                    solid.Axis.Add(cells[ring, layer]);
                }
            }
        }

        for (var ring = 0; ring < rings; ring++)
        {
            for (var layer = 0; layer < layers; layer++)
            {
                var here = cells[ring, layer];
                if (here < 0)
                {
                    continue;
                }

                Join(here, ring + 1 < rings ? cells[ring + 1, layer] : -1, Face.Side, 2 * Math.PI * (ring + 1) * dr * dz, dr);
                Join(here, layer + 1 < layers ? cells[ring, layer + 1] : -1, Face.Top, Ring(ring, dr), dz);
                if (layer == 0)
                {
                    solid.AddSkin(here, Face.Under, Ring(ring, dr), dz / 2);
                }
            }
        }

        if (IsDomed)
        {
            solid.SmoothSkin([Face.Top, Face.Side], DomeArea);
            solid.SmoothSkin([Face.Under], Math.PI * Radius * Radius);
        }

        return solid;

        void Join(int here, int there, Face face, double area, double distance)
        {
            if (there >= 0)
            {
                solid.AddWall(here, there, area, distance);
            }
            else
            {
                solid.AddSkin(here, face, area, distance / 2);
            }
        }
    }

    /// <summary>Volume [m3].</summary>
    public double Volume => Math.PI * Radius * Radius * Height * (IsDomed ? 2.0 / 3 : 1);

    /// <summary>Area of half a spheroid without its foot [m2].</summary>
    private double DomeArea
    {
        get
        {
            if (Math.Abs(Radius - Height) < 1e-9 * Radius)
            {
                return 2 * Math.PI * Radius * Radius;
            }

            var (least, most) = (Math.Min(Radius, Height), Math.Max(Radius, Height));
            var e = Math.Sqrt(1 - (least * least / (most * most)));
            return Height < Radius
                ? Math.PI * ((Radius * Radius) + (Height * Height / e * Math.Atanh(e)))
                : Math.PI * ((Radius * Radius) + (Radius * Height / e * Math.Asin(e)));
        }
    }

    private bool Holds(int ring, int layer, double dr, double dz)
    {
        if (!IsDomed)
        {
            return true;
        }

        var (r, z) = ((ring + 0.5) * dr / Radius, (layer + 0.5) * dz / Height);
        return (r * r) + (z * z) <= 1;
    }

    private static double Ring(int ring, double width) => Math.PI * width * width * ((2 * ring) + 1);
}
