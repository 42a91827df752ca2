using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Solving.Answers;

/// <summary>The value of one balance for one formula.</summary>
/// <param name="Balance">The balance.</param>
/// <param name="Value">Value with the typical facts.</param>
/// <param name="Low">Low end over the ranges of the facts.</param>
/// <param name="High">High end over the ranges of the facts.</param>
/// <param name="Band">The band that it is judged by.</param>
public sealed record Reading(Balance Balance, Level Value, Level Low, Level High, Band Band)
{
    /// <summary>Where the value stands against the band.</summary>
    public Standing Standing => Band.Of(Value);

    /// <summary>What a baker would notice; empty where the reading is inside.</summary>
    public string Meaning => Standing switch
    {
        Standing.Below => Balance.Settings.BelowMeans,
        Standing.Above => Balance.Settings.AboveMeans,
        _ => string.Empty,
    };
}

/// <summary>One line that differs from the reference.</summary>
/// <param name="Ingredient">What it is of.</param>
/// <param name="Before">Grams in the reference as the caller gave it.</param>
/// <param name="After">Grams in the answer.</param>
/// <param name="BeforeCount">Count before; null where it was weighed.</param>
/// <param name="AfterCount">Count after; null where it is weighed.</param>
/// <param name="Reason">Why, in plain words.</param>
public sealed record Change(
    Ingredient Ingredient, Grams Before, Grams After, double? BeforeCount, double? AfterCount, string Reason);

/// <summary>A formula that meets every wish, with what there is to say of it.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Readings">Its readings.</param>
/// <param name="Changes">What differs from the reference.</param>
/// <param name="Cautions">Cautions that go with it.</param>
/// <param name="ChanceOfBalance">Share of sampled facts in which every band holds, 0 to 1.</param>
/// <param name="Binding">Ids of balances that lie at an end of their band.</param>
/// <param name="Notes">How it was found, where a baker should know.</param>
/// <param name="IsBestSoFar">Whether the time ran out before it was proven best.</param>
public sealed record Answer(
    Formula Formula,
    ImmutableArray<Reading> Readings,
    ImmutableArray<Change> Changes,
    ImmutableArray<string> Cautions,
    double ChanceOfBalance,
    ImmutableArray<string> Binding,
    ImmutableArray<string> Notes,
    bool IsBestSoFar);

/// <summary>One of the wishes that fight each other.</summary>
/// <param name="Wish">Id of the wish.</param>
/// <param name="RelaxedValue">Reading that would do if only this wish gave way; null where none does.</param>
/// <param name="Words">The same in plain words.</param>
public sealed record Conflict(string Wish, Level? RelaxedValue, string Words);

/// <summary>What came of a question.</summary>
/// <param name="Answers">Formulas, best first; empty where there is none.</param>
/// <param name="Conflict">Where there is none: the wishes that fight each other.</param>
/// <param name="Nearest">Where there is none: the formula that misses the wishes by least; null where not found.</param>
/// <param name="EndedEarly">Whether the time ran out before everything was tried.</param>
public sealed record Outcomes(
    ImmutableArray<Answer> Answers, ImmutableArray<Conflict> Conflict, Answer? Nearest, bool EndedEarly)
{
    /// <summary>Whether the time ran out with nothing found: neither an answer nor a proven 'no'.</summary>
    public bool RanOutOfTime => EndedEarly && Answers.IsEmpty && Conflict.IsEmpty && Nearest is null;

    /// <summary>Time ran out with nothing found.</summary>
    public static readonly Outcomes OutOfTime = new([], [], null, true);
}
