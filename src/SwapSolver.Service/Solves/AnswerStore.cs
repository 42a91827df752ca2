using Microsoft.Extensions.Caching.Memory;

namespace SwapSolver.Service.Solves;

/// <summary>The memory of answers, bounded in bytes; what is too old to be asked for again is pressed out.</summary>
internal sealed class AnswerStore : IDisposable
{
    /// <summary>Most that is kept [bytes].</summary>
    private const long MostBytes = 64 * 1024 * 1024;

    /// <summary>The answers.</summary>
    public MemoryCache Memory { get; } = new(new MemoryCacheOptions { SizeLimit = MostBytes });

    /// <inheritdoc/>
    public void Dispose() => Memory.Dispose();
}
