namespace SwapSolver.Forecasts;

/// <summary>A loaf cut into cells: what each holds, what it touches and what of it is skin. Planes of symmetry let nothing through and are left out.</summary>
internal sealed class Solid
{
    private readonly List<double> volumes = [];
    private readonly List<(int One, int Other, double Way)> walls = [];
    private readonly List<(int Cell, Face Face, double Area, double Depth)> skins = [];
    private WallRows? rows;

    /// <summary>Volume of each cell [m3].</summary>
    public IReadOnlyList<double> Volumes => volumes;

    /// <summary>Walls between cells: the two, and area by distance of their middles [m].</summary>
    public IReadOnlyList<(int One, int Other, double Way)> Walls => walls;

    /// <summary>The walls in rows, once no more are added.</summary>
    public WallRows Rows => rows ??= new WallRows(walls);

    /// <summary>Pieces of skin: the cell, its side, area [m2] and depth of the cell's middle below it [m].</summary>
    public IReadOnlyList<(int Cell, Face Face, double Area, double Depth)> Skins => skins;

    /// <summary>Cells among which the core lies, from the foot up.</summary>
    public List<AxisCell> Axis { get; } = [];

    /// <summary>Adds a cell.</summary>
    /// <param name="volume">Volume [m3].</param>
    /// <returns>Its number.</returns>
    public int AddCell(double volume)
    {
        volumes.Add(volume);
        return volumes.Count - 1;
    }

    /// <summary>Lets two cells touch.</summary>
    public void AddWall(int one, int other, double area, double distance) => walls.Add((one, other, area / distance));

    /// <summary>Gives a cell a piece of skin.</summary>
    public void AddSkin(int cell, Face face, double area, double depth) => skins.Add((cell, face, area, depth));

    /// <summary>Lets a cell touch another, or gives it a piece of skin where there is none.</summary>
    /// <param name="here">The cell.</param>
    /// <param name="there">The other; null where the body ends.</param>
    /// <param name="face">Which side ends there.</param>
    /// <param name="area">Area of the wall or skin [m2].</param>
    /// <param name="distance">Distance from middle to middle [m].</param>
    public void Join(int here, int? there, Face face, double area, double distance)
    {
        if (there is { } other)
        {
            AddWall(here, other, area, distance);
        }
        else
        {
            AddSkin(here, face, area, distance / 2);
        }
    }

    /// <summary>Puts a cell on top of the axis.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="beside">Its neighbours away from the axis; those below 0 are none.</param>
    public void AddToAxis(int cell, params ReadOnlySpan<int> beside)
    {
        List<int> known = [];
        foreach (var other in beside)
        {
            if (other >= 0)
            {
                known.Add(other);
            }
        }

        Axis.Add(new AxisCell(cell, [.. known]));
    }
}
