using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Balances;

/// <summary>
/// One rule of the kitchen: a ratio of two sums over the grams, and the band that it must stay in,
/// <c>(sum n_i x_i) / (sum d_i x_i + d_0)</c>. The same coefficients measure a formula and constrain the solver, so
/// the number that is printed is the number that was constrained. A new rule names its facts, its numerator, its
/// basis and its band; nothing else.
/// </summary>
/// <param name="Settings">Band and words, from the balance's data file.</param>
public abstract record Balance(BalanceSettings Settings)
{
    /// <summary>Id of the balance, as <c>hydration</c>.</summary>
    public string Id => Settings.Id;

    /// <summary>Facts that the rule reads; a formula of which one is not known has no reading.</summary>
    public abstract ImmutableArray<Fact> Reads { get; }

    /// <summary>Whether everything that the rule reads is known of the formula.</summary>
    public bool CanRead(Formula formula) => Reads.All(formula.States);

    /// <summary>Whether everything that the rule reads is known of an ingredient.</summary>
    public bool CanRead(Ingredient ingredient) => Reads.All(fact => ingredient.RangeOf(fact) is not null);

    /// <summary>What one gram of an ingredient adds to the numerator, in the unit that the rule names.</summary>
    public abstract PerGram Numerator(FactSheet facts);

    /// <summary>What is read, as parts that are added, each the least of its sums over the grams: one part of one sum for most rules.</summary>
    public virtual ImmutableArray<ImmutableArray<Func<FactSheet, PerGram>>> Parts => [[Numerator]];

    /// <summary>What the numerator is counted on. What a gram adds to it does not hang on the reference, only its fixed part may.</summary>
    /// <param name="reference">The formula that is known to work; of the formula asked about, its slices.</param>
    public abstract Basis Basis(Formula reference);

    /// <summary>The reading of a formula; null where its basis is zero: no denominator, no reading.</summary>
    /// <param name="formula">The formula that is measured.</param>
    /// <param name="reference">The formula that the basis is taken from; often the same.</param>
    /// <param name="draw">Which sheet of each ingredient is read.</param>
    public Level? Read(Formula formula, Formula reference, Draw draw)
    {
        var basis = Basis(reference);
        var bottom = basis.Constant + Sum(basis.PerGram, formula, draw);
        // Added up where there is nothing to divide by too: a fact that is not known is missed in any bowl.
        var top = Parts.Sum(part => part.Min(sum => Sum(sum, formula, draw)));
        return bottom == 0 ? null : new Level(top / bottom);
    }

    /// <summary>The linear sum that measures the reference: what a variant's distance from it is counted in.</summary>
    public virtual Func<FactSheet, PerGram> Anchor(Formula reference, Draw draw) => Numerator;

    /// <summary>The band that a variant of the reference must stay in.</summary>
    public Band Band(Formula reference, Draw draw) => Around(() => Read(reference, reference, draw), reference, draw);

    /// <summary>The band that a variant of the reference must stay in, given the reference's own reading.</summary>
    /// <param name="own">The reference's reading, null where it has none; not asked for by a rule whose band does not hang on it.</param>
    /// <param name="reference">The reference.</param>
    /// <param name="draw">Which sheet of each ingredient is read.</param>
    public virtual Band Around(Func<Level?> own, Formula reference, Draw draw) => Settings.Around(own());

    /// <summary>The linear rows that keep the reading in a band.</summary>
    public virtual ImmutableArray<Row> Rows(Formula reference, Band band, Draw draw)
    {
        var basis = Basis(reference);
        var rows = ImmutableArray.CreateBuilder<Row>(2);
        if (band.Low is { } low)
        {
            rows.Add(Floor(Numerator, basis, low, exact: true));
        }

        if (band.High is { } high)
        {
            rows.Add(Ceiling(Numerator, basis, high, exact: true));
        }

        return rows.ToImmutable();
    }

    /// <summary>So much over all lines.</summary>
    private protected static double Sum(Func<FactSheet, PerGram> perGram, Formula formula, Draw draw)
    {
        double sum = 0;
        foreach (var line in formula.Lines)
        {
            sum += perGram(draw(line.Ingredient)).Value * line.Grams.Value;
        }

        return sum;
    }

    /// <summary><c>sum (n - low d) x &gt;= low d_0</c>.</summary>
    protected Row Floor(Func<FactSheet, PerGram> numerator, Basis basis, Level low, bool exact) => new(
        Id,
        Side.Low,
        facts => new PerGram(numerator(facts).Value - (low.Value * basis.PerGram(facts).Value)),
        low.Value * basis.Constant,
        exact);

    /// <summary><c>sum (high d - n) x &gt;= -high d_0</c>.</summary>
    protected Row Ceiling(Func<FactSheet, PerGram> numerator, Basis basis, Level high, bool exact) => new(
        Id,
        Side.High,
        facts => new PerGram((high.Value * basis.PerGram(facts).Value) - numerator(facts).Value),
        -high.Value * basis.Constant,
        exact);
}
