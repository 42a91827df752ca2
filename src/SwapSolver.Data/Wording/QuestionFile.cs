using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Data.Wording;

/// <summary>Reads <c>wording/questions.json</c>.</summary>
public static class QuestionFile
{
    /// <summary>The words and patterns of questions.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static QuestionWords Read(DataFolder folder, SourceKeys sources)
    {
        var root = folder.Read("wording/questions.json").Only("about", "classes", "notFor", "tinSource", "words", "valued", "tooPlain", "leftOut", "shortNames", "soldInParts", "partOf", "ownWords", "tins", "patterns");
        _ = sources.Key(root.Get("tinSource"));
        var plain = root.Get("words").Properties.SelectMany(pair => pair.Value.Items.Select(phrase => new QuestionWord(phrase.Text, pair.Key, string.Empty)));
        var valued = root.Get("valued").Properties.SelectMany(pair => pair.Value.Properties.SelectMany(
            value => value.Value.Items.Select(phrase => new QuestionWord(phrase.Text, pair.Key, value.Key))));
        return new QuestionWords(
            [.. plain, .. valued],
            [
                .. root.Get("patterns").Properties.SelectMany(pair => pair.Value.Items.Select(says =>
                    new QuestionPattern([.. says.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries)], pair.Key))),
            ],
            [.. root.Get("tooPlain").Items.Select(word => word.Text)],
            root.Get("leftOut").Properties.SelectMany(pair => pair.Value.Items.Select(word => (word.Text, Id: pair.Key)))
                .ToImmutableDictionary(pair => pair.Text, pair => pair.Id, StringComparer.Ordinal),
            root.Get("shortNames").Properties.ToImmutableDictionary(pair => pair.Key, pair => pair.Value.Text, StringComparer.Ordinal),
            [.. root.Get("soldInParts").Items.Select(word => word.Text)],
            root.Get("partOf").Properties.ToImmutableDictionary(pair => pair.Key, pair => pair.Value.Text, StringComparer.Ordinal),
            root.Get("ownWords").Properties.ToImmutableDictionary(pair => pair.Key, pair => pair.Value.Text, StringComparer.Ordinal),
            [
                .. root.Get("tins").Items.Select(tin => new LoafTin(
                    new Grams(tin.Only("loafGrams", "lengthMm", "widthMm", "heightMm").Get("loafGrams").Number),
                    new Tin(Side(tin, "lengthMm"), Side(tin, "widthMm"), Side(tin, "heightMm")))),
            ]);
    }

    private static Millimetres Side(JsonPlace tin, string name) => new(tin.Get(name).Number);
}
