using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Questions;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Loaves.Kitchens;

/// <summary>Makes kitchens by number, the same number the same kitchen: an invented loaf with other grams and a line more or
/// less, a cupboard that lacks some of what could come in, and wishes of which the loaf breaks one at least.</summary>
public static class RandomKitchens
{
    private const int Seed = 20_250;

    private static readonly ImmutableArray<string> Words =
    [
        "tree-nuts", "egg", "milk", "dairy", "coconut", "seeds", "soy", "sesame", "peanut", "legumes", "psyllium", "gums", "starches", "sugars",
        "sugar-alcohols", "vinegar", "oils", "cocoa",
    ];

    /// <summary>What may come into a loaf besides, and least and most of it by batter [1].</summary>
    private static readonly ImmutableArray<(string Id, double Least, double Most)> Extras =
    [
        ("coconut-flour", 0.02, 0.06), ("pumpkin-seed-flour", 0.03, 0.1), ("sesame-meal", 0.03, 0.1), ("olive-oil", 0.02, 0.06),
        ("cream-cheese", 0.05, 0.15), ("greek-yogurt-nonfat", 0.05, 0.15), ("inulin", 0.01, 0.04), ("xanthan-gum", 0.002, 0.006),
        ("whey-protein-isolate", 0.02, 0.06), ("zucchini-grated", 0.05, 0.15), ("cinnamon", 0.004, 0.01), ("lemon-juice", 0.01, 0.03),
    ];

    /// <summary>The first so many kitchens.</summary>
    public static IEnumerable<RandomKitchen> First(int count) => Enumerable.Range(0, count).Select(Of);

    /// <summary>The kitchen of a number.</summary>
    public static RandomKitchen Of(int number)
    {
        var chance = new Random(Seed + number);
        while (true)
        {
            // A kitchen whose loaf already is as it wishes asks nothing: another is made.
            var kitchen = Made(number, chance);
            if (Recheck.BrokenHolds(kitchen.Problem.Holds, kitchen.Problem.Reference, kitchen.Problem.Reference, Draws.Typical).Any())
            {
                return kitchen;
            }
        }
    }

    /// <summary>The same problem with the room that the second way of a question gives: what conflicts are sought in.</summary>
    public static FormulaProblem Loosened(FormulaProblem problem) => problem with
    {
        Holds = HoldList.WithRoomForWater(problem.Holds, problem.Reference),
        LinesKeepTheirRoom = false,
    };

    private static RandomKitchen Made(int number, Random chance)
    {
        var (name, loaf) = Loaf.All[chance.Next(Loaf.All.Count)];
        var formula = Varied(loaf, chance);
        var wishes = Enumerable.Range(0, 1 + chance.Next(3)).Select(_ => Wish(formula, chance)).DistinctBy(wish => wish.Id).ToImmutableArray();
        var habits = Habits.Usual with { NewIngredients = chance.Next(4), WeighedEgg = chance.Next(4) == 0 };
        var problem = new Variant(formula, wishes, habits).Problem(TestKitchen.Bakehouse);
        var kept = 0.3 + (0.7 * chance.NextDouble());
        problem = problem with { Candidates = [.. problem.Candidates.Where(_ => chance.NextDouble() < kept)] };
        var asked = string.Join(" and ", wishes.Select(wish => string.Create(
            CultureInfo.InvariantCulture, $"{wish.Id}{(wish.LeftOut is null ? wish.Band.Low?.Value : null): >= 0.0000}{(wish.LeftOut is null ? wish.Band.High?.Value : null): <= 0.0000}")));
        return new RandomKitchen(
            number,
            $"kitchen {number}: {name} of {formula.Lines.Length} lines, {asked}, {habits.NewIngredients} of {problem.Candidates.Length} may be new{(habits.WeighedEgg ? ", egg by weight" : string.Empty)}",
            problem);
    }

    private static Formula Varied(Formula loaf, Random chance)
    {
        var lines = loaf.Lines.Select(line => line.Size is { } size
            ? line with { Grams = Line.UnitOf(line.Ingredient, size)!.Value * Math.Max(1, (int)Math.Round(line.Count!.Value) + chance.Next(-1, 2)) }
            : line with { Grams = OnScale(line.Ingredient, line.Grams.Value * (0.75 + (0.55 * chance.NextDouble()))) }).ToList();
        if (chance.Next(3) == 0)
        {
            lines.RemoveAt(chance.Next(lines.Count));
        }

        if (chance.Next(2) == 0)
        {
            var (id, least, most) = Extras[chance.Next(Extras.Length)];
            var ingredient = TestKitchen.Ingredient(id);
            if (lines.All(line => !line.Ingredient.Equals(ingredient)))
            {
                lines.Add(new Line(ingredient, OnScale(ingredient, loaf.BatterMass.Value * (least + ((most - least) * chance.NextDouble())))));
            }
        }

        return loaf with { Lines = [.. lines], Slices = chance.Next(8, 17) };
    }

    private static Grams OnScale(Ingredient ingredient, double grams)
    {
        var step = (decimal)Habits.Usual.StepOf(ingredient).Value;
        return new Grams((double)(Math.Max(1, Math.Round((decimal)grams / step)) * step));
    }

    private static Hold Wish(Formula formula, Random chance)
    {
        var leavingOut = new LeavingOut(TestKitchen.Bakehouse.Pantry, TestKitchen.Bakehouse.Phrases);
        return chance.Next(10) switch
        {
            < 3 => leavingOut.Of(Words[chance.Next(Words.Length)])!,
            < 5 => LeavingOut.Of(formula.Lines[chance.Next(formula.Lines.Length)].Ingredient),
            5 => leavingOut.Of(Enum.GetValues<Diet>()[chance.Next(3)]),
            _ => Limit(formula, chance),
        };
    }

    /// <summary>A limit a little within or well within what the loaf reads, on one side.</summary>
    private static Hold Limit(Formula formula, Random chance)
    {
        var rules = TestKitchen.Bakehouse.Balances.Ratios;
        var rule = chance.Next(2) == 0 ? TestKitchen.Bakehouse.Balances.NetCarbohydrate : rules[chance.Next(rules.Length)];
        var own = rule.Read(formula, formula, Draws.Typical)?.Value ?? 1;
        var isCeiling = rule is NetCarbohydrate or Salt || chance.Next(2) == 0;
        var end = new Level(Math.Round(own * (isCeiling ? 1 - (0.5 * chance.NextDouble()) : 1 + (0.2 * chance.NextDouble())), 3));
        return new Hold(rule.Id, rule, isCeiling ? new Band(null, end) : new Band(end, null), FromCaller: true);
    }
}
