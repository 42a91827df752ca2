namespace SwapSolver.Solving.Panels;

/// <summary>What the unknowns of a panel's model are counted for. The weight of a serving is printed rounded too, so
/// either the food is fixed and the servings in it are not known, or the other way round; so every row stays linear.</summary>
internal enum PanelNorm
{
    /// <summary>100 g of food.</summary>
    HundredGrams,

    /// <summary>One serving.</summary>
    Serving,
}
