using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Loaves;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Tests.Answers;

public sealed class KnownReferencesTests
{
    /// <summary>Another loaf than the walnut loaf, by what stands in the name.</summary>
    private static readonly Dictionary<string, Func<Formula, Formula>> Others = new()
    {
        ["a gram more water"] = loaf => loaf with { Lines = [.. loaf.Lines.Select(line => line.Ingredient.Id == "water" ? line with { Grams = line.Grams + new Grams(1) } : line)] },
        ["a line less"] = loaf => loaf with { Lines = loaf.Lines[1..] },
        ["a slice more"] = loaf => loaf with { Slices = loaf.Slices + 1 },
        ["drier out of the oven"] = loaf => loaf with { BakeLoss = new Percent(17) },
        ["in pieces"] = loaf => loaf with { Shape = new Pieces(12) },
        ["an ingredient that was measured anew"] = loaf => loaf with { Lines = [.. loaf.Lines.Select((line, place) => place == 0 ? line with { Ingredient = line.Ingredient.With([], line.Ingredient.HouseholdMeasures) } : line)] },
    };

    public static TheoryData<string> Changes => [.. Others.Keys];

    private static Balance Hydration => TestKitchen.Bakehouse.Balances.All.OfType<Hydration>().Single();

    [Fact]
    public void The_same_loaf_is_worked_out_once_whatever_it_is_called()
    {
        var known = new Bags();
        var first = known.OfReference(Loaf.Walnut).Levels(Hydration);
        var again = Loaf.Walnut with { DisplayName = "Sunday loaf", Description = "as sent in", Lines = [.. Loaf.Walnut.Lines.Select(line => line with { })] };
        Assert.Same(first, known.OfReference(again).Levels(Hydration));
    }

    [Theory]
    [MemberData(nameof(Changes))]
    public void Another_loaf_is_worked_out_for_itself(string change)
    {
        var known = new Bags();
        var other = Others[change](Loaf.Walnut);
        Assert.NotSame(known.OfReference(Loaf.Walnut), known.OfReference(other));
        Assert.Equal(new ReferenceSamples(other, new Bags()).Levels(Hydration), known.OfReference(other).Levels(Hydration));
    }

    [Fact]
    public void The_loaf_that_was_asked_for_longest_ago_makes_room()
    {
        var known = new Bags();
        var (first, second) = (known.OfReference(Sliced(1)), known.OfReference(Sliced(2)));
        for (var slices = 3; slices <= 8; slices++)
        {
            known.OfReference(Sliced(slices));
        }

        Assert.Same(first, known.OfReference(Sliced(1)));
        known.OfReference(Sliced(9));
        Assert.Same(first, known.OfReference(Sliced(1)));
        Assert.NotSame(second, known.OfReference(Sliced(2)));
    }

    private static Formula Sliced(int slices) => Loaf.Walnut with { Slices = slices };
}
