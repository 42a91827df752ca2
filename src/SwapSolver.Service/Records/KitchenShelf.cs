using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Learning;
using SwapSolver.Lines;
using SwapSolver.Records;
using SwapSolver.Service.Learned;
using SwapSolver.Solving;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;

namespace SwapSolver.Service.Records;

/// <summary>Keeps the kitchen as it is known now, and opens it anew when somebody wrote something down.</summary>
internal sealed class KitchenShelf(
    Bakehouse shipped, MeasureTables measures, FoodIngredient foods, MeasuringRules measuring, LearningRules learning, KitchenRecords records, ISolver solver)
{
    private readonly Lock opening = new();

    private readonly Bags bags = new();

    private KitchenToday? today;

    private KitchenNotes? notes;

    private KitchenToday? onlyShipped;

    private Dictionary<string, OpenJar> jars = [];

    /// <summary>The pantry as it is shipped: its ids are taken.</summary>
    public Pantry Shipped => shipped.Pantry;

    /// <summary>What is taken of a food that states only its composition.</summary>
    public FoodIngredient Foods => foods;

    /// <summary>How far this kitchen's own tests are trusted.</summary>
    public MeasuringRules Measuring => measuring;

    /// <summary>What a kitchen can learn of itself.</summary>
    public LearningRules Learning => learning;

    /// <summary>What this kitchen wrote down.</summary>
    public KitchenRecords Records => records;

    /// <summary>The words.</summary>
    public Phrases Phrases => shipped.Phrases;

    /// <summary>A food that this kitchen added or imported; null where it did not.</summary>
    public StatedFood? Own(string id) => records.Find(id);

    /// <summary>An ingredient without what was measured of it; null where this kitchen does not know it.</summary>
    public Ingredient? Untouched(string id) =>
        Own(id) is { } own ? Made(own)
        : shipped.Pantry.TryGet(id, out var found) ? found
        : null;

    /// <summary>The kitchen as it is shipped, which is all that callers without a key see.</summary>
    public KitchenToday OnlyShipped => onlyShipped ??= Open(KitchenNotes.None);

    /// <summary>The kitchen as it is known now.</summary>
    /// <param name="stamp">The stamp of the records that was looked at for this call, where it was.</param>
    /// <exception cref="RecordsFaultException">The records cannot be read.</exception>
    public KitchenToday Today(long? stamp = null)
    {
        var version = records.VersionOf(stamp);
        lock (opening)
        {
            if (today is null || today.Version != version)
            {
                var now = records.Read(notes);
                // What was measured outright goes before what was learned.
                var learned = new LearnedWater(this).Facts().Where(fact => now.Measured.All(one => one.IngredientId != fact.IngredientId || one.Fact != fact.Fact));
                today = Open(now with { Measured = [.. now.Measured, .. learned] });
                notes = now;
            }

            return today;
        }
    }

    private KitchenToday Open(KitchenNotes now)
    {
        var bakehouse = now.Version == 0 ? shipped : shipped with { Pantry = PantryWith(now) };
        // A bag's own name is read in lines of text; a table's thousands of long names would only make common words unsure.
        var own = now.Written
            .Where(food => food.Origin == FoodOrigin.Packet && bakehouse.Pantry.Knows(food.Id))
            .Select(food => new IngredientName(food.Name, food.Id, null, []));
        var names = measures.Names with { Names = [.. measures.Names.Names, .. own] };
        return new KitchenToday(
            now.Version, new AnswerSearch(bakehouse, solver) { Bags = bags }, () => new IngredientLines(measures with { Names = names }, bakehouse.Pantry));
    }

    /// <summary>The shipped pantry with what this kitchen wrote down. Its own foods are made when they are asked for, and one
    /// that still stands there in the same words, with the same measured figures, is not made again.</summary>
    private Pantry PantryWith(KitchenNotes now)
    {
        var measured = now.Measured.ToLookup(one => one.IngredientId, StringComparer.Ordinal);
        var weights = now.Weights.ToLookup(one => one.IngredientId, one => one.Measure, StringComparer.Ordinal);
        var opened = new Dictionary<string, OpenJar>(now.Written.Length, StringComparer.Ordinal);
        foreach (var food in now.Written)
        {
            var facts = measured[food.Id].ToImmutableArray();
            var cups = weights[food.Id].ToImmutableArray();
            opened[food.Id] = jars.TryGetValue(food.Id, out var jar) && ReferenceEquals(jar.Food, food) && jar.Measured.SequenceEqual(facts) && jar.Weights.SequenceEqual(cups)
                ? jar
                : new OpenJar(food, facts, cups, new PantryJar(food.Id, !food.SaysWhatItDoes, () => Measured(Made(food.Food), facts, cups)));
        }

        jars = opened;
        // A later release may ship an id that this kitchen took for its own food: the kitchen's own comes first.
        return new Pantry(
            shipped.Pantry.Ingredients.Where(one => !opened.ContainsKey(one.Id))
                .Select(one => PantryJar.Of(Measured(one, [.. measured[one.Id]], [.. weights[one.Id]])))
                .Concat(opened.Values.Select(jar => jar.Jar)),
            shipped.Pantry.Allergens,
            shipped.Pantry.Groups);
    }

    private Ingredient Made(StatedFood food) => foods.Of(
        food, ShippedOne(food.Like), food.Origin == FoodOrigin.Table ? ShippedOne(foods.Rules.Kinds.LikeOf(food.Name)) : null);

    private Ingredient? ShippedOne(string? id) => id is not null && shipped.Pantry.TryGet(id, out var found) ? found : null;

    /// <summary>An ingredient with what was measured of it.</summary>
    public Ingredient Measured(Ingredient ingredient, ImmutableArray<MeasuredFact> facts) => Measured(ingredient, facts, []);

    private Ingredient Measured(Ingredient ingredient, ImmutableArray<MeasuredFact> facts, ImmutableArray<HouseholdMeasure> weights) =>
        facts.IsEmpty && weights.IsEmpty
            ? ingredient
            : ingredient.With(
                facts.Select(one => KeyValuePair.Create(one.Fact, new Figure(one.Range, foods.Rules.MeasuredSource, Mark.Practice, null))),
                HouseholdWeight.Join(ingredient.HouseholdMeasures, weights));

    /// <summary>A food's place in the pantry, and what it was made of.</summary>
    private sealed record OpenJar(WrittenFood Food, ImmutableArray<MeasuredFact> Measured, ImmutableArray<HouseholdMeasure> Weights, PantryJar Jar);
}
