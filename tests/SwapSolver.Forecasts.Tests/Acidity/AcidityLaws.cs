using CsCheck;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Forecasts.Tests;

/// <summary>What holds for any batter.</summary>
public sealed class AcidityLaws
{
    private static readonly Ingredient[] Sour = [.. OfRole(Role.Acid)];

    private static readonly Ingredient[] Anything = [.. TestKitchen.Bakehouse.Pantry.Ingredients];

    private static Gen<Formula> AnyBatter =>
        Gen.Select(Gen.Int[0, Anything.Length - 1], Gen.Double[0.1, 200]).Array[1, 6].Select(lines => new Formula(
            "Any", [new Line(TestKitchen.Ingredient("water"), new Grams(100)), .. lines.Select(line => new Line(Anything[line.Item1], new Grams(line.Item2)))], 1, null, null, null));

    [Fact]
    public void More_soda_never_makes_a_crumb_more_sour() => Gen.Select(Gen.Int[0, Sour.Length - 1], Gen.Double[0, 20], Gen.Double[0, 8], Gen.Double[0.1, 4]).Sample(
        (acid, acidGrams, soda, more) =>
        {
            Formula With(double grams) => Bowl.Of(("almond-meal", 200), ("water", 200), ("baking-soda", grams), (Sour[acid].Id, acidGrams));

            // What the ionic strength does beside is small.
            Assert.True(Crumb(With(soda + more)) >= Crumb(With(soda)) - 0.02);
        },
        iter: 200);

    [Fact]
    public void Any_batter_comes_to_rest_and_its_charges_cancel() => AnyBatter.Sample(
        batter =>
        {
            var doubts = Doubts.None();
            foreach (var solution in new[] { ForecastKitchen.Acidity.Mixed(ForecastKitchen.Batter(batter), Pascals.Atmosphere, doubts), ForecastKitchen.Acidity.Crumb(ForecastKitchen.Batter(batter), doubts) })
            {
                var solved = new ChargeBalance(solution).Solve();
                Assert.InRange(solved.Ph, 0, 14);
                Assert.Equal(0, solved.Residual, 1e-9);
            }
        },
        iter: 500);

    /// <summary>A range moves one figure after another, and looks for each pH where that of typical figures was.</summary>
    [Fact]
    public void Where_a_moved_figure_brings_the_pH_hangs_on_no_other_pH() => AnyBatter.Sample(
        batter =>
        {
            var doubts = Doubts.None();
            var typical = new ChargeBalance(ForecastKitchen.Acidity.Crumb(ForecastKitchen.Batter(batter), doubts)).Solve();
            foreach (var moved in doubts.Asked.SelectMany(doubt => new[] { Doubts.Moved(doubt, high: false), Doubts.Moved(doubt, high: true) }))
            {
                var solution = ForecastKitchen.Acidity.Crumb(ForecastKitchen.Batter(batter), moved);
                var (alone, nearby) = (new ChargeBalance(solution).Solve(), new ChargeBalance(solution).Solve(typical));
                Assert.Equal(alone.Ph, nearby.Ph, 1e-6);
                Assert.Equal(0, nearby.Residual, 1e-9);
            }
        },
        iter: 1000);

    /// <summary>How nearly a pH is solved for [1].</summary>
    private const double SolvedTo = 1e-9;

    /// <summary>Colours are only worded where the crumb may be so alkaline: what is passed over must not show.</summary>
    [Fact]
    public void A_crumb_that_may_not_reach_a_pH_has_a_range_that_ends_below_it()
    {
        var (passedOver, lookedAt) = (0, 0);
        Gen.Select(AnyBatter, Gen.Double[0, 12], Gen.Double[-0.3, 1.5]).Sample(
            (batter, soda, beyond) =>
            {
                var loaf = batter with { Lines = [.. batter.Lines, new Line(TestKitchen.Ingredient("baking-soda"), new Grams(soda))] };
                if (ForecastKitchen.Acidity.ForetellCrumb(loaf, Draws.Typical) is not { } crumb)
                {
                    Assert.Null(ForecastKitchen.Acidity.CrumbMayReach(loaf, Draws.Typical, new Ph(7)));
                    return;
                }

                var ph = new Ph(crumb.High.Value + beyond);
                if (ForecastKitchen.Acidity.CrumbMayReach(loaf, Draws.Typical, ph)!.Value)
                {
                    Interlocked.Increment(ref lookedAt);
                }
                else
                {
                    Interlocked.Increment(ref passedOver);
                    // At the end itself, as nearly as a pH is solved for, both answers are right.
                    Assert.True(beyond > -SolvedTo, $"passed over {-beyond} below the end of the range");
                }

                Assert.True(ForecastKitchen.Acidity.CrumbMayReach(loaf, Draws.Typical, crumb.Value), "its typical pH is reached");
            },
            iter: 1000);
        // Both must have been seen, or nothing was shown.
        Assert.True(passedOver > 100, $"{passedOver} passed over");
        Assert.True(lookedAt > 100, $"{lookedAt} looked at");
    }

    [Fact]
    public void Order_splitting_and_nothing_of_a_thing_change_no_pH() => AnyBatter.Sample(
        batter =>
        {
            var halves = batter.Lines.SelectMany(line => new[] { line with { Grams = line.Grams * 0.5 }, line with { Grams = line.Grams * 0.5 } });
            var other = batter with { Lines = [.. halves.Reverse(), new Line(TestKitchen.Ingredient("citric-acid"), Grams.None)] };

            Assert.Equal(Crumb(batter), Crumb(other), 1e-6);
        },
        iter: 200);

    [Fact]
    public void A_batter_twice_as_large_reads_the_same() => AnyBatter.Sample(
        batter => Assert.Equal(Crumb(batter), Crumb(batter.Scaled(2)), 1e-6), iter: 200);

    private static double Crumb(Formula formula) =>
        new ChargeBalance(ForecastKitchen.Acidity.Crumb(ForecastKitchen.Batter(formula), Doubts.None())).Solve().Ph;

    private static IEnumerable<Ingredient> OfRole(Role role) => TestKitchen.Bakehouse.Pantry.Ingredients.Where(ingredient => ingredient.Role == role);
}
