namespace SwapSolver.Forecasts;

/// <summary>A quarter of a loaf that stands on a rectangle: whole in height, halved in length and in width.</summary>
/// <param name="Length">Length [m].</param>
/// <param name="Width">Width [m].</param>
/// <param name="Height">Height [m]; at the middle where it is domed.</param>
/// <param name="IsDomed">Whether it is half an egg on its flat side rather than a box.</param>
internal sealed record Brick(double Length, double Width, double Height, bool IsDomed)
{
    /// <summary>Exponent of the formula for the area of an ellipsoid (Thomsen; within 1.1 %).</summary>
    private const double Thomsen = 1.6075;

    /// <summary>The cells.</summary>
    /// <param name="fineness">Cells in half the width.</param>
    public Solid Cut(int fineness)
    {
        // A thin loaf needs its cells across the height, a long one few along its length.
        var size = Math.Min(Width / 2, Height / 1.5) / fineness;
        var counts = (
            X: CellCount.Of(Length / 2, size, fineness, fineness + (fineness / 2)),
            Y: CellCount.Of(Width / 2, size, fineness, 2 * fineness),
            Z: CellCount.Of(Height, size, fineness + (fineness / 2), 3 * fineness));
        var (dx, dy, dz) = (Length / 2 / counts.X, Width / 2 / counts.Y, Height / counts.Z);
        var solid = new Solid();
        var cells = new int[counts.X, counts.Y, counts.Z];
        var kept = 0;
        for (var x = 0; x < counts.X; x++)
        {
            for (var y = 0; y < counts.Y; y++)
            {
                for (var z = 0; z < counts.Z; z++)
                {
                    kept += Holds((x + 0.5) * dx, (y + 0.5) * dy, (z + 0.5) * dz) ? 1 : 0;
                }
            }
        }

        // A body of steps gets the volume that the smooth one has.
        var volume = Volume / 4 / kept;
        int Cell(int x, int y, int z) => x < counts.X && y < counts.Y && z < counts.Z && z >= 0 ? cells[x, y, z] - 1 : -1;
        for (var x = 0; x < counts.X; x++)
        {
            for (var y = 0; y < counts.Y; y++)
            {
                for (var z = 0; z < counts.Z; z++)
                {
                    if (!Holds((x + 0.5) * dx, (y + 0.5) * dy, (z + 0.5) * dz))
                    {
                        continue;
                    }

                    cells[x, y, z] = solid.AddCell(volume) + 1;
                    if (x == 0 && y == 0)
                    {
                        solid.Axis.Add(cells[x, y, z] - 1);
                    }
                }
            }
        }

        for (var x = 0; x < counts.X; x++)
        {
            for (var y = 0; y < counts.Y; y++)
            {
                for (var z = 0; z < counts.Z; z++)
                {
                    if (Cell(x, y, z) is not (>= 0 and var here))
                    {
                        continue;
                    }

                    Join(here, Cell(x + 1, y, z), Face.Side, dy * dz, dx);
                    Join(here, Cell(x, y + 1, z), Face.Side, dx * dz, dy);
                    Join(here, Cell(x, y, z + 1), Face.Top, dx * dy, dz);
                    if (z == 0)
                    {
                        solid.AddSkin(here, Face.Under, dx * dy, dz / 2);
                    }
                }
            }
        }

        if (IsDomed)
        {
            solid.SmoothSkin([Face.Top, Face.Side], DomeArea / 4);
            solid.SmoothSkin([Face.Under], Math.PI * Length * Width / 16);
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

    /// <summary>Volume of the whole loaf [m3].</summary>
    public double Volume => Length * Width * Height * (IsDomed ? Math.PI / 6 : 1);

    /// <summary>Area of the dome of the whole loaf [m2].</summary>
    private double DomeArea
    {
        get
        {
            var (a, b, c) = (Math.Pow(Length / 2, Thomsen), Math.Pow(Width / 2, Thomsen), Math.Pow(Height, Thomsen));
            return 2 * Math.PI * Math.Pow(((a * b) + (a * c) + (b * c)) / 3, 1 / Thomsen);
        }
    }

    private bool Holds(double x, double y, double z)
    {
        if (!IsDomed)
        {
            return true;
        }

        var (a, b, c) = (2 * x / Length, 2 * y / Width, z / Height);
        return (a * a) + (b * b) + (c * c) <= 1;
    }
}
