namespace SwapSolver.Forecasts;

/// <summary>Into how many cells a side is cut.</summary>
internal static class CellCount
{
    /// <summary>Thinnest cell that is worth its steps [m]: heat crosses a thinner one at once, and the stable step falls with its square.</summary>
    private const double Thinnest = 0.0012;

    /// <summary>The count.</summary>
    /// <param name="length">The side [m].</param>
    /// <param name="size">Size that cells should have [m].</param>
    /// <param name="least">Least count, where cells are not too thin for it.</param>
    /// <param name="most">Greatest count, where the side is very long.</param>
    public static int Of(double length, double size, int least, int most) =>
        (int)Math.Max(1, Math.Min(Math.Clamp(Math.Round(length / size), least, most), Math.Ceiling(length / Thinnest)));
}
