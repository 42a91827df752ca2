using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Solving.Panels;

/// <summary>A panel with all that its composition is sought by.</summary>
/// <param name="Rules">The rules of panels.</param>
/// <param name="Foods">How much wider than another ingredient's a range is that is taken after it.</param>
/// <param name="Panel">The panel.</param>
/// <param name="Like">The ingredient that the food is like; null where none was named.</param>
internal sealed record PanelCase(PanelRules Rules, FoodRules Foods, NutritionPanel Panel, Ingredient? Like)
{
    /// <summary>What a food holds only where its panel or its like says so: nobody expects sugar alcohol in a flour, and
    /// if any carbohydrate might be some, no energy could ever be too low.</summary>
    private static readonly ImmutableArray<Fact> OnlyWhereSaid =
        [Fact.Polyols, Fact.Erythritol, Fact.Allulose, Fact.OrganicAcid, Fact.Alcohol, Fact.Other];

    /// <summary>What its law says.</summary>
    public BasisRules Law => Rules.ByBasis[Panel.Basis];

    /// <summary>What the figures are for [g].</summary>
    public Range Serving => Rules.ServingOf(Panel);

    /// <summary>What a printed figure may stand for, for one serving, in the unit of its line.</summary>
    public Range IntervalOf(PanelLine line) => Rules.IntervalOf(Panel.Basis, line, Panel.Figures[line]);

    /// <summary>Whether a line of the fact is printed.</summary>
    public bool IsPrinted(Fact fact) => Panel.Figures.Keys.Any(line => PanelFacts.FactOf(line) == fact);

    /// <summary>Whether the food may hold any of it at all.</summary>
    public bool MayHold(Fact fact) =>
        !OnlyWhereSaid.Contains(fact)
        || IsPrinted(fact)
        || Like?.RangeOf(fact) is { High: > 0 }
        || (fact == Fact.Erythritol && MayHold(Fact.Polyols))
        || (fact == Fact.Polyols && IsPrinted(Fact.Erythritol));

    /// <summary>The range of the like's fact, widened as what is taken after another is; null where it is not known.</summary>
    public Range? FamilyOf(Fact fact) => Like?.RangeOf(fact) is { } range
        ? new Range(
            Math.Max(0, range.Typical - ((range.Typical - range.Low) * Foods.LikeWidening)),
            range.Typical,
            Math.Min(fact.Most, range.Typical + ((range.High - range.Typical) * Foods.LikeWidening)))
        : null;
}
