using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Loaves;

/// <summary>Writes a formula the way a baker says it: <c>Bowl.Of(("almond-meal", 200), ("water", 120)).WithEggs(3)</c>.</summary>
public static class Bowl
{
    /// <summary>A formula of weighed lines, cut into twelve slices.</summary>
    public static Formula Of(params ReadOnlySpan<(string Id, double Grams)> lines)
    {
        var made = ImmutableArray.CreateBuilder<Line>();
        foreach (var (id, grams) in lines)
        {
            made.Add(new Line(TestKitchen.Ingredient(id), new Grams(grams)));
        }

        return new Formula("Test loaf", made.ToImmutable(), 12, null, null, null);
    }

    /// <summary>The same with whole large US eggs added.</summary>
    public static Formula WithEggs(this Formula formula, int count) => formula.WithCounted("egg-whole", count);

    /// <summary>The same with large US eggs, whites or yolks added by the piece.</summary>
    public static Formula WithCounted(this Formula formula, string id, int count)
    {
        var ingredient = TestKitchen.Ingredient(id);
        var unit = Line.UnitOf(ingredient, EggSize.LargeUs)!.Value;
        return formula with { Lines = formula.Lines.Add(new Line(ingredient, unit * count, EggSize.LargeUs)) };
    }
}
