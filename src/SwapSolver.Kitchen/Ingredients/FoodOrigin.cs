namespace SwapSolver.Kitchen.Ingredients;

/// <summary>Where the figures of a food were read.</summary>
public enum FoodOrigin
{
    /// <summary>A row of a table of foods.</summary>
    Table,

    /// <summary>The panel of a packet that stands on this kitchen's shelf.</summary>
    Packet,
}
