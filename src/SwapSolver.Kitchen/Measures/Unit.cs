using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Measures;

/// <summary>A unit that cooks write, with every way to write it.</summary>
/// <param name="Id">Its plain name, as <c>tablespoon</c>.</param>
/// <param name="Names">Every way to write it. One of a single letter, or with a capital, is read as it stands.</param>
public abstract record Unit(string Id, ImmutableArray<string> Names);

/// <summary>A unit of volume.</summary>
/// <param name="Id">Its plain name.</param>
/// <param name="Names">Every way to write it.</param>
/// <param name="Sizes">How large it is, by system; a null system holds in all.</param>
public sealed record VolumeUnit(string Id, ImmutableArray<string> Names, ImmutableArray<VolumeSize> Sizes) : Unit(Id, Names)
{
    /// <summary>Whether its size hangs on the system.</summary>
    public bool DiffersBySystem => Sizes.Any(size => size.System is not null);

    /// <summary>Its size where all systems that have it agree [mL]; null where they do not.</summary>
    public Millilitres? OnlySize => Sizes.Select(size => size.Each).Distinct().Take(2).ToList() is [var only] ? only : null;

    /// <summary>Its size in a system [mL]; null where the system has no such unit.</summary>
    public Millilitres? In(MeasureSystem system) =>
        (Sizes.FirstOrDefault(size => size.System == system) ?? Sizes.FirstOrDefault(size => size.System is null))?.Each;
}

/// <summary>The size of a unit of volume.</summary>
/// <param name="System">The system; null for all.</param>
/// <param name="Each">Its volume [mL].</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record VolumeSize(MeasureSystem? System, Millilitres Each, string Source, Mark Mark);

/// <summary>A unit of mass.</summary>
/// <param name="Id">Its plain name.</param>
/// <param name="Names">Every way to write it.</param>
/// <param name="Sizes">How heavy it is, by system; a null system holds in all.</param>
public sealed record MassUnit(string Id, ImmutableArray<string> Names, ImmutableArray<MassSize> Sizes) : Unit(Id, Names)
{
    /// <summary>Its mass in a system [g].</summary>
    public Grams In(MeasureSystem system) =>
        (Sizes.FirstOrDefault(size => size.System == system) ?? Sizes.First(size => size.System is null)).Each;
}

/// <summary>The size of a unit of mass.</summary>
/// <param name="System">The system; null for all.</param>
/// <param name="Each">Its mass [g].</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record MassSize(MeasureSystem? System, Grams Each, string Source, Mark Mark);

/// <summary>A piece as it is sold or taken: a stick, a packet, a pinch.</summary>
/// <param name="Id">Its plain name.</param>
/// <param name="Names">Every way to write it.</param>
/// <param name="Of">What it weighs, by ingredient.</param>
/// <param name="Volume">How much it holds of any ingredient [mL], low, typical and high; null where that says nothing.</param>
/// <param name="IsContainer">Whether it is a packet whose weight stands on it, as a tin or a bag.</param>
public sealed record PieceUnit(
    string Id, ImmutableArray<string> Names, ImmutableArray<PieceWeight> Of, PieceVolume? Volume, bool IsContainer) : Unit(Id, Names);

/// <summary>What a piece of one ingredient weighs.</summary>
/// <param name="IngredientId">The ingredient.</param>
/// <param name="Each">Its mass [g].</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record PieceWeight(string IngredientId, GramRange Each, string Source, Mark Mark)
{
    /// <summary>What a small or a large one weighs [g], by the word for its size.</summary>
    public ImmutableDictionary<string, Grams> Sizes { get; init; } = ImmutableDictionary<string, Grams>.Empty;

    /// <summary>The mass of one, of the size that words say [g]; of the usual size where they say none.</summary>
    /// <param name="words">Words beside the amount, in small letters.</param>
    public GramRange EachOf(ImmutableArray<string> words) => words.FirstOrDefault(Sizes.ContainsKey) is { } size
        ? Each * Amount.Of(Sizes[size].Value / Each.Typical.Value)
        : Each;
}

/// <summary>What a pinch or a dash holds.</summary>
/// <param name="Low">Low end [mL].</param>
/// <param name="Typical">Typical [mL].</param>
/// <param name="High">High end [mL].</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record PieceVolume(Millilitres Low, Millilitres Typical, Millilitres High, string Source, Mark Mark);
