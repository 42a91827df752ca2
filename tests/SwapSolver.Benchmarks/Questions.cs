using SwapSolver.Kitchen.Formulas;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Benchmarks;

/// <summary>The questions that are measured: a variant of each kind.</summary>
public static class Questions
{
    /// <summary>The one that takes least time, for a dry run.</summary>
    public const string Quickest = "muffins without egg";

    /// <summary>A name, a loaf and what it is to do without.</summary>
    public static IReadOnlyList<(string Name, Formula Formula, string Without)> All { get; } =
    [
        ("walnut loaf without tree nuts", Loaf.Walnut, "tree-nuts"),
        (Quickest, Loaf.Muffins, "egg"),
        ("cocoa cake without milk", Loaf.CocoaCake, "milk"),
        ("sunflower bread without its seed", Loaf.Sunflower, "sunflower-seed-flour"),
    ];

    /// <summary>The models that answering a question solves.</summary>
    public static IReadOnlyList<Model> ModelsOf(string name)
    {
        var (_, formula, without) = All.First(question => question.Name == name);
        var recording = new RecordingSolver();
        var bakehouse = TestKitchen.Bakehouse;
        var wish = new LeavingOut(bakehouse.Pantry, bakehouse.Phrases).Of(without)!;
        new Variant(formula, [wish], Habits.Usual).Answer(
            new AnswerSearch(bakehouse, recording),
            new Deadline(TimeProvider.System, TimeProvider.System.GetUtcNow() + TimeSpan.FromMinutes(1)),
            CancellationToken.None);
        return recording.Models;
    }
}
