using SwapSolver.Service.Translation;

namespace SwapSolver.Service.Tests.Translation;

public sealed class NearestNamesTests
{
    private static readonly string[] Pantry = ["almond-meal", "salmon", "butter", "buttermilk", "baking-soda", "almond-butter", "water"];

    [Theory]
    [InlineData("buter", "butter")]
    [InlineData("Baking Soda", "baking-soda")]
    [InlineData("soda", "baking-soda")]
    [InlineData("watr", "water")]
    public void A_slip_of_the_pen_finds_what_was_meant(string written, string meant) =>
        Assert.Equal(meant, NearestNames.To(written, Pantry)[0]);

    [Fact]
    public void Ground_almonds_are_nearer_to_almond_meal_than_to_salmon()
    {
        var names = NearestNames.To("almonds ground", Pantry).ToList();
        Assert.Equal(3, names.Count);
        Assert.Contains("almond-meal", names);
        Assert.DoesNotContain("salmon", names.Take(2));
    }

    [Fact]
    public void An_empty_name_has_nearest_names_too() => Assert.Equal(3, NearestNames.To(string.Empty, Pantry).Count);
}
