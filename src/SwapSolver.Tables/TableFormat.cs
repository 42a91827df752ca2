namespace SwapSolver.Tables;

/// <summary>How a table of foods is written.</summary>
public enum TableFormat
{
    /// <summary>The abbreviated file of the USDA Standard Reference, releases 26 to 28: one food a line, 53 fields between
    /// carets, text between tildes, no header.</summary>
    UsdaAbbreviated,

    /// <summary>Plain CSV with a header: one food a row.</summary>
    Foods,

    /// <summary>Plain CSV with a header: what spoons and cups of a food weigh, one measure a row.</summary>
    HouseholdWeights,
}
