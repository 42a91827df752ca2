using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Foods;

/// <summary>What a row of a table of foods must satisfy to be let in, from <c>data/practice/tables.json</c>.</summary>
/// <param name="Energy">The energy that the parts of a food can give.</param>
/// <param name="AshNotStated">Most ash of a food that states none, in 100 g [g].</param>
/// <param name="PartAboveWhole">How far a part may stand above its whole, since tables round each on its own [g/100 g].</param>
public sealed record TableRules(EnergyWindow Energy, Grams AshNotStated, Grams PartAboveWhole)
{
    /// <summary>What clashes among the figures of a row; none where all can be true.</summary>
    /// <param name="figures">The stated figures.</param>
    public IEnumerable<FactClash> Clashes(ImmutableDictionary<Fact, Figure> figures)
    {
        var clashes = FactSums.Clashes(figures, figures.ContainsKey(Fact.Ash) ? Grams.None : AshNotStated, PartAboveWhole).ToList();
        // Parts that make no whole give no energy that could be compared.
        if (clashes.Count > 0 || !figures.TryGetValue(Fact.Energy, out var energy))
        {
            return clashes;
        }

        var window = Energy.Of(figures);
        var stated = energy.Range.Typical;
        return stated >= window.Low && stated <= window.High ? clashes : [new FactClash(Fact.Energy, Says(window.Low, window.High, stated))];
    }

    private static string Says(double low, double high, double stated)
    {
        var kilocalories = Kilocalories.OfKilojoules(stated).Value;
        var unit = kilocalories >= low && kilocalories <= high ? "; it looks like kilojoules" : string.Empty;
        return $"energy {stated:0.##} kcal does not follow from the protein, fat and carbohydrate, which give {low:0} to {high:0} kcal{unit}";
    }
}
