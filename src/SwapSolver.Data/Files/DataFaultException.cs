namespace SwapSolver.Data.Files;

/// <summary>A data file cannot be believed. The start stops here: a wrong fact would make wrong answers.</summary>
public sealed class DataFaultException : Exception
{
    /// <summary>Makes the fault.</summary>
    /// <param name="file">File, as it lies below the data folder.</param>
    /// <param name="line">Line, counted from 1.</param>
    /// <param name="column">Column in characters, counted from 1.</param>
    /// <param name="excerpt">The line itself.</param>
    /// <param name="reason">What is wrong with which value, and the way out.</param>
    public DataFaultException(string file, int line, int column, string excerpt, string reason)
        : base($"{file}, line {line}, column {column}: {reason}{Environment.NewLine}  {excerpt}{Environment.NewLine}  {new string(' ', Math.Max(0, column - 1))}^")
    {
        File = file;
        Line = line;
        Column = column;
    }

    /// <summary>File, as it lies below the data folder.</summary>
    public string File { get; }

    /// <summary>Line, counted from 1.</summary>
    public int Line { get; }

    /// <summary>Column in characters, counted from 1.</summary>
    public int Column { get; }
}
