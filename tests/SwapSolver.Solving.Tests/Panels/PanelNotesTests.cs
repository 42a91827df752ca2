using SwapSolver.Loaves;
using SwapSolver.Solving.Panels;

namespace SwapSolver.Solving.Tests.Panels;

/// <summary>What a panel leaves open is told by the names that stand on such a packet.</summary>
public sealed class PanelNotesTests
{
    private const string NotKnown = "Not printed, and so not known: ";

    [Fact]
    public void Lines_that_every_reader_asks_for_are_named_where_they_are_not_printed_and_no_others()
    {
        var notes = Packet.Read(TestPanels.Eu("100", "energyKcal 260, fat 10, saturatedFat 2, carbohydrate 15, fibre 5, protein 20, salt 1")).Notes;
        Assert.Contains("Not printed, and so not known: sugars, potassium, calcium and iron.", notes);
    }

    [Fact]
    public void Salt_is_missed_in_Europe_and_sodium_in_the_United_States()
    {
        const string Printed = "energyKcal 170, fat 15, carbohydrate 6, fibre 3, sugars 1, protein 6";
        var american = Told(Packet.Read(TestPanels.Us("28", Printed)));
        Assert.Contains("sodium", american, StringComparison.Ordinal);
        Assert.DoesNotContain("salt", american, StringComparison.Ordinal);
        var european = Told(Packet.Read(TestPanels.Eu("28", Printed)));
        Assert.Contains("salt", european, StringComparison.Ordinal);
        Assert.DoesNotContain("sodium", european, StringComparison.Ordinal);

        static string Told(PanelAnswer answer) => Assert.Single(answer.Notes, note => note.StartsWith(NotKnown, StringComparison.Ordinal));
    }

    [Fact]
    public void Sugar_alcohol_that_is_neither_printed_nor_expected_is_counted_as_none_and_that_is_said()
    {
        const string None = "Neither printed nor expected, and so counted as none: ";
        Assert.Contains(None + "sugar alcohol and allulose.", Packet.Read(TestPanels.Us("28", "fat 15, carbohydrate 6, protein 6")).Notes);
        Assert.Contains(None + "allulose.", Packet.Read(TestPanels.Us("28", "fat 15, carbohydrate 6, polyols 1, protein 6")).Notes);
        // Where carbohydrate is not printed nothing is counted of it, and what the food is like says the rest.
        Assert.DoesNotContain(Packet.Read(TestPanels.Us("28", "fat 15, protein 6")).Notes, IsNone);
        Assert.DoesNotContain(Packet.Read(TestPanels.Us("28", "fat 15, carbohydrate 6, protein 6"), "almond-flour-blanched").Notes, IsNone);

        static bool IsNone(string note) => note.StartsWith(None, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_taken_after_the_like_is_named_and_what_is_printed_or_never_there_is_not()
    {
        var notes = Packet.Read(TestPanels.Us("28", "energyKcal 170, fat 15, saturatedFat 1, sodium 0, carbohydrate 6, sugars 1, protein 6"), "almond-flour-blanched").Notes;
        var taken = Assert.Single(notes, note => note.StartsWith("Not printed, and taken from blanched almond flour: ", StringComparison.Ordinal));
        Assert.Contains("potassium", taken, StringComparison.Ordinal);
        Assert.DoesNotContain("protein", taken, StringComparison.Ordinal);
        Assert.DoesNotContain("sodium", taken, StringComparison.Ordinal);
        // Oil has no fibre by its nature: that is known.
        Assert.DoesNotContain(Packet.Read(TestPanels.Eu("100", "fat 100"), "olive-oil").Notes, note => note.Contains("fibre", StringComparison.Ordinal));
    }

    [Theory]
    // An oil is fat and nothing else; 91.5 g of fat leave more than separate analyses may miss.
    [InlineData("fat 91", "olive-oil", true)]
    [InlineData("fat 99", "olive-oil", false)]
    // Lemon juice has 6.9 g of carbohydrate by difference, of which 4 g are acid: a European packet counts it in or leaves it out.
    [InlineData("carbohydrate 6.6, protein 0.4", "lemon-juice", false)]
    [InlineData("carbohydrate 2.5, sugars 2.5, protein 0.4", "lemon-juice", false)]
    // It is nine tenths water, which leaves no room for 15 g.
    [InlineData("carbohydrate 15, protein 0.4", "lemon-juice", true)]
    // Vanilla extract has 12.65 g of carbohydrate and 34.39 g of alcohol: what is left of 100 g holds both, and a sugar analysis the
    // first. 60 g are more than its water leaves, 46.6 g at the least.
    [InlineData("fat 0, carbohydrate 47, protein 0", "vanilla-extract", false)]
    [InlineData("fat 0, carbohydrate 13, protein 0", "vanilla-extract", false)]
    [InlineData("fat 0, carbohydrate 60, protein 0", "vanilla-extract", true)]
    // Of distilled vinegar it is the acetic acid, which stands with what is nothing else: from 3.75 to 8.75 g beside 91.05 g of water
    // at the least. 8 g are the acid itself; 15 g are more than the water leaves.
    [InlineData("carbohydrate 8", "vinegar-distilled", false)]
    [InlineData("carbohydrate 15", "vinegar-distilled", true)]
    public void A_food_that_cannot_be_the_like_says_so(string figures, string like, bool isUnlike) =>
        Assert.Equal(isUnlike, Packet.Read(TestPanels.Eu("100", figures), like).Notes.Any(note => note.Contains("do not fit", StringComparison.Ordinal)));
}
