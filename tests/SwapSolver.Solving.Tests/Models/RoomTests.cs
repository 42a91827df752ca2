using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Models;
using SwapSolver.Solving.Wishes;

namespace SwapSolver.Solving.Tests.Models;

/// <summary>Between which grams a line may lie. Masses of a role keep 0.75 to 1.35 of what there was of it, flours 0.92 to 1.08.</summary>
public sealed class RoomTests
{
    private const double Near = 1e-9;

    [Fact]
    public void A_line_keeps_half_of_itself_and_its_role_its_room()
    {
        var room = new Room(Problem(Loaf.Walnut));
        // Butter: half of 20 g; water alone among the liquids, 1.35 of 220 g, and what wets may go.
        Assert.Equal(10, room.OfKept(Line(Loaf.Walnut, "butter")).Low, Near);
        Assert.Equal(27, room.OfKept(Line(Loaf.Walnut, "butter")).High, Near);
        Assert.Equal((0, 297), Rounded(room.OfKept(Line(Loaf.Walnut, "water"))));
        // What leavens may go too.
        Assert.Equal(0, room.OfKept(Line(Loaf.Walnut, "baking-soda")).Low);
        Assert.Equal(0, room.OfKept(Line(Loaf.Walnut, "cream-of-tartar")).Low);
        Assert.Equal(0, new Room(Problem(Loaf.Muffins)).OfKept(Line(Loaf.Muffins, "baking-powder-double-acting")).Low);
    }

    [Fact]
    public void Of_two_liquids_each_keeps_its_own_room_unless_lines_need_not()
    {
        // 1.35 of 40 g of water by itself; 1.35 of all 140 g of liquid where one may stand in for the other.
        var two = Bowl.Of(("almond-flour-blanched", 200), ("water", 40), ("almond-drink-unsweetened", 100), ("butter", 30), ("olive-oil", 10)).WithEggs(2);
        var (tight, loose) = (new Room(Problem(two)), new Room(Problem(two) with { LinesKeepTheirRoom = false }));
        Assert.Equal(54, tight.OfKept(Line(two, "water")).High, Near);
        Assert.Equal(189, loose.OfKept(Line(two, "water")).High, Near);
        Assert.Equal(13.5, tight.OfKept(Line(two, "olive-oil")).High, Near);
        Assert.Equal(54, loose.OfKept(Line(two, "olive-oil")).High, Near);
    }

    [Fact]
    public void A_line_above_what_a_dough_bears_stays_as_it_was_or_comes_down_where_it_must()
    {
        // Psyllium powder: so much of the flours at the most, which a third of the flours is far above.
        var heavy = Bowl.Of(("almond-flour-blanched", 150), ("psyllium-husk-powder", 50), ("water", 300));
        var most = TestKitchen.Ingredient("psyllium-husk-powder").Usage.Most(heavy.MassOf(Role.Flour), heavy.BatterMass).Value;
        Assert.InRange(most, 1, 49);
        var line = Line(heavy, "psyllium-husk-powder");
        Assert.Equal(50, new Room(Problem(heavy)).OfKept(line).High, Near);
        Assert.Equal((0, most), new Room(Problem(heavy) with { UsageBinds = true }).OfKept(line));
        // What keeps its usage is not touched by that.
        var kept = Line(heavy, "water");
        Assert.Equal(new Room(Problem(heavy)).OfKept(kept), new Room(Problem(heavy) with { UsageBinds = true }).OfKept(kept));
    }

    [Fact]
    public void Something_new_is_worth_weighing_and_no_more_than_a_dough_or_its_role_bears()
    {
        var room = new Room(Problem(Loaf.Walnut));
        var oil = TestKitchen.Ingredient("olive-oil");
        var (least, most) = room.OfNew(oil);
        Assert.Equal(oil.Usage.SensibleMinimum.Value, least);
        // The fats of the loaf are 20 g of butter.
        Assert.Equal(27, most, Near);
        // No sweetener is there, so none of it bounds what comes in: the usage does.
        var erythritol = TestKitchen.Ingredient("erythritol");
        Assert.Equal(erythritol.Usage.Most(Loaf.Walnut.MassOf(Role.Flour), Loaf.Walnut.BatterMass).Value, room.OfNew(erythritol).Most, Near);
    }

    [Fact]
    public void Where_a_loaf_has_no_flour_its_usage_is_counted_on_a_usual_share_of_the_batter()
    {
        var custard = Bowl.Of(("water", 200), ("butter", 100)).WithEggs(4);
        var psyllium = TestKitchen.Ingredient("psyllium-husk-powder");
        var flours = custard.BatterMass * TestKitchen.Bakehouse.Practice.FloursOfBatter.Share;
        Assert.Equal(psyllium.Usage.Most(flours, custard.BatterMass).Value, new Room(Problem(custard)).OfNew(psyllium).Most, Near);
    }

