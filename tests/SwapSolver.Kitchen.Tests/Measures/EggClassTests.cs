using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Measures;

/// <summary>An egg on the scale with its shell: a dozen of 24 ounces are US large, 63 g are European large (the classes' own
/// sources, <c>usda-egg-classes</c> and <c>eu-egg-classes</c>).</summary>
public sealed class EggClassTests
{
    [Theory]
    // 24 ounces are 680.4 g, 56.7 g an egg; 21 ounces are 49.6 g an egg. In Europe both are medium, from 53 g and below it small.
    [InlineData(56.7, EggSize.LargeUs, EggSize.MediumEu)]
    [InlineData(56.6, EggSize.MediumUs, EggSize.MediumEu)]
    [InlineData(49.6, EggSize.MediumUs, EggSize.SmallEu)]
    [InlineData(62.9, EggSize.LargeUs, EggSize.MediumEu)]
    [InlineData(63, EggSize.LargeUs, EggSize.LargeEu)]
    [InlineData(80, EggSize.JumboUs, EggSize.ExtraLargeEu)]
    public void The_scale_tells_the_class_of_an_egg_on_either_side_of_the_sea(double gramsInShell, EggSize us, EggSize eu)
    {
        var classes = TestCards.Room.Measures.Eggs;
        Assert.Equal(us, classes.Of(new Grams(gramsInShell), EggRule.Us)?.Size);
        Assert.Equal(eu, classes.Of(new Grams(gramsInShell), EggRule.Eu)?.Size);
    }

    [Fact]
    public void A_pullets_egg_is_below_all_classes_of_a_dozen_and_small_where_small_has_no_least()
    {
        // 18 ounces a dozen are 42.5 g.
        var classes = TestCards.Room.Measures.Eggs;
        Assert.Null(classes.Of(new Grams(42), EggRule.Us));
        Assert.Equal(EggSize.SmallEu, classes.Of(new Grams(42), EggRule.Eu)?.Size);
    }
}
