using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Labels;

public sealed class LabelWordsTests
{
    /// <summary>719 g of batter less 11 % are 639.9 g, in twelve slices of 53.3 g.</summary>
    private static readonly Formula Baked = Loaf.Walnut with { BakeLoss = new Percent(11) };

    private static readonly LabelWords Words = new(TestLabels.Phrases);

    [Fact]
    public void Figures_of_a_serving_say_how_many_slices_and_grams_it_is()
    {
        Assert.Equal("a serving of 1 slice (53 g)", Words.Portion(LabelSheet.Of(Baked, TestLabels.Law("us"))));
        Assert.Equal("a serving of 2 slices (107 g)", Words.Portion(LabelSheet.Of(Baked, TestLabels.Law("us"), servingSlices: 2)));
    }

    [Fact]
    public void Figures_of_a_hundred_grams_are_of_the_baked_loaf() =>
        Assert.Equal("100 g as baked", Words.Portion(LabelSheet.Of(Baked, TestLabels.Law("eu"), servingSlices: 2)));

    [Theory]
    // A slice of 53.3 g is more than two thirds of the 50 g of bread that the law takes to be eaten at once; one of 32 g is between
    // a half and two thirds, where the law leaves the choice; of slices of 21.3 g two come closest: 50 / 21.3 = 2.3.
    [InlineData(12, "for bread and rolls, 50 g, it would be 1 of these slices")]
    [InlineData(20, "for bread and rolls, 50 g, it would be 1 to 2 of these slices")]
    [InlineData(30, "for bread and rolls, 50 g, it would be 2 of these slices")]
    public void The_serving_of_the_law_is_told_in_slices_of_this_loaf(int slices, string says)
    {
        var cut = Baked with { Slices = slices };
        Assert.Single(Notes(cut, "us"), note => note.Contains(says, StringComparison.Ordinal));
        Assert.Single(Notes(cut, "us"), note => note.Contains("of these slices", StringComparison.Ordinal));
        Assert.DoesNotContain(Notes(cut, "eu"), note => note.Contains("of these slices", StringComparison.Ordinal));
    }

    [Fact]
    public void Lines_that_no_table_states_are_named_as_not_known()
    {
        Assert.Contains(Notes(Baked, "us"), note => note.StartsWith("Not known here: Trans fat, Cholesterol, Added sugars and Vitamin D.", StringComparison.Ordinal));
        Assert.DoesNotContain(Notes(Baked, "eu"), note => note.StartsWith("Not known", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_nobody_weighed_the_baked_loaf_a_hundred_grams_are_batter_and_that_is_said()
    {
        const string Batter = "100 g are 100 g of batter";
        Assert.Contains(Notes(Loaf.Walnut, "eu"), note => note.Contains(Batter, StringComparison.Ordinal));
        Assert.DoesNotContain(Notes(Baked, "eu"), note => note.Contains(Batter, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_label_says_what_the_law_says_of_it_and_that_it_was_worked_out() =>
        Assert.All(TestLabels.Laws.All, law =>
        {
            var notes = Notes(Baked, law.Id);
            Assert.Equal(law.Notes, notes.Take(law.Notes.Length));
            Assert.Contains("not analysed", notes[^1], StringComparison.Ordinal);
        });

    private static ImmutableArray<string> Notes(Formula formula, string law) => Words.Notes(formula, LabelSheet.Of(formula, TestLabels.Law(law)));
}
