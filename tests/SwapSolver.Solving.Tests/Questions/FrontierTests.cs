using System.Collections.Concurrent;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Questions;

public sealed class FrontierTests
{
    /// <summary>Apart by less than this, of itself, two readings are the same [1]: the recheck's own tolerance.</summary>
    private const double Same = 1e-6;

    private const int Points = 5;

    private static readonly ConcurrentDictionary<string, (Formula Loaf, List<FrontierPoint> Points)> Known = new(StringComparer.Ordinal);

    public static TheoryData<string, string, string> Traded => new()
    {
        { "Walnut", "net-carbohydrate", "protein" },
        { "Sunflower", "energy", "fibre" },
        { "Muffins", "salt", "net-carbohydrate" },
        { "CocoaCake", "net-carbohydrate", "protein" },
        { "Yeast", "protein", "energy" },
    };

    [Theory]
    [MemberData(nameof(Traded))]
    public void No_point_is_better_in_both_readings_than_another(string name, string first, string second)
    {
        var (loaf, points) = Traced(name, first, second);
        Assert.True(points.Count >= 2, $"{points.Count} points");
        var (one, other) = (Reading(first), Reading(second));
        Expect.None(
            from point in points
            from rival in points
            where rival != point && IsNoWorse(one, rival.First, point.First) && IsNoWorse(other, rival.Second, point.Second)
            select $"{point.First.Value} {point.Second.Value} is beaten by {rival.First.Value} {rival.Second.Value}");
        foreach (var point in points)
        {
            // The printed grams alone have the readings, and keep the crumb.
            Assert.Equal(point.First, one.Balance.Read(point.Answer.Formula, loaf, Draws.Typical));
            Assert.Equal(point.Second, other.Balance.Read(point.Answer.Formula, loaf, Draws.Typical));
            Expect.None(Crumb.Faults(loaf, point.Answer.Formula));
        }
    }

    [Theory]
    [MemberData(nameof(Traded))]
    public void No_formula_beats_a_point(string name, string first, string second)
    {
        // Asked for in another way: a formula that is better in the first reading and no worse in the second, by bands alone.
        var (loaf, points) = Traced(name, first, second);
        var (one, other) = (Reading(first), Reading(second));
        foreach (var point in points)
        {
            var problem = new Frontier(loaf, one, other, Points, [], Habits.Usual).Problem(TestKitchen.Bakehouse);
            var better = problem with { Holds = [.. problem.Holds, Beyond(one, point.First.Value, 1e-4), Beyond(other, point.Second.Value, 0)] };
            Assert.NotEqual(Outcome.Optimal, Ask.Solve.RunInSteps(better, Ask.Ample, CancellationToken.None).Outcome);
        }
    }

    [Fact]
    public void The_ends_are_those_that_counting_every_bowl_finds()
    {
        // Three lines that may move in steps of 10 g and eggs of 50 g: few enough bowls to weigh them all.
        var loaf = Bowl.Of(("almond-meal", 100), ("sunflower-seed-flour", 100), ("psyllium-husk-powder", 20), ("water", 200)).WithEggs(4);
        var habits = Habits.Usual with { NewIngredients = 0, ScaleStep = new Grams(10) };
        var (one, other) = (Reading("net-carbohydrate"), Reading("protein"));
        var frontier = new Frontier(loaf, one, other, 20, [], habits);
        var problem = frontier.Problem(TestKitchen.Bakehouse);
        var kept = (
            from almond in Steps(0, 220, 10)
            from sunflower in Steps(0, 220, 10)
            from psyllium in Steps(0, 40, 10)
            from water in Steps(0, 270, 10)
            from eggs in Steps(0, 6, 1)
            let bowl = Bowl.Of(("almond-meal", almond), ("sunflower-seed-flour", sunflower), ("psyllium-husk-powder", psyllium), ("water", water)).WithEggs((int)eggs)
            where !Recheck.BrokenHolds(problem.Holds, loaf, bowl, Draws.Typical).Any() && IsInItsRoom(problem, bowl)
            select (First: one.Balance.Read(bowl, loaf, Draws.Typical)!.Value.Value, Second: other.Balance.Read(bowl, loaf, Draws.Typical)!.Value.Value)).ToList();
        Assert.True(kept.Count > 20, $"{kept.Count} bowls");
        var best = kept.Where(bowl => !kept.Any(rival =>
            rival.First <= bowl.First + 1e-12 && rival.Second >= bowl.Second - 1e-12 && (rival.First < bowl.First - 1e-12 || rival.Second > bowl.Second + 1e-12))).Distinct().ToList();

        var points = frontier.Trace(Ask.Search, Ask.Ample, CancellationToken.None).ToList();
        Assert.Equal(best.Min(bowl => bowl.First), points[0].First.Value, 9);
        if (points.Count > 1)
        {
            Assert.Equal(best.Max(bowl => bowl.Second), points[1].Second.Value, 9);
        }

        Assert.All(points, point => Assert.Contains(best, bowl => Math.Abs(bowl.First - point.First.Value) < 1e-9 && Math.Abs(bowl.Second - point.Second.Value) < 1e-9));
    }

