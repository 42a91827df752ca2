namespace SwapSolver.Forecasts;

/// <summary>What the batter of one formula conducts and stores without its bubbles, tabled once for all bakes of it: a forecast runs some
/// dozens, and only their figures in doubt differ.</summary>
internal sealed class MatterTable
{
    /// <summary>Where the polynomials of the components end [°C].</summary>
    private const double HottestKnown = 150;

    private readonly double[] parallelConductivity;

    /// <summary>Fills the table.</summary>
    /// <param name="matter">What the batter is made of.</param>
    public MatterTable(CondensedMatter matter)
    {
        Matter = matter;
        Heats = new HeatTable(
            celsius => matter.DryHeatAt(Math.Min(celsius, HottestKnown)),
            celsius => matter.WaterHeatAt(Math.Min(celsius, HottestKnown)));
        parallelConductivity = [.. HeatTable.Temperatures.Select(celsius => matter.ParallelConductivityAt(Math.Min(celsius, HottestKnown)))];
    }

    /// <summary>What the batter is made of.</summary>
    public CondensedMatter Matter { get; }

    /// <summary>Its heat.</summary>
    public HeatTable Heats { get; }

    /// <summary>Conductivity of the wet crumb at each temperature of the table [W/(m K)].</summary>
    /// <param name="vapour">What steam adds in a bubble, at each temperature of the table [W/(m K)].</param>
    /// <param name="boiling">Where its water boils [°C]: no part of it is warmer while it is wet.</param>
    /// <param name="porosity">Volume of the bubbles [1].</param>
    /// <param name="share">Share of the steam that real bubbles reach [1].</param>
    /// <param name="factor">What the whole is multiplied with [1].</param>
    public double[] WetConductivity(double[] vapour, double boiling, double porosity, double share, double factor)
    {
        var atBoiling = Matter.ParallelConductivityAt(boiling);
        var conductivity = new double[vapour.Length];
        for (var index = 0; index < conductivity.Length; index++)
        {
            var condensed = HeatTable.Temperatures[index] < boiling ? parallelConductivity[index] : atBoiling;
            conductivity[index] = factor * PorousMatter.WetConductivity(condensed, porosity, vapour[index], share);
        }

        return conductivity;
    }
}
