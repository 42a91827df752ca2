using CsCheck;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Tests.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

/// <summary>What must be true of every balance, whatever is in the bowl. A new balance is tested here before its
/// author writes a test.</summary>
public sealed class BalanceLaws
{
    private const int Tries = 4000;

    /// <summary>Rounding of some fourteen terms, added up in another order [1].</summary>
    private const double Rounding = 1e-12;

    public static TheoryData<string> Every => [.. EveryBalance.Ids(_ => true)];

    public static TheoryData<string> EveryThatReadsFacts => [.. EveryBalance.Ids(balance => balance.Reads.Length > 0)];

    [Theory]
    [MemberData(nameof(Every))]
    public void The_order_of_the_lines_does_not_matter(string id) =>
        AssertAlike(id, AnyBowl.Formula.Select(formula => (formula, formula with { Lines = [.. formula.Lines.Reverse()] })));

    [Theory]
    [MemberData(nameof(Every))]
    public void A_line_weighed_in_two_goes_is_the_same_line(string id) =>
        AssertAlike(id, AnyBowl.Formula.SelectMany(formula => Gen.Int[1, 99].Select(percent => (formula, formula with
        {
            Lines = [.. formula.Lines.SelectMany<Line, Line>(line =>
                [line with { Grams = line.Grams * (percent / 100.0) }, line with { Grams = line.Grams * (1 - (percent / 100.0)) }])],
        }))));

    [Theory]
    [MemberData(nameof(Every))]
    public void Nothing_of_an_ingredient_changes_nothing(string id) =>
        AssertAlike(id, AnyBowl.Formula.SelectMany(formula => AnyBowl.Ingredient.Select(ingredient =>
            (formula, formula with { Lines = formula.Lines.Add(new Line(ingredient, Grams.None)) }))));

    [Theory]
    [MemberData(nameof(Every))]
    public void A_loaf_twice_as_large_reads_the_same_by_batter_and_twice_as_much_by_slice(string id)
    {
        var balance = EveryBalance.Find(id);
        var growsWithTheLoaf = balance is NetCarbohydrate or PerPortion or EggCount or RoleMass or BatterMass;
        Gen.Select(AnyBowl.Formula, Gen.Int[1, 50]).Sample(
            (formula, tenths) =>
            {
                var factor = tenths / 10.0;
                var before = balance.Read(formula, formula, Draws.Typical)?.Value;
                var after = balance.Read(formula.Scaled(factor), formula, Draws.Typical)?.Value;
                AssertSame(before * (growsWithTheLoaf ? factor : 1), after);
            },
            iter: Tries);
    }

    [Theory]
    [MemberData(nameof(Every))]
    public void A_reading_is_a_number_or_there_is_none(string id)
    {
        var balance = EveryBalance.Find(id);
        Gen.Select(AnyBowl.Pair, Gen.Double.Unit).Sample(
            (pair, share) => Assert.All(
                (Draw[])[Draws.Typical, ingredient => FactSheet.Drawn(ingredient, _ => share)],
                draw => Assert.True(double.IsFinite(balance.Read(pair.Variant, pair.Reference, draw)?.Value ?? 0))),
            iter: Tries);
        var emptied = Loaf.Walnut.Priced().Scaled(0);
        Assert.True(double.IsFinite(balance.Read(emptied, emptied, Draws.Typical)?.Value ?? 0));
    }

    [Theory]
    [MemberData(nameof(Every))]
    public void A_reading_is_the_sum_of_its_parts_each_the_least_of_its_sums_by_its_basis(string id)
    {
        var balance = EveryBalance.Find(id);
        Gen.Select(AnyBowl.Pair, Gen.Double.Unit).Sample(
            (pair, share) =>
            {
                FactSheet Drawn(Ingredient ingredient) => FactSheet.Drawn(ingredient, _ => share);
                double Sum(Func<FactSheet, PerGram> ofOneGram) => pair.Variant.Lines.Sum(line => ofOneGram(Drawn(line.Ingredient)).Value * line.Grams.Value);
                var basis = balance.Basis(pair.Reference);
                var bottom = basis.Constant + Sum(basis.PerGram);
                AssertSame(
                    bottom == 0 ? null : balance.Parts.Sum(sums => sums.Min(Sum)) / bottom,
                    balance.Read(pair.Variant, pair.Reference, Drawn)?.Value);
            },
            iter: Tries);
    }

    [Theory]
    [MemberData(nameof(Every))]
    public void What_a_gram_adds_to_the_basis_does_not_hang_on_the_reference(string id)
    {
        var balance = EveryBalance.Find(id);
        AnyBowl.Pair.Sample(
            pair => Assert.All(
                pair.Variant.Lines,
                line => Assert.Equal(balance.Basis(pair.Reference).PerGram(line.Ingredient.Typical), balance.Basis(pair.Variant).PerGram(line.Ingredient.Typical))),
            iter: Tries);
    }

    [Theory]
    [MemberData(nameof(EveryThatReadsFacts))]
    public void A_fact_that_is_not_known_is_not_taken_for_nothing(string id)
    {
        var balance = EveryBalance.Find(id);
        Assert.All(balance.Reads, fact =>
        {
            var bowl = Alone(PricedShelf.Ingredient("almond-meal").NotKnowing(fact));
            var fault = Assert.Throws<MissingFactException>(() => balance.Read(bowl, bowl, Draws.Typical));
            Assert.Contains(fact.Id, fault.Message, StringComparison.Ordinal);
            Assert.Contains("almond-meal", fault.Message, StringComparison.Ordinal);
        });
    }

    [Theory]
    [MemberData(nameof(Every))]
    public void A_rule_reads_only_the_facts_that_it_names(string id)
    {
        var balance = EveryBalance.Find(id);
        var known = Fact.All.Except(balance.Reads).Aggregate(PricedShelf.Ingredient("egg-whole"), Invented.NotKnowing);
        var bowl = Alone(known);
        var whole = Alone(PricedShelf.Ingredient("egg-whole"));
        Assert.Equal(balance.Read(whole, whole, Draws.Typical), balance.Read(bowl, bowl, Draws.Typical));
    }

    private static void AssertAlike(string id, Gen<(Formula One, Formula Other)> pairs)
    {
        var balance = EveryBalance.Find(id);
        pairs.Sample(
            pair => AssertSame(
                balance.Read(pair.One, pair.One, Draws.Typical)?.Value, balance.Read(pair.Other, pair.One, Draws.Typical)?.Value),
            iter: Tries);
    }

    private static void AssertSame(double? expected, double? actual)
    {
        Assert.Equal(expected is null, actual is null);
        Assert.True(
            expected is not { } one || Math.Abs(one - actual!.Value) <= Rounding * Math.Abs(one), $"{expected} became {actual}");
    }

    private static Formula Alone(Ingredient ingredient) => Bowls.Weigh(10, (ingredient, 100));
}
