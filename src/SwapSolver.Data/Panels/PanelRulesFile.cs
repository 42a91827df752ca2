using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Quantities;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Data.Panels;

/// <summary>Reads <c>data/labels/panel-rounding.json</c>.</summary>
public static class PanelRulesFile
{
    /// <summary>Most energy that a gram of anything gives [kcal/g]; beyond it a factor is mistyped.</summary>
    private const double MostKcalPerGram = 10;

    /// <summary>Most ash that a gram of a mineral is believed to leave at the least [g/g].</summary>
    private const double MostAshPerGram = 5;

    /// <summary>What energy is counted on.</summary>
    private static readonly ImmutableArray<Fact> Counted =
    [
        Fact.Protein, Fact.Fat, Fact.Carbohydrate, Fact.Fibre, Fact.Polyols, Fact.Allulose, Fact.OrganicAcid, Fact.Alcohol, Fact.Other,
    ];

    private static readonly ImmutableArray<Fact> Minerals = [Fact.Sodium, Fact.Potassium, Fact.Calcium, Fact.Iron];

    /// <summary>What is known of nutrition panels.</summary>
    /// <exception cref="DataFaultException">The file cannot be believed.</exception>
    public static PanelRules Read(DataFolder folder, SourceKeys sources)
    {
        var root = folder.Read("labels/panel-rounding.json").Only(
            "about", "notFor", "units", "unitedStates", "europeanUnion", "energyKcalPerG", "erythritolKcalPerG", "energyAllowancePercent",
            "kilojoulesPerKcal", "tolerancePercent", "usualAshPercent", "ashGPerGOfMineral", "sodiumMgPerGOfSalt", "mostServingGrams");
        double Value(string name, double most)
        {
            var place = root.Get(name).Only("value", "source", "mark");
            Cite(place, sources);
            return Between(place.Get("value"), 0, most);
        }

        var rounding = new RoundingFile(sources, root.Get("units"));
        return new PanelRules(
            ImmutableDictionary<PanelBasis, BasisRules>.Empty
                .Add(PanelBasis.UnitedStates, rounding.Read(root.Get("unitedStates")))
                .Add(PanelBasis.EuropeanUnion, rounding.Read(root.Get("europeanUnion"))),
            new EnergyRules(
                FactorsOf(root.Get("energyKcalPerG"), sources),
                new PerGram(Value("erythritolKcalPerG", MostKcalPerGram)),
                new Percent(Value("energyAllowancePercent", 50)),
                RangeOf(root.Get("kilojoulesPerKcal"), MostKcalPerGram, sources)),
            new Percent(Value("tolerancePercent", 10)),
            new Percent(Value("usualAshPercent", 100)),
            AshOf(root.Get("ashGPerGOfMineral"), sources),
            new PanelAmount(Value("sodiumMgPerGOfSalt", 1000)),
            new Grams(Value("mostServingGrams", 100_000)));
    }

    private static ImmutableDictionary<Fact, Range> FactorsOf(JsonPlace place, SourceKeys sources)
    {
        place.Only([.. Counted.Select(fact => fact.Id)]);
        return Counted.ToImmutableDictionary(fact => fact, fact => RangeOf(place.Get(fact.Id), MostKcalPerGram, sources));
    }

    private static ImmutableDictionary<Fact, PerGram> AshOf(JsonPlace place, SourceKeys sources)
    {
        place.Only([.. Minerals.Select(fact => fact.Id), "source", "mark"]);
        Cite(place, sources);
        return Minerals.ToImmutableDictionary(fact => fact, fact => new PerGram(Between(place.Get(fact.Id), 1, MostAshPerGram)));
    }

    private static Range RangeOf(JsonPlace place, double most, SourceKeys sources)
    {
        place.Only("low", "typical", "high", "source", "mark");
        Cite(place, sources);
        var range = new Range(place.Get("low").Number, place.Get("typical").Number, place.Get("high").Number);
        return range.IsInOrder && range.Low >= 0 && range.High <= most
            ? range
            : throw place.Fault($"low {range.Low}, typical {range.Typical}, high {range.High} must stand in order, from 0 to {most}");
    }

    internal static void Cite(JsonPlace place, SourceKeys sources)
    {
        _ = sources.Key(place.Get("source"));
        _ = Words.MarkOf(place.Get("mark"));
    }

    internal static double Between(JsonPlace place, double least, double most) =>
        place.Number >= least && place.Number <= most
            ? place.Number
            : throw place.Fault($"{place.Number} must lie between {least} and {most}");
}
