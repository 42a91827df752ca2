using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Solving.Panels;

/// <summary>What is in a bag, by its nutrition panel. Every printed figure is rounded, so it is an interval; the answer
/// holds every composition that fits them all, or names the figures that no composition fits.</summary>
/// <param name="Solver">The solver.</param>
/// <param name="Rules">The rules of panels.</param>
/// <param name="Foods">What is taken of a food that states only its composition.</param>
/// <param name="Phrases">The words.</param>
public sealed record PanelComposition(ISolver Solver, PanelRules Rules, FoodRules Foods, Phrases Phrases)
{
    /// <summary>Decimals that are kept of a solver's numbers, in the unit of the fact.</summary>
    private const int Decimals = 5;

    private static readonly ImmutableArray<Fact> Main = [Fact.Fat, Fact.Carbohydrate, Fact.Protein];

    private static readonly ImmutableArray<Fact> Remainder = [Fact.Water, Fact.Ash, Fact.Energy];

    /// <summary>The composition for 100 g, or the clash.</summary>
    /// <param name="panel">The panel, as <see cref="PanelReader"/> reads it.</param>
    /// <param name="like">The ingredient that the food is like: what is not printed is taken after it, as long as no
    /// printed figure speaks against that. Null where none was named; then it stays unknown.</param>
    /// <param name="clock">Time left.</param>
    /// <param name="cancel">Stops the solving.</param>
    public PanelAnswer Of(NutritionPanel panel, Ingredient? like, Deadline clock, CancellationToken cancel)
    {
        var given = new PanelCase(Rules, Foods, panel, like);
        var solve = new PanelSolve(Solver, given, clock, cancel);
        var holds = PanelHolds.All(panel);
        try
        {
            var family = like is not null && solve.CanBeTrue(holds, family: true);
            if (!family && !solve.CanBeTrue(holds, family: false))
            {
                return PanelAnswer.Refused(new PanelClashSearch(solve, Phrases).Find());
            }

            var figures = FiguresOf(solve, holds, family);
            return new PanelAnswer(
                figures, [.. new PanelNotes(given, Phrases).Of(figures, familyGaveWay: like is not null && !family)], null, EndedEarly: false);
        }
        catch (TimeoutException)
        {
            return PanelAnswer.OutOfTime;
        }
    }

    private ImmutableDictionary<Fact, Figure> FiguresOf(PanelSolve solve, PanelHolds holds, bool family)
    {
        var given = solve.Given;
        var model = new PanelModel(given, holds, PanelNorm.HundredGrams, family);
        var point = solve.Run(PanelTypical.Build(given, holds, family)).Values;
        var figures = ImmutableDictionary.CreateBuilder<Fact, Figure>();
        foreach (var fact in PanelFacts.Composition.Where(fact => IsSaid(given, fact, family)))
        {
            var (low, high) = solve.Ends(holds, PanelNorm.HundredGrams, family, fact);
            var column = model.Of(fact, PanelModel.UnitOf(fact));
            var typical = Math.Clamp(Math.Round(column.Coefficient * point[column.Column], Decimals), 0, fact.Most);
            var range = new Range(
                Math.Clamp(Math.Round(low, Decimals), 0, typical), typical, Math.Clamp(Math.Round(high, Decimals), typical, fact.Most));
            figures.Add(fact, FigureOf(given, fact, range));
        }

        return figures.ToImmutable();
    }

    /// <summary>Whether anything is known of a fact: it is printed, the like has it, or it is what the printed ones leave.
    /// What the like has none of by its nature is left out, as long as the food is such a one.</summary>
    private static bool IsSaid(PanelCase given, Fact fact, bool family) =>
        given.MayHold(fact)
        && (given.IsPrinted(fact)
            || (given.Like?.RangeOf(fact) is not null && !given.Like.NoneByNature.Contains(fact))
            || (fact == Fact.Erythritol && given.IsPrinted(Fact.Polyols))
            || (!(family && given.Like!.NoneByNature.Contains(fact)) && Remainder.Contains(fact) && Main.All(given.IsPrinted)));

    private Figure FigureOf(PanelCase given, Fact fact, Range range)
    {
        if (!given.IsPrinted(fact) && given.Like?.Figures.ContainsKey(fact) == true)
        {
            return new Figure(range, Foods.LikeSource, Mark.Memory, null);
        }

        var isAsPrinted = given.Panel.IsPerHundredGrams
            && given.Panel.Figures.Any(pair => pair.Key != PanelLine.Salt
                && PanelFacts.FactOf(pair.Key) == fact
                && given.Panel.Figures[pair.Key].Value.Value == range.Typical);
        return new Figure(range, Foods.PacketSource, isAsPrinted ? Mark.Published : Mark.Calculated, null);
    }
}
