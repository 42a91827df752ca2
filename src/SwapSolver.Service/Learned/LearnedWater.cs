using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Learning;
using SwapSolver.Service.Records;
using Fact = SwapSolver.Kitchen.Ingredients.Fact;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Service.Learned;

/// <summary>What soaking tests taught of this kitchen's bags, as facts that questions are answered by.</summary>
internal sealed class LearnedWater(KitchenShelf shelf)
{
    /// <summary>The facts of every bag that was learned and is in use.</summary>
    public IEnumerable<MeasuredFact> Facts() => new KitchenLearning(shelf).All()
        .Where(one => one.IsUsed && LearningRules.IngredientOf(one.Fact.Id) is not null)
        .SelectMany(one => FactsOf(one));

    private ImmutableArray<MeasuredFact> FactsOf(LearnedOne one)
    {
        if (shelf.Untouched(LearningRules.IngredientOf(one.Fact.Id)!) is not { } ingredient || ingredient.RangeOf(Fact.WaterBound) is not { } batter)
        {
            return [];
        }

        // A batter gives a bag less water than its fill; its figure moves by the same factor, as with a test that goes in outright.
        var (told, share) = (one.Belief.Told(), batter.Typical / one.Fact.Published.Typical);
        var method = shelf.Phrases.Say("learned-water", ("count", one.Evidence.Length.ToString(System.Globalization.CultureInfo.InvariantCulture)));
        return
        [
            new MeasuredFact(ingredient.Id, Fact.WaterBoundCentrifuge, told, method),
            new MeasuredFact(ingredient.Id, Fact.WaterBound, new Range(told.Low * share, told.Typical * share, Math.Min(Fact.WaterBound.Most, told.High * share)), method),
        ];
    }
}
