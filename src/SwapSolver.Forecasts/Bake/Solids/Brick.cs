namespace SwapSolver.Forecasts;

/// <summary>A quarter of a loaf that stands on a rectangle: whole in height, halved in length and in width.</summary>
/// <param name="Length">Length [m].</param>
/// <param name="Width">Width [m].</param>
/// <param name="Height">Height [m]; at the middle where it is domed.</param>
/// <param name="IsDomed">Whether it is half an egg on its flat side rather than a box.</param>
internal sealed record Brick(double Length, double Width, double Height, bool IsDomed)
{
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
        return IsDomed ? new LongDome(Length, Width, Height).Cut(counts) : Box(counts);
    }

    private Solid Box((int X, int Y, int Z) counts)
    {
        var (dx, dy, dz) = (Length / 2 / counts.X, Width / 2 / counts.Y, Height / counts.Z);
        var solid = new Solid();
        int? Cell(int x, int y, int z) => x < counts.X && y < counts.Y && z < counts.Z ? (((x * counts.Y) + y) * counts.Z) + z : null;
        for (var cell = 0; cell < counts.X * counts.Y * counts.Z; cell++)
        {
            solid.AddCell(dx * dy * dz);
        }

        for (var x = 0; x < counts.X; x++)
        {
            for (var y = 0; y < counts.Y; y++)
            {
                for (var z = 0; z < counts.Z; z++)
                {
                    var here = Cell(x, y, z)!.Value;
                    solid.Join(here, Cell(x + 1, y, z), Face.Side, dy * dz, dx);
                    solid.Join(here, Cell(x, y + 1, z), Face.Side, dx * dz, dy);
                    solid.Join(here, Cell(x, y, z + 1), Face.Top, dx * dy, dz);
                    if (z == 0)
                    {
                        solid.AddSkin(here, Face.Under, dx * dy, dz / 2);
                    }
                }
            }
        }

        for (var z = 0; z < counts.Z; z++)
        {
            solid.AddToAxis(Cell(0, 0, z)!.Value, Cell(1, 0, z) ?? -1, Cell(0, 1, z) ?? -1);
        }

        return solid;
    }
}
