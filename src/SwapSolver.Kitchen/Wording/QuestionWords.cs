using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Wording;

/// <summary>The words and patterns that readers' questions are read by, from <c>data/wording/questions/</c>.</summary>
/// <param name="Words">Phrases, each with its class and what it stands for in it, as <c>leave out</c> of the class <c>out</c>.</param>
/// <param name="Patterns">Clauses, in the order in which they are preferred where two read as much.</param>
/// <param name="TooPlain">Words of ingredients' names that say nothing by themselves, as <c>ground</c>.</param>
/// <param name="LeftOut">Words, each with the group or allergen that is meant where something is to be left out.</param>
/// <param name="ShortNames">Words that stand for several things, each with the id of the one that is meant where it does the same as what goes out.</param>
/// <param name="SoldInParts">Allergens whose foods are sold in parts, as egg white: an allergy to a part is read as one to the whole.</param>
/// <param name="PartOf">Ids of ingredients, each with the id of the one that it is a part of.</param>
/// <param name="OwnWords">Names of kinds of things, each with the word that the one line meant by it bears.</param>
/// <param name="Tins">Tins that are named by the loaf that they hold.</param>
public sealed record QuestionWords(
    ImmutableArray<QuestionWord> Words,
    ImmutableArray<QuestionPattern> Patterns,
    ImmutableHashSet<string> TooPlain,
    ImmutableDictionary<string, string> LeftOut,
    ImmutableDictionary<string, string> ShortNames,
    ImmutableArray<string> SoldInParts,
    ImmutableDictionary<string, string> PartOf,
    ImmutableDictionary<string, string> OwnWords,
    ImmutableArray<LoafTin> Tins);

/// <summary>A phrase of a question.</summary>
/// <param name="Phrase">The phrase.</param>
/// <param name="Class">What it does in a question, as <c>out</c> or <c>reading</c>.</param>
/// <param name="Means">What it stands for in its class, as <c>net-carbohydrate</c> or <c>2</c>; empty where the class says all.</param>
public sealed record QuestionWord(string Phrase, string Class, string Means);

/// <summary>A clause that a question may hold.</summary>
/// <param name="Says">Its parts in order: classes of words and places for what is asked about, as <c>{out} {without}</c>.</param>
/// <param name="Means">What the clause means, as <c>WITHOUT</c>.</param>
public sealed record QuestionPattern(ImmutableArray<string> Says, string Means);

/// <summary>A tin that is named by the loaf that it holds.</summary>
/// <param name="Loaf">Mass of that loaf.</param>
/// <param name="Tin">The tin.</param>
public sealed record LoafTin(Grams Loaf, Tin Tin);
