namespace SwapSolver.Kitchen.Ingredients;

/// <summary>One draw of an ingredient's facts. Rules see a sheet, never a range: typical, low, high and
/// sampled values then run through the same code. Thousands are read for one figure, and none of them is an object.</summary>
public readonly struct FactSheet
{
    private readonly double[]? perGram;

    private readonly FactSheets? several;

    private readonly int place;

    internal FactSheet(Ingredient ingredient, double[] perGram)
    {
        Ingredient = ingredient;
        this.perGram = perGram;
    }

    internal FactSheet(Ingredient ingredient, FactSheets several, int place)
    {
        Ingredient = ingredient;
        this.several = several;
        this.place = place;
    }

    /// <summary>The ingredient whose facts these are.</summary>
    public Ingredient Ingredient { get; }

    /// <summary>The fact per gram of the ingredient: g/100 g and mg/100 g become g/g, kcal/100 g becomes kcal/g;
    /// facts per gram and shares stay as they are.</summary>
    /// <exception cref="MissingFactException">The ingredient lacks the fact. It is not zero: it is not known.</exception>
    public double this[Fact fact]
    {
        get
        {
            var value = perGram is not null ? perGram[fact.Index] : several!.PerGram(fact, place);
            return double.IsNaN(value) ? throw new MissingFactException(Ingredient.Id, fact) : value;
        }
    }

    /// <summary>A sheet whose facts stand where <paramref name="share"/> says, from 0 (low) over one half (typical) to 1 (high).</summary>
    public static FactSheet Drawn(Ingredient ingredient, Func<Fact, double> share) => new(ingredient, PerGram(ingredient, share));

    /// <summary>Every fact per gram, where <paramref name="share"/> says in its range; not a number where it is not known.</summary>
    internal static double[] PerGram(Ingredient ingredient, Func<Fact, double> share) =>
        [.. Fact.All.Select(fact => ingredient.RangeOf(fact) is null ? double.NaN : FactAt(ingredient, fact, share(fact)))];

    /// <summary>One fact per gram of an ingredient, where <paramref name="share"/> says in its range: from 0 (low) over one half (typical) to 1 (high).</summary>
    /// <exception cref="MissingFactException">The ingredient lacks the fact.</exception>
    public static double FactAt(Ingredient ingredient, Fact fact, double share) =>
        ingredient.RangeOf(fact) is { } range ? range.At(share) * fact.PerGramFactor : throw new MissingFactException(ingredient.Id, fact);
}
