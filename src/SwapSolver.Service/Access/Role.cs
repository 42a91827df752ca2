namespace SwapSolver.Service.Access;

/// <summary>What a caller may do. Each may do what the one before it may.</summary>
internal enum Role
{
    /// <summary>Shows no key: asks questions that are not about the kitchen's own things, and reads what is published.</summary>
    Anonymous,

    /// <summary>Reads everything.</summary>
    Reader,

    /// <summary>Writes formulas, trials and foods.</summary>
    Editor,

    /// <summary>Makes keys, and moves the records as a whole.</summary>
    Owner,
}
