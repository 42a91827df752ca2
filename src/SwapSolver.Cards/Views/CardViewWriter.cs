using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using SwapSolver.Cards.Pictures;
using SwapSolver.Cards.Texts;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Cards.Views;

/// <summary>Writes a card into words.</summary>
/// <param name="Room">What cards are printed with.</param>
/// <param name="Escape">What makes words harmless to the page that they are written on; a template that escapes by itself
/// needs none.</param>
internal sealed record CardViewWriter(CardRoom Room, Func<string, string> Escape)
{
    private const string HeadWord = "head-";

    /// <summary>The card in words.</summary>
    public CardView Write(Card card)
    {
        var words = new CardWords(Room.Phrases, Room.Dials, card.Locale);
        var label = new LabelWords(Room.Phrases);
        return new CardView
        {
            Heads = Room.Phrases.ById.Where(pair => pair.Key.StartsWith(HeadWord, StringComparison.Ordinal))
                .ToImmutableDictionary(pair => pair.Key[HeadWord.Length..], pair => Escape(pair.Value.Replace("{portion}", label.Portion(card.Label), StringComparison.Ordinal))),
            Title = Clean(card.Formula.DisplayName),
            Description = Clean(card.Formula.Description),
            Version = Clean(words.Say(card.IsFingerprint ? "fingerprint" : "version", ("version", card.Version))),
            Yield = Escape(BakingWords.Yield(words, card.Formula)),
            Batter = Escape(BakingWords.Batter(words, card.Formula)),
            HasMeasures = card.ShowsMeasures,
            MeasuresNote = Escape(words.Say("measures-note")),
            HasPercentages = card.Lines.Any(line => line.BakersPercentage is not null),
            Lines = [.. card.Lines.Select(line => Write(words, line))],
            TotalGrams = Escape(words.Grams(card.Formula.BatterMass)),
            Statements = [.. card.Statements.Select(Clean)],
            Cautions = [.. card.Cautions.Select(Clean)],
            Baking = [.. new BakingWords(words).Of(card).Select(Escape)],
            Steps = [.. card.Formula.Steps.Select(step => Clean(words.Step(PlainWords.Of(step))))],
            NoSteps = Escape(words.Say("no-steps")),
            Law = Escape(words.Say("law", ("place", UpperFirst(card.Label.Law.Name)), ("law", card.Label.Law.Text), ("date", card.Label.Law.AsOf))),
            Portion = Escape(label.Portion(card.Label)),
            HasShares = card.Label.Figures.Any(figure => figure.DailyShare(card.Label.Law.Portion) is not null),
            Figures = [.. card.Label.Figures.Select(figure => Write(words, card.Label.Law, figure))],
            Notes = [.. Notes(words, label, card).Select(Clean)],
            Pictures =
            [
                .. new CardPictures(Room).Of(card).Select(picture => new PictureView(
                    Escape(picture.Title), picture.Drawing.ToString(SaveOptions.DisableFormatting), [.. picture.Columns.Select(Escape)], [.. picture.Rows.Select(row => row.Select(Clean).ToImmutableArray())])),
            ],
        };
    }

    private static IEnumerable<string> Notes(CardWords words, LabelWords label, Card card)
    {
        var net = card.Loaf.NetCarbohydrate is { } grams
            ? words.Say("net-carbs", ("value", words.Number(grams.Value / card.Formula.Slices, "0.0")), ("convention", card.NetCarbohydrate.Convention.Name))
            : words.Say("net-carbs-none");
        return [net, words.Say("energy-by", ("method", card.Label.Method.Name)), $"{UpperFirst(card.Label.Law.CarbohydrateWords)}.", .. label.Notes(card.Formula, card.Label)];
    }

    private LineView Write(CardWords words, CardLine line) => new(
        Clean(line.Line.Ingredient.Name),
        Escape(words.Grams(line.Line.Grams)),
        Escape(Measure(words, line)),
        line.BakersPercentage is { } percent ? Escape(words.Number(percent.Value, "0.#")) : string.Empty);

    private static string Measure(CardWords words, CardLine line)
    {
        if (line.Line is { Size: { } size, Count: { } count })
        {
            return words.Say("counted", ("number", words.Number(count)), ("size", words.Say($"size-{size}")));
        }

        if (line.Measure is not { } measure)
        {
            return words.Say("measure-none");
        }

        var format = measure.Weighs.High.Value < 10 ? "0.#" : "0";
        return words.Say(
            measure.Rest is null ? "measure" : "measure-and",
            ("number", measure.Number),
            ("unit", UnitOf(words, measure)),
            ("rest", measure.Rest is { } rest ? $"{rest.Number} {UnitOf(words, rest)}" : string.Empty),
            ("low", words.Number(measure.Weighs.Low.Value, format)),
            ("high", words.Number(measure.Weighs.High.Value, format)));
    }

    private static string UnitOf(CardWords words, HouseholdAmount measure) => words.Say($"{(measure.IsSeveral ? "units" : "unit")}-{measure.Unit}");

    private static string UpperFirst(string text) => $"{char.ToUpperInvariant(text[0])}{text[1..]}";

    private FigureView Write(CardWords words, LabelLaw law, LabelFigure figure)
    {
        string Amount(PanelAmount? amount) => Escape(amount is { } known ? words.Number(known.Value) : words.Say("not-known"));

        var portion = law.Portion;
        var printed = figure.Print(figure.Per(portion)) is { } text ? $"{words.Sign(law.Write(text))} {figure.Line.Unit}" : words.Say("not-known");
        return new FigureView(
            Escape(figure.Line.Name),
            figure.Line.Depth,
            Escape(printed),
            figure.DailyShare(portion) is { } share ? Escape($"{share.Value.ToString("0", CultureInfo.InvariantCulture)} %") : string.Empty,
            Amount(figure.PerSlice),
            Amount(figure.PerHundredGrams),
            Amount(figure.InLoaf));
    }

    private string Clean(string text) => Escape(PlainWords.Of(text));
}
