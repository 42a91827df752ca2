using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Service.Access;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Records;
using SwapSolver.Service.Stored;
using SwapSolver.Service.Translation;
using Domain = SwapSolver.Kitchen.Formulas;
using KnownBake = SwapSolver.Forecasts.KnownBake;

namespace SwapSolver.Service.Learned;

/// <summary>A bake of this kitchen to hold a forecast against, and the trial that it is.</summary>
internal sealed record OwnBake(KnownBake Bake, string Trial);

/// <summary>Finds among the kitchen's trials the bake that a forecast is held against: of the same formula where there is one,
/// else of the same oven. How long it took is told by all trials together, not by the one alone.</summary>
internal sealed class KitchenAnchor(KitchenShelf shelf, KitchenToday kitchen, Caller caller)
{
    /// <summary>A dial that differs by more is another oven setting [K].</summary>
    private const double LikeOven = 15;

    /// <summary>A kitchen that lies further up or down boils its water elsewhere [m].</summary>
    private const double LikeHeight = 100;

    private readonly KitchenLearning learning = new(shelf);

    /// <summary>The bake; null where there is none that is like enough, or the oven's factor was turned off.</summary>
    /// <param name="name">Name of the formula that is asked about; empty for one that is given inline.</param>
    /// <param name="formula">The formula.</param>
    /// <param name="conditions">How it is to be baked.</param>
    public OwnBake? For(string name, Domain.Formula formula, BakeConditions conditions)
    {
        if (caller.SeesOnlyPublished || learning.Find(shelf.Learning.OvenFactor.Id) is not { IsUsed: true } oven)
        {
            return null;
        }

        var id = ResourceName.FormulaParts(name).Id;
        var counted = oven.Evidence.Select(one => one.Trial).ToHashSet(StringComparer.Ordinal);
        foreach (var (trial, stored) in learning.Trials().Reverse().OrderBy(one => one.Stored.Formula == id ? 0 : 1))
        {
            var like = counted.Contains(TrialDocument.NameOf(stored)) && trial.HasCoreCelsius && trial.ColdStart == conditions.IsColdStart
                && Math.Abs(trial.AltitudeMetres - conditions.Altitude.Value) <= LikeHeight
                && trial.CoreCelsius <= kitchen.Search.Bakehouse.Bake.HighestCore(conditions.Altitude).Value;
            if (like && Baked(trial, stored.Formula, stored.Revision) is { } baked && IsLikeOven(baked.Oven, formula.Oven))
            {
                var minutes = trial.Foretold.Minutes * oven.Belief.Told().Typical;
                return new OwnBake(new KnownBake(WithLoss(baked, stored.Formula), new Minutes(minutes), new Celsius(trial.CoreCelsius)), TrialDocument.NameOf(stored));
            }
        }

        return null;
    }

    private static bool IsLikeOven(Domain.Oven? one, Domain.Oven? other) =>
        one is null || other is null || (one.Fan == other.Fan && Math.Abs(one.Dial.Value - other.Dial.Value) <= LikeOven);

    private Domain.Formula? Baked(V1.Trial trial, string formula, long revision)
    {
        if (shelf.Records.Formulas.Find(formula, revision) is not var (_, saved))
        {
            return null;
        }

        var problems = new ProblemList();
        var read = new FormulaReader(kitchen.Pantry, kitchen.Lines, problems).Read(TrialDocument.BakedFormula(trial, FormulaDocument.Read(saved.Document)), "formula").Formula;
        return problems.Count == 0 && read.States(Kitchen.Ingredients.Fact.Water) ? read : null;
    }

    private Domain.Formula WithLoss(Domain.Formula baked, string formula) =>
        learning.Find(shelf.Learning.BakeLossOf(formula).Id) is { IsUsed: true } loss ? baked with { BakeLoss = new Percent(loss.Belief.Told().Typical) } : baked;
}
