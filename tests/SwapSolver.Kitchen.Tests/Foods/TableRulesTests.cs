using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Tests.Foods;

/// <summary>Energies by the general factors 4, 9 and 4 kcal/g (21 CFR 101.9(c)(1)(i)(B)); all foods are invented.</summary>
public sealed class TableRulesTests
{
    [Theory]
    [InlineData("by the general factors", 20, 10, 61, 414, true)]
    [InlineData("with fibre that gives nothing", 20, 10, 61, 240, true)]
    [InlineData("of pure fat", 0, 94, 0, 846, true)]
    [InlineData("of pure fat, half of it forgotten", 0, 94, 0, 423, false)]
    [InlineData("more than all parts give", 20, 10, 61, 500, false)]
    [InlineData("less than the fat alone gives", 20, 10, 61, 90, false)]
    [InlineData("of a polyol that gives none", 0, 0, 91, 0, true)]
    [InlineData("of sugar in kilojoules", 0, 0, 91, 910, false)]
    public void Energy_follows_from_the_parts(string what, double protein, double fat, double carbohydrate, double energy, bool follows)
    {
        var figures = Shelf.Exact(
            (Fact.Water, 100 - 3 - protein - fat - carbohydrate), (Fact.Ash, 3), (Fact.Protein, protein), (Fact.Fat, fat), (Fact.Carbohydrate, carbohydrate), (Fact.Energy, energy));
        var clashes = Shelf.TableRules.Clashes(figures).ToList();

        Assert.True(clashes.Count == 0 == follows, $"{what}: {string.Join("; ", clashes)}");
        Assert.All(clashes, clash => Assert.Equal(Fact.Energy, clash.Fact));
    }

    [Theory]
    [InlineData(98.5, true)]
    [InlineData(98.4, false)]
    [InlineData(101.5, true)]
    [InlineData(101.6, false)]
    public void Parts_make_100_g(double sum, bool makes)
    {
        var figures = Shelf.Exact((Fact.Water, sum - 13), (Fact.Protein, 10), (Fact.Ash, 3));

        Assert.Equal(makes, !FactSums.Clashes(figures, Quantities.Grams.None, Shelf.TableRules.PartAboveWhole).Any());
    }

    [Fact]
    public void Ash_that_is_not_stated_leaves_room_for_itself_and_no_more()
    {
        var room = Shelf.TableRules.AshNotStated.Value;

        Assert.Empty(Shelf.TableRules.Clashes(Shelf.Exact((Fact.Water, 98.5 - room))));
        Assert.NotEmpty(Shelf.TableRules.Clashes(Shelf.Exact((Fact.Water, 98.4 - room))));
        Assert.NotEmpty(Shelf.TableRules.Clashes(Shelf.Exact((Fact.Water, 98.5 - room), (Fact.Ash, 0))));
    }

    [Fact]
    public void A_part_is_never_above_its_whole()
    {
        var sound = Shelf.Exact((Fact.Water, 50), (Fact.Fat, 20), (Fact.SaturatedFat, 20.004), (Fact.Carbohydrate, 30), (Fact.Fibre, 31), (Fact.Ash, 0));
        Assert.Empty(FactSums.Clashes(sound, Quantities.Grams.None, Shelf.TableRules.PartAboveWhole));

        Assert.Equal([Fact.SaturatedFat], Clashing(sound, (Fact.SaturatedFat, 20.01)));
        Assert.Equal([Fact.Carbohydrate], Clashing(sound, (Fact.Sugars, 1)));
        Assert.Equal([Fact.Erythritol], Clashing(sound, (Fact.Erythritol, 1)));
    }

    private static IEnumerable<Fact> Clashing(ImmutableDictionary<Fact, Figure> figures, (Fact Fact, double Figure) other) =>
        FactSums.Clashes(figures.SetItems(Shelf.Exact(other)), Quantities.Grams.None, Shelf.TableRules.PartAboveWhole).Select(clash => clash.Fact);
}
