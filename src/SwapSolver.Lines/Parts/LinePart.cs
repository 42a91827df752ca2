using System.Collections.Immutable;
using SwapSolver.Kitchen.Measures;
using SwapSolver.Lines.Text;

namespace SwapSolver.Lines.Parts;

/// <summary>A measure as it stands in a line.</summary>
/// <param name="Measured">The measure.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Thousands">Whether its number can be thousands or decimals.</param>
/// <param name="IsEach">Whether it is the weight of each of several.</param>
internal sealed record Found(Measured Measured, Place Place, ThousandsSign Thousands, bool IsEach);

/// <summary>Where a measure stands.</summary>
internal enum Place
{
    /// <summary>Before or behind the name.</summary>
    Plain,

    /// <summary>Right behind another measure, as the ounces of pounds and ounces.</summary>
    Joined,

    /// <summary>Behind a slash or 'or': the same amount in another unit.</summary>
    Again,

    /// <summary>Behind a minus: taken away from the measure before it.</summary>
    Less,

    /// <summary>In brackets.</summary>
    Bracket,

    /// <summary>In a note behind a comma.</summary>
    Note,
}

/// <summary>One part of a line, its words sorted.</summary>
/// <param name="Measures">The measures in order.</param>
/// <param name="Name">The words of the name, as written.</param>
/// <param name="Notes">The words of notes and brackets, as written.</param>
/// <param name="Words">All words that are no unit, in small letters.</param>
internal sealed record LinePart(
    ImmutableArray<Found> Measures, ImmutableArray<string> Name, ImmutableArray<string> Notes, ImmutableArray<string> Words)
{
    /// <summary>The words behind a further amount in a note, as written: they can name another ingredient.</summary>
    public ImmutableArray<string> Beside { get; init; } = [];

    /// <summary>What a bracket or note names besides, and is not counted: another choice, or more of it.</summary>
    public ImmutableArray<string> NotCounted { get; init; } = [];
}
