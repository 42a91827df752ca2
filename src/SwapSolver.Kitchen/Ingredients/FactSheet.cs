using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>One draw of an ingredient's facts. Rules see a sheet, never a range: typical, low, high and
/// sampled values then run through the same code.</summary>
public sealed class FactSheet
{
    private readonly ImmutableArray<double> perGram;

    private FactSheet(Ingredient ingredient, ImmutableArray<double> perGram)
    {
        Ingredient = ingredient;
        this.perGram = perGram;
    }

    /// <summary>The ingredient whose facts these are.</summary>
    public Ingredient Ingredient { get; }

    /// <summary>The fact per gram of the ingredient: g/100 g and mg/100 g become g/g, kcal/100 g becomes kcal/g;
    /// facts per gram and shares stay as they are.</summary>
    /// <exception cref="MissingFactException">The ingredient lacks the fact. It is not zero: it is not known.</exception>
    public double this[Fact fact]
    {
        get
        {
            var value = perGram[fact.Index];
            return double.IsNaN(value) ? throw new MissingFactException(Ingredient.Id, fact) : value;
        }
    }

    /// <summary>Several sheets of one ingredient at once, each fact standing where its shares say.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="count">How many sheets.</param>
    /// <param name="shares">Where a fact that has a range stands on each sheet, 0 (low) over one half (typical) to 1 (high).</param>
    public static ImmutableArray<FactSheet> Several(Ingredient ingredient, int count, Func<Fact, double[]> shares)
    {
        var values = new double[count][];
        for (var sheet = 0; sheet < count; sheet++)
        {
            values[sheet] = new double[Fact.All.Length];
        }

        foreach (var fact in Fact.All)
        {
            var range = ingredient.RangeOf(fact);
            var stands = range is { } wide && wide.Low < wide.High ? shares(fact) : null;
            for (var sheet = 0; sheet < count; sheet++)
            {
                values[sheet][fact.Index] = range is { } known ? known.At(stands is null ? 0.5 : stands[sheet]) * fact.PerGramFactor : double.NaN;
            }
        }

        return [.. values.Select(facts => new FactSheet(ingredient, ImmutableCollectionsMarshal.AsImmutableArray(facts)))];
    }

    /// <summary>A sheet whose facts stand where <paramref name="share"/> says, from 0 (low) over one half (typical) to 1 (high).</summary>
    public static FactSheet Drawn(Ingredient ingredient, Func<Fact, double> share)
    {
        var values = ImmutableArray.CreateBuilder<double>(Fact.All.Length);
        foreach (var fact in Fact.All)
        {
            var range = ingredient.RangeOf(fact);
            values.Add(range is { } known ? known.At(share(fact)) * fact.PerGramFactor : double.NaN);
        }

        return new FactSheet(ingredient, values.MoveToImmutable());
    }
}
