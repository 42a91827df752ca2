using SwapSolver.Kitchen.Balances;
using SwapSolver.Loaves;
using SwapSolver.Loaves.Kitchens;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using Xunit.Abstractions;

namespace SwapSolver.Solving.Tests.Answers;

/// <summary>Conflicts of kitchens that nobody thought of.</summary>
public sealed class RandomConflictsTests(ITestOutputHelper output)
{
    private const int Kitchens = 25;

    private const string NewIngredients = "new-ingredients";

    private static readonly ConflictSearch Search = new(Ask.Solve, TestKitchen.Bakehouse.Phrases);

    [Fact]
    public void The_set_fights_and_without_any_one_of_it_the_rest_can_be_met()
    {
        var faults = new List<string>();
        var sizes = new List<int>();
        foreach (var kitchen in Enumerable.Range(0, 40 * Kitchens).Select(RandomKitchens.Of))
        {
            var problem = RandomKitchens.Loosened(kitchen.Problem);
            if (Ask.CanBeMet(problem) != Outcome.Infeasible)
            {
                continue;
            }

            var found = Search.Find(problem, Ask.Ample, CancellationToken.None);
            var set = found.Wishes.Select(one => one.Wish).ToHashSet();
            sizes.Add(set.Count);
            // Where the room of roles cannot be kept by itself, it is among the wishes; else it stands behind all of them.
            var roomStays = Ask.CanBeMet(Only(problem, [], roomStays: true)) != Outcome.Infeasible;
            var name = $"{kitchen.Name}: {string.Join(", ", set)}";
            if (found.EndedEarly || set.Count == 0 || Ask.CanBeMet(Only(problem, set, roomStays)) != Outcome.Infeasible)
            {
                faults.Add($"{name} do not fight");
            }

            faults.AddRange(set.Where(wish => Ask.CanBeMet(Only(problem, [.. set.Except([wish])], roomStays)) != Outcome.Optimal).Select(wish => $"{name} fight without {wish}"));
            if (sizes.Count == Kitchens)
            {
                break;
            }
        }

        output.WriteLine($"{sizes.Count} infeasible kitchens, sets of {string.Join(", ", sizes.GroupBy(size => size).OrderBy(group => group.Key).Select(group => $"{group.Key} wishes: {group.Count()}"))}");
        Assert.Equal(Kitchens, sizes.Count);
        Expect.None(faults);
    }

    private static FormulaProblem Only(FormulaProblem problem, HashSet<string> wishes, bool roomStays) => problem with
    {
        Holds = [.. problem.Holds.Where(hold => wishes.Contains(hold.Id) || (roomStays && !hold.FromCaller && hold.Balance is (RoleMass or BatterMass)))],
        Habits = problem.Habits with
        {
            WeighedEgg = problem.Habits.WeighedEgg || !wishes.Contains("whole-eggs"),
            NewIngredients = wishes.Contains(NewIngredients) ? problem.Habits.NewIngredients : problem.Candidates.Length,
        },
    };
}
