using System.Collections.Immutable;
using SwapSolver.Loaves.Kitchens;
using Xunit.Abstractions;

namespace SwapSolver.Solving.Tests.Answers;

/// <summary>Conflicts of kitchens that nobody thought of. The benchmarks' <c>--kitchens</c> goes through hundreds of the same kind.</summary>
public sealed class RandomConflictsTests(ITestOutputHelper output)
{
    private const int Kitchens = 25;

    /// <summary>Kitchens in which a wish that was needed among all was needless among the last.</summary>
    private static readonly ImmutableArray<int> NeedlessInTheEnd = [167, 192, 247, 258, 276, 298, 330];

    [Fact]
    public void The_set_fights_and_without_any_one_of_it_the_rest_can_be_met()
    {
        var proofs = ConflictProof.Hopeless(Kitchens, Ask.Search.Solver).Concat(NeedlessInTheEnd.Select(RandomKitchens.Of))
            .Select(kitchen => ConflictProof.Of(kitchen, Ask.Search.Solver)).ToList();
        output.WriteLine($"{proofs.Count} infeasible kitchens, sets of {string.Join(", ", proofs.CountBy(proof => proof.Wishes.Length).OrderBy(size => size.Key).Select(size => $"{size.Key} wishes: {size.Value}"))}");
        Assert.Equal(Kitchens + NeedlessInTheEnd.Length, proofs.Count);
        Expect.None(proofs.Where(proof => !proof.Faults.IsEmpty).Select(proof => proof.ToString()));
    }
}
