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
