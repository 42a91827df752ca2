using System.Globalization;
using SwapSolver.Loaves.Kitchens;
using SwapSolver.OrTools;

namespace SwapSolver.Benchmarks.Kitchens;

/// <summary>Goes through random kitchens by the thousand and writes down what it saw.</summary>
public static class KitchenRun
{
    /// <summary>How far two proven optima may lie apart, relative to the larger or to 1, as in the tests.</summary>
    private const double Tolerance = 1e-6;

    /// <summary>Proves so many kitchens, every tenth by cbc too, and writes a page; returns 0 only where nothing disagrees.</summary>
    /// <param name="count">How many kitchens.</param>
    /// <param name="page">The page that is written.</param>
    public static int Write(int count, string page)
    {
        var folder = Directory.CreateTempSubdirectory("swapsolver-kitchens-");
        try
        {
            var proofs = new KitchenProof[count];
            Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, number =>
                proofs[number] = KitchenProof.Of(RandomKitchens.Of(number), new OrToolsSolver(), folder.FullName, withCbc: number % 10 == 0));
            var wrong = proofs.Where(proof => proof.Gap > Tolerance || !proof.Faults.IsEmpty).Select(proof => proof.ToString()).ToList();
            File.WriteAllText(page, Page(proofs, wrong));
            wrong.ForEach(Console.Error.WriteLine);
            return wrong.Count == 0 ? 0 : 1;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string Page(KitchenProof[] proofs, List<string> wrong)
    {
        var models = proofs.SelectMany(proof => proof.Models).ToList();
        return string.Create(CultureInfo.InvariantCulture, $"""
            # Random kitchens, each model by ours, by glpsol and every tenth kitchen's by cbc

            Written by `dotnet run -c Release --project tests/SwapSolver.Benchmarks -- --kitchens {proofs.Length}`; the same number gives the same kitchens.

            | what | count |
            | --- | ---: |
            | kitchens | {proofs.Length} |
            | infeasible in any amounts | {proofs.Count(proof => proof.IsInfeasible)} |
            | answered, printed grams judged in fractions | {proofs.Count(proof => proof.IsAnswered)} |
            | feasible in any amounts, not in steps of the scale | {proofs.Count(proof => !proof.IsInfeasible && !proof.IsAnswered)} |
            | models compared | {models.Count} |
            | by cbc | {models.Count(model => model.Cbc is not null)} |
            | not settled by glpsol in a minute | {models.Count(model => model.Glpsol is null)} |
            | kitchens that disagree, or whose grams break something | {wrong.Count} |

            Widest distance of two optima, relative to the larger or to 1: {models.Max(model => model.Gap):G3}.
            Furthest that a printed reading lies beyond an end of its band, relative to it: {proofs.Max(proof => proof.Beyond):G3}.
            {string.Concat(wrong.Select(one => $"\n- {one}"))}
            """).TrimEnd() + "\n";
    }
}
