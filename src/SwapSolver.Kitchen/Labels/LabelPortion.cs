namespace SwapSolver.Kitchen.Labels;

/// <summary>What the figures of a label are for.</summary>
public enum LabelPortion
{
    /// <summary>A serving of one or more slices.</summary>
    Serving,

    /// <summary>100 g as baked.</summary>
    HundredGrams,
}
