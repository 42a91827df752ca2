namespace SwapSolver.Forecasts;

/// <summary>A loaf cut into cells: what each holds, what it touches and what of it is skin. Planes of symmetry let nothing through and are left out.</summary>
internal sealed class Solid
{
    private readonly List<double> volumes = [];
    private readonly List<(int One, int Other, double Way)> walls = [];
    private readonly List<(int Cell, Face Face, double Area, double Depth)> skins = [];

    /// <summary>Volume of each cell [m3].</summary>
    public IReadOnlyList<double> Volumes => volumes;

    /// <summary>Walls between cells: the two, and area by distance of their middles [m].</summary>
    public IReadOnlyList<(int One, int Other, double Way)> Walls => walls;

    /// <summary>Pieces of skin: the cell, its side, area [m2] and depth of the cell's middle below it [m].</summary>
    public IReadOnlyList<(int Cell, Face Face, double Area, double Depth)> Skins => skins;

    /// <summary>Cells among which the core lies: those on the axis.</summary>
    public List<int> Axis { get; } = [];

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

    /// <summary>Stretches the skin of a body that was cut into steps to the area that it really has.</summary>
    /// <param name="faces">Sides whose steps are meant.</param>
    /// <param name="area">Area that they really have together [m2].</param>
    public void SmoothSkin(Face[] faces, double area)
    {
        var stepped = skins.Where(skin => faces.Contains(skin.Face)).Sum(skin => skin.Area);
        for (var index = 0; index < skins.Count; index++)
        {
            var skin = skins[index];
            if (faces.Contains(skin.Face))
            {
                skins[index] = skin with { Area = skin.Area * area / stepped };
            }
        }
    }

    /// <summary>The most that any cell gives and takes for its volume, at a conductivity of one [1/m2]: what the longest stable step hangs on.</summary>
    public double LargestExchange()
    {
        var sums = new double[volumes.Count];
        foreach (var (one, other, way) in walls)
        {
            sums[one] += way;
            sums[other] += way;
        }

        foreach (var (cell, _, area, depth) in skins)
        {
            sums[cell] += area / depth;
        }

        return sums.Select((sum, cell) => sum / volumes[cell]).Max();
    }
}
