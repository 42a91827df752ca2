namespace SwapSolver.Forecasts;

/// <summary>
/// Cells of half an egg on its flat side. What a cell holds, covers and shares is what of it lies within the smooth body; a
/// cell whose middle lies outside gives its part to the neighbour that is deeper in.
/// </summary>
internal sealed class DomeCells
{
    /// <summary>A cell's middle is taken as no nearer to the skin than this share of its side [1].</summary>
    private const double Shallowest = 0.1;

    private readonly (double X, double Y, double Z) half;
    private readonly (double X, double Y, double Z) side;
    private readonly int[,,] homes;
    private readonly double[] volumes, covered, depths, floors;

    /// <summary>Finds the cells that are kept.</summary>
    /// <param name="half">Half the length, half the width and the height [m]; the width without end where the cells are rings.</param>
    /// <param name="counts">Cells along each.</param>
    /// <param name="side">Sides of a cell [m].</param>
    public DomeCells((double X, double Y, double Z) half, (int X, int Y, int Z) counts, (double X, double Y, double Z) side)
    {
        (this.half, this.side) = (half, side);
        homes = new int[counts.X, counts.Y, counts.Z];
        for (var x = 0; x < counts.X; x++)
        {
            for (var y = 0; y < counts.Y; y++)
            {
                for (var z = 0; z < counts.Z; z++)
                {
                    homes[x, y, z] = Holds(Middle(x, side.X), Middle(y, side.Y), Middle(z, side.Z)) ? Count++ : -1;
                }
            }
        }

        // From within outward: what lies inward of a cell is settled before it.
        var kept = Count;
        for (var x = 0; x < counts.X; x++)
        {
            for (var y = 0; y < counts.Y; y++)
            {
                for (var z = 0; z < counts.Z; z++)
                {
                    homes[x, y, z] = homes[x, y, z] >= 0 ? homes[x, y, z] : ~Inward(x, y, z);
                }
            }
        }

        (volumes, covered, depths, floors) = (new double[kept], new double[kept], new double[kept], new double[kept]);
    }

    /// <summary>How many cells are kept.</summary>
    public int Count { get; }

    /// <summary>The kept cell of a place, or -1.</summary>
    public int Cell(int x, int y, int z) =>
        x < homes.GetLength(0) && y < homes.GetLength(1) && z < homes.GetLength(2) ? Math.Max(-1, homes[x, y, z]) : -1;

    /// <summary>Whether a point lies within the body.</summary>
    public bool Holds(double x, double y, double z) => Square(x / half.X) + Square(y / half.Y) + Square(z / half.Z) <= 1;

    /// <summary>Gives a cell, or the one that it went to, a part of the body [m3].</summary>
    public void Hold(int x, int y, int z, double volume) => volumes[Home(x, y, z)] += volume;

    /// <summary>Gives a piece of the dome to the cell beneath it.</summary>
    /// <param name="x">Where it lies along the length, or the radius [m].</param>
    /// <param name="y">Along the width [m].</param>
    /// <param name="z">Above the foot [m].</param>
    /// <param name="area">Its area [m2].</param>
    public void Cover(double x, double y, double z, double area)
    {
        static int Of(double place, double side, int count) => Math.Min(count - 1, (int)(place / side));
        var (i, j, k) = (Of(x, side.X, homes.GetLength(0)), Of(y, side.Y, homes.GetLength(1)), Of(z, side.Z, homes.GetLength(2)));
        var cell = Home(i, j, k);
        var (a, b, c) = (x / Square(half.X), y / Square(half.Y), z / Square(half.Z));
        var (mx, my, mz) = MiddleOf(i, j, k);
        var depth = ((a * (x - mx)) + (b * (y - my)) + (c * (z - mz))) / Math.Sqrt((a * a) + (b * b) + (c * c));
        covered[cell] += area;
        depths[cell] += area * depth;
    }

    /// <summary>Gives a cell at the foot, or the one that it went to, a part of the foot [m2].</summary>
    public void Stand(int x, int y, double area) => floors[Home(x, y, 0)] += area;

    /// <summary>The body with its cells and its skin, and no walls yet.</summary>
    public Solid Body()
    {
        var solid = new Solid();
        var least = Shallowest * Math.Min(side.X, double.IsInfinity(half.Y) ? side.Z : Math.Min(side.Y, side.Z));
        for (var cell = 0; cell < Count; cell++)
        {
            solid.AddCell(volumes[cell]);
            if (covered[cell] > 0)
            {
                solid.AddSkin(cell, Face.Top, covered[cell], Math.Max(least, depths[cell] / covered[cell]));
            }

            if (floors[cell] > 0)
            {
                solid.AddSkin(cell, Face.Under, floors[cell], side.Z / 2);
            }
        }

        return solid;
    }

    private static double Middle(int cell, double side) => (cell + 0.5) * side;

    private static double Square(double value) => value * value;

    private int Home(int x, int y, int z) => homes[x, y, z] >= 0 ? homes[x, y, z] : ~homes[x, y, z];

    private (double X, double Y, double Z) MiddleOf(int x, int y, int z)
    {
        while (homes[x, y, z] < 0)
        {
            (x, y, z) = Step(x, y, z);
        }

        return (Middle(x, side.X), Middle(y, side.Y), Middle(z, side.Z));
    }

    private int Inward(int x, int y, int z)
    {
        do
        {
            (x, y, z) = Step(x, y, z);
        }
        while (homes[x, y, z] < 0);
        return homes[x, y, z];
    }

    /// <summary>The neighbour that lies most nearly straight inward.</summary>
    private (int X, int Y, int Z) Step(int x, int y, int z)
    {
        var (a, b, c) = (
            x > 0 ? Middle(x, side.X) / Square(half.X) * side.X : 0,
            y > 0 ? Middle(y, side.Y) / Square(half.Y) * side.Y : 0,
            z > 0 ? Middle(z, side.Z) / Square(half.Z) * side.Z : 0);
        return a >= b && a >= c ? (x - 1, y, z) : b >= c ? (x, y - 1, z) : (x, y, z - 1);
    }
}
