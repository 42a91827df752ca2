using SwapSolver.Kitchen.Wording;
using SwapSolver.Learning;
using SwapSolver.Service.Learned;
using SwapSolver.V1;
using Formula = SwapSolver.Kitchen.Formulas.Formula;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Service.Translation;

/// <summary>Writes what was learned in the contract's words.</summary>
internal sealed class LearnedWriter(Phrases phrases)
{
    private const string Collection = "learnedFacts/";

    /// <summary>The id of a fact's name; a bare id is one too.</summary>
    public static string IdOf(string name) => name.StartsWith(Collection, StringComparison.Ordinal) ? name[Collection.Length..] : name;

    /// <summary>What was learned of one fact.</summary>
    public static LearnedFact Write(LearnedOne learned)
    {
        var fact = learned.Fact;
        var written = new LearnedFact
        {
            Name = Collection + fact.Id,
            Title = fact.Title,
            Unit = fact.Unit,
            Prior = Write(fact.Published),
            Now = Write(learned.Evidence.IsEmpty ? fact.Published : learned.Belief.Told()),
            Possible = Write(fact.Possible),
            Used = learned.IsUsed,
        };
        written.Evidence.AddRange(learned.Evidence.Select(one => new LearnedEvidence { Trial = one.Trial, Value = one.Evidence.Value, Scatter = one.Evidence.Scatter }));
        return written;
    }

    /// <summary>A test that would help.</summary>
    /// <param name="test">The test.</param>
    /// <param name="formula">The formula that it is for; it knows what its bags are called.</param>
    public SuggestedTrial Write(TestWorth test, Formula formula)
    {
        var kind = test.Fact.Id.Split('.')[0];
        var id = LearningRules.IngredientOf(test.Fact.Id);
        var bag = formula.Lines.FirstOrDefault(line => line.Ingredient.Id == id)?.Ingredient.Name ?? id ?? string.Empty;
        return new SuggestedTrial
        {
            Test = phrases.Say($"next-test-{kind}", ("ingredient", bag)),
            Why = phrases.Say($"next-why-{kind}", ("ingredient", bag)),
            Fact = Collection + test.Fact.Id,
            SpreadPercent = test.Now,
            SpreadAfterPercent = test.After,
        };
    }

    private static Estimate Write(Range range) => new() { Low = range.Low, Value = range.Typical, High = range.High };
}
