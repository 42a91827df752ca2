using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Practice;

namespace SwapSolver.Forecasts;

/// <summary>The body that bakes: one loaf, or one of its pieces.</summary>
/// <param name="Round">It where it is round; else null.</param>
/// <param name="Brick">It where it stands on a rectangle or is long; else null.</param>
/// <param name="IsInTin">Whether its sides touch a tin.</param>
internal sealed record LoafBody(Round? Round, Brick? Brick, bool IsInTin)
{
    /// <summary>A loaf on a tray that is longer than wide by no more than this is taken as round [1].</summary>
    private const double StillRound = 1.2;

    /// <summary>How many cells more a round body gets along each way: it is cut in two directions only.</summary>
    internal const double RoundFineness = 1.8;

    /// <summary>Width by which air flows about it [m].</summary>
    public double Width => Brick?.Width ?? (2 * Round!.Radius);

    /// <summary>Its height in the middle [m].</summary>
    public double Height => Brick?.Height ?? Round!.Height;

    /// <summary>The body of a formula at a density.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="density">Batter by the volume of the baked loaf [kg/m3].</param>
    /// <param name="practice">What is taken of shapes that are not stated.</param>
    /// <param name="doubts">Which figure is moved.</param>
    public static LoafBody Of(Formula formula, double density, OvenPractice practice, Doubts doubts)
    {
        var pieces = formula.Shape is Pieces several ? several.Count : 1;
        var volume = formula.BatterMass.Value / 1000 / density / pieces;
        switch (formula.Shape)
        {
            case Tin tin:
                var (length, width) = (tin.Length.Value / 1000, tin.Width.Value / 1000);
                return new LoafBody(null, new Brick(Math.Max(length, width), Math.Min(length, width), volume / (length * width), IsDomed: false), IsInTin: true);
            case FreeForm { Length: { } first, Width: { } second }
                when Math.Max(first.Value, second.Value) > StillRound * Math.Min(first.Value, second.Value):
                var (longer, shorter) = (Math.Max(first.Value, second.Value) / 1000, Math.Min(first.Value, second.Value) / 1000);
                return new LoafBody(null, new Brick(longer, shorter, volume / (longer * shorter * Math.PI / 6), IsDomed: true), IsInTin: false);
            case FreeForm free when (free.Length ?? free.Width) is { } known:
                var other = free.Width ?? known;
                var radius = Math.Sqrt(known.Value * other.Value) / 2000;
                return new LoafBody(new Round(radius, volume / (2.0 / 3 * Math.PI * radius * radius), IsDomed: true), null, IsInTin: false);
            default:
                var flatness = doubts.Of("height of the loaf by its width", practice.FreeFormHeightByWidthPercent) / 100;
                var across = Math.Cbrt(volume * 6 / (Math.PI * flatness));
                return new LoafBody(new Round(across / 2, flatness * across, IsDomed: true), null, IsInTin: false);
        }
    }

    /// <summary>Its cells.</summary>
    /// <param name="fineness">Cells in half the width of a brick.</param>
    public Solid Cut(int fineness) => Brick?.Cut(fineness) ?? Round!.Cut((int)(fineness * RoundFineness));
}
