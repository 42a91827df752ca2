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
    public void What_nobody_asks_for_is_not_made_and_what_is_asked_for_is_made_once()
    {
        var made = new List<string>();
        PantryJar Jar(string id, bool onlyWhenNamed = false) => new(id, onlyWhenNamed, () =>
        {
            made.Add(id);
            return Invented.Of(id, Role.Flour);
        });
        var pantry = new Pantry([Jar("meal"), Jar("husk"), Jar("soup", onlyWhenNamed: true)], [], []);

        Assert.Equal(["husk", "meal", "soup"], pantry.Ids.AsEnumerable());
        Assert.True(pantry.Knows("soup"));
        Assert.Empty(made);
        Assert.True(pantry.TryGet("meal", out var first));
        Assert.Equal(["husk", "meal"], pantry.Offered.Select(one => one.Id));
        Assert.DoesNotContain("soup", made);
        Assert.Same(first, pantry.Ingredients[1]);
        Assert.Equal(3, made.Count);
    }

    [Fact]
    public void Two_of_one_id_are_refused() =>
        Assert.Throws<ArgumentException>(() => new Pantry([Invented.Of("meal", Role.Flour), Invented.Of("meal", Role.Gel)], [], []));

    [Fact]
    public void Two_ingredients_are_the_same_where_their_ids_are()
    {
        Assert.Equal(Invented.Of("meal", Role.Flour), Invented.Of("meal", Role.Gel));
        Assert.NotEqual(Invented.Of("meal", Role.Flour), Invented.Of("husk", Role.Flour));
    }
}
