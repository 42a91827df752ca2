using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;

namespace SwapSolver.Loaves.Kitchens;

/// <summary>The wishes that are said to fight each other in a kitchen that nothing fits, tried again one by one.</summary>
/// <param name="Kitchen">The kitchen.</param>
/// <param name="Wishes">The wishes that are said to fight.</param>
/// <param name="Faults">What is wrong with them: together they can be met, or without one of them the rest still cannot.</param>
public sealed record ConflictProof(RandomKitchen Kitchen, ImmutableArray<string> Wishes, ImmutableArray<string> Faults)
{
    private const string NewIngredients = "new-ingredients";

    private const string WholeEggs = "whole-eggs";

    /// <summary>The first so many kitchens that nothing fits, even with the room of the second way.</summary>
    public static IEnumerable<RandomKitchen> Hopeless(int count, ISolver solver) =>
        Enumerable.Range(0, 40 * count).Select(RandomKitchens.Of)
            .Where(kitchen => Met(RandomKitchens.Loosened(kitchen.Problem), solver) == Outcome.Infeasible)
            .Take(count);

    /// <summary>Seeks the wishes that fight and tries them.</summary>
    public static ConflictProof Of(RandomKitchen kitchen, ISolver solver)
    {
        var problem = RandomKitchens.Loosened(kitchen.Problem);
        var found = new ConflictSearch(new FormulaSolve(solver), TestKitchen.Bakehouse.Phrases).Find(problem, Ample, CancellationToken.None);
        var set = found.Wishes.Select(one => one.Wish).ToImmutableArray();
        // Where the room of roles cannot be kept by itself, it is among the wishes; else it stands behind all of them.
        var roomStays = Met(Only(problem, [], roomStays: true), solver) != Outcome.Infeasible;
        var faults = ImmutableArray.CreateBuilder<string>();
        if (found.EndedEarly || set.IsEmpty || Met(Only(problem, set, roomStays), solver) != Outcome.Infeasible)
        {
            faults.Add("they do not fight");
        }

        faults.AddRange(set.Where(wish => Met(Only(problem, set.Remove(wish), roomStays), solver) != Outcome.Optimal).Select(wish => $"they fight without {wish}"));
        return new ConflictProof(kitchen, set, faults.ToImmutable());
    }

    private static Deadline Ample => new(TimeProvider.System, TimeProvider.System.GetUtcNow().AddMinutes(2));

    private static Outcome Met(FormulaProblem problem, ISolver solver) => new FormulaSolve(solver).CanBeMet(problem, Ample, CancellationToken.None);

    private static FormulaProblem Only(FormulaProblem problem, ImmutableArray<string> wishes, bool roomStays) => problem with
    {
        Holds = [.. problem.Holds.Where(hold => wishes.Contains(hold.Id) || (roomStays && !hold.FromCaller && hold.Balance is (RoleMass or BatterMass)))],
        Habits = problem.Habits with
        {
            WeighedEgg = problem.Habits.WeighedEgg || !wishes.Contains(WholeEggs),
            NewIngredients = wishes.Contains(NewIngredients) ? problem.Habits.NewIngredients : problem.Candidates.Length,
        },
    };

    /// <inheritdoc/>
    public override string ToString() => $"{Kitchen.Name}: {string.Join(", ", Wishes)}: {string.Join("; ", Faults)}";
}
