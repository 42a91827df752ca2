using System.Globalization;
using SwapSolver.Loaves.Kitchens;

namespace SwapSolver.Benchmarks.Kitchens;

/// <summary>What was seen in random kitchens, as a page.</summary>
public static class KitchenPage
{
    /// <summary>Writes the page.</summary>
    /// <param name="count">How many kitchens were gone through.</param>
    /// <param name="proofs">Those on which no program failed.</param>
    /// <param name="conflicts">Kitchens that nothing fits.</param>
    /// <param name="wrong">What is wrong or open, a line a kitchen.</param>
    public static string Of(int count, List<KitchenProof> proofs, List<ConflictProof> conflicts, List<string> wrong)
    {
        var models = proofs.SelectMany(proof => proof.Models).ToList();
        return string.Create(CultureInfo.InvariantCulture, $"""
            # Random kitchens, each model by ours, by glpsol and every tenth kitchen's by cbc

            Written by `dotnet run -c Release --project tests/SwapSolver.Benchmarks -- --kitchens {count}`; the same number gives the same kitchens.

            | what | count |
            | --- | ---: |
            | kitchens | {count} |
            | of them failed, so that nothing is known | {count - proofs.Count} |
            | infeasible in any amounts | {proofs.Count(proof => proof.IsInfeasible)} |
            | answered, printed grams judged in fractions | {proofs.Count(proof => proof.IsAnswered)} |
            | feasible in any amounts, not in steps of the scale | {proofs.Count(proof => !proof.IsInfeasible && !proof.IsAnswered)} |
            | printed grams that break something | {proofs.Count(proof => !proof.Faults.IsEmpty)} |
            | models | {models.Count} |
            | settled: glpsol says the same | {models.Count(model => model.Judge == Judge.Glpsol)} |
            | settled: glpsol does not, cbc says the same | {models.Count(model => model.Judge == Judge.Cbc)} |
            | open: neither says the same | {models.Count(model => model.Judge == Judge.Nobody)} |
            | models that cbc solved too | {models.Count(model => model.Cbc is not null)} |
            | glpsol's choices not whole, or its minute over | {models.Count(model => model.Glpsol is null)} |
            | glpsol says otherwise | {models.Count(model => Differs(model, model.Glpsol))} |
            | cbc says otherwise | {models.Count(model => Differs(model, model.Cbc))} |
            | models in which another's better point stands in fractions, or ours does not | {models.Count(model => model.Gap > ModelProof.Tolerance)} |

            Where another program says otherwise, the better of the two points is solved again in fractions with its choices made whole.
            Widest distance of two optima that stands, relative to the larger or to 1: {models.Max(model => model.Gap):G3}.
            Furthest that a printed reading lies beyond an end of its band, relative to it: {proofs.Max(proof => proof.Beyond):G3}.

            {conflicts.Count} kitchens that nothing fits: the wishes that are said to fight do, and without any one of them the rest can be met, in
            {conflicts.Count(proof => proof.Faults.IsEmpty)} of them. Sets of {string.Join(", ", conflicts.CountBy(proof => proof.Wishes.Length).OrderBy(size => size.Key).Select(size => $"{size.Key}: {size.Value}"))}.
            {string.Concat(wrong.Select(one => $"\n- {one}"))}
            """).TrimEnd() + "\n";
    }

    private static bool Differs(ModelProof model, Loaves.IndependentSolvers.Verdict? other) =>
        other is not null && model.Ours.Apart(other) > ModelProof.Tolerance;
}
