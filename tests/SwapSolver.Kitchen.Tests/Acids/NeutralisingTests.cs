using System.Collections.Immutable;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Tests.Ingredients;

namespace SwapSolver.Kitchen.Tests.Acids;

/// <summary>Neutralising values from formulas, by hand; molar masses by IUPAC's abridged atomic masses. Those of the shipped acids are
/// held against published ones in the data tests.</summary>
public sealed class NeutralisingTests
{
    private static readonly Figure Soda = Of(84.006);

    private static readonly Dissociation Tartaric = new("tartaric", "tartaric acid", 0, 2, [], []);

    private static readonly Dissociation Citric = new("citric", "citric acid", 0, 3, [], []);

    private static readonly IonCount Potassium = new(new Ion("potassium", "K+", 1), 1);

    [Fact]
    public void Cream_of_tartar_has_one_proton_left_of_two()
    {
        // KC4H5O6, 188.18 g/mol: 100 x 84.006 / 188.18 = 44.6.
        var acid = Acid(188.18, [new(Tartaric, 1)], [Potassium]);

        Assert.Equal(1, acid.Substance.ProtonsByCount.Value);
        Assert.Equal(44.6, acid.Computed(Soda).Value, 0.05);
        Assert.Equal(1, acid.ProtonsToSoda(Soda).Value);
    }

    [Fact]
    public void Citric_acid_gives_all_three_and_half_as_much_where_half_of_it_is_water()
    {
        // C6H8O7, 192.12 g/mol: 3 x 100 x 84.006 / 192.12 = 131.2.
        Assert.Equal(131.2, Acid(192.12, [new(Citric, 1)], []).Computed(Soda).Value, 0.05);
        Assert.Equal(65.6, (Acid(192.12, [new(Citric, 1)], []) with { Strength = new Percent(50) }).Computed(Soda).Value, 0.05);
    }

    [Fact]
    public void What_sets_two_acids_free_gives_the_protons_of_both()
    {
        // Twice 2 of tartaric and 3 of citric acid, less 1 that potassium has taken.
        Assert.Equal(6, Acid(500, [new(Tartaric, 2), new(Citric, 1)], [Potassium]).Substance.ProtonsByCount.Value);
        // An acid that begins with a charge of +1 has that much more to give.
        Assert.Equal(1, Acid(100, [new(new("onium", "onium", 1, 2, [], []), 1)], []).Substance.ProtonsByCount.Value);
    }

    [Fact]
    public void Where_a_published_value_counts_the_protons_follow_it()
    {
        // Sodium aluminium phosphate, NaAl3H14(PO4)8.4H2O, 949.9 g/mol, is published at 100 (common practice): 949.9 / 84.006 = 11.31
        // protons; and at half the strength the same figure takes twice as many of each.
        var published = Acid(949.9, [new(Tartaric, 1)], []) with { Neutralising = new Neutralising(Of(100), NeutralisingRule.Published, "invented") };

        Assert.Equal(100, published.Counted(Soda).Value);
        Assert.Equal(11.31, published.ProtonsToSoda(Soda).Value, 0.005);
        Assert.Equal(22.62, (published with { Strength = new Percent(50) }).ProtonsToSoda(Soda).Value, 0.005);
    }

    [Fact]
    public void A_published_value_that_does_not_count_changes_nothing()
    {
        var computed = Acid(188.18, [new(Tartaric, 1)], [Potassium]) with { Neutralising = new Neutralising(Of(50), NeutralisingRule.Computed, "invented") };

        Assert.Equal(44.6, computed.Counted(Soda).Value, 0.05);
        Assert.Equal(1, computed.ProtonsToSoda(Soda).Value);
    }

    [Theory]
    [InlineData(3.0, 3.3)]
    [InlineData(3.3, 3.0)]
    public void A_powder_frees_as_much_gas_as_its_scarcer_side_can(double acid, double soda)
    {
        // 3 mmol of CO2 a gram, 44.009 g/mol: 0.132 g a gram.
        var powder = Invented.Of("powder", Role.LeaveningBlend, (Fact.Acid, acid), (Fact.Base, soda));

        Assert.Equal(13.2, LeaveningBlend.AvailableCarbonDioxide(powder.Typical, Of(44.009)).Value, 0.005);
    }

    private static PureAcid Acid(
        double gramsPerMole, ImmutableArray<DissociationCount> dissolved, ImmutableArray<IonCount> ions) => new(
        "invented",
        "invented",
        new PureSubstance("invented", Of(gramsPerMole), dissolved, ions),
        new Percent(100),
        new Neutralising(null, NeutralisingRule.Computed, "invented"),
        true,
        new AcidTiming(Of(50), Of(20), Of(30)));

    private static Figure Of(double figure) => new(new(figure, figure, figure), "invented", Mark.Practice, null);
}
