using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Data.Wording;

/// <summary>Reads <c>wording/questions/</c>: patterns, values, things, tins, and the words by class, a file a theme.</summary>
public static class QuestionFiles
{
    private const string Folder = "wording/questions";

    /// <summary>The words and patterns of questions.</summary>
    /// <exception cref="DataFaultException">A file cannot be believed.</exception>
    public static QuestionWords Read(DataFolder folder, SourceKeys sources)
    {
        var things = folder.Read($"{Folder}/things.json").Only("about", "tooPlain", "leftOut", "shortNames", "soldInParts", "partOf", "ownWords");
        var valued = folder.Read($"{Folder}/values.json").Only("about", "valued").Get("valued").Properties.SelectMany(pair => pair.Value.Properties.SelectMany(
            value => value.Value.Items.Select(phrase => new QuestionWord(phrase.Text, pair.Key, value.Key))));
        return new QuestionWords(
            [.. WordsOf(folder), .. valued],
            [
                .. folder.Read($"{Folder}/patterns.json").Only("about", "classes", "notFor", "patterns").Get("patterns").Properties.SelectMany(pair => pair.Value.Items.Select(says =>
                    new QuestionPattern([.. says.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries)], pair.Key))),
            ],
            [.. things.Get("tooPlain").Items.Select(word => word.Text)],
            things.Get("leftOut").Properties.SelectMany(pair => pair.Value.Items.Select(word => (word.Text, Id: pair.Key)))
                .ToImmutableDictionary(pair => pair.Text, pair => pair.Id, StringComparer.Ordinal),
            TextsOf(things, "shortNames"),
            [.. things.Get("soldInParts").Items.Select(word => word.Text)],
            TextsOf(things, "partOf"),
            TextsOf(things, "ownWords"),
            TinsOf(folder, sources));
    }

    /// <summary>The phrases of all themes. A class has one: the second would be looked for in vain.</summary>
    private static List<QuestionWord> WordsOf(DataFolder folder)
    {
        var words = new List<QuestionWord>();
        var known = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (name, phrases) in folder.JsonFilesOf($"{Folder}/words").SelectMany(file => folder.Read(file).Only("about", "words").Get("words").Properties))
        {
            if (!known.Add(name))
            {
                throw phrases.Fault($"the class '{name}' stands in another file of {Folder}/words too: put its phrases together");
            }

            words.AddRange(phrases.Items.Select(phrase => new QuestionWord(phrase.Text, name, string.Empty)));
        }

        return words;
    }

    private static ImmutableArray<LoafTin> TinsOf(DataFolder folder, SourceKeys sources)
    {
        var root = folder.Read($"{Folder}/tins.json").Only("about", "tinSource", "tins");
        _ = sources.Key(root.Get("tinSource"));
        return
        [
            .. root.Get("tins").Items.Select(tin => new LoafTin(
                new Grams(tin.Only("loafGrams", "lengthMm", "widthMm", "heightMm").Get("loafGrams").Number),
                new Tin(Side(tin, "lengthMm"), Side(tin, "widthMm"), Side(tin, "heightMm")))),
        ];
    }

    private static ImmutableDictionary<string, string> TextsOf(JsonPlace root, string name) =>
        root.Get(name).Properties.ToImmutableDictionary(pair => pair.Key, pair => pair.Value.Text, StringComparer.Ordinal);

    private static Millimetres Side(JsonPlace tin, string name) => new(tin.Get(name).Number);
}
