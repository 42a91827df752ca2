using Google.Protobuf;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Translation;

[Collection(OpenKitchen.Name)]
public sealed class FormulaWriterTests(OpenKitchen kitchen)
{
    [Theory]
    [InlineData("hazelnut-tin-loaf")]
    [InlineData("seeded-free-form-loaf")]
    [InlineData("almond-rolls")]
    [InlineData("vanilla-muffins")]
    [InlineData("cocoa-cake")]
    public async Task A_formula_that_comes_back_can_be_asked_about_and_reads_the_same(string id)
    {
        var first = await Bakes.Balance(kitchen.Service, Bakes.Stored(id));
        var again = await Bakes.Balance(kitchen.Service, first.Formula);
        Assert.Equal(first, again);
    }

    [Theory]
    [InlineData("tree-nuts")]
    [InlineData("egg")]
    [InlineData("milk")]
    public async Task An_answer_fed_back_as_a_question_reads_the_same(string without)
    {
        var response = await kitchen.Service.Substitutions.VaryFormulaAsync(new VaryFormulaRequest { Formula = Bakes.Hazelnut, Without = { without } });
        foreach (var answer in response.Answers)
        {
            var again = await Bakes.Balance(kitchen.Service, answer.Formula);
            Assert.Equal(answer.Formula, again.Formula);
            Assert.Equal(answer.Nutrition, again.Nutrition);
            Assert.Equal(answer.Allergens, again.Allergens);
            foreach (var reading in again.Readings.Where(reading => reading.Balance != "batter-mass"))
            {
                Assert.Equal(answer.Readings.Single(one => one.Balance == reading.Balance).Value, reading.Value);
            }
        }
    }

    [Fact]
    public async Task An_answer_can_be_printed_as_a_formula_file_and_asked_about_again()
    {
        var answer = (await Bakes.Resize(kitchen.Service, Bakes.Rolls)).Answers[0];
        var printed = new JsonFormatter(JsonFormatter.Settings.Default.WithFormatDefaultValues(true)).Format(answer.Formula);
        var again = await Bakes.Balance(kitchen.Service, Bakes.From(printed));
        Assert.Equal(answer.Formula, again.Formula);
    }

    [Fact]
    public async Task Shape_oven_and_bake_loss_come_back_as_they_were_given()
    {
        var formula = (await Bakes.Balance(kitchen.Service, Bakes.Hazelnut)).Formula;
        Assert.Equal(Bakes.Hazelnut.Shape, formula.Shape);
        Assert.Equal(Bakes.Hazelnut.Oven, formula.Oven);
        Assert.Equal(11, formula.BakeLossPercent);
        Assert.Equal(14, formula.Slices);
        Assert.Equal("Hazelnut tin loaf", formula.DisplayName);
    }

    [Fact]
    public async Task Counted_eggs_come_back_with_count_size_and_grams()
    {
        var egg = (await Bakes.Balance(kitchen.Service, Bakes.Hazelnut)).Formula.Lines.Single(line => line.Ingredient == "ingredients/egg-whole");
        Assert.Equal((4, Line.Types.Size.LargeUs, 200), (egg.Count, egg.Size, egg.Grams));
    }
}
