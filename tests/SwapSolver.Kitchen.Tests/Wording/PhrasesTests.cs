using System.Collections.Immutable;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Kitchen.Tests.Wording;

public sealed class PhrasesTests
{
    private static readonly Phrases Phrases = new(
        ImmutableDictionary<string, string>.Empty.Add("grows", "{what} grows with the loaf, {what} by {factor}"));

    [Fact]
    public void Every_gap_of_a_sentence_is_filled_wherever_it_stands() => Assert.Equal(
        "salt grows with the loaf, salt by 2", Phrases.Say("grows", ("what", "salt"), ("factor", "2")));

    [Theory]
    [InlineData("", "")]
    [InlineData("milk", "milk")]
    [InlineData("milk,egg", "milk and egg")]
    [InlineData("milk,egg,sesame", "milk, egg and sesame")]
    public void Several_things_are_named_in_one_breath(string things, string words) =>
        Assert.Equal(words, Phrases.List(things.Split(',', StringSplitOptions.RemoveEmptyEntries)));
}
