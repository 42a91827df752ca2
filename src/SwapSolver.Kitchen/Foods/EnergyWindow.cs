using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Foods;

/// <summary>The energy that the parts of a food can give, wide enough for every way of counting it.</summary>
/// <param name="Protein">What a gram of protein gives [kcal/g].</param>
/// <param name="Fat">What a gram of fat gives [kcal/g].</param>
/// <param name="Carbohydrate">What a gram of carbohydrate gives, fibre and polyols among it [kcal/g].</param>
/// <param name="Rest">What a gram of anything but these, water and ash gives, as alcohol [kcal/g].</param>
/// <param name="Slack">How far a printed energy may lie outside, of itself.</param>
/// <param name="LeastSlack">The same, and never less, in 100 g [kcal].</param>
/// <param name="Source">Key of the source.</param>
public sealed record EnergyWindow(Range Protein, Range Fat, Range Carbohydrate, Range Rest, Percent Slack, Kilocalories LeastSlack, string Source)
{
    private static readonly ImmutableArray<Fact> Known = [Fact.Water, Fact.Protein, Fact.Fat, Fact.Carbohydrate, Fact.Ash];

    /// <summary>The energy that figures allow [kcal/100 g].</summary>
    /// <param name="figures">The figures of a food; what is not among them counts as nothing.</param>
    public Range Of(ImmutableDictionary<Fact, Figure> figures)
    {
        double Typical(Fact fact) => figures.TryGetValue(fact, out var figure) ? figure.Range.Typical : 0;
        var rest = Math.Max(0, 100 - Known.Sum(Typical));
        double Sum(Func<Range, double> end) =>
            (end(Protein) * Typical(Fact.Protein)) + (end(Fat) * Typical(Fact.Fat))
            + (end(Carbohydrate) * Typical(Fact.Carbohydrate)) + (end(Rest) * rest);
        double SlackOf(double energy) => Math.Max(LeastSlack.Value, energy * Slack.Share);
        var (low, high) = (Sum(range => range.Low), Sum(range => range.High));
        return new Range(Math.Max(0, low - SlackOf(low)), Sum(range => range.Typical), high + SlackOf(high));
    }
}
