using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Measures;

/// <summary>Whose weight classes of eggs are meant.</summary>
public enum EggRule
{
    /// <summary>US classes, by the dozen.</summary>
    Us,

    /// <summary>EU and UK classes, by the egg.</summary>
    Eu,
}

/// <summary>A weight class of shell eggs.</summary>
/// <param name="Size">The class.</param>
/// <param name="Rule">Whose class it is.</param>
/// <param name="Names">The words for it.</param>
/// <param name="Low">Least edible part, of the typical [%].</param>
/// <param name="High">Most edible part, of the typical [%].</param>
/// <param name="FromInShell">Least mass with its shell [g], itself within the class.</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record EggClass(
    EggSize Size, EggRule Rule, ImmutableArray<string> Names, Percent Low, Percent High, Grams FromInShell, string Source, Mark Mark)
{
    /// <summary>What one weighs without its shell [g], where the typical one is known.</summary>
    public GramRange Around(Grams typical) => new(typical * Low.Share, typical, typical * High.Share);
}

/// <summary>The classes of eggs.</summary>
/// <param name="All">Every class.</param>
public sealed record EggClasses(ImmutableArray<EggClass> All)
{
    /// <summary>The class of an egg by its mass in the shell; null for one that is lighter than the smallest class.</summary>
    public EggClass? Of(Grams inShell, EggRule rule) => All
        .Where(one => one.Rule == rule && one.FromInShell <= inShell)
        .MaxBy(one => one.FromInShell);

    /// <summary>The class that a size stands for.</summary>
    public EggClass Of(EggSize size) => All.First(one => one.Size == size);
}
