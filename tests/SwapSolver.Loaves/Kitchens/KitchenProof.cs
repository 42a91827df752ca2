using System.Collections.Immutable;
using SwapSolver.Loaves.Exact;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;

namespace SwapSolver.Loaves.Kitchens;

/// <summary>One kitchen solved by a solver of ours, and judged by others and in fractions.</summary>
/// <param name="Kitchen">The kitchen.</param>
/// <param name="Models">Every model that its answer took, as ours and as the other program solved it.</param>
/// <param name="IsAnswered">Whether there are grams to print.</param>
/// <param name="Faults">What is wrong with the printed grams.</param>
/// <param name="Beyond">How far the worst reading of the printed grams lies beyond an end of its band, relative to it.</param>
public sealed record KitchenProof(
    RandomKitchen Kitchen, ImmutableArray<ModelProof> Models, bool IsAnswered, ImmutableArray<string> Faults, double Beyond)
{
    /// <summary>Solves a kitchen and has it judged.</summary>
    /// <param name="kitchen">The kitchen.</param>
    /// <param name="solver">The solver that is put to the proof.</param>
    /// <param name="folder">Where the models' texts go.</param>
    /// <param name="withCbc">Whether cbc judges too.</param>
    public static KitchenProof Of(RandomKitchen kitchen, ISolver solver, string folder, bool withCbc)
    {
        var kept = new KeptSolves(solver);
        var clock = new Deadline(TimeProvider.System, TimeProvider.System.GetUtcNow() + TimeSpan.FromMinutes(5));
        var found = new FormulaSolve(kept).Run(kitchen.Problem, clock, CancellationToken.None);
        var models = kept.Solves.Select((solve, index) =>
        {
            var file = Path.Combine(folder, $"{kitchen.Number}-{index}.mps");
            return ModelProof.Of(solve.Model, solve.Solution, file, withCbc);
        }).ToImmutableArray();
        var (faults, beyond) = found.Formula is { } formula ? ExactJudge.Judge(kitchen.Problem, formula) : ([], 0);
        return new KitchenProof(kitchen, models, found.Formula is not null, faults, beyond);
    }

    /// <summary>Whether the kitchen's first model, in any amounts, has no point.</summary>
    public bool IsInfeasible => !Models[0].Ours.IsFeasible;

    /// <summary>Widest relative distance of two optima; endless where one found a point and the other none.</summary>
    public double Gap => Models.Max(model => model.Gap);

    /// <summary>Whether another program settled every model, none stands against ours, and the printed grams are right.</summary>
    public bool Holds => Faults.IsEmpty && Models.All(model => model.Judge != Judge.Nobody && model.Gap <= ModelProof.Tolerance);

    /// <inheritdoc/>
    public override string ToString() => $"{Kitchen.Name}: {string.Join("; ", Models)}; {string.Join("; ", Faults)}";
}