    [Fact]
    public void A_ratio_is_led_to_its_end_as_well_as_a_sum()
    {
        // Hydration is water by water bound. Its default band still holds, 6 % to either side, and water comes in grams, so
        // the wettest loaf lies on the end of that band but for less than a gram of water.
        var wettest = new Frontier(Loaf.Walnut, Reading("hydration:higher"), Reading("net-carbohydrate"), 2, [], Habits.Usual)
            .Trace(Ask.Search, Ask.Ample, CancellationToken.None)
            .First();
        var own = Reading("hydration:higher").Balance.Read(Loaf.Walnut, Loaf.Walnut, Draws.Typical)!.Value.Value;
        Assert.InRange(wettest.First.Value, 1.055 * own, 1.06 * own * (1 + Same));
    }

    [Fact]
    public void Time_that_runs_out_leaves_only_points_that_are_proven()
    {
        var over = new Deadline(TimeProvider.System, TimeProvider.System.GetUtcNow());
        Assert.Empty(new Frontier(Loaf.Walnut, Reading("net-carbohydrate"), Reading("protein"), 5, [], Habits.Usual).Trace(Ask.Search, over, CancellationToken.None));
    }

    [Fact]
    public void Who_stops_reading_stops_the_search()
    {
        using var stop = new CancellationTokenSource();
        var trace = new Frontier(Loaf.Walnut, Reading("net-carbohydrate"), Reading("protein"), 9, [], Habits.Usual).Trace(Ask.Search, Ask.Ample, stop.Token).GetEnumerator();
        Assert.True(trace.MoveNext());
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => trace.MoveNext());
    }

    private static IEnumerable<double> Steps(double from, double to, double step)
    {
        for (var value = from; value <= to; value += step)
        {
            yield return value;
        }
    }

    /// <summary>What the model grants each line, by its own page: half of a line stays, liquids may go, usage is a ceiling.</summary>
    private static bool IsInItsRoom(FormulaProblem problem, Formula bowl) => bowl.Lines.All(line =>
    {
        var before = problem.Start.MassOf(line.Ingredient).Value;
        var flours = problem.Reference.MassOf(Role.Flour);
        var most = line.Ingredient.Usage.Most(flours, problem.Reference.BatterMass).Value;
        var role = problem.Reference.MassOf(line.Ingredient.Role).Value;
        var keeps = problem.Holds.FirstOrDefault(hold => hold.Balance is RoleMass mass && mass.Role == line.Ingredient.Role)?.Band.High?.Value ?? double.PositiveInfinity;
        most = Math.Min(most, keeps * role);
        if (line.Ingredient.Role == Role.Liquid)
        {
            most = Math.Min(most, keeps * before);
        }

        var least = line.Ingredient.Role == Role.Liquid ? 0 : Math.Max(before / 2, Math.Min(line.Ingredient.Usage.SensibleMinimum.Value, before));
        return line.Grams.Value >= least - 1e-9 && line.Grams.Value <= Math.Max(most, before) + 1e-9;
    });

    private static Hold Beyond(TradedReading reading, double level, double by) => Targets.Of(
        reading.Balance,
        reading.Better == Better.Lower ? new Band(null, new Level(level * (1 - by))) : new Band(new Level(level * (1 + by)), null));

    private static bool IsNoWorse(TradedReading reading, Level one, Level other) =>
        (one.Value - other.Value) * (reading.Better == Better.Lower ? 1 : -1) <= Same * other.Value;

    private static TradedReading Reading(string words)
    {
        var parts = words.Split(':');
        var balance = TestKitchen.Bakehouse.Balances.Find(parts[0])!;
        return new TradedReading(balance, parts.Length > 1 ? Enum.Parse<Better>(parts[1], ignoreCase: true) : balance.Settings.Target.Better);
    }

    /// <summary>Traced once: each test looks at the same points in its own way.</summary>
    private static (Formula Loaf, List<FrontierPoint> Points) Traced(string name, string first, string second) =>
        Known.GetOrAdd(name, _ =>
        {
            var loaf = Loaf.All.Single(one => one.Name == name).Formula;
            return (loaf, [.. new Frontier(loaf, Reading(first), Reading(second), Points, [], Habits.Usual).Trace(Ask.Search, Ask.Ample, CancellationToken.None)]);
        });
}
