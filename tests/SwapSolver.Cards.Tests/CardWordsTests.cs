using SwapSolver.Cards.Texts;
using SwapSolver.Loaves;

namespace SwapSolver.Cards.Tests;

public sealed class CardWordsTests
{
    private static readonly ReferenceTable Temperatures = ReferenceTable.Read("Reference/temperatures.csv");

    public static TheoryData<string> Rows => [.. Temperatures.Names];

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_temperature_in_a_step_is_shown_by_every_dial(string name)
    {
        var row = Temperatures[name];

        Assert.Equal(row["shown"], In(row["locale"]).Step(row["step"]));
    }

    [Theory]
    [InlineData("en-GB", "1234.5")]
    [InlineData("de-DE", "1234,5")]
    [InlineData("fr-FR", "1234,5")]
    [InlineData("de-CH", "1234.5")]
    public void A_number_has_the_sign_of_its_region(string locale, string written) => Assert.Equal(written, In(locale).Number(1234.5));

    [Theory]
    [InlineData("de", "de-DE")]
    [InlineData("de_at", "de-AT")]
    [InlineData("EN-us", "en-US")]
    [InlineData("tlh", null)]
    [InlineData("de-XX", null)]
    public void A_locale_is_found_by_language_and_region(string asked, string? found) => Assert.Equal(found, TestCards.Room.Locales.Find(asked)?.Id);

    private static CardWords In(string locale) => new(TestLabels.Phrases, TestCards.Room.Dials, TestCards.Room.Locales.Find(locale)!);
}
