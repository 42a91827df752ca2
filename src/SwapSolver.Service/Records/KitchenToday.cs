using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Lines;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Service.Records;

/// <summary>Everything that is known when a question comes in: the shipped facts and what this kitchen wrote down. A question
/// is answered by one of these from start to end, whatever is written meanwhile.</summary>
/// <param name="Version">Version of the kitchen's records; 0 where there are none.</param>
/// <param name="Search">Finds answers with these facts.</param>
/// <param name="Reader">Makes what reads lines of text with these names.</param>
internal sealed record KitchenToday(long Version, AnswerSearch Search, Func<IngredientLines> Reader)
{
    private readonly Lazy<IngredientLines> lines = new(Reader);

    /// <summary>Reads lines of text, once somebody brings some: some thousand names are put in order for it.</summary>
    public IngredientLines Lines => lines.Value;

    /// <summary>The ingredients.</summary>
    public Pantry Pantry => Search.Bakehouse.Pantry;
}
