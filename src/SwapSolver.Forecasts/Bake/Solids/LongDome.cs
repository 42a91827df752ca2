namespace SwapSolver.Forecasts;

/// <summary>A quarter of half an egg that stands on a foot longer than wide.</summary>
/// <param name="Length">Length of its foot [m].</param>
/// <param name="Width">Width of its foot [m].</param>
/// <param name="Height">Height in the middle [m].</param>
internal sealed record LongDome(double Length, double Width, double Height)
{
    /// <summary>Parts of a side over which heights are summed up; pieces of the dome for each cell.</summary>
    private const int Parts = 6;

    /// <summary>The cells.</summary>
    /// <param name="counts">Cells in half the length, in half the width and in the height.</param>
    public Solid Cut((int X, int Y, int Z) counts)
    {
        var side = (X: Length / 2 / counts.X, Y: Width / 2 / counts.Y, Z: Height / counts.Z);
        var cells = new DomeCells((Length / 2, Width / 2, Height), counts, side);
        var part = side.X * side.Y / (Parts * Parts);
        for (var x = 0; x < counts.X * Parts; x++)
        {
            for (var y = 0; y < counts.Y * Parts; y++)
            {
                var top = HeightAt((x + 0.5) * side.X / Parts, (y + 0.5) * side.Y / Parts);
                if (top > 0)
                {
                    cells.Stand(x / Parts, y / Parts, part);
                }

                for (var z = 0; z * side.Z < top; z++)
                {
                    cells.Hold(x / Parts, y / Parts, z, part * Math.Min(top - (z * side.Z), side.Z));
                }
            }
        }

        Cover(cells, Math.Max(counts.Z, Math.Max(counts.X, counts.Y)) * Parts);
        return Joined(cells, counts, side);
    }

    private void Cover(DomeCells cells, int turns)
    {
        // Even turns from the rim to the top and along the rim: no cell is passed over, however flat the dome.
        var (a, b, c, turn) = (Length / 2, Width / 2, Height, Math.PI / 2 / turns);
        for (var up = 0; up < turns; up++)
        {
            var (rise, reach) = Math.SinCos((up + 0.5) * turn);
            for (var along = 0; along < turns; along++)
            {
                var (across, ahead) = Math.SinCos((along + 0.5) * turn);
                var slant = Math.Sqrt((reach * reach * c * c * ((b * b * ahead * ahead) + (a * a * across * across))) + (a * a * b * b * rise * rise));
                cells.Cover(a * reach * ahead, b * reach * across, c * rise, slant * reach * turn * turn);
            }
        }
    }

    private Solid Joined(DomeCells cells, (int X, int Y, int Z) counts, (double X, double Y, double Z) side)
    {
        var solid = cells.Body();
        for (var x = 0; x < counts.X; x++)
        {
            for (var y = 0; y < counts.Y; y++)
            {
                for (var z = 0; z < counts.Z; z++)
                {
                    var here = cells.Cell(x, y, z);
                    if (here < 0)
                    {
                        continue;
                    }

                    if (cells.Cell(x + 1, y, z) is >= 0 and var longer)
                    {
                        solid.AddWall(here, longer, side.Y * Mean(at => Math.Clamp(HeightAt((x + 1) * side.X, (y + at) * side.Y) - (z * side.Z), 0, side.Z)), side.X);
                    }

                    if (cells.Cell(x, y + 1, z) is >= 0 and var wider)
                    {
                        solid.AddWall(here, wider, side.X * Mean(at => Math.Clamp(HeightAt((x + at) * side.X, (y + 1) * side.Y) - (z * side.Z), 0, side.Z)), side.Y);
                    }

                    if (cells.Cell(x, y, z + 1) is >= 0 and var upper)
                    {
                        solid.AddWall(here, upper, side.X * Mean(at => Math.Clamp(WidthAt((x + at) * side.X, (z + 1) * side.Z) - (y * side.Y), 0, side.Y)), side.Z);
                    }
                }
            }
        }

        for (var z = 0; z < counts.Z && cells.Cell(0, 0, z) >= 0; z++)
        {
            solid.AddToAxis(cells.Cell(0, 0, z), cells.Cell(1, 0, z), cells.Cell(0, 1, z));
        }

        return solid;
    }

    private static double Mean(Func<double, double> open)
    {
        var sum = 0.0;
        for (var part = 0; part < Parts; part++)
        {
            sum += open((part + 0.5) / Parts);
        }

        return sum / Parts;
    }

    private double HeightAt(double x, double y) => Height * Left(2 * x / Length, 2 * y / Width);

    private double WidthAt(double x, double z) => Width / 2 * Left(2 * x / Length, z / Height);

    private static double Left(double one, double other) => Math.Sqrt(Math.Max(0, 1 - (one * one) - (other * other)));
}
