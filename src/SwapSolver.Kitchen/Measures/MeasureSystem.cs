namespace SwapSolver.Kitchen.Measures;

/// <summary>Whose cups and spoons are meant.</summary>
public enum MeasureSystem
{
    /// <summary>US customary: a cup of 236.588 mL.</summary>
    UsCustomary,

    /// <summary>US nutrition labelling: a cup of 240 mL.</summary>
    UsLabelling,

    /// <summary>Metric: a cup of 250 mL, a tablespoon of 15 mL.</summary>
    Metric,

    /// <summary>Australian: a cup of 250 mL, a tablespoon of 20 mL.</summary>
    Australian,

    /// <summary>UK imperial: a pint of 568.261 mL.</summary>
    UkImperial,
}
