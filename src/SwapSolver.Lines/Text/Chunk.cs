using System.Collections.Immutable;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Lines.Text;

/// <summary>A piece of a line.</summary>
internal abstract record Chunk;

/// <summary>A number or a range of numbers.</summary>
/// <param name="Amount">The number; a range may run backwards here.</param>
/// <param name="Thousands">The sign before its last three digits: thousands or decimals.</param>
internal sealed record AmountChunk(Amount Amount, ThousandsSign Thousands) : Chunk;

/// <summary>A word.</summary>
/// <param name="Text">The word as written.</param>
internal sealed record WordChunk(string Text) : Chunk
{
    /// <summary>The word in small letters.</summary>
    public string Lower { get; } = Text.ToLowerInvariant();
}

/// <summary>What stands in brackets.</summary>
/// <param name="Chunks">Its pieces; none of them a bracket.</param>
internal sealed record BracketChunk(ImmutableArray<Chunk> Chunks) : Chunk;

/// <summary>A sign that may mean something.</summary>
/// <param name="Kind">Which.</param>
internal sealed record SignChunk(LineToken Kind) : Chunk;
