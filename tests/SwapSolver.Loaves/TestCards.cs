using SwapSolver.Cards;
using SwapSolver.Data.Files;
using SwapSolver.Data.Measures;
using SwapSolver.Data.Wording;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Questions;

namespace SwapSolver.Loaves;

/// <summary>What cards are printed with, and cards of invented loaves.</summary>
public static class TestCards
{
    private static readonly Lazy<CardRoom> OpenedRoom = new(() =>
    {
        var sources = SourceKeys.Read(TestKitchen.Folder);
        return new CardRoom(
            TestLabels.Laws,
            TestLabels.Phrases,
            MeasureFiles.Read(TestKitchen.Folder, sources, TestKitchen.Bakehouse.Pantry),
            OvenDialFile.Read(TestKitchen.Folder, sources),
            LocaleFile.Read(TestKitchen.Folder, sources, TestLabels.Laws));
    });

    /// <summary>Reads balances; nothing is solved, so there is no solver.</summary>
    private static readonly Lazy<AnswerSearch> Search = new(() => new AnswerSearch(TestKitchen.Bakehouse, null!) { Bags = new Bags() });

    /// <summary>What cards are printed with.</summary>
    public static CardRoom Room => OpenedRoom.Value;

    /// <summary>The printer.</summary>
    public static CardPrinter Printer => new(Room);

    /// <summary>A card.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="law">Id of the law of its label.</param>
    /// <param name="measures">Whose cups and spoons; null for none.</param>
    /// <param name="locale">Id of a locale; null for the usual one.</param>
    /// <param name="version">The baker's word; empty for a fingerprint.</param>
    /// <param name="variantOf">The formula that it is a variant of.</param>
    /// <param name="pictures">Whether its readings are drawn, which takes a while.</param>
    public static Card Of(
        Formula formula, string law = "us", MeasureSystem? measures = null, string? locale = null, string version = "", Formula? variantOf = null, bool pictures = false)
    {
        var rules = TestLabels.Law(law);
        var written = locale is null ? Locales.Usual : Room.Locales.Find(locale)!;
        return new CardMaker(TestKitchen.Bakehouse, Room).Make(
            formula, new CardWishes(rules, rules.EnergyMethods[0], 1, measures, written, version, variantOf), pictures ? new Measurement(formula).Read(Search.Value) : []);
    }
}
