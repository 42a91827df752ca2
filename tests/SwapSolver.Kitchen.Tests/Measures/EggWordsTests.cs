using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Measures;

/// <summary>Large eggs weigh 50 g without shell in the United States and 60 g in Europe: whose are meant, and what was taken for it.</summary>
public sealed class EggWordsTests
{
    [Theory]
    // Who says whose they are is taken at the word, wherever the kitchen is.
    [InlineData("large us", MeasureSystem.Metric, EggSize.LargeUs, null)]
    [InlineData("large eu", MeasureSystem.UsCustomary, EggSize.LargeEu, null)]
    [InlineData("uk large", null, EggSize.LargeEu, null)]
    // Else they are the kitchen's, and that is said.
    [InlineData("large", MeasureSystem.Metric, EggSize.LargeEu, "an EU size of egg")]
    [InlineData("large", MeasureSystem.UkImperial, EggSize.LargeEu, "an EU size of egg")]
    [InlineData("large", MeasureSystem.UsCustomary, EggSize.LargeUs, "a US size of egg")]
    [InlineData("large", null, EggSize.LargeUs, "a US size of egg")]
    [InlineData("extra large", null, EggSize.ExtraLargeUs, "a US size of egg")]
    // A size that only one side of the sea has is that side's.
    [InlineData("jumbo", MeasureSystem.Metric, EggSize.JumboUs, "a US size of egg")]
    // No size at all: the usual one of the kitchen, or of whose eggs they are said to be.
    [InlineData("", null, EggSize.LargeUs, "eggs of US size large")]
    [InlineData("beaten", MeasureSystem.Metric, EggSize.MediumEu, "eggs of EU size M")]
    [InlineData("eu", MeasureSystem.UsCustomary, EggSize.MediumEu, "eggs of EU size M")]
    [InlineData("us", MeasureSystem.Metric, EggSize.LargeUs, "eggs of US size large")]
    public void A_word_for_a_size_means_the_eggs_of_its_country(string words, MeasureSystem? system, EggSize size, string? assumed)
    {
        var read = new EggWords(TestCards.Room.Measures.Eggs, system).SizeOf([.. words.Split(' ', StringSplitOptions.RemoveEmptyEntries)]);
        Assert.Equal(size, read.Size);
        Assert.Equal(assumed is null ? [] : new[] { assumed }, read.Assumed);
    }

    [Fact]
    public void An_egg_may_weigh_what_its_own_class_allows() =>
        Assert.All(TestCards.Room.Measures.Eggs.All, one => Assert.Equal(one, TestCards.Room.Measures.Eggs.Of(one.Size)));
}
