using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>
/// Carbon dioxide that the batter can give [mmol/g]: from soda the smaller of the base and half of acid and base
/// together (heat alone frees half of what the acid leaves), from yeast the smaller of what it can make and what it
/// finds to eat. Each part is the lesser of two sums, so the reading is concave in the grams.
/// </summary>
/// <param name="Settings">Band and words.</param>
public sealed record Gas(BalanceSettings Settings) : Balance(Settings)
{
    /// <summary>Carbon dioxide from hexose, two molecules each: 2000 / 180.156 [mmol/g]; iupac-atomic-masses.</summary>
    private const double CarbonDioxidePerHexose = 2000 / 180.156;

    private static readonly ImmutableArray<Func<FactSheet, PerGram>> FromSoda =
    [
        static facts => new(facts[Fact.Base]),
        static facts => new((facts[Fact.Acid] + facts[Fact.Base]) / 2),
    ];

    private static readonly ImmutableArray<Func<FactSheet, PerGram>> FromYeast =
    [
        static facts => new(facts[Fact.YeastGas]),
        static facts => new(facts[Fact.Fermentable] * CarbonDioxidePerHexose),
    ];

    /// <inheritdoc/>
    public override ImmutableArray<Fact> Reads => [Fact.Acid, Fact.Base, Fact.YeastGas, Fact.Fermentable];

    /// <summary>Gas of the ingredient if nothing else were in the bowl [mmol CO2/g]. The reading of a formula is not
    /// the sum of these: acid and soda need each other.</summary>
    public override PerGram Numerator(FactSheet facts) =>
        new(FromSoda.Min(term => term(facts).Value) + FromYeast.Min(term => term(facts).Value));

    /// <inheritdoc/>
    public override ImmutableArray<ImmutableArray<Func<FactSheet, PerGram>>> Parts => [FromSoda, FromYeast];

    /// <inheritdoc/>
    public override Basis Basis(Formula reference) => Balances.Basis.Batter;

    /// <summary>Around the reference's own reading; open where the reference gives no gas, for then something other than
    /// gas raises it, or nothing does.</summary>
    public override Band Around(Func<Level?> own, Formula reference, Draw draw) =>
        own() is { Value: > 0 } ? base.Around(own, reference, draw) : Balances.Band.Open;

    /// <summary>The terms that are smaller in the reference.</summary>
    public override Func<FactSheet, PerGram> Anchor(Formula reference, Draw draw)
    {
        var soda = FromSoda.MinBy(term => Sum(term, reference, draw))!;
        var yeast = FromYeast.MinBy(term => Sum(term, reference, draw))!;
        return facts => new PerGram(soda(facts).Value + yeast(facts).Value);
    }

    /// <summary>Floor: one exact row for each pair of terms. Ceiling: on the terms that are smaller in the reference,
    /// which is safe and keeps the reference itself inside.</summary>
    public override ImmutableArray<Row> Rows(Formula reference, Band band, Draw draw)
    {
        var rows = ImmutableArray.CreateBuilder<Row>();
        if (band.Low is { } low)
        {
            foreach (var soda in FromSoda)
            {
                foreach (var yeast in FromYeast)
                {
                    rows.Add(Floor(facts => new PerGram(soda(facts).Value + yeast(facts).Value), Balances.Basis.Batter, low, exact: true));
                }
            }
        }

        if (band.High is { } high)
        {
            rows.Add(Ceiling(Anchor(reference, draw), Balances.Basis.Batter, high, exact: false));
        }

        return rows.ToImmutable();
    }
}
