using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Data.Panels;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Data.Labels;

/// <summary>Reads <c>data/labels/energy-methods.json</c>.</summary>
internal static class EnergyMethodFile
{
    /// <summary>Most energy that a gram of anything gives [kJ/g]; beyond it a factor is mistyped.</summary>
    private const double MostPerGram = 40;

    private static readonly ImmutableDictionary<string, Fact> Counted = new[]
    {
        Fact.Protein, Fact.Fat, Fact.Carbohydrate, Fact.Fibre, Fact.Polyols, Fact.Erythritol, Fact.Allulose, Fact.OrganicAcid, Fact.Alcohol,
    }.ToImmutableDictionary(fact => fact.Id, StringComparer.Ordinal);

    /// <summary>The methods by id.</summary>
    public static ImmutableDictionary<string, EnergyMethod> Read(DataFolder folder, SourceKeys sources) =>
        folder.Read("labels/energy-methods.json").Only("about", "notFor", "methods").Get("methods").Items
            .Select(place => MethodOf(place, sources))
            .ToImmutableDictionary(method => method.Id, StringComparer.Ordinal);

    private static EnergyMethod MethodOf(JsonPlace place, SourceKeys sources)
    {
        place.Only("id", "name", "kcalPerG", "kilojoulesPerG", "source", "mark");
        PanelRulesFile.Cite(place, sources);
        return new EnergyMethod(
            place.Get("id").Text, place.Get("name").Text, FactorsOf(place.Find("kcalPerG")), FactorsOf(place.Find("kilojoulesPerG")));
    }

    private static ImmutableDictionary<Fact, PerGram>? FactorsOf(JsonPlace? place) => place?.Only([.. Counted.Keys]).Properties.ToImmutableDictionary(
        pair => Counted[pair.Key], pair => new PerGram(PanelRulesFile.Between(pair.Value, 0, MostPerGram)));
}
