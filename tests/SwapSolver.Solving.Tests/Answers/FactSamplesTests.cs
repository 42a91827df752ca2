using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Answers;

public sealed class FactSamplesTests
{
    private const int Kitchens = Bags.Kitchens;

    [Fact]
    public void No_bag_is_outside_the_range_of_its_facts()
    {
        foreach (var (ingredient, fact) in Ranged)
        {
            var range = ingredient.RangeOf(fact)!.Value;
            Assert.All(Drawn(ingredient, fact), value => Assert.InRange(value, range.Low, range.High));
        }
    }

    [Fact]
    public void Every_slice_of_a_range_is_drawn_from_once()
    {
        // Half of the slices lie between low and typical, half between typical and high.
        foreach (var (ingredient, fact) in Ranged)
        {
            var range = ingredient.RangeOf(fact)!.Value;
            var slices = Drawn(ingredient, fact).Select(value => (int)Math.Floor(Kitchens * (value < range.Typical
                ? (value - range.Low) / (range.Typical - range.Low) / 2
                : 0.5 + ((value - range.Typical) / (range.High - range.Typical) / 2))));
            Assert.Equal(Enumerable.Range(0, Kitchens), slices.Order());
        }
    }

    [Fact]
    public void Every_wider_slice_of_a_range_is_drawn_from_once_by_the_first_kitchens()
    {
        foreach (var (ingredient, fact) in Ranged)
        {
            var shares = new Bags().Of(ingredient).Shares[fact];
            Assert.Equal(Enumerable.Range(0, Bags.First), shares[..Bags.First].Select(share => (int)(share * Bags.First)).Order());
        }
    }

    /// <summary>A reading's range is told from the first kitchens: of all kitchens about a twentieth lies beyond each end. The standard error of
    /// that twentieth is sqrt(0.05 x 0.95 / 1024) = 0.7 points; four and a half of these are 3.</summary>
    [Fact]
    public void A_range_that_the_first_kitchens_tell_holds_for_all_of_them()
    {
        var bags = new Bags();
        foreach (var (name, formula) in Loaf.All)
        {
            using var samples = new FactSamples(Loaf.Walnut, formula, bags);
            foreach (var balance in TestKitchen.Bakehouse.Balances.Ratios.Where(one => one.CanRead(formula)))
            {
                var (low, high) = samples.SpreadOf(balance, formula, Loaf.Walnut);
                double[] all = [.. SampledReading.Of(balance, formula, Loaf.Walnut, bags.Of, Kitchens).Where(level => !double.IsNaN(level))];
                if (all.Length == 0)
                {
                    continue;
                }

                // Many kitchens may read the very same: gas ends with the soda.
                double Share(Func<double, bool> isThere) => all.Count(isThere) / (double)all.Length;
                Assert.True(Share(level => level < low.Value) < 0.08 && Share(level => level <= low.Value) > 0.02, $"{name}: {balance.Id} below {low}");
                Assert.True(Share(level => level > high.Value) < 0.08 && Share(level => level >= high.Value) > 0.02, $"{name}: {balance.Id} above {high}");
            }
        }
    }

    [Fact]
    public void What_went_out_need_not_state_what_is_read()
    {
        // A food of which nobody said more than its name.
        var food = new StatedFood { Id = "zz-named", Name = "named", Origin = FoodOrigin.Table, Suits = new Suits(Vegan: true, Vegetarian: true, GlutenFree: true), Figures = ImmutableDictionary<Fact, Figure>.Empty };
        Assert.True(ManyFoods.PantryWith([food]).TryGet(food.Id, out var named));
        var before = Loaf.Walnut with { Lines = [.. Loaf.Walnut.Lines, new Line(named, new Grams(10))] };
        var unread = TestKitchen.Bakehouse.Balances.All.Where(balance => balance.CanRead(Loaf.Walnut) && !balance.CanRead(before)).ToList();
        Assert.NotEmpty(unread);
        Assert.All(unread, balance =>
        {
            using var samples = new FactSamples(before.Lines.Select(line => line.Ingredient));
            var (low, high) = samples.SpreadOf(balance, Loaf.Walnut, before);
            Assert.True(low.Value <= high.Value, $"{balance.Id} of a loaf that had an unknown food");
        });
    }

