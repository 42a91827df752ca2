using SwapSolver.Loaves.Kitchens;
using Xunit.Abstractions;

namespace SwapSolver.OrTools.Tests.IndependentSolvers;

/// <summary>Kitchens that nobody thought of. The benchmarks' <c>--kitchens</c> goes through thousands of the same kind.</summary>
public sealed class RandomKitchensTests(ITestOutputHelper output)
{
    private const int Kitchens = 150;

    /// <summary>A kitchen whose best two choices count 7e-6 apart: less than CBC's own step from one answer to a better one.</summary>
    [Fact]
    public void A_choice_that_is_better_by_a_hundred_thousandth_is_found()
    {
        var folder = Directory.CreateTempSubdirectory("swapsolver-kitchens-");
        try
        {
            var proof = KitchenProof.Of(RandomKitchens.Of(1899), new OrToolsSolver(), folder.FullName, withCbc: true);
            Assert.True(proof.Holds, proof.ToString());
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void Another_program_finds_the_same_optimum_or_none_either_and_the_printed_grams_are_right_in_fractions()
    {
        var folder = Directory.CreateTempSubdirectory("swapsolver-kitchens-");
        try
        {
            var proofs = new KitchenProof[Kitchens];
            Parallel.For(0, Kitchens, new ParallelOptions { MaxDegreeOfParallelism = 2 }, number =>
                proofs[number] = KitchenProof.Of(RandomKitchens.Of(number), new OrToolsSolver(), folder.FullName, withCbc: number % 10 == 0));
            output.WriteLine($"{proofs.Count(proof => proof.IsInfeasible)} of {Kitchens} infeasible, {proofs.Sum(proof => proof.Models.Length)} models, {proofs.Count(proof => proof.IsAnswered)} answered");
            output.WriteLine($"widest apart: {proofs.MaxBy(proof => proof.Gap)}; furthest beyond a band {proofs.Max(proof => proof.Beyond):G3}");
            Assert.Empty(proofs.Where(proof => !proof.Holds).Select(proof => proof.ToString()));
            Assert.Empty(proofs.Where(proof => proof.Models.Any(model => model.Judge != Judge.Glpsol)).Select(proof => proof.ToString()));
            Assert.True(proofs.Count(proof => proof.IsInfeasible) >= Kitchens / 10, "too few kitchens are infeasible to prove anything");
            Assert.True(proofs.Count(proof => proof.IsAnswered) >= Kitchens / 3, "too few kitchens have an answer to prove anything");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
