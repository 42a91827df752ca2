using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.OrTools;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Answers;

public sealed class SlackSearchTests
{
    private static readonly FormulaSolve Solve = new(new OrToolsSolver());

    public static TheoryData<string, string> Questions
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var (name, _) in Loaf.All)
            {
                foreach (var wish in new[] { "tree-nuts", "egg", "milk" })
                {
                    data.Add(name, wish);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Questions))]
    public void What_room_would_buy_is_what_a_fresh_solve_with_that_room_gives(string loaf, string without)
    {
        var problem = new Variant(
            Loaf.All.Single(pair => pair.Name == loaf).Formula,
            [new LeavingOut(TestKitchen.Bakehouse.Pantry, TestKitchen.Bakehouse.Phrases).Of(without)!],
            Habits.Usual).Problem(TestKitchen.Bakehouse);
        var clock = new Deadline(TimeProvider.System, TimeProvider.System.GetUtcNow() + TimeSpan.FromSeconds(60));
        var found = Solve.RunRounded(problem, clock, default);
        foreach (var slack in new SlackSearch(Solve.Solver, TestKitchen.Bakehouse.Phrases).Of(problem, found, default))
        {
            Assert.InRange(slack.Gained / slack.Foretold, 0.95, 1.05);
            Assert.True(slack.Gained > 0 && slack.Further.Value > 0, slack.Words);
            // With that room, and what else may move, nothing gets worse: only the distances to the band's ends are counted anew.
            var loosened = problem with { Holds = [.. problem.Holds.Select(hold => hold.Balance == slack.Balance ? hold with { Band = Wider(hold.Band, slack) } : hold)], Anchors = [] };
            var tight = Solve.RunRounded(problem with { Anchors = [] }, clock, default);
            Assert.True(Solve.RunRounded(loosened, clock, default).Objective <= tight.Objective + 1e-6, slack.Words);
        }
    }

    [Fact]
    public void Some_answers_say_what_room_would_buy()
    {
        var search = new AnswerSearch(TestKitchen.Bakehouse, new OrToolsSolver());
        var wish = new LeavingOut(TestKitchen.Bakehouse.Pantry, TestKitchen.Bakehouse.Phrases).Of("tree-nuts")!;
        var clock = new Deadline(TimeProvider.System, TimeProvider.System.GetUtcNow() + TimeSpan.FromSeconds(60));
        var told = Loaf.All.SelectMany(pair => new Variant(pair.Formula, [wish], Habits.Usual).Answer(search, clock, default).Answers).SelectMany(answer => answer.Slack).ToList();

        Assert.NotEmpty(told);
        Assert.All(told, slack => Assert.Contains(slack.Ingredient.Name, slack.Words, StringComparison.Ordinal));
    }

    private static Band Wider(Band band, Slack slack) => slack.Side == Side.Low
        ? band with { Low = new Level(band.Low!.Value.Value - slack.Further.Value) }
        : band with { High = new Level(band.High!.Value.Value + slack.Further.Value) };
}
