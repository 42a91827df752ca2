using Grpc.Core;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

[Collection(OpenKitchen.Name)]
public sealed class ReformulationServiceTests(OpenKitchen kitchen)
{
    // common practice, no source: a loaf in whole eggs may miss the size asked for by 2 % (Resize's own promise).
    private const double SizeTolerance = 0.02;

    [Fact]
    public async Task A_loaf_without_a_tin_of_its_own_fills_one_as_tins_are_filled_and_says_so()
    {
        // 200 x 100 x 60 mm are 1.2 L; 85 % of that at 0.7 g/mL baked are 714 g, by data/forecasts/bake.json.
        var request = new ResizeFormulaRequest { Formula = Bakes.Seeded, Tin = new Tin { LengthMm = 200, WidthMm = 100, HeightMm = 60 } };
        var response = await kitchen.Service.Reformulations.ResizeFormulaAsync(request);
        Assert.NotEmpty(response.Answers);
        Assert.All(response.Answers, answer => Assert.InRange(answer.Formula.Lines.Sum(line => line.Grams), 0.98 * 714, 1.02 * 714));
        Assert.All(response.Answers, answer => Assert.Equal(200, answer.Formula.Shape.Tin.LengthMm));
        Assert.Contains(response.Answers[0].Notes, note => note.Contains("no tin of its own", StringComparison.Ordinal));
        Assert.InRange(response.Bake.Fill.FullPercent.Value, 80, 90);
    }

    [Fact]
    public async Task A_loaf_of_half_as_much_again_has_six_eggs_for_four()
    {
        var response = await Resize(new ResizeFormulaRequest { Factor = 1.5 });
        Assert.Equal(1.5, response.Factor);
        var answer = response.Answers[0];
        Assert.InRange(BatterOf(answer), 1.5 * Bakes.HazelnutBatterGrams * (1 - SizeTolerance), 1.5 * Bakes.HazelnutBatterGrams * (1 + SizeTolerance));
        Assert.Equal(6, answer.Formula.Lines.Single(line => line.Ingredient == "ingredients/egg-whole").Count);
        // 14 slices x 1.5 = 21.
        Assert.Equal(21, answer.Formula.Slices);
    }

    [Fact]
    public async Task A_mass_says_the_same_as_the_factor_that_it_is()
    {
        var response = await Resize(new ResizeFormulaRequest { MassGrams = 2 * Bakes.HazelnutBatterGrams });
        Assert.Equal(2, response.Factor, 12);
        // Twice a loaf of whole grams and whole eggs is one of whole grams and whole eggs: nothing else need change.
        var lines = Bakes.Hazelnut.Lines;
        Assert.All(
            response.Answers[0].Formula.Lines,
            line => Assert.Equal(2 * GramsOf(lines.Single(one => one.Ingredient == line.Ingredient)), line.Grams, 9));
    }

    [Fact]
    public async Task A_tin_of_twice_the_length_takes_twice_the_batter()
    {
        var response = await Resize(new ResizeFormulaRequest { Tin = new Tin { LengthMm = 430, WidthMm = 110, HeightMm = 65 } });
        Assert.Equal(2, response.Factor, 9);
        Assert.Equal(430, response.Answers[0].Formula.Shape.Tin.LengthMm);
    }

    [Fact]
    public async Task Slices_alone_keep_the_slice_and_change_the_loaf()
    {
        var response = await Resize(new ResizeFormulaRequest { Slices = 7 });
        Assert.Equal(0.5, response.Factor);
        Assert.All(response.Answers, answer => Assert.Equal(7, answer.Formula.Slices));
    }

    [Fact]
    public async Task Slices_beside_a_size_only_say_where_to_cut()
    {
        var response = await Resize(new ResizeFormulaRequest { Factor = 1, Slices = 10 });
        Assert.Equal(1, response.Factor);
        Assert.All(response.Answers, answer => Assert.Equal(10, answer.Formula.Slices));
    }

    [Fact]
    public async Task A_cap_a_slice_is_kept_or_said_to_be_out_of_reach()
    {
        var habits = new Habits { Limits = { new ReadingLimit { Balance = "net-carbohydrate", High = 1 } } };
        var response = await Resize(new ResizeFormulaRequest { Factor = 1.5, Slices = 21, Habits = habits });
        Assert.NotEqual(response.Answers.Count > 0, response.Conflict.Count > 0);
        Assert.All(response.Answers, answer => Assert.InRange(answer.Nutrition.PerSlice.NetCarbsG, 0, 1 + 1e-9));
    }

    [Fact]
    public async Task A_loaf_of_one_egg_cannot_be_halved_in_whole_eggs_and_says_what_fights()
    {
        var formula = Bakes.From("""
            {
              "lines": [
                { "ingredient": "ingredients/almond-flour-blanched", "grams": 60 },
                { "ingredient": "ingredients/egg-whole", "count": 1, "size": "LARGE_US" },
                { "ingredient": "ingredients/butter", "grams": 20 }
              ],
              "slices": 4
            }
            """);
        var request = new ResizeFormulaRequest { Formula = formula, Factor = 0.5, Habits = new Habits { NewIngredients = 0 } };
        var response = await kitchen.Service.Reformulations.ResizeFormulaAsync(request);
        // Half of one egg is no whole number of eggs: none is too few, and one is twice what the band of a third allows.
        Assert.Empty(response.Answers);
        Assert.NotEmpty(response.Conflict);
    }

    [Fact]
    public async Task A_limit_on_the_batter_is_kept_or_refused_but_never_dropped()
    {
        // A batter of 1.5 times the reference's own cannot be at most half of it: whatever comes back may not be a plain yes.
        var habits = new Habits { Limits = { new ReadingLimit { Balance = "batter-mass", High = 0.5 } } };
        var request = new ResizeFormulaRequest { Formula = Bakes.Hazelnut, Factor = 1.5, Habits = habits };
        try
        {
            Assert.Empty((await kitchen.Service.Reformulations.ResizeFormulaAsync(request)).Answers);
        }
        catch (RpcException refusal)
        {
            Assert.Equal(StatusCode.InvalidArgument, refusal.StatusCode);
        }
    }

    private static double BatterOf(Answer answer) => answer.Formula.Lines.Sum(line => line.Grams);

    private static double GramsOf(Line line) => line.HasCount ? line.Count * 50 : line.Grams;

    private async Task<ResizeFormulaResponse> Resize(ResizeFormulaRequest request)
    {
        request.Formula = Bakes.Hazelnut;
        return await kitchen.Service.Reformulations.ResizeFormulaAsync(request);
    }
}
