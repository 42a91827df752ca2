using System.Text.RegularExpressions;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;

namespace SwapSolver.Kitchen.Tests.Labels;

public sealed partial class LabelStatementsTests
{
    private static readonly ReferenceTable Lists = ReferenceTable.Read("Labels/Reference/allergen-lists.csv");

    private static readonly LabelStatements Statements = new(TestKitchen.Bakehouse.Pantry.Allergens, TestLabels.Phrases);

    public static TheoryData<string> Rows => [.. Lists.Names];

    public static TheoryData<string> Laws => [.. TestLabels.Laws.All.Select(law => law.Id)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void An_ingredient_is_on_the_lists_that_name_it(string name)
    {
        var row = Lists[name];
        var formula = Bowl.Of((row["ingredient"], 100));

        foreach (var list in new[] { "us", "eu" })
        {
            Assert.Equal(row[list], string.Join(' ', BroughtAllergen.Of(formula, BroughtAllergen.ByList(list)).Select(one => one.Allergen)));
        }
    }

    [Fact]
    public void An_allergen_stands_with_the_ingredient_that_brings_it() => Assert.Contains(
        "Contains (US list): egg (whole egg), milk (unsalted butter), tree nuts (walnut meal).", Statements.Of(Loaf.Walnut, TestLabels.Law("us")));

    [Fact]
    public void A_variant_says_what_it_was_made_without_and_by_which_list()
    {
        var variant = Bowl.Of(("sunflower-seed-flour", 200), ("psyllium-husk", 20), ("water", 200)).WithEggs(4);
        var said = Statements.Of(variant, TestLabels.Law("us"), Loaf.Walnut);

        Assert.Contains(said, statement => statement.StartsWith("Made without milk and tree-nut ingredients (US list)", StringComparison.Ordinal));
        Assert.DoesNotContain(Statements.Of(variant, TestLabels.Law("us")), statement => statement.StartsWith("Made without", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Laws))]
    public void Free_from_is_never_claimed_and_local_rules_decide(string law)
    {
        var plain = Bowl.Of(("sunflower-seed-flour", 200), ("water", 200));
        var said = Statements.Of(plain, TestLabels.Law(law), Loaf.Walnut);

        Assert.All(said, statement => Assert.DoesNotMatch(Claim(), statement));
        Assert.Contains(said, statement => statement.Contains("local law", StringComparison.Ordinal));
        Assert.Contains(said, statement => statement.StartsWith("Cross-contact", StringComparison.Ordinal));
        var gluten = Assert.Single(said, statement => statement.StartsWith("No gluten-containing ingredient is used.", StringComparison.Ordinal));
        Assert.Contains(TestLabels.Law(law).Gluten.Law, gluten, StringComparison.Ordinal);
        Assert.Contains("That is no claim", gluten, StringComparison.Ordinal);
    }

    [Fact]
    public void Gluten_is_named_with_what_brings_it() => Assert.Contains(
        Statements.Of(Loaf.Yeast, TestLabels.Law("eu")), statement => statement.StartsWith("Contains gluten, by ", StringComparison.Ordinal));

    [Fact]
    public void Cross_contact_that_a_packet_warns_of_is_told_with_the_packet()
    {
        const string MayContain = "May contain by cross-contact: ";
        var said = Statements.Of(Bowl.Of(("dark-chocolate-85", 50), ("coconut-flour", 100), ("coconut-milk-canned", 200)), TestLabels.Law("us"));
        var told = Assert.Single(said, statement => statement.StartsWith(MayContain, StringComparison.Ordinal));
        // In the order of the lists' ids; two of coconut bring sulphites.
        var (chocolate, flour, milk) = (TestKitchen.Ingredient("dark-chocolate-85").Name, TestKitchen.Ingredient("coconut-flour").Name, TestKitchen.Ingredient("coconut-milk-canned").Name);
        Assert.Contains($"milk ({chocolate}), soy", told, StringComparison.OrdinalIgnoreCase);
        Assert.Contains($"({flour} and {milk})", told, StringComparison.Ordinal);
        Assert.DoesNotContain(Statements.Of(Loaf.Walnut, TestLabels.Law("us")), statement => statement.StartsWith(MayContain, StringComparison.Ordinal));
    }

    [Fact]
    public void Allergens_that_nobody_stated_are_not_none_and_nothing_is_said_to_be_left_out()
    {
        var bag = Foods.Shelf.Of(Foods.Shelf.Bag(Foods.Shelf.Flour, suits: new Suits(Vegan: true, Vegetarian: true, GlutenFree: true)));
        var bread = Bowl.Of(("sunflower-seed-flour", 100), ("water", 200));
        var unknown = bread with { Lines = bread.Lines.Add(new Line(bag, new Grams(100))) };
        var said = Statements.Of(unknown, TestLabels.Law("us"), Loaf.Walnut);

        Assert.Contains("Allergens never stated, which is not none: Larkfield bag. Read the packet.", said);
        Assert.DoesNotContain(said, statement => statement.StartsWith("Made without", StringComparison.Ordinal));
        Assert.Contains(said, statement => statement.StartsWith("Whether an ingredient contains gluten was not stated for all of them.", StringComparison.Ordinal));
        Assert.DoesNotContain(said, statement => statement.StartsWith("No gluten-containing ingredient", StringComparison.Ordinal));

        var stated = Statements.Of(bread, TestLabels.Law("us"), Loaf.Walnut);
        Assert.DoesNotContain(stated, statement => statement.StartsWith("Allergens never stated", StringComparison.Ordinal));
        Assert.Contains(stated, statement => statement.StartsWith("Made without egg, milk and tree-nut ingredients (US list)", StringComparison.Ordinal));
    }

    [Fact]
    public void A_bowl_without_any_allergen_says_by_which_list_none_is_known()
    {
        var said = Statements.Of(Bowl.Of(("sunflower-seed-flour", 200), ("water", 200)), TestLabels.Law("eu"), Bowl.Of(("pumpkin-seed-flour", 200)));
        Assert.Equal("Contains (EU list): none known in the ingredients.", said[0]);
        // The formula that it comes from had none either, so none was left out.
        Assert.DoesNotContain(said, statement => statement.StartsWith("Made without", StringComparison.Ordinal));
    }

    [Fact]
    public void An_allergen_without_a_name_is_told_by_its_id() => Assert.Contains(
        "Contains (US list): egg (whole egg), milk (unsalted butter), tree-nuts (walnut meal).", (Statements with { Allergens = [] }).Of(Loaf.Walnut, TestLabels.Law("us")));

    [Fact]
    public void Who_brings_gluten_twice_is_named_once() => Assert.Contains(
        "Contains gluten, by vital wheat gluten.",
        Statements.Of(Bowl.Of(("wheat-gluten", 20), ("water", 100), ("wheat-gluten", 20)), TestLabels.Law("us")));

    [GeneratedRegex(@"(?i)\b(nut|dairy|egg|milk|soya|allergen)[- ]free\b|\bis gluten-free\b")]
    private static partial Regex Claim();
}
