using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Kitchen.Foods;

/// <summary>What a food does in a batter where only its composition is stated: taken after an ingredient that it
/// behaves like, or guessed wide from what it is made of.</summary>
/// <param name="Rules">What is taken.</param>
internal sealed record FoodBehaviour(FoodRules Rules)
{
    /// <summary>What a table or a panel does not print, and an ingredient behaves by.</summary>
    internal static readonly ImmutableArray<Fact> Behaviours =
    [
        Fact.Polyols, Fact.Erythritol, Fact.Allulose, Fact.OrganicAcid, Fact.Alcohol, Fact.Other, Fact.WaterBound,
        Fact.WaterBoundCentrifuge, Fact.Acid, Fact.Base, Fact.SettingShareOfProtein, Fact.GelStrength, Fact.Sweetness,
        Fact.Fermentable, Fact.YeastGas,
    ];

    /// <summary>Those of them that are a part of the carbohydrate.</summary>
    private static readonly ImmutableArray<Fact> InCarbohydrate = [Fact.Polyols, Fact.Allulose, Fact.OrganicAcid];

    /// <summary>Those of them that stand beside water, protein, fat, carbohydrate and ash.</summary>
    private static readonly ImmutableArray<Fact> BesideTheRest = [Fact.Alcohol, Fact.Other];

    /// <summary>The figures that are not stated, from an ingredient that it behaves like. Composition that neither the
    /// food nor behaviour gives stays unknown; and what is taken is never more than what the food leaves room for.</summary>
    public IEnumerable<KeyValuePair<Fact, Figure>> After(Ingredient like, ImmutableDictionary<Fact, Figure> stated)
    {
        var taken = Behaviours.Where(fact => !stated.ContainsKey(fact) && like.Figures.ContainsKey(fact))
            .ToDictionary(fact => fact, fact => like.Figures[fact].Range);
        double Stated(params ReadOnlySpan<Fact> facts)
        {
            var sum = 0.0;
            foreach (var fact in facts)
            {
                sum += stated.TryGetValue(fact, out var figure) ? figure.Range.Typical : 0;
            }

            return sum;
        }

        Fit(taken, InCarbohydrate, Stated(Fact.Carbohydrate) - Stated(Fact.Fibre, Fact.Sugars, Fact.Starch) - Stated(InCarbohydrate.AsSpan()));
        Fit(taken, BesideTheRest, 100 - Stated(Fact.Water, Fact.Protein, Fact.Fat, Fact.Carbohydrate, Fact.Ash) - Stated(BesideTheRest.AsSpan()));
        Fit(taken, [Fact.Erythritol], taken.TryGetValue(Fact.Polyols, out var polyols) ? polyols.Typical : Stated(Fact.Polyols));
        return taken.Select(pair => KeyValuePair.Create(
            pair.Key, new Figure(Wider(pair.Value, pair.Key.Most), Rules.LikeSource, Mark.Memory, null)));
    }

    /// <summary>Makes parts smaller, all by the same share, until their typical values fit.</summary>
    private static void Fit(Dictionary<Fact, Range> taken, ImmutableArray<Fact> parts, double room)
    {
        var wanted = parts.Sum(part => taken.GetValueOrDefault(part).Typical);
        if (wanted <= room)
        {
            return;
        }

        var share = wanted > 0 ? Math.Max(0, room) / wanted : 0;
        foreach (var part in parts.Where(taken.ContainsKey))
        {
            taken[part] = new Range(taken[part].Low * share, taken[part].Typical * share, taken[part].High * share);
        }
    }

    /// <summary>The figures that are not stated, guessed from the composition.</summary>
    public IEnumerable<KeyValuePair<Fact, Figure>> Guessed(ImmutableDictionary<Fact, Figure> stated) =>
        from pair in Guesses(stated)
        where !stated.ContainsKey(pair.Key)
        select KeyValuePair.Create(pair.Key, new Figure(pair.Value, Rules.EstimateSource, Mark.Memory, null));

    private IEnumerable<KeyValuePair<Fact, Range>> Guesses(ImmutableDictionary<Fact, Figure> stated)
    {
        double Of(Fact fact) => stated.TryGetValue(fact, out var figure) ? figure.Range.Typical : 0;
        var carbohydrate = Of(Fact.Carbohydrate);
        var fibre = stated.TryGetValue(Fact.Fibre, out var known)
            ? known.Range
            : new Range(0, carbohydrate / 2, carbohydrate);
        var sugars = Of(Fact.Sugars);
        Range LeftBeside(Range other) => new(
            Math.Max(0, carbohydrate - sugars - other.High),
            Math.Max(0, carbohydrate - sugars - other.Typical),
            Math.Max(0, carbohydrate - sugars - other.Low));

        var starch = LeftBeside(fibre);
        var centrifuge = Of(Fact.Water) >= Rules.Water.WetFrom.Value
            ? Range.Zero
            : Rules.Water.Centrifuge(fibre, stated.TryGetValue(Fact.Protein, out var protein) ? protein.Range : Range.Zero, starch);
        yield return new(Fact.WaterBoundCentrifuge, Ordered(centrifuge, Fact.WaterBoundCentrifuge.Most));
        yield return new(Fact.WaterBound, Ordered(Rules.Water.Batter(centrifuge), Fact.WaterBound.Most));
        yield return new(Fact.SettingShareOfProtein, new Range(0, 0, 0.2));
        yield return new(Fact.Fermentable, new Range(0, sugars / 2, sugars));
        yield return new(Fact.Sweetness, new Range(0, sugars / 200, sugars / 100));
        foreach (var fact in Behaviours.Where(fact => fact != Fact.Fermentable && fact != Fact.Sweetness
            && fact != Fact.SettingShareOfProtein && fact != Fact.WaterBound && fact != Fact.WaterBoundCentrifuge))
        {
            yield return new(fact, Range.Zero);
        }
    }

    private Range Wider(Range range, double most) => Ordered(
        new Range(
            range.Typical - ((range.Typical - range.Low) * Rules.LikeWidening),
            range.Typical,
            range.Typical + ((range.High - range.Typical) * Rules.LikeWidening)),
        most);

    /// <summary>A range in order, from nothing to what can be: unknown fibre makes ends cross.</summary>
    private static Range Ordered(Range range, double most)
    {
        var low = Math.Clamp(Math.Min(range.Low, range.Typical), 0, most);
        var high = Math.Clamp(Math.Max(range.High, range.Typical), 0, most);
        return new Range(low, Math.Clamp(range.Typical, low, high), high);
    }
}
