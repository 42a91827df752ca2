using SwapSolver.Data.Files;
using SwapSolver.Data.Labels;
using SwapSolver.Data.Wording;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Loaves;

/// <summary>The shipped laws on labels and the words of cards.</summary>
public static class TestLabels
{
    private static readonly Lazy<LabelLaws> ReadLaws = new(() => LawFiles.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder), TestPanels.Rules));

    private static readonly Lazy<Phrases> ReadPhrases = new(() => PhraseFile.ReadCard(TestKitchen.Folder));

    /// <summary>Every law.</summary>
    public static LabelLaws Laws => ReadLaws.Value;

    /// <summary>The words of cards.</summary>
    public static Phrases Phrases => ReadPhrases.Value;

    /// <summary>The law of an id.</summary>
    public static LabelLaw Law(string id) => Laws.Find(id) ?? throw new ArgumentException($"no law '{id}'", nameof(id));

    /// <summary>A line of a law by the id of its nutrient.</summary>
    public static LawLine Line(string law, string nutrient) => Law(law).Lines.Single(line => line.Id == nutrient);

    /// <summary>A method of counting energy, by whichever law lets it count.</summary>
    public static EnergyMethod Method(string id) => Laws.All.SelectMany(law => law.EnergyMethods).First(method => method.Id == id);
}
