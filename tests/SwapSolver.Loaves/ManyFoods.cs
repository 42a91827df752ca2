using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Data.Files;
using SwapSolver.Data.Foods;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Loaves;

/// <summary>As many foods of a table as a test wants: rows of the USDA Standard Reference, and seeded variations of them
/// once these are used up. A variation is a little drier or moister than its row, everything else in proportion.</summary>
public static class ManyFoods
{
    private const int Seed = 8_000;

    private const int OtherSeed = 80_000;

    /// <summary>Least and most of a row's dry matter that a variation keeps [1].</summary>
    private const double LeastDry = 0.9;

    private const string File = "many-foods/usda-sr-baking-foods.csv";

    private static readonly Lazy<FoodRules> Opened = new(() => FoodRulesFile.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder)));

    private static readonly Lazy<ImmutableArray<ReferenceRow>> Table = new(() => ReferenceTable.Read(File).Rows);

    private static readonly ImmutableArray<(string Column, Fact Fact)> Columns =
    [
        ("water_g", Fact.Water), ("energy_kcal", Fact.Energy), ("protein_g", Fact.Protein), ("fat_g", Fact.Fat), ("ash_g", Fact.Ash),
        ("carbohydrate_by_difference_g", Fact.Carbohydrate), ("fibre_g", Fact.Fibre), ("sugars_g", Fact.Sugars),
        ("calcium_mg", Fact.Calcium), ("iron_mg", Fact.Iron), ("potassium_mg", Fact.Potassium), ("sodium_mg", Fact.Sodium),
        ("saturated_fat_g", Fact.SaturatedFat),
    ];

    /// <summary>What is taken of a food that states only its composition.</summary>
    public static FoodRules Rules => Opened.Value;

    /// <summary>Makes ingredients of foods, as the service does.</summary>
    public static FoodIngredient Making { get; } =
        new(Rules, TestKitchen.Bakehouse.Pantry.Allergens, new FoodWords(TestKitchen.Bakehouse.Phrases));

    /// <summary>Foods that state their composition and nothing else, as a table does.</summary>
    /// <param name="count">How many.</param>
    public static ImmutableArray<StatedFood> OfTable(int count) =>
        [.. Enumerable.Range(0, count).Select(place => FoodOf(place, Seed))];

    /// <summary>Foods that say what they are like: one of ours after another.</summary>
    /// <param name="count">How many.</param>
    public static ImmutableArray<StatedFood> LikeOurs(int count)
    {
        var ours = TestKitchen.Bakehouse.Pantry.Ingredients.Where(one => one.CountedUnits.IsEmpty && one.Usage.Offered).ToList();
        return [.. Enumerable.Range(0, count).Select(place => Copy(place, ours[place % ours.Count]))];
    }

    /// <summary>The shipped pantry and these foods.</summary>
    public static Pantry PantryWith(IEnumerable<StatedFood> foods)
    {
        var shipped = TestKitchen.Bakehouse.Pantry;
        return new Pantry(shipped.Ingredients.Concat(foods.Select(IngredientOf)), shipped.Allergens, shipped.Groups);
    }

    /// <summary>The ingredient of a food.</summary>
    public static Ingredient IngredientOf(StatedFood food) =>
        Making.Of(food, food.Like is { } like ? TestKitchen.Ingredient(like) : null);

    /// <summary>The same foods as a plain table with a header.</summary>
    /// <param name="count">How many rows.</param>
    /// <param name="otherLots">Whether the variations are others than those of <see cref="OfTable"/>.</param>
    public static string TableText(int count, bool otherLots = false)
    {
        var rows = Enumerable.Range(0, count).Select(place => FoodOf(place, otherLots ? OtherSeed : Seed)).Select(food => string.Join(
            ',',
            Columns.Select(column => food.Figures.TryGetValue(column.Fact, out var figure) ? figure.Range.Typical.ToString("R", CultureInfo.InvariantCulture) : string.Empty)
                .Prepend($"\"{food.Name}\"")
                .Prepend(food.Id)));
        return string.Join('\n', rows.Prepend($"id,long_description,{string.Join(',', Columns.Select(column => column.Column))}"));
    }

    private static StatedFood FoodOf(int place, int seed)
    {
        var row = Table.Value[place % Table.Value.Length];
        var round = place / Table.Value.Length;
        var dry = round == 0 && seed == Seed ? 1 : DryOf(place, seed);
        var figures = Columns
            .Where(column => row[column.Column].Length > 0)
            .Select(column => KeyValuePair.Create(column.Fact, Rules.Spreads[column.Fact].Of(column.Fact, Varied(column.Fact, row.Number(column.Column), dry), Rules.TableSource)));
        return new StatedFood
        {
            Id = $"many-{place:00000}",
            Name = round == 0 ? row["long_description"] : $"{row["long_description"]}, lot {round}",
            Origin = FoodOrigin.Table,
            UsdaFoodNumber = row["ndb_no"],
            Figures = figures.ToImmutableDictionary(),
        };
    }

    /// <summary>A bag much like one of ours: its composition is that one's own, a little drier or moister.</summary>
    private static StatedFood Copy(int place, Ingredient like)
    {
        var dry = DryOf(place, Seed);
        return new StatedFood
        {
            Id = $"many-{place:00000}",
            Name = $"{like.Name}, lot {place}",
            Origin = FoodOrigin.Table,
            Like = like.Id,
            Figures = Columns
                .Where(column => like.RangeOf(column.Fact) is not null)
                .Select(column => KeyValuePair.Create(column.Fact, Rules.Spreads[column.Fact].Of(column.Fact, Varied(column.Fact, like.RangeOf(column.Fact)!.Value.Typical, dry), Rules.TableSource)))
                .ToImmutableDictionary(),
        };
    }

    private static double DryOf(int place, int seed) => LeastDry + ((1 - LeastDry) * new Random(seed + place).NextDouble());

    private static double Varied(Fact fact, double printed, double dry) =>
        Math.Round(fact == Fact.Water ? 100 - ((100 - printed) * dry) : printed * dry, 2);
}
