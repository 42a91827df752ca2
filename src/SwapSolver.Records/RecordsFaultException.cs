namespace SwapSolver.Records;

/// <summary>The kitchen's records cannot be read or written.</summary>
public sealed class RecordsFaultException : Exception
{
    /// <summary>Whether what was to be written contradicts itself or what is there, so that another try ends the same.</summary>
    public bool IsContradiction { get; init; }

    /// <summary>Says what happened.</summary>
    /// <param name="message">What, where, and the way out.</param>
    /// <param name="inner">What the storage said.</param>
    public RecordsFaultException(string message, Exception? inner = null)
        : base(message, inner)
    {
    }
}
