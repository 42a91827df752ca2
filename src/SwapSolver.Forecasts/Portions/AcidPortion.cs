using SwapSolver.Kitchen.Acids;

namespace SwapSolver.Forecasts;

/// <summary>The acid that one line of a formula brings, or one acid of its powder.</summary>
/// <param name="Of">The line.</param>
/// <param name="Acid">What is known of the acid; null for food that is only a little sour.</param>
/// <param name="Equivalents">Protons to the soda end point [mmol].</param>
internal sealed record AcidPortion(BatterLine Of, Leavener? Acid, double Equivalents)
{
    /// <summary>When it frees its gas; null where it is dissolved from the first.</summary>
    public AcidTiming? Timing => Acid switch
    {
        PureAcid pure => pure.Timing,
        FoodAcid food => food.Timing,
        _ => null,
    };

    /// <summary>Share of the acid that is in the water when mixing ends [1]: of a fast one all, though its last bubbles come later.</summary>
    public double DissolvedShare(Doubts doubts) => Acid is PureAcid { DissolvesAtOnce: false } ? MixedShare(doubts) : 1;

    /// <summary>Share of its gas that the acid has freed when mixing ends [1].</summary>
    public double MixedShare(Doubts doubts) =>
        Timing is { } timing ? doubts.Of("mixing share", Acid!.Id, timing.MixingPercent) / 100 : 1;
}
