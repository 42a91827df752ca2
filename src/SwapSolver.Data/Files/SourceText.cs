using System.Text;

namespace SwapSolver.Data.Files;

/// <summary>The bytes of one data file, with the way from a byte to line and column.</summary>
/// <param name="Name">File, as it lies below the data folder.</param>
/// <param name="Bytes">Its UTF-8 bytes, without a byte order mark.</param>
public sealed record SourceText(string Name, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>The fault at a byte of this file.</summary>
    /// <param name="offset">Byte, counted from 0.</param>
    /// <param name="reason">What is wrong with which value, and the way out.</param>
    public DataFaultException Fault(long offset, string reason)
    {
        var bytes = Bytes.Span;
        var end = (int)Math.Min(offset, bytes.Length);
        var before = bytes[..end];
        var line = before.Count((byte)'\n') + 1;
        var start = before.LastIndexOf((byte)'\n') + 1;
        var rest = bytes[start..];
        var length = rest.IndexOf((byte)'\n');
        var excerpt = Encoding.UTF8.GetString(length < 0 ? rest : rest[..length]).TrimEnd('\r');
        var column = Encoding.UTF8.GetCharCount(bytes[start..end]) + 1;
        return new DataFaultException(Name, line, column, excerpt, reason);
    }
}
