using System.Collections.Immutable;
using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Nutrition;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Cards;

/// <summary>Puts a card together: grams, measures, forecasts, label, statements and cautions of one formula.</summary>
/// <param name="Bakehouse">Facts, rules and forecasts.</param>
/// <param name="Room">What cards are printed with.</param>
public sealed record CardMaker(Bakehouse Bakehouse, CardRoom Room)
{
    private static readonly ImmutableArray<Fact> OfRise = [Fact.Acid, Fact.Base, Fact.Water];

    /// <summary>The card of a formula.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="wishes">What is asked of the card.</param>
    /// <param name="readings">Its readings; empty where no picture is asked for.</param>
    public Card Make(Formula formula, CardWishes wishes, ImmutableArray<Reading> readings)
    {
        var measuring = wishes.Measures is { } system ? new HouseholdMeasuring(Room.Measures, system) : null;
        var (bake, rise) = (ForetellBake(formula), ForetellRise(formula));
        var version = string.IsNullOrWhiteSpace(wishes.Version) ? Fingerprint.Of(formula) : wishes.Version.Trim();
        return new Card(
            formula,
            [.. formula.Lines.Select(line => new CardLine(line, formula.BakersPercentage(line), line.Size is null ? measuring?.Of(line.Ingredient, line.Grams) : null))],
            bake,
            rise,
            LabelSheet.Of(formula, wishes.Law, wishes.Method, wishes.ServingSlices),
            Portion.WholeLoaf(formula, Bakehouse.Balances.NetCarbohydrate),
            Bakehouse.Balances.NetCarbohydrate,
            new LabelStatements(Bakehouse.Pantry.Allergens, Room.Phrases).Of(formula, wishes.Law, wishes.VariantOf),
            [.. CautionsOf(formula, wishes, bake).Distinct(StringComparer.Ordinal)],
            readings,
            version,
            string.IsNullOrWhiteSpace(wishes.Version),
            measuring is not null,
            wishes.Locale);
    }

    private IEnumerable<string> CautionsOf(Formula formula, CardWishes wishes, BakeForecast? bake)
    {
        var list = new CautionList(Bakehouse);
        return
        [
            .. wishes.VariantOf is { } reference ? list.OfTheChange(reference, formula) : [],
            .. wishes.VariantOf is not null && !formula.Steps.IsEmpty ? new[] { Room.Phrases.Say("steps-of-origin") } : [],
            .. list.Of(formula),
            .. bake?.Cautions.Select(caution => caution.Text) ?? [],
        ];
    }

    /// <summary>The bake, where the formula says in which oven: a time for an oven that was only assumed has no place on a card.</summary>
    private BakeForecast? ForetellBake(Formula formula) =>
        formula.Oven is not null && formula.Shape is not null && formula.States(Fact.Water)
            ? Bakehouse.Bake.Foretell(formula, new BakeConditions(new Metres(0)), Draws.Typical)
            : null;

    private RiseForecast? ForetellRise(Formula formula) => OfRise.All(formula.States)
        ? Bakehouse.Rise.Foretell(formula, RiseConditions.Usual(Bakehouse.Rise.Practice, new Metres(0)), Draws.Typical)
        : null;
}
