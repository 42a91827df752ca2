using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Ingredients;

public sealed class PantryTests
{
    [Fact]
    public void What_the_pantry_has_is_found_by_its_id()
    {
        Assert.True(TestKitchen.Bakehouse.Pantry.TryGet("hazelnut-flour", out var found));
        Assert.Equal(Role.Flour, found.Role);
    }

    [Fact]
    public void What_the_pantry_has_not_is_not_found() =>
        Assert.False(TestKitchen.Bakehouse.Pantry.TryGet("sawdust", out _));

    [Fact]
    public void Two_ingredients_are_the_same_where_their_ids_are()
    {
        Assert.Equal(Invented.Of("meal", Role.Flour), Invented.Of("meal", Role.Gel));
        Assert.NotEqual(Invented.Of("meal", Role.Flour), Invented.Of("husk", Role.Flour));
    }
}
