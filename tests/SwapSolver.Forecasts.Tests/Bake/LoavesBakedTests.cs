using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Forecasts.Tests;

/// <summary>A loaf that many ask about is baked once.</summary>
public sealed class LoavesBakedTests
{
    private static readonly Formula Nut = BakeKitchen.NutAndSeed(700);

    private static readonly LoafToBake Loaf = ToBake(Nut);

    [Fact]
    public void A_loaf_like_one_asked_about_before_is_not_baked_again_whatever_it_is_called()
    {
        var loaves = new LoavesBaked();
        var first = loaves.Of(Loaf, Bakes);

        Assert.Same(first, loaves.Of(ToBake(Nut with { DisplayName = "Another name", Slices = Nut.Slices + 4 }), NeverBaked));
    }

    [Fact]
    public void A_loaf_that_was_cooled_too_was_baked()
    {
        var loaves = new LoavesBaked();
        var cooled = loaves.Of(Loaf with { ToSlice = true }, Bakes);

        Assert.Same(cooled, loaves.Of(Loaf, NeverBaked));
    }

    [Fact]
    public void A_loaf_that_was_only_baked_is_not_cooled()
    {
        var loaves = new LoavesBaked();
        var baked = loaves.Of(Loaf, Bakes);

        Assert.NotSame(baked, loaves.Of(Loaf with { ToSlice = true }, Bakes));
    }

    public static TheoryData<string> WhatCounts => ["mass", "batter", "shape", "oven", "core", "height", "cold start"];

    [Theory]
    [MemberData(nameof(WhatCounts))]
    public void A_loaf_that_bakes_otherwise_is_baked(string differs)
    {
        var loaves = new LoavesBaked();
        var first = loaves.Of(Loaf, Bakes);
        var other = differs switch
        {
            "mass" => ToBake(Nut.Scaled(1.001)),
            "batter" => ToBake(Nut with { Lines = [Nut.Lines[0] with { Grams = Nut.Lines[0].Grams + Nut.Lines[1].Grams }, Nut.Lines[1] with { Grams = Grams.None }, .. Nut.Lines[2..]] }),
            "shape" => ToBake(Nut with { Shape = new Pieces(2) }),
            "oven" => ToBake(Nut with { Oven = new Oven(new Celsius(190), Fan: true) }),
            "core" => Loaf with { Core = new Celsius(96) },
            "height" => Loaf with { Pressure = StandardAtmosphere.PressureAt(new Metres(900)) },
            _ => Loaf with { IsColdStart = true },
        };

        Assert.NotSame(first, loaves.Of(other, Bakes));
    }

    [Fact]
    public void No_more_loaves_are_kept_than_there_is_room_for()
    {
        var (loaves, baked) = (new LoavesBaked(), 0);
        BakeCase Counted()
        {
            baked++;
            return Bakes();
        }

        void AllOf(int count)
        {
            for (var gram = 0; gram < count; gram++)
            {
                loaves.Of(Loaf with { Mass = new Grams(500 + gram) }, Counted);
            }
        }

        AllOf(4 * LoavesBaked.Most);
        AllOf(4 * LoavesBaked.Most);
        Assert.InRange(baked, 7 * LoavesBaked.Most, 8 * LoavesBaked.Most);
    }

    [Fact]
    public void A_comparison_asked_again_says_the_same_to_the_last_digit()
    {
        // One that knows neither loaf, one that knows both, and one that knows the first as a loaf that was cooled.
        var (fresh, seen) = (new Bake(BakeKitchen.Practice, BakeKitchen.Bake.Phrases), new Bake(BakeKitchen.Practice, BakeKitchen.Bake.Phrases));
        var twice = Nut.Scaled(2);
        seen.Foretell(Nut, BakeKitchen.AtSea, Draws.Typical);
        seen.Compare(Nut, twice, BakeKitchen.AtSea, Draws.Typical);

        var (first, again) = (fresh.Compare(Nut, twice, BakeKitchen.AtSea, Draws.Typical)!, seen.Compare(Nut, twice, BakeKitchen.AtSea, Draws.Typical)!);
        Assert.Equal((first.Before, first.Ratio, first.After.TimeToCore, first.After.CoolToSlice), (again.Before, again.Ratio, again.After.TimeToCore, again.After.CoolToSlice));
        Assert.Equal(first.After.Curve.ToArray(), again.After.Curve.ToArray());
    }

    [Fact]
    public void A_bake_by_another_practice_bakes_the_loaf_anew()
    {
        var usual = new Bake(BakeKitchen.Practice, BakeKitchen.Bake.Phrases);
        var density = BakeKitchen.Practice.Crumb.BakedDensityKgPerM3;
        var denser = usual.Practice.Crumb with { BakedDensityKgPerM3 = density with { Range = new Kitchen.Ingredients.Range(density.Range.High, density.Range.High, density.Range.High) } };
        var before = usual.Compare(Nut, Nut.Scaled(2), BakeKitchen.AtSea, Draws.Typical)!;
        var after = (usual with { Practice = usual.Practice with { Crumb = denser } }).Compare(Nut, Nut.Scaled(2), BakeKitchen.AtSea, Draws.Typical)!;

        Assert.NotEqual(before.After.TimeToCore, after.After.TimeToCore);
    }

    private static LoafToBake ToBake(Formula formula) =>
        new(Composition.Of(formula, Draws.Typical), formula.BatterMass, formula.Shape, formula.Oven, new Celsius(95), Pascals.Atmosphere, IsColdStart: false, ToSlice: false);

    private static BakeCase Bakes()
    {
        var run = new BakeRun(3000, 9000, 0.1, [], []);
        return new BakeCase(run, Scattered<BakeRun>.Of(_ => run));
    }

    private static BakeCase NeverBaked() => throw new InvalidOperationException("baked again");
}
