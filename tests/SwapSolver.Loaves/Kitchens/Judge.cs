namespace SwapSolver.Loaves.Kitchens;

/// <summary>Who settled that an optimum, or that there is none, is proven.</summary>
public enum Judge
{
    /// <summary>Glpsol says the same.</summary>
    Glpsol,

    /// <summary>Glpsol does not, or not in its time; cbc says the same.</summary>
    Cbc,

    /// <summary>Neither says the same: it stays open.</summary>
    Nobody,
}