    [Fact]
    public void What_adds_nothing_to_a_reading_leaves_its_range_as_it_was()
    {
        // Water brings no salt, no gas and no egg, and takes away from the share of all that is counted on the batter.
        var wetter = Loaf.Walnut with { Lines = [.. Loaf.Walnut.Lines.Select(line => line.Ingredient.Id == "water" ? line with { Grams = line.Grams * 1.1 } : line)] };
        foreach (var balance in TestKitchen.Bakehouse.Balances.Ratios)
        {
            using var samples = new FactSamples(Loaf.Walnut, wetter, new Bags());
            var alone = SampledReading.Of(balance, wetter, Loaf.Walnut, new Bags().Of, Kitchens);
            Array.Sort(alone, 0, alone.Length);
            var (low, high) = samples.SpreadOf(balance, wetter, Loaf.Walnut);
            var before = samples.SpreadOf(balance, Loaf.Walnut, Loaf.Walnut);
            Assert.InRange(low.Value, alone[0] - 1e-12, alone[^1] + 1e-12);
            Assert.InRange(high.Value, alone[0] - 1e-12, alone[^1] + 1e-12);
            var sameInAll = SampledReading.Of(balance, Loaf.Walnut, Loaf.Walnut, new Bags().Of, Kitchens).Order().Zip(alone).All(pair => Math.Abs(pair.First - pair.Second) <= 1e-12 * Math.Abs(pair.First));
            Assert.True(sameInAll == ((low, high) == before), $"{balance.Id}: {before} and [{low}, {high}]");
        }
    }

    [Fact]
    public void Two_facts_of_a_bag_are_shuffled_apart()
    {
        // In the same order their ranks would agree fully; by chance the rank correlation of 8192 pairs has a standard
        // deviation of 1 / sqrt(8191) = 0.011, and four of these are 0.044.
        var walnut = TestKitchen.Ingredient("walnut-meal");
        Assert.InRange(Math.Abs(RankCorrelation(Drawn(walnut, Fact.Fat), Drawn(walnut, Fact.WaterBound))), 0, 0.044);
    }

    [Fact]
    public void The_same_bags_are_drawn_each_time_and_whatever_else_is_in_the_bowl()
    {
        var walnut = TestKitchen.Ingredient("walnut-meal");
        var alone = Drawn(walnut, Fact.Fat);
        Assert.Equal(alone, Drawn(walnut, Fact.Fat));
        Assert.Equal(alone, Drawn(walnut, Fact.Fat, TestKitchen.Ingredient("water"), TestKitchen.Ingredient("butter")));
    }

    [Fact]
    public void All_kitchens_at_once_are_read_as_they_are_one_by_one()
    {
        var bags = new Bags();
        var balances = TestKitchen.Bakehouse.Balances;
        foreach (var (_, formula) in Loaf.All)
        {
            var reference = Loaf.Walnut;
            foreach (var balance in balances.All.Where(one => one.CanRead(formula) && one.CanRead(reference)))
            {
                var levels = SampledReading.Of(balance, formula, reference, bags.Of, Kitchens);
                Assert.Contains(levels.Length, new[] { 1, Kitchens });
                foreach (var kitchen in new[] { 0, 1, 1023, 1024, 4095, Kitchens - 1 })
                {
                    var alone = balance.Read(formula, reference, ingredient => bags.Of(ingredient).In(kitchen))?.Value ?? double.NaN;
                    // What is the same in all kitchens is added up first: another order of the same sum.
                    var together = levels is [var single] ? single : levels[kitchen];
                    Assert.True(double.IsNaN(alone) ? double.IsNaN(together) : Math.Abs(together - alone) <= Math.Abs(alone) * 1e-12, $"{balance.Id}: {alone} and {together}");
                }
            }
        }
    }

