namespace SwapSolver.Forecasts.Tests;

/// <summary>Bodies that heat enters in one direction, cut into shells for the product's own finite volumes.</summary>
internal static class OneWay
{
    /// <summary>A body of shells of equal thickness around its middle.</summary>
    /// <param name="kind">Which.</param>
    /// <param name="half">Half its thickness, or its radius [m].</param>
    /// <param name="shells">How many.</param>
    public static Solid Cut(BodyKind kind, double half, int shells)
    {
        var solid = new Solid();
        var thick = half / shells;
        double Area(double place) => kind switch { BodyKind.Slab => 1, BodyKind.Cylinder => 2 * Math.PI * place, _ => 4 * Math.PI * place * place };
        double Held(double place) => kind switch
        {
            BodyKind.Slab => place,
            BodyKind.Cylinder => Math.PI * place * place,
            _ => 4.0 / 3 * Math.PI * place * place * place,
        };
        for (var shell = 0; shell < shells; shell++)
        {
            var cell = solid.AddCell(Held((shell + 1) * thick) - Held(shell * thick));
            if (shell > 0)
            {
                solid.AddWall(cell - 1, cell, Area(shell * thick), thick);
            }
        }

        solid.AddSkin(shells - 1, Face.Side, Area(half), thick / 2);
        solid.AddToAxis(0);
        return solid;
    }

    /// <summary>Stuff that conducts and stores heat and nothing else.</summary>
    /// <param name="conductivity">[W/(m K)].</param>
    /// <param name="heat">Heat capacity of its volume [J/(m3 K)].</param>
    public static Crumb Stuff(double conductivity, double heat) => new(_ => conductivity, _ => 1000, _ => 4200)
    {
        DryDensity = heat / 1000,
        WaterDensity = 0,
        CrustWaterDensity = 0,
        CrustConductivity = conductivity,
        Boiling = 1000,
        Latent = 1e6,
    };
}
