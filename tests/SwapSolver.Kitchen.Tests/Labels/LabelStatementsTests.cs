using System.Text.RegularExpressions;
using SwapSolver.Kitchen.Labels;
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

    [GeneratedRegex(@"(?i)\b(nut|dairy|egg|milk|soya|allergen)[- ]free\b|\bis gluten-free\b")]
    private static partial Regex Claim();
}
