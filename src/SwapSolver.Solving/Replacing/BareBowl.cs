using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Replacing;

/// <summary>A bowl for a dose that is asked about without a formula: it, the soda or acid that it wants, and water.</summary>
/// <param name="Bakehouse">Everything that is known.</param>
/// <param name="Kits">Knows plain soda and plain acid.</param>
internal sealed record BareBowl(Bakehouse Bakehouse, LeaveningKits Kits)
{

    /// <summary>The bowl.</summary>
    public Formula Of(string name, Ingredient from, Grams grams)
    {
        var lines = ImmutableArray.CreateBuilder<Line>();
        lines.Add(new Line(from, grams));
        var surplus = (from.Typical[Fact.Acid] - from.Typical[Fact.Base]) * grams.Value;
        if (from.Role == Role.Acid && surplus > 0)
        {
            var soda = Kits.Soda();
            lines.Add(new Line(soda, new Grams(surplus / soda.Typical[Fact.Base])));
        }
        else if (from.Role == Role.Base && surplus < 0)
        {
            var acid = Kits.PlainAcid();
            lines.Add(new Line(acid, new Grams(-surplus / acid.Typical[Fact.Acid])));
        }

        return new Formula(name, lines.ToImmutable(), 1, null, null, null);
    }
}