    [Theory]
    [InlineData("salt", true)]
    [InlineData("yeast-active-dry", true)]
    [InlineData("honey", true)]
    [InlineData("water", false)]
    [InlineData("almond-meal", false)]
    [InlineData("wheat-gluten", false)]
    public void What_seasons_sweetens_or_ferments_is_no_ballast_to_hit_a_band_with(string id, bool stays) =>
        Assert.Equal(stays, new Room(Problem(Loaf.Yeast)).StaysAsItIs(Line(Loaf.Yeast, id)));

    [Fact]
    public void Salt_moves_where_a_wish_is_about_it()
    {
        var line = Line(Loaf.Walnut, "salt");
        Assert.False(Holding(Loaf.Walnut, Cap("salt", 0.1)).StaysAsItIs(line));
        Assert.True(Holding(Loaf.Walnut, Cap("energy", 100)).StaysAsItIs(line));
        // A default of the kitchen is no wish.
        Assert.True(Holding(Loaf.Walnut, Cap("salt", 0.1) with { FromCaller = false }).StaysAsItIs(line));
    }

    [Fact]
    public void A_pinch_of_cinnamon_stays_and_a_food_among_the_flavours_moves()
    {
        // Cocoa by its 40 g in 756 g of batter is a food; 2 g of it would season.
        Assert.False(new Room(Problem(Loaf.CocoaCake)).StaysAsItIs(Line(Loaf.CocoaCake, "cocoa-natural")) && Line(Loaf.CocoaCake, "cocoa-natural").Ingredient.Role == Role.Flavour);
        var spiced = Loaf.Walnut with { Lines = Loaf.Walnut.Lines.Add(new Line(TestKitchen.Ingredient("cinnamon"), new(2))) };
        Assert.True(new Room(Problem(spiced)).StaysAsItIs(Line(spiced, "cinnamon")));
        var carrots = Loaf.Walnut with { Lines = Loaf.Walnut.Lines.Add(new Line(TestKitchen.Ingredient("applesauce-unsweetened"), new(150))) };
        Assert.Equal(Role.Flavour, Line(carrots, "applesauce-unsweetened").Ingredient.Role);
        Assert.False(new Room(Problem(carrots)).StaysAsItIs(Line(carrots, "applesauce-unsweetened")));
    }

    [Fact]
    public void The_sweetener_moves_where_sweetness_is_asked_or_another_one_goes()
    {
        var line = Line(Loaf.Muffins, "erythritol");
        Assert.True(new Room(Problem(Loaf.Muffins)).StaysAsItIs(line));
        Assert.False(Holding(Loaf.Muffins, Cap("sweetness", 5)).StaysAsItIs(line));
        // Energy too, since erythritol is given some by the factors that labels count with; net carbohydrate has none of it.
        Assert.True(Holding(Loaf.Muffins, Ask.NetCarbs(2)).StaysAsItIs(line));
        Assert.True(Holding(Loaf.Muffins, Cap("sweetness", 5) with { FromCaller = false }).StaysAsItIs(line));
        var two = Loaf.Muffins with { Lines = Loaf.Muffins.Lines.Add(new Line(TestKitchen.Ingredient("honey"), new(20))) };
        Assert.False(Holding(two, Ask.Without("honey")).StaysAsItIs(Line(two, "erythritol")));
        Assert.True(Holding(two, Ask.Without("tree-nuts")).StaysAsItIs(Line(two, "erythritol")));
        // Honey is carbohydrate, so a limit on that is about it.
        Assert.False(Holding(two, Ask.NetCarbs(2)).StaysAsItIs(Line(two, "honey")));
    }

    private static Hold Cap(string id, double most) => new(id, TestKitchen.Bakehouse.Balances.Find(id)!, new Band(null, new Level(most)), FromCaller: true);

    private static Room Holding(Formula formula, Hold hold) => new(Ask.Variant(formula, hold).Problem() is var problem
        ? problem with { Holds = [.. problem.Holds.Where(one => one.Id != hold.Id), hold] } : null!);

    private static FormulaProblem Problem(Formula formula) => Ask.Variant(formula, Ask.Without("peanuts")).Problem();

    private static Line Line(Formula formula, string id) => formula.Lines.Single(line => line.Ingredient.Id == id);

    private static (double Low, double High) Rounded((double Low, double High) room) => (Math.Round(room.Low, 9), Math.Round(room.High, 9));
}
