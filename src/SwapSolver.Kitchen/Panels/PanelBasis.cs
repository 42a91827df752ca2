namespace SwapSolver.Kitchen.Panels;

/// <summary>Whose law a nutrition panel follows: what its carbohydrate holds, and how its figures are rounded.</summary>
public enum PanelBasis
{
    /// <summary>United States (Canada counts alike): carbohydrate holds fibre.</summary>
    UnitedStates,

    /// <summary>European Union and United Kingdom: carbohydrate is without fibre and holds polyols. Australia and New
    /// Zealand count alike, but may leave polyols out of it.</summary>
    EuropeanUnion,
}
