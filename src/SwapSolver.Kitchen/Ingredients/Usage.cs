using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>How much of an ingredient a formula bears.</summary>
/// <param name="MaximumOfFlour">Most, of the mass of all flours; null where nothing limits it.</param>
/// <param name="MaximumOfBatter">Most, of the batter; null where nothing limits it.</param>
/// <param name="SensibleMinimum">Least that is worth weighing [g].</param>
/// <param name="Offered">Whether a formula may be given it anew.</param>
/// <param name="ScaleStep">Step in which it is weighed [g].</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record Usage(
    Percent? MaximumOfFlour,
    Percent? MaximumOfBatter,
    Grams SensibleMinimum,
    bool Offered,
    Grams ScaleStep,
    string Source,
    Mark Mark)
{
    /// <summary>Whether a formula is given it only where the caller names it: nothing says what it does in a batter.</summary>
    public bool OnlyWhenNamed { get; init; }

    /// <summary>Most grams that a formula bears [g]: the smaller of both limits, and never more than the batter.</summary>
    /// <param name="flours">Mass of all flours [g].</param>
    /// <param name="batter">Batter mass [g].</param>
    public Grams Most(Grams flours, Grams batter)
    {
        var ofFlour = MaximumOfFlour is { } byFlour ? flours * byFlour.Share : batter;
        var ofBatter = MaximumOfBatter is { } byBatter ? batter * byBatter.Share : batter;
        return new Grams(Math.Min(Math.Min(ofFlour.Value, ofBatter.Value), batter.Value));
    }
}
