using SwapSolver.Data.Tests.Ingredients;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Acids;

/// <summary>The published and the computed neutralising value of an acid, and the fact of the ingredient, side by side.</summary>
public sealed class NeutralisingValueTests
{
    /// <summary>Published values are whole numbers.</summary>
    private const double Rounding = 0.5;

    private static Figure Soda => ShippedAcids.Chemistry.Constants.SodaGramsPerMole;

    private static IEnumerable<PureAcid> Acids => ShippedAcids.Chemistry.Leaveners.Values.OfType<PureAcid>();

    public static TheoryData<string> InThePantry => [.. Acids.Select(acid => acid.Id).Where(id => ShippedPantry.Pantry.TryGet(id, out _)).Order(StringComparer.Ordinal)];

    [Theory]
    [InlineData("cream-of-tartar")]
    [InlineData("fumaric-acid")]
    [InlineData("adipic-acid")]
    [InlineData("glucono-delta-lactone")]
    [InlineData("sodium-aluminium-sulphate")]
    public void What_is_computed_from_molar_mass_agrees_with_what_is_published(string id)
    {
        var acid = ShippedAcids.Acid(id);
        var published = acid.Neutralising.PublishedGPer100G!;

        Assert.Equal(NeutralisingRule.Computed, acid.Neutralising.Rule);
        Assert.InRange(acid.Computed(Soda).Value, published.Range.Low - Rounding, published.Range.High + Rounding);
        Assert.Equal(acid.Substance.ProtonsByCount, acid.ProtonsToSoda(Soda));
    }

    [Theory]
    [InlineData("monocalcium-phosphate", 66.6, 80)]
    [InlineData("sodium-acid-pyrophosphate", 75.7, 72)]
    [InlineData("dicalcium-phosphate", 0, 33)]
    public void Where_counting_protons_does_not_hold_the_published_value_is_used_and_says_why(string id, double counted, double published)
    {
        // Counted: protons x 84.006 / molar mass x 100, IUPAC atomic masses. Published: trade encyclopedia of baking.
        var acid = ShippedAcids.Acid(id);

        Assert.Equal(NeutralisingRule.Published, acid.Neutralising.Rule);
        Assert.Equal(counted, acid.Computed(Soda).Value, 0.06);
        Assert.Equal(published, acid.Counted(Soda).Value, Rounding);
        Assert.True(Math.Abs(counted - published) > 2 * Rounding, "count and publication agree, so the count could be used");
        Assert.NotEmpty(acid.Neutralising.Why);
    }

    [Theory]
    [InlineData("cream-of-tartar", 44.6)]
    [InlineData("tartaric-acid", 111.9)]
    [InlineData("citric-acid", 131.2)]
    [InlineData("citric-acid-monohydrate", 119.9)]
    [InlineData("malic-acid", 125.3)]
    [InlineData("fumaric-acid", 144.7)]
    [InlineData("adipic-acid", 115.0)]
    [InlineData("lactic-acid-88", 82.1)]
    [InlineData("ascorbic-acid", 47.7)]
    [InlineData("glucono-delta-lactone", 47.2)]
    [InlineData("sodium-aluminium-sulphate", 104.1)]
    public void Acids_of_known_stoichiometry_use_up_so_much_soda(string id, double value) =>
        // Protons x 84.006 / molar mass x 100 by hand, IUPAC atomic masses; one unit in the last place.
        Assert.Equal(value, ShippedAcids.Acid(id).Computed(Soda).Value, 0.1);

    [Theory]
    [MemberData(nameof(InThePantry))]
    public void The_fact_of_the_ingredient_is_the_value_that_counts(string id)
    {
        var fact = TestKitchen.Ingredient(id).Typical[Fact.Acid] * Soda.Range.Typical / 10;
        var counted = ShippedAcids.Acid(id).Counted(Soda).Value;

        Assert.Equal(counted, fact, 0.05);
    }

    [Theory]
    [InlineData("cream-of-tartar")]
    [InlineData("fumaric-acid")]
    [InlineData("adipic-acid")]
    [InlineData("glucono-delta-lactone")]
    [InlineData("monocalcium-phosphate")]
    [InlineData("sodium-acid-pyrophosphate")]
    [InlineData("sodium-aluminium-phosphate")]
    public void The_range_of_the_fact_reaches_the_published_value(string id)
    {
        var published = ShippedAcids.Acid(id).Neutralising.PublishedGPer100G!;
        var range = TestKitchen.Ingredient(id).RangeOf(Fact.Acid)!.Value;
        var perFact = Soda.Range.Typical / 10;
        Assert.InRange(published.Range.Typical, (range.Low * perFact) - Rounding, (range.High * perFact) + Rounding);
    }
}
