using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Balances;

public sealed class LineMassTests
{
    private static readonly LineMass Butter = LineMass.Of(TestKitchen.Ingredient("butter"), "less", "more");

    [Fact]
    public void Sixty_grams_of_butter_are_sixty()
    {
        var loaf = Bowl.Of(("almond-meal", 200), ("butter", 60), ("water", 100));
        Assert.Equal(60, Butter.Read(loaf, loaf, Draws.Typical)!.Value.Value, 12);
    }

    [Fact]
    public void Butter_in_two_lines_is_weighed_together()
    {
        var loaf = Bowl.Of(("almond-meal", 200), ("butter", 40), ("butter", 20));
        Assert.Equal(60, Butter.Read(loaf, loaf, Draws.Typical)!.Value.Value, 12);
    }

    [Fact]
    public void Another_fat_is_no_butter()
    {
        var loaf = Bowl.Of(("almond-meal", 200), ("coconut-oil", 60));
        Assert.Equal(0, Butter.Read(loaf, loaf, Draws.Typical)!.Value.Value, 12);
    }

    [Fact]
    public void Its_band_is_open_and_the_fats_give_way_to_it()
    {
        var loaf = Bowl.Of(("almond-meal", 200), ("butter", 60));
        Assert.Equal(Band.Open, Butter.Band(loaf, Draws.Typical));
        Assert.Equal(Role.Fat, Assert.Single(Butter.Settings.Target.FreedRoles));
    }
}
