using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;

namespace SwapSolver.Asking;

/// <summary>How a question was understood.</summary>
public sealed record Understanding
{
    /// <summary>What is asked for.</summary>
    public QuestionKind Kind { get; init; }

    /// <summary>What is to be left out.</summary>
    public ImmutableArray<LeftOutWish> Without { get; init; } = [];

    /// <summary>A way of eating, as <c>VEGAN</c>; empty where none is asked for.</summary>
    public string Diet { get; init; } = string.Empty;

    /// <summary>Id of what goes out; empty where nothing is named.</summary>
    public string From { get; init; } = string.Empty;

    /// <summary>How much of it goes out [g], where that is not all of it; null where it is, or where nothing is named.</summary>
    public double? FromGrams { get; init; }

    /// <summary>Id of what goes out besides, where one thing comes in the place of two; empty where nothing does.</summary>
    public string AlsoFrom { get; init; } = string.Empty;

    /// <summary>Swaps that are asked about together with the first.</summary>
    public ImmutableArray<AskedSwap> AlsoSwaps { get; init; } = [];

    /// <summary>Id of what comes in; empty where nothing is named.</summary>
    public string To { get; init; } = string.Empty;

    /// <summary>Id of what comes in together with it, as soda and cream of tartar for baking powder; empty where nothing does.</summary>
    public string AlsoTo { get; init; } = string.Empty;

    /// <summary>Slices wanted; null where none are named.</summary>
    public int? Slices { get; init; }

    /// <summary>Mass wanted [g]; null where none is named.</summary>
    public double? MassGrams { get; init; }

    /// <summary>How many times the formula; null where that is not said.</summary>
    public double? Factor { get; init; }

    /// <summary>The tin to fill; null where none is named.</summary>
    public Tin? Tin { get; init; }

    /// <summary>Readings that are to move, and limits on them.</summary>
    public ImmutableArray<AskedTarget> Targets { get; init; } = [];

    /// <summary>The oven [degrees Celsius]; null where it is not named.</summary>
    public double? OvenCelsius { get; init; }

    /// <summary>Whether the fan runs.</summary>
    public bool Fan { get; init; }

    /// <summary>A household measure in words; empty where none is asked about.</summary>
    public string Text { get; init; } = string.Empty;

    /// <summary>What was taken for granted, a sentence each.</summary>
    public ImmutableArray<string> Assumed { get; init; } = [];

    /// <summary>What was not read, and what to do about it; empty where everything was.</summary>
    public string Problem { get; init; } = string.Empty;

    /// <summary>Whether another size is asked for.</summary>
    public bool IsSized => Slices is not null || MassGrams is not null || Factor is not null || Tin is not null;
}

/// <summary>Something to leave out.</summary>
/// <param name="Id">Id of the allergen, group or ingredient.</param>
/// <param name="Word">The word that a variant is asked with: it may leave out more than its id says, as nuts does.</param>
public sealed record LeftOutWish(string Id, string Word);

/// <summary>One thing in another's place.</summary>
/// <param name="From">Id of what goes out.</param>
/// <param name="To">Id of what comes in.</param>
public sealed record AskedSwap(string From, string To);

/// <summary>A reading that is to move, or a word for what the loaf is to become.</summary>
/// <param name="Name">Id of the reading, or the word.</param>
/// <param name="Low">Lowest value wanted, in the reading's unit; null where there is none.</param>
/// <param name="High">Highest value wanted, in the reading's unit; null where there is none.</param>
public sealed record AskedTarget(string Name, double? Low, double? High);
