namespace SwapSolver.Kitchen.Quantities;

/// <summary>An amount in the unit of its line on a nutrition panel: g, mg, kcal or kJ, a serving.</summary>
/// <param name="Value">The amount; 0 or more.</param>
public readonly record struct PanelAmount(double Value)
{
    /// <summary>No end [any unit].</summary>
    public static readonly PanelAmount Endless = new(double.PositiveInfinity);
}
