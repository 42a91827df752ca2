using System.Collections.Immutable;
using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Kitchen.Nutrition;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Cards;

/// <summary>Everything that stands on a card, as figures and sentences; how it looks is for the printers.</summary>
/// <param name="Formula">The formula.</param>
/// <param name="Lines">Its lines, in order.</param>
/// <param name="Bake">The forecast of its bake; null where it states no oven or cannot be told.</param>
/// <param name="Rise">The forecast of its rise; null where it cannot be told.</param>
/// <param name="Label">Its label.</param>
/// <param name="Loaf">What is in the whole loaf, not rounded.</param>
/// <param name="NetCarbohydrate">How net carbohydrate is counted.</param>
/// <param name="Statements">What may be said of allergens and gluten.</param>
/// <param name="Cautions">Cautions.</param>
/// <param name="Readings">Its readings against their bands; empty where no picture is asked for.</param>
/// <param name="Version">The baker's word for this version, or a fingerprint of the formula.</param>
/// <param name="IsFingerprint">Whether the version is a fingerprint.</param>
/// <param name="ShowsMeasures">Whether household measures were asked for.</param>
/// <param name="Locale">How numbers and temperatures are written.</param>
public sealed record Card(
    Formula Formula,
    ImmutableArray<CardLine> Lines,
    BakeForecast? Bake,
    RiseForecast? Rise,
    LabelSheet Label,
    Portion Loaf,
    NetCarbohydrate NetCarbohydrate,
    ImmutableArray<string> Statements,
    ImmutableArray<string> Cautions,
    ImmutableArray<Reading> Readings,
    string Version,
    bool IsFingerprint,
    bool ShowsMeasures,
    Locale Locale);
