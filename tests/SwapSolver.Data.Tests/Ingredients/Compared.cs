using SwapSolver.Kitchen.Ingredients;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Data.Tests.Ingredients;

/// <summary>One nutrient of one food in two tables: ours with its range, theirs with its deviation.</summary>
/// <param name="Nutrient">Its name in the reference tables.</param>
/// <param name="Ours">Our range [g or mg per 100 g].</param>
/// <param name="Theirs">Their figure in the same unit.</param>
internal sealed record Compared(string Nutrient, Range Ours, IndianFood.Spread Theirs)
{
    /// <summary>Figures compared of every food.</summary>
    /// <remarks>All but the water are compared per 100 g of dry food: how far a seed or a flour was dried is no question of
    /// what it is made of.</remarks>
    public static IReadOnlyList<Compared> Of(Ingredient ingredient, IndianFood food)
    {
        Range Our(Fact fact) => ingredient.RangeOf(fact)!.Value;
        var ourDry = 100 / (100 - Our(Fact.Water).Typical);
        var theirDry = 100 / (100 - food["water"].Mean);
        Compared Dry(string nutrient, Range ours, IndianFood.Spread theirs) =>
            new(nutrient, new(ours.Low * ourDry, ours.Typical * ourDry, ours.High * ourDry), theirs * theirDry);

        return
        [
            new("water", Our(Fact.Water), food["water"]),
            Dry("protein", Our(Fact.Protein), food["protcnt"]),
            Dry("fat", Our(Fact.Fat), food["fatce"]),
            Dry("ash", Our(Fact.Ash), food["ash"]),
            Dry("carbohydrate", Our(Fact.Carbohydrate), food.Carbohydrate),
            Dry("fibre", Our(Fact.Fibre), food["fibtg"]),
            Dry("available-carbohydrate", Less(Our(Fact.Carbohydrate), Our(Fact.Fibre)), food.AvailableCarbohydrate),
            Dry("sodium", Our(Fact.Sodium), food["na"] * 1000),
            Dry("potassium", Our(Fact.Potassium), food["k"] * 1000),
            Dry("calcium", Our(Fact.Calcium), food["ca"] * 1000),
            Dry("iron", Our(Fact.Iron), food["fe"] * 1000),
        ];
    }

    /// <summary>How far apart the two figures lie.</summary>
    public double Difference => Math.Abs(Theirs.Mean - Ours.Typical);

    /// <summary>How far apart they may lie by chance and by brand.</summary>
    /// <remarks>Two of their standard deviations hold some 95 of 100 samples, as our range is meant to, so both ends are
    /// expanded uncertainties; they are joined as two laboratories' are, in quadrature (memory of ISO 13528, the E_n number).</remarks>
    public double Uncertainty =>
        Math.Sqrt(Square(2 * Theirs.Deviation) + Square(Theirs.Mean > Ours.Typical ? Ours.High - Ours.Typical : Ours.Typical - Ours.Low));

    /// <summary>Whether the two tables say the same.</summary>
    public bool Agrees => Difference <= Uncertainty;

    // The ends of a difference of two figures that err apart from each other.
    private static Range Less(Range whole, Range part) => new(
        whole.Typical - part.Typical - Math.Sqrt(Square(whole.Typical - whole.Low) + Square(part.High - part.Typical)),
        whole.Typical - part.Typical,
        whole.Typical - part.Typical + Math.Sqrt(Square(whole.High - whole.Typical) + Square(part.Typical - part.Low)));

    private static double Square(double figure) => figure * figure;
}
