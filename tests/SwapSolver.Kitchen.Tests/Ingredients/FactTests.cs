using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Tests.Ingredients;

public sealed class FactTests
{
    [Fact]
    public void Every_fact_stands_at_its_own_place() =>
        Assert.Equal(Enumerable.Range(0, Fact.All.Length), Fact.All.Select(fact => fact.Index));

    [Fact]
    public void No_two_facts_share_a_key() =>
        Assert.Equal(Fact.All.Length, Fact.All.Select(fact => fact.Id).Distinct().Count());

    [Fact]
    public void The_last_word_of_a_key_is_its_unit() => Assert.All(Fact.All, fact => Assert.EndsWith(
        fact.Unit switch
        {
            "g/100 g" or "mg/100 g" or "kcal/100 g" => "Per100G",
            "mmol/g" or "g/g" => "PerG",
            "1" => "OfProtein",
            "money/kg" => "PerKg",
            _ => $"a unit that no key ends in: {fact.Unit}",
        },
        fact.Id,
        StringComparison.Ordinal));
}
