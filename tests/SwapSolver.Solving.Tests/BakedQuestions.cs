using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests;

/// <summary>A question with what came of it.</summary>
/// <param name="Name">The question in words.</param>
/// <param name="Formula">The formula that it is of.</param>
/// <param name="Wishes">What was wished.</param>
/// <param name="Outcomes">What came of it.</param>
internal sealed record BakedQuestion(string Name, Formula Formula, ImmutableArray<Hold> Wishes, Outcomes Outcomes)
{
    /// <summary>Every formula that was shown: answers, and the nearest where there is none.</summary>
    public IEnumerable<Formula> Shown =>
        Outcomes.Answers.Select(answer => answer.Formula).Concat(Outcomes.Nearest is { } nearest ? [nearest.Formula] : []);
}

/// <summary>Every loaf asked to do without every allergen, some groups and ingredients, and to keep limits; each asked once.</summary>
internal static class BakedQuestions
{
    private static readonly Lazy<ImmutableArray<BakedQuestion>> Baked = new(Bake);

    /// <summary>All of them.</summary>
    public static ImmutableArray<BakedQuestion> All => Baked.Value;

    /// <summary>Each answer with its question.</summary>
    public static IEnumerable<(BakedQuestion Question, Answer Answer)> Answers =>
        All.SelectMany(question => question.Outcomes.Answers.Select(answer => (question, answer)));

    private static ImmutableArray<BakedQuestion> Bake()
    {
        string[] words =
        [
            .. TestKitchen.Bakehouse.Pantry.Allergens.Select(allergen => allergen.Id),
            "seeds", "coconut", "starches", "gums", "psyllium", "butter", "salt", "baking-soda", "water",
        ];
        var wishes = words.Select(word => (Name: $"without {word}", Wishes: ImmutableArray.Create(Ask.Without(word))))
            .Append(("without tree nuts and egg", [Ask.Without("tree-nuts"), Ask.Without("egg")]))
            .Append(("without milk, two grams of net carbs", [Ask.Without("milk"), Ask.NetCarbs(2)]))
            .Append(("one gram of net carbs", [Ask.NetCarbs(1)]))
            .ToList();
        var asked = Loaf.All.SelectMany(loaf => wishes.Select(wish => (loaf, wish))).ToList();
        var baked = new BakedQuestion[asked.Count];
        Parallel.For(0, asked.Count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, index =>
        {
            var (loaf, wish) = asked[index];
            baked[index] = new BakedQuestion(
                $"{loaf.Name} {wish.Name}",
                loaf.Formula,
                wish.Wishes,
                new Solving.Questions.Variant(loaf.Formula, wish.Wishes, Habits.Usual).Answer(Ask.Search, Ask.Ample, CancellationToken.None));
        });
        return [.. baked];
    }
}
