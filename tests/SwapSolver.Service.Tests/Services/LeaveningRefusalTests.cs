using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;

namespace SwapSolver.Service.Tests.Services;

/// <summary>Questions about leavening that cannot be read; none costs a solve.</summary>
[Collection(StrictKitchen.Name)]
public sealed class LeaveningRefusalTests(StrictKitchen kitchen)
{
    [Fact]
    public async Task A_flour_without_a_formula_is_refused() => (await Refused(new ReplaceIngredientRequest { Ingredient = "ingredients/almond-meal", Grams = 5 }))
        .Names("formula", "almond-meal", "acids, bases and baking powders");

    [Fact]
    public async Task Neither_formula_nor_dose_is_refused() => (await Refused(new ReplaceIngredientRequest { Ingredient = "ingredients/cream-of-tartar" }))
        .Names("grams", "neither", "grams");

    [Theory]
    [InlineData(0)]
    [InlineData(-6)]
    [InlineData(double.NaN)]
    [InlineData(1e7)]
    public async Task What_is_no_dose_is_refused(double grams) =>
        (await Refused(new ReplaceIngredientRequest { Ingredient = "ingredients/cream-of-tartar", Grams = grams })).Names("grams", "is no dose", "0.1 to");

    [Fact]
    public async Task A_dose_beside_a_formula_is_refused() =>
        (await Refused(new ReplaceIngredientRequest { Formula = Bakes.Hazelnut, Ingredient = "ingredients/cream-of-tartar", Grams = 6 })).Names("grams", "'6'", "leave it out");

    [Fact]
    public async Task What_is_not_in_the_formula_is_refused() =>
        (await Refused(new ReplaceIngredientRequest { Formula = Bakes.Hazelnut, Ingredient = "ingredients/citric-acid" })).Names("ingredient", "citric-acid", "cream-of-tartar");

    [Fact]
    public async Task An_unknown_ingredient_comes_back_with_the_nearest_names() =>
        (await Refused(new ReplaceIngredientRequest { Ingredient = "ingredients/creme-of-tartar", Grams = 6 })).Names("ingredient", "creme-of-tartar", "cream-of-tartar");

    [Theory]
    [InlineData("almond-meal")]
    [InlineData("baking-soda")]
    public async Task What_is_no_acid_stands_in_for_none(string with) =>
        (await Refused(new ReplaceIngredientRequest { Ingredient = "ingredients/cream-of-tartar", Grams = 6, With = { $"ingredients/{with}" } })).Names("with", with, "citric-acid");

    [Fact]
    public async Task Nothing_stands_in_for_itself() =>
        (await Refused(new ReplaceIngredientRequest { Ingredient = "ingredients/cream-of-tartar", Grams = 6, With = { "ingredients/cream-of-tartar" } })).Names("with", "cream-of-tartar", "something else");

    [Fact]
    public async Task More_than_three_together_are_refused() =>
        (await Refused(new ReplaceIngredientRequest { Ingredient = "ingredients/cream-of-tartar", Grams = 6, With = { Enumerable.Repeat("ingredients/citric-acid", 4) } })).Names("with", "'4'", "at most 3");

    [Theory]
    [InlineData(-1, "cannot be weighed")]
    [InlineData(6, "is all that is needed")]
    public async Task A_stock_that_asks_for_nothing_is_refused(double stock, string why) =>
        (await Refused(new ReplaceIngredientRequest { Ingredient = "ingredients/cream-of-tartar", Grams = 6, StockGrams = stock })).Names("stockGrams", why, "give");

    [Fact]
    public async Task A_stock_of_flour_is_refused() =>
        (await Refused(new ReplaceIngredientRequest { Formula = Bakes.Hazelnut, Ingredient = "ingredients/hazelnut-flour", StockGrams = 50 })).Names("stockGrams", "hazelnut-flour", "leave it out");

    [Theory]
    [InlineData(-501)]
    [InlineData(9000)]
    [InlineData(double.NaN)]
    public async Task No_kitchen_lies_there(double metres) => (await kitchen.Refuses(service =>
        service.Baking.PredictRiseAsync(new PredictRiseRequest { Formula = Bakes.Hazelnut, AltitudeMetres = metres }))).Names("altitudeMetres", "is no height", "-500 to 6000");

    [Theory]
    [InlineData(-1)]
    [InlineData(1000)]
    public async Task No_batter_waits_so_long(double minutes) => (await kitchen.Refuses(service =>
        service.Baking.PredictRiseAsync(new PredictRiseRequest { Formula = Bakes.Hazelnut, WaitMinutes = minutes }))).Names("waitMinutes", "is no wait", "0 to 240");

    [Fact]
    public async Task A_rise_without_a_formula_is_refused() =>
        (await kitchen.Refuses(service => service.Baking.PredictRiseAsync(new PredictRiseRequest()))).Names("formula", "missing", "give a 'formula'");

    private Task<Refusal> Refused(ReplaceIngredientRequest request) =>
        kitchen.Refuses(service => service.Substitutions.ReplaceIngredientAsync(request));
}
