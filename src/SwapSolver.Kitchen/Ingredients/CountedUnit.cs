using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Ingredients;

/// <summary>The size of a shell egg.</summary>
public enum EggSize
{
    /// <summary>US small.</summary>
    SmallUs,

    /// <summary>US medium.</summary>
    MediumUs,

    /// <summary>US large.</summary>
    LargeUs,

    /// <summary>US extra large.</summary>
    ExtraLargeUs,

    /// <summary>US jumbo.</summary>
    JumboUs,

    /// <summary>EU class S.</summary>
    SmallEu,

    /// <summary>EU class M.</summary>
    MediumEu,

    /// <summary>EU class L.</summary>
    LargeEu,

    /// <summary>EU class XL.</summary>
    ExtraLargeEu,
}

/// <summary>What one piece of a counted ingredient weighs without its shell.</summary>
/// <param name="Size">The size of the egg that it is of.</param>
/// <param name="Grams">Edible mass of one [g].</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Mark">How it is known.</param>
public sealed record CountedUnit(EggSize Size, Grams Grams, string Source, Mark Mark);
