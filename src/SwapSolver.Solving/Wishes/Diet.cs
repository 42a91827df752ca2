namespace SwapSolver.Solving.Wishes;

/// <summary>A way of eating.</summary>
public enum Diet
{
    /// <summary>No meat, fish or gelatine.</summary>
    Vegetarian,

    /// <summary>Nothing from animals.</summary>
    Vegan,

    /// <summary>No milk, nor anything made of it.</summary>
    DairyFree,
}
