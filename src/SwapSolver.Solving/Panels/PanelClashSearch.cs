using System.Collections.Immutable;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Solving.Panels;

/// <summary>Why a panel cannot be true: a smallest set of its figures, found by leaving them away one at a time.</summary>
/// <param name="Solve">The solving.</param>
/// <param name="Phrases">The words.</param>
internal sealed record PanelClashSearch(PanelSolve Solve, Phrases Phrases)
{
    /// <summary>The order of leaving away: what may go first is said last. A clash of a part with its whole, or of masses
    /// with the serving, is plainer than one with the energy.</summary>
    private static readonly ImmutableArray<PanelLine?> Order =
    [
        PanelLine.Iron, PanelLine.Calcium, PanelLine.Potassium, PanelLine.EnergyKilojoules, PanelLine.EnergyKcal, PanelLine.Sodium,
        PanelLine.Salt, PanelLine.Starch, PanelLine.Erythritol, PanelLine.Allulose, PanelLine.Polyols, null, PanelLine.Fibre,
        PanelLine.Sugars, PanelLine.SaturatedFat, PanelLine.Protein, PanelLine.Carbohydrate, PanelLine.Fat,
    ];

    /// <summary>The clash of a panel that cannot be true.</summary>
    /// <exception cref="TimeoutException">Time ran out.</exception>
    public PanelClash Find()
    {
        var panel = Solve.Given.Panel;
        var left = PanelHolds.All(panel);
        var fighting = new List<PanelLine?>();
        foreach (var one in Order.Where(one => one is { } line ? panel.Figures.ContainsKey(line) : !panel.IsPerHundredGrams))
        {
            var without = left.Without(one);
            if (Solve.CanBeTrue(without, family: false))
            {
                fighting.Add(one);
            }
            else
            {
                left = without;
            }
        }

        fighting.Reverse();
        return new PanelClash([.. fighting.Select(FigureOf)], new PanelClashWords(Solve, Phrases).Say(left));
    }

    private ClashingFigure FigureOf(PanelLine? one)
    {
        var words = new FigureWords(Solve.Given, Phrases);
        return one is { } line
            ? new ClashingFigure(line, words.Of(line), Solve.Given.IntervalOf(line), Solve.Given.Law.Words[line].Unit)
            : new ClashingFigure(null, words.Serving, Solve.Given.Serving, "g");
    }
}
