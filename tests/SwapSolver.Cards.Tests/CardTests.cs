using System.Globalization;
using System.Text.RegularExpressions;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Cards.Tests;

public sealed partial class CardTests
{
    private static readonly Formula Walnut = Loaf.Walnut with
    {
        BakeLoss = new Percent(11),
        Oven = new Oven(new Celsius(175), false),
        Shape = new Tin(new Millimetres(215), new Millimetres(110), new Millimetres(65)),
        Steps = ["Heat the oven to 175 °C.", "Bake."],
    };

    [Fact]
    public void The_lines_add_up_to_the_batter_that_is_printed_below_them()
    {
        var rows = GramCell().Matches(TestCards.Printer.Markdown(TestCards.Of(Walnut)).Split("## Allergens")[0]).Select(match => double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)).ToList();

        Assert.Equal(Walnut.Lines.Length, rows.Count);
        Assert.Equal(Walnut.BatterMass.Value, rows.Sum(), 0.05);
        Assert.Contains($"| **Batter in all** | **{rows.Sum():0.##}** |", TestCards.Printer.Markdown(TestCards.Of(Walnut)), StringComparison.Ordinal);
    }

    [Fact]
    public void Grams_stand_with_and_without_household_measures()
    {
        var (plain, measured) = (TestCards.Printer.Markdown(TestCards.Of(Walnut)), TestCards.Printer.Markdown(TestCards.Of(Walnut, measures: MeasureSystem.Metric)));

        Assert.DoesNotContain("weighs", plain, StringComparison.Ordinal);
        Assert.Matches(@"\| walnut meal \| 200 \| [^|]+cup[^|]+\(weighs \d+ to \d+ g\) \|", measured);
        Assert.Contains("4 of size large (US)", measured, StringComparison.Ordinal);
        Assert.Contains("approximate", measured, StringComparison.Ordinal);
    }

    [Fact]
    public void The_card_names_oven_tin_time_and_cooling()
    {
        var card = TestCards.Printer.Markdown(TestCards.Of(Walnut));

        Assert.Contains("Oven: 175 °C (345 °F, fan 155 °C, gas mark 4).", card, StringComparison.Ordinal);
        Assert.Contains("Tin: 215 x 110 x 65 mm inside.", card, StringComparison.Ordinal);
        Assert.Matches(@"Bake: about \d+ minutes \(\d+ to \d+\) to a core of 9\d °C \(20\d °F\)", card);
        Assert.Matches(@"Cool: about \d+ minutes", card);
        Assert.Contains("1. Heat the oven to 175 °C (345 °F", card, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_oven_no_minutes_are_made_up()
    {
        var card = TestCards.Of(Loaf.Walnut);

        Assert.Null(card.Bake);
        Assert.Contains("no time can be told", TestCards.Printer.Markdown(card), StringComparison.Ordinal);
        Assert.DoesNotContain("cookTime", TestCards.Printer.LinkedData(card), StringComparison.Ordinal);
    }

    [Fact]
    public void A_fingerprint_changes_with_what_is_baked_and_not_with_its_name()
    {
        Assert.Equal(TestCards.Of(Walnut).Version, TestCards.Of(Walnut with { DisplayName = "Another name" }).Version);
        Assert.NotEqual(TestCards.Of(Walnut).Version, TestCards.Of(Walnut.Scaled(1.001)).Version);
        Assert.NotEqual(TestCards.Of(Walnut).Version, TestCards.Of(Walnut with { Slices = 11 }).Version);
        Assert.Equal("autumn 3", TestCards.Of(Walnut, version: " autumn 3 ").Version);
    }

    [Fact]
    public void Allergens_and_cautions_stand_before_the_steps()
    {
        var card = TestCards.Printer.Markdown(TestCards.Of(Walnut));

        Assert.True(card.IndexOf("## Cautions", StringComparison.Ordinal) < card.IndexOf("## Steps", StringComparison.Ordinal));
        Assert.Contains("at least 71 °C", card, StringComparison.Ordinal);
        Assert.Contains("medical diet", card, StringComparison.Ordinal);
    }

    [Fact]
    public void A_variant_says_what_was_left_out_what_came_in_and_whose_steps_these_are()
    {
        var variant = Bowl.Of(("sesame-meal", 200), ("psyllium-husk", 20), ("water", 200)).WithEggs(4) with { Steps = ["Mix the walnuts in."] };
        var card = TestCards.Of(variant, variantOf: Walnut);

        Assert.Contains(card.Statements, statement => statement.StartsWith("Made without milk and tree-nut ingredients (US list)", StringComparison.Ordinal));
        Assert.Contains(card.Cautions, caution => caution.StartsWith("This brings in sesame", StringComparison.Ordinal));
        Assert.Contains(card.Cautions, caution => caution.StartsWith("The steps are those of the formula that this variant comes from", StringComparison.Ordinal));
        Assert.Equal(card.Cautions.Distinct(), card.Cautions);
    }

    [Fact]
    public void A_German_card_has_commas_and_an_American_one_Fahrenheit_first()
    {
        Assert.Contains("| cream of tartar | 11 |", TestCards.Printer.Markdown(TestCards.Of(Walnut, "eu", locale: "de-DE")), StringComparison.Ordinal);
        Assert.Matches(@"\| Fat \| \d+ g \|", TestCards.Printer.Markdown(TestCards.Of(Walnut, "eu", locale: "de-DE")));
        Assert.Matches(@"\d,\d\d \|", TestCards.Printer.Markdown(TestCards.Of(Walnut, "eu", locale: "de-DE")));
        Assert.Contains("Oven: 345 °F (175 °C, fan 155 °C, gas mark 4).", TestCards.Printer.Markdown(TestCards.Of(Walnut, locale: "en-US")), StringComparison.Ordinal);
    }

    [GeneratedRegex(@"(?m)^\| [^*|]+ \| (\d+(?:\.\d+)?) \|")]
    private static partial Regex GramCell();
}
