using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Measures;

/// <summary>Everything that is known of measures.</summary>
/// <param name="Volumes">Units of volume.</param>
/// <param name="Masses">Units of mass.</param>
/// <param name="Pieces">Pieces as they are sold or taken.</param>
/// <param name="Fillings">How measures are filled.</param>
/// <param name="Eggs">Classes of eggs.</param>
/// <param name="Words">The words around measures.</param>
/// <param name="Names">The names of ingredients.</param>
public sealed record MeasureTables(
    ImmutableArray<VolumeUnit> Volumes,
    ImmutableArray<MassUnit> Masses,
    ImmutableArray<PieceUnit> Pieces,
    Fillings Fillings,
    EggClasses Eggs,
    MeasureWords Words,
    IngredientNames Names)
{
    /// <summary>Every unit.</summary>
    public IEnumerable<Unit> Units => [.. Volumes, .. Masses, .. Pieces];
}

/// <summary>The words around measures.</summary>
/// <param name="Systems">Words that say whose measure is meant.</param>
/// <param name="Numbers">Words that are numbers.</param>
/// <param name="Foreign">Words of measures in languages that are not read, each with the language.</param>
public sealed record MeasureWords(
    ImmutableDictionary<string, MeasureSystem> Systems,
    ImmutableDictionary<string, Quantities.Amount> Numbers,
    ImmutableDictionary<string, string> Foreign);
