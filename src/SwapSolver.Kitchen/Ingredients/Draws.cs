namespace SwapSolver.Kitchen.Ingredients;

/// <summary>The draws that need no sampling.</summary>
public static class Draws
{
    /// <summary>Every fact at its typical value.</summary>
    public static readonly Draw Typical = static ingredient => ingredient.Typical;
}