    [Fact]
    public void A_bag_that_made_room_for_others_is_drawn_alike_again()
    {
        var bags = new Bags();
        var walnut = TestKitchen.Ingredient("walnut-meal");
        var first = bags.Of(walnut);
        foreach (var other in TestKitchen.Bakehouse.Pantry.Ingredients.Where(one => one != walnut))
        {
            bags.Of(other);
        }

        var again = bags.Of(walnut);
        Assert.NotSame(first, again);
        Assert.Equal(first.Shares[Fact.Fat], again.Shares[Fact.Fat]);
    }

    [Fact]
    public void A_loaf_that_did_not_change_balances_in_every_bag()
    {
        foreach (var (_, formula) in Loaf.All)
        {
            Assert.Equal(1, Chance(formula, formula));
        }
    }

    [Theory]
    [InlineData("almond-meal")]
    [InlineData("sunflower-seed-flour")]
    public void The_more_of_the_flour_is_swapped_the_less_sure_is_the_balance(string flour)
    {
        double[] chances = [.. new double[] { 0, 20, 60, 120, 200 }.Select(grams => Chance(Loaf.Walnut, Swapped(flour, grams)))];
        Assert.Equal(chances.OrderDescending(), chances);
        Assert.True(chances[^1] < chances[0], "a loaf of another flour is as sure as its own");
        Assert.All(chances, chance => Assert.InRange(chance, 0, 1));
    }

    [Fact]
    public void A_loaf_far_outside_its_bands_balances_in_no_bag() =>
        Assert.Equal(0, Chance(Loaf.Walnut, Loaf.Walnut with { Lines = [.. Loaf.Walnut.Lines.Where(line => line.Ingredient.Id != "water")] }));

    [Fact]
    public void The_spread_of_a_reading_holds_nine_bags_in_ten()
    {
        // Fat of pure walnut meal, typical 65.21: by batter it is the fact itself, drawn evenly on each side.
        var walnut = Bowl.Of(("walnut-meal", 100));
        var rule = TestKitchen.Bakehouse.Balances.All.OfType<Richness>().Single();
        var (low, high) = new FactSamples(walnut.Lines.Select(line => line.Ingredient)).SpreadOf(rule, walnut, walnut);
        var range = TestKitchen.Ingredient("walnut-meal").RangeOf(Fact.Fat)!.Value;
        // The 5th percentile lies a tenth of the way from low to typical; a slice of the first kitchens is 1/512 of that way.
        Assert.Equal((range.Low + (0.1 * (range.Typical - range.Low))) / 100, low.Value, (range.Typical - range.Low) / 512 / 100);
        Assert.Equal((range.High - (0.1 * (range.High - range.Typical))) / 100, high.Value, (range.High - range.Typical) / 512 / 100);
    }

    [Fact]
    public void Cups_are_drawn_within_what_they_may_hold_and_leave_the_bags_as_they_are()
    {
        var flour = TestKitchen.Ingredient("walnut-meal");
        var bowl = Bowl.Of(("walnut-meal", 100), ("water", 90));
        var measured = MeasuredLines.Of(bowl.Lines.Select(line => (line, line.Ingredient == flour ? new GramRange(new Grams(80), new Grams(100), new Grams(140)) : (GramRange?)null)));
        var scale = new Scale(TestKitchen.Bakehouse.Balances.NetCarbohydrate.Settings);
        var (low, high) = new FactSamples(bowl.Lines.Select(line => line.Ingredient), measured).SpreadOf(scale, bowl, bowl);
        Assert.Equal(Bags.First, scale.Seen.Count);
        Assert.All(scale.Seen, grams => Assert.InRange(grams, 90 + 80, 90 + 140));
        Assert.Equal(Bags.First / 2, scale.Seen.Count(grams => grams < 190));
        // The 5th percentile lies a tenth of the way from low to typical, at 82 g, the 95th a tenth from high to typical, at
        // 136 g; a slice of the first kitchens is 1/512 of that way.
        Assert.Equal(90 + 82, low.Value, 20 / 512.0);
        Assert.Equal(90 + 136, high.Value, 40 / 512.0);
        Assert.Equal(Drawn(flour, Fact.Fat)[..Bags.First], Drawn(flour, Fact.Fat, measured));
    }

