namespace SwapSolver.Asking;

/// <summary>What a reader asks for.</summary>
public enum QuestionKind
{
    /// <summary>Not understood.</summary>
    NotUnderstood,

    /// <summary>The formula without something.</summary>
    Variant,

    /// <summary>What can stand in for an ingredient, or how to make it stand in.</summary>
    Replace,

    /// <summary>Whether one thing does in another's place.</summary>
    Check,

    /// <summary>Another size.</summary>
    Resize,

    /// <summary>Readings to move.</summary>
    Reformulate,

    /// <summary>How long it bakes.</summary>
    Bake,

    /// <summary>A household measure in grams.</summary>
    Convert,

    /// <summary>Whether it rises.</summary>
    Rise,

    /// <summary>What a slice has: net carbs, energy and the rest.</summary>
    Figures,
}
