using System.Collections.Concurrent;
using SwapSolver.Loaves.Kitchens;
using SwapSolver.OrTools;

namespace SwapSolver.Benchmarks.Kitchens;

/// <summary>Goes through random kitchens by the thousand and writes down what it saw.</summary>
public static class KitchenRun
{
    private static readonly ParallelOptions TwoAtATime = new() { MaxDegreeOfParallelism = 2 };

    /// <summary>Proves so many kitchens, every tenth by cbc too, and the conflicts of a tenth as many that nothing fits, and
    /// writes a page; returns 0 only where nothing disagrees and nothing is open.</summary>
    /// <param name="count">How many kitchens.</param>
    /// <param name="page">The page that is written.</param>
    public static int Write(int count, string page)
    {
        var folder = Directory.CreateTempSubdirectory("swapsolver-kitchens-");
        try
        {
            var wrong = new ConcurrentBag<(int Number, string Fault)>();
            var conflicts = Proven(
                ConflictProof.Hopeless(count / 10, new OrToolsSolver()), wrong, kitchen => ConflictProof.Of(kitchen, new OrToolsSolver()), proof => proof.Faults.IsEmpty);
            var proofs = Proven(
                RandomKitchens.First(count),
                wrong,
                kitchen => KitchenProof.Of(kitchen, new OrToolsSolver(), folder.FullName, withCbc: kitchen.Number % 10 == 0),
                proof => proof.Holds);
            File.WriteAllText(page, KitchenPage.Of(count, proofs, conflicts, [.. wrong.OrderBy(one => one.Number).Select(one => one.Fault)]));
            return wrong.IsEmpty ? 0 : 1;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Two at a time, given in the order of numbers. A kitchen on which a program fails is a fault of that kitchen, and
    /// the others are gone through all the same.</summary>
    private static List<TProof> Proven<TProof>(
        IEnumerable<RandomKitchen> kitchens, ConcurrentBag<(int Number, string Fault)> wrong, Func<RandomKitchen, TProof> prove, Func<TProof, bool> holds)
        where TProof : notnull
    {
        var proofs = new ConcurrentBag<(int Number, TProof Proof)>();
        Parallel.ForEach(Partitioner.Create(kitchens, EnumerablePartitionerOptions.NoBuffering), TwoAtATime, kitchen =>
        {
            try
            {
                var proof = prove(kitchen);
                proofs.Add((kitchen.Number, proof));
                if (!holds(proof))
                {
                    Fault(proof.ToString()!);
                }
            }
            catch (InvalidOperationException failure)
            {
                Fault($"{kitchen.Name}: {failure.Message}");
            }

            void Fault(string words)
            {
                wrong.Add((kitchen.Number, words));
                System.Console.Error.WriteLine(words);
            }
        });
        return [.. proofs.OrderBy(one => one.Number).Select(one => one.Proof)];
    }
}