    /// <summary>Some facts of the walnut loaf with a range that is open on both sides.</summary>
    private static IEnumerable<(Ingredient Ingredient, Fact Fact)> Ranged =>
        from line in Loaf.Walnut.Lines
        from fact in new[] { Fact.Water, Fact.Fat, Fact.Protein, Fact.WaterBound, Fact.Carbohydrate }
        let range = line.Ingredient.RangeOf(fact)
        where range is { } known && known.Low < known.Typical && known.Typical < known.High
        select (line.Ingredient, fact);

    private static Formula Swapped(string flour, double grams) => Loaf.Walnut with
    {
        Lines =
        [
            .. Loaf.Walnut.Lines.Select(line => line.Ingredient.Id == "walnut-meal" ? line with { Grams = new Grams(line.Grams.Value - grams) } : line),
            new Line(TestKitchen.Ingredient(flour), new Grams(grams)),
        ],
    };

    private static double Chance(Formula reference, Formula formula)
    {
        var holds = HoldList.Around(TestKitchen.Bakehouse.Balances, reference, []);
        return new FactSamples(reference.Lines.Concat(formula.Lines).Select(line => line.Ingredient)).ChanceOfBalance(holds, reference, formula);
    }

    /// <summary>The figures of one fact in every bag, in the unit of the pantry.</summary>
    private static List<double> Drawn(Ingredient ingredient, Fact fact, params Ingredient[] others) => Drawn(ingredient, fact, MeasuredLines.None, others);

    private static List<double> Drawn(Ingredient ingredient, Fact fact, MeasuredLines measured, params Ingredient[] others)
    {
        var probe = new Probe(TestKitchen.Bakehouse.Balances.NetCarbohydrate.Settings, fact);
        var bowl = new Formula("bowl", [new Line(ingredient, new Grams(1))], 1, null, null, null);
        new FactSamples([ingredient, .. others], measured).SpreadOf(probe, bowl, bowl);
        Assert.Equal(measured.MayWeigh.Count > 0 ? Bags.First : Kitchens, probe.Seen.Count);
        return probe.Seen;
    }

    private static double RankCorrelation(List<double> one, List<double> other)
    {
        int[] Ranks(List<double> values) => [.. values.Select(value => values.Count(less => less < value))];
        var (first, second) = (Ranks(one), Ranks(other));
        double squares = first.Zip(second, (a, b) => (double)(a - b) * (a - b)).Sum();
        return 1 - (6 * squares / (Kitchens * ((double)Kitchens * Kitchens - 1)));
    }

    /// <summary>A rule that notes what it is shown.</summary>
    private sealed record Probe(BalanceSettings Settings, Fact Fact) : Balance(Settings)
    {
        public List<double> Seen { get; } = [];

        public override ImmutableArray<Fact> Reads => [Fact];

        public override PerGram Numerator(FactSheet facts)
        {
            // Sheets hold g/g where the pantry holds g/100 g.
            Seen.Add(facts[Fact] * (Fact.Unit == "g/100 g" ? 100 : 1));
            return PerGram.None;
        }

        public override Basis Basis(Formula reference) => Kitchen.Balances.Basis.Batter;
    }

    /// <summary>A rule that notes what the bowl weighs.</summary>
    private sealed record Scale(BalanceSettings Settings) : Balance(Settings)
    {
        public List<double> Seen { get; } = [];

        public override ImmutableArray<Fact> Reads => [];

        public override PerGram Numerator(FactSheet facts) => PerGram.Itself;

        public override Basis Basis(Formula reference)
        {
            Seen.Add(reference.BatterMass.Value);
            return Kitchen.Balances.Basis.Loaf;
        }
    }
}
