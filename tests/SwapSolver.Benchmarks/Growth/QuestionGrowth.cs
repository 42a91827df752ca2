using BenchmarkDotNet.Attributes;
using SwapSolver.Loaves;
using SwapSolver.OrTools;
using SwapSolver.Solving;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Benchmarks.Growth;

/// <summary>A question, from choosing what may come in to the explained answers, by the foods in the pantry.</summary>
public class QuestionGrowth : IGrowth
{
    private readonly OrToolsSolver solver = new();

    private Dictionary<int, Bakehouse> kitchens = [];

    /// <summary>Names of the questions.</summary>
    public static IEnumerable<string> Names => Questions.All.Select(question => question.Name);

    /// <summary>The question.</summary>
    [ParamsSource(nameof(Names))]
    public string Question { get; set; } = string.Empty;

    /// <summary>What kind of foods they are.</summary>
    [Params(FoodsOf.Table, FoodsOf.Like)]
    public string Foods { get; set; } = string.Empty;

    /// <summary>Fills the pantries.</summary>
    [GlobalSetup]
    public void Fill() => kitchens = new[] { 100, 1_000, 8_000 }.ToDictionary(
        count => count, count => TestKitchen.Bakehouse with { Pantry = ManyFoods.PantryWith(FoodsOf.Kind(Foods, count)) });

    /// <inheritdoc/>
    [Benchmark(Baseline = true)]
    public int Of100() => Ask(kitchens[100]);

    /// <inheritdoc/>
    [Benchmark]
    public int Of1000() => Ask(kitchens[1_000]);

    /// <inheritdoc/>
    [Benchmark]
    public int Of8000() => Ask(kitchens[8_000]);

    private int Ask(Bakehouse bakehouse)
    {
        var (_, formula, without) = Questions.All.First(question => question.Name == Question);
        var wish = new LeavingOut(bakehouse.Pantry, bakehouse.Phrases).Of(without)!;
        return new Variant(formula, [wish], Habits.Usual).Answer(
            new AnswerSearch(bakehouse, solver),
            new Deadline(TimeProvider.System, TimeProvider.System.GetUtcNow() + TimeSpan.FromMinutes(1)),
            CancellationToken.None).Answers.Length;
    }
}
