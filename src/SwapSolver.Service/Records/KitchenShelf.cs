using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Lines;
using SwapSolver.Records;
using SwapSolver.Solving;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;

namespace SwapSolver.Service.Records;

/// <summary>Keeps the kitchen as it is known now, and opens it anew when somebody wrote something down.</summary>
internal sealed class KitchenShelf(
    Bakehouse shipped, MeasureTables measures, FoodIngredient foods, MeasuringRules measuring, KitchenRecords records, ISolver solver)
{
    private readonly Lock opening = new();

    private KitchenToday? today;

    /// <summary>The pantry as it is shipped: its ids are taken.</summary>
    public Pantry Shipped => shipped.Pantry;

    /// <summary>What is taken of a food that states only its composition.</summary>
    public FoodIngredient Foods => foods;

    /// <summary>How far this kitchen's own tests are trusted.</summary>
    public MeasuringRules Measuring => measuring;

    /// <summary>What this kitchen wrote down.</summary>
    public KitchenRecords Records => records;

    /// <summary>The words.</summary>
    public Phrases Phrases => shipped.Phrases;

    /// <summary>A food that this kitchen added or imported; null where it did not.</summary>
    public StatedFood? Own(string id) => records.Read().Foods.FirstOrDefault(food => food.Id == id);

    /// <summary>An ingredient without what was measured of it; null where this kitchen does not know it.</summary>
    public Ingredient? Untouched(string id) =>
        Own(id) is { } own ? foods.Of(own, LikeOf(own))
        : shipped.Pantry.TryGet(id, out var found) ? found
        : null;

    /// <summary>The kitchen as it is known now.</summary>
    /// <exception cref="RecordsFaultException">The records cannot be read.</exception>
    public KitchenToday Today()
    {
        var version = records.Version;
        lock (opening)
        {
            if (today is null || today.Version != version)
            {
                today = Open(records.Read());
            }

            return today;
        }
    }

    private KitchenToday Open(KitchenNotes notes)
    {
        var bakehouse = notes.Version == 0 ? shipped : shipped with { Pantry = PantryWith(notes) };
        // A bag's own name is read in lines of text; a table's thousands of long names would only make common words unsure.
        var own = notes.Foods
            .Where(food => food.Origin == FoodOrigin.Packet && bakehouse.Pantry.TryGet(food.Id, out _))
            .Select(food => new IngredientName(food.Name, food.Id, null, []));
        var names = measures.Names with { Names = [.. measures.Names.Names, .. own] };
        return new KitchenToday(
            notes.Version, new AnswerSearch(bakehouse, solver), new IngredientLines(measures with { Names = names }, bakehouse.Pantry));
    }

    private Pantry PantryWith(KitchenNotes notes)
    {
        // A later release may ship an id that this kitchen took for its own food: the kitchen's own comes first.
        var own = notes.Foods.Select(food => foods.Of(food, LikeOf(food))).ToDictionary(one => one.Id, StringComparer.Ordinal);
        var measured = notes.Measured.ToLookup(one => one.IngredientId, StringComparer.Ordinal);
        var weights = notes.Weights.ToLookup(one => one.IngredientId, one => one.Measure, StringComparer.Ordinal);
        return new Pantry(
            shipped.Pantry.Ingredients.Where(one => !own.ContainsKey(one.Id)).Concat(own.Values).Select(one => Measured(one, [.. measured[one.Id]], HouseholdWeight.Join(one.HouseholdMeasures, [.. weights[one.Id]]))),
            shipped.Pantry.Allergens,
            shipped.Pantry.Groups);
    }

    private Ingredient? LikeOf(StatedFood food) =>
        food.Like is { } like && shipped.Pantry.TryGet(like, out var found) ? found : null;

    /// <summary>An ingredient with what was measured of it.</summary>
    public Ingredient Measured(Ingredient ingredient, ImmutableArray<MeasuredFact> facts) => Measured(ingredient, facts, ingredient.HouseholdMeasures);

    private Ingredient Measured(Ingredient ingredient, ImmutableArray<MeasuredFact> facts, ImmutableArray<HouseholdMeasure> measures) =>
        facts.IsEmpty && measures == ingredient.HouseholdMeasures
            ? ingredient
            : ingredient.With(facts.Select(one => KeyValuePair.Create(one.Fact, new Figure(one.Range, foods.Rules.MeasuredSource, Mark.Practice, null))), measures);
}
