using System.Collections.Immutable;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Records.Tests.Engines;
using Range = SwapSolver.Kitchen.Ingredients.Range;

namespace SwapSolver.Records.Tests;

/// <summary>Foods and figures, whichever engine holds them.</summary>
public abstract class KitchenRecordsTests(IRecordsEngine engine)
{
    private readonly string place = engine.NewPlace();

    private static MeasuredFact Soaked(double held) =>
        new("coconut-flour", Fact.WaterBound, new Range(held - 0.1, held, held + 0.1), "soaked and drained");

    [Fact]
    public void A_kitchen_that_wrote_nothing_down_has_nothing_made_for_it()
    {
        var records = new KitchenRecords(place);
        records.Put(ImmutableArray<MeasuredFact>.Empty);

        Assert.Equal(0, records.Version);
        Assert.Equal(KitchenNotes.None, records.Read());
        Assert.False(records.Forget("coconut-flour"));
        Assert.False(Directory.Exists(place));
    }

    [Fact]
    public void What_was_measured_is_there_for_whoever_opens_the_records_next()
    {
        new KitchenRecords(place).Put([Soaked(2)]);

        Assert.Equal(Soaked(2), Assert.Single(new KitchenRecords(place).Read().Measured));
    }

    [Fact]
    public void A_second_test_replaces_the_first_and_is_seen_by_its_version()
    {
        var records = new KitchenRecords(place);
        records.Put([Soaked(2)]);
        var before = records.Version;
        records.Put([Soaked(3)]);

        Assert.True(records.Version > before);
        Assert.Equal(Soaked(3), Assert.Single(records.Read().Measured));
    }

    [Fact]
    public void What_is_forgotten_is_gone()
    {
        var records = new KitchenRecords(place);
        records.Put([Soaked(2)]);

        Assert.True(records.Forget("coconut-flour"));
        Assert.Empty(records.Read().Measured);
        Assert.False(records.Forget("coconut-flour"));
    }

    [Fact]
    public void A_food_comes_back_as_it_was_stated_and_the_same_again_changes_nothing()
    {
        var records = new KitchenRecords(place);
        Assert.Equal(new RowsWritten(1, 0, 0), records.Put([Bag(5.61)]));
        var version = records.Version;

        Assert.Equal(new RowsWritten(0, 0, 1), records.Put([Bag(5.61)]));
        Assert.Equal(version, records.Version);
        Assert.Equal(new RowsWritten(0, 1, 0), records.Put([Bag(5.62)]));
        var food = Assert.Single(records.Read().Foods);
        var stated = Bag(5.62);
        Assert.Equal((stated.Id, stated.Name, stated.Origin, stated.Like, stated.Role, stated.Suits), (food.Id, food.Name, food.Origin, food.Like, food.Role, food.Suits));
        Assert.Equal(stated.Figures, food.Figures);
        Assert.Equal(Assert.Single(stated.HouseholdMeasures), Assert.Single(food.HouseholdMeasures));
        Assert.Equal("tree-nuts", Assert.Single(food.Allergens!.Contains));
    }

    [Fact]
    public void What_a_cup_weighs_comes_back_to_the_digit_and_the_same_again_changes_nothing()
    {
        var cup = new HouseholdWeight("usda-12142", new HouseholdMeasure(0.25m, "cup, halves", new Grams(24.75), "own-table", Mark.Published));
        var records = new KitchenRecords(place);
        Assert.Equal(new RowsWritten(1, 0, 0), records.Put([cup]));
        var version = records.Version;

        Assert.Equal(new RowsWritten(0, 0, 1), records.Put([cup]));
        Assert.Equal(version, records.Version);
        Assert.Equal(cup, Assert.Single(records.Read().Weights));
        Assert.Equal(new RowsWritten(0, 1, 0), records.Put([cup with { Measure = cup.Measure with { Grams = new Grams(25) } }]));
        Assert.True(records.Forget("usda-12142"));
        Assert.Empty(records.Read().Weights);
    }

    [Fact]
    public void What_is_read_again_is_read_anew_only_where_it_changed()
    {
        var records = new KitchenRecords(place);
        records.Put([Bag(5.61), Table("a-table-row"), Table("another-row")]);
        var before = records.Read();
        records.Put([Bag(5.62)]);
        records.Forget("another-row");
        var after = records.Read(before);

        Assert.Equal(["a-table-row", "larkfield-bag"], after.Written.Select(food => food.Id));
        Assert.Same(before.Written.Single(food => food.Id == "a-table-row"), after.Written[0]);
        Assert.Equal(5.62, after.Written[1].Food.Figures[Fact.Protein].Range.Typical);
        Assert.Equal(records.Read().Version, after.Version);
    }

    [Fact]
    public void The_head_of_a_food_says_what_the_whole_food_says()
    {
        var records = new KitchenRecords(place);
        StatedFood[] foods = [Bag(5.61), Table("nothing-said"), Table("role-said", role: Role.Gel), Table("like-said", like: "almond-meal"), Table("quotes-\u00e9", "a \"Figures\" of speech, \u00e9")];
        records.Put(foods);

        Assert.All(records.Read().Written, food =>
        {
            var whole = food.Food;
            Assert.Equal((whole.Name, whole.Origin, whole.Like is not null || whole.Role is not null), (food.Name, food.Origin, food.SaysWhatItDoes));
        });
        Assert.Equal(["larkfield-bag", "like-said", "role-said"], records.Read().Written.Where(food => food.SaysWhatItDoes).Select(food => food.Id).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void One_food_is_found_by_its_id()
    {
        var records = new KitchenRecords(place);
        Assert.Null(records.Find("larkfield-bag"));
        records.Put([Bag(5.61)]);

        Assert.Equal(5.61, records.Find("larkfield-bag")!.Figures[Fact.Protein].Range.Typical);
        Assert.Null(records.Find("larkfield"));
    }

    [Fact]
    public void Allergens_that_were_not_stated_do_not_come_back_as_none()
    {
        var records = new KitchenRecords(place);
        records.Put([new StatedFood { Id = "larkfield-bag", Name = "Larkfield bag", Origin = FoodOrigin.Packet, Figures = [] }]);

        Assert.Null(Assert.Single(records.Read().Foods).Allergens);
    }


    private static StatedFood Table(string id, string name = "Row of a table", string? like = null, Role? role = null) =>
        new() { Id = id, Name = name, Origin = FoodOrigin.Table, Like = like, Role = role, Figures = [] };

    private static StatedFood Bag(double protein) => new()
    {
        Id = "larkfield-bag",
        Name = "Larkfield bag",
        Origin = FoodOrigin.Packet,
        Like = "almond-meal",
        Role = Role.Flour,
        Figures = ImmutableDictionary<Fact, Figure>.Empty.Add(Fact.Protein, new Figure(new Range(protein - 0.5, protein, protein + 0.5), "own-packet", Mark.Calculated, null)),
        Allergens = new StatedAllergens(["tree-nuts"], ["sesame"]),
        Suits = new Suits(true, true, true),
        HouseholdMeasures = [new HouseholdMeasure(0.5m, "cup", new Grams(48), "own-packet", Mark.Practice)],
    };
}

/// <summary>In the embedded engine.</summary>
public sealed class EmbeddedKitchenRecordsTests(EmbeddedEngine engine) : KitchenRecordsTests(engine), IClassFixture<EmbeddedEngine>;

/// <summary>In a PostgreSQL server.</summary>
[Collection(WithServer.Name)]
public sealed class ServerKitchenRecordsTests(ServerEngine engine) : KitchenRecordsTests(engine);
