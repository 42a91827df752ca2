using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Measures;

/// <summary>The names that cooks give to the ingredients of the pantry.</summary>
/// <param name="Names">Names, each with the ingredient that it means.</param>
/// <param name="OtherThings">Names that sound like one of ours and mean something else.</param>
/// <param name="Describes">Words that only describe, and may be dropped from a name.</param>
/// <param name="DescribesAssumed">Words that describe and change a little, each with what is taken for granted where it is dropped.</param>
/// <param name="SameWords">Spellings, each with the word that it stands for.</param>
/// <param name="PartsOfEggs">Words that mean a part of an egg beside eggs, as <c>white</c>.</param>
public sealed record IngredientNames(
    ImmutableArray<IngredientName> Names,
    ImmutableArray<OtherThing> OtherThings,
    ImmutableHashSet<string> Describes,
    ImmutableDictionary<string, string> DescribesAssumed,
    ImmutableDictionary<string, string> SameWords,
    ImmutableArray<IngredientName> PartsOfEggs);

/// <summary>One name of an ingredient.</summary>
/// <param name="Name">The name.</param>
/// <param name="IngredientId">The ingredient.</param>
/// <param name="Assumed">What is taken for granted with it; null where nothing is.</param>
/// <param name="Form">The form that it is measured in where a line says none, as <c>whole</c>; empty where the name says nothing.</param>
public sealed record IngredientName(string Name, string IngredientId, string? Assumed, ImmutableArray<string> Form);

/// <summary>A name of something that is not ours.</summary>
/// <param name="Name">The name.</param>
/// <param name="Says">Why it is not taken.</param>
public sealed record OtherThing(string Name, string Says);
