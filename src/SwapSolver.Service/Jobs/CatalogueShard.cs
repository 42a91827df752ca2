using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using SwapSolver.Records.Jobs;

namespace SwapSolver.Service.Jobs;

/// <summary>Some items of one formula.</summary>
/// <param name="Formula">Resource name of the formula, or of the revision that is meant.</param>
/// <param name="Items">The items as text.</param>
internal sealed record CatalogueShard(string Formula, ImmutableArray<string> Items)
{
    /// <summary>So many are taken at once by one process: some seconds of solving.</summary>
    private const int MostItems = 50;

    /// <summary>The items of a formula, cut into shards.</summary>
    public static IEnumerable<NewShard> Cut(string formula, IEnumerable<CatalogueItem> items) => items
        .Chunk(MostItems)
        .Select(some => new NewShard(JsonSerializer.Serialize(new CatalogueShard(formula, [.. some.Select(item => item.Write())]), CatalogueShardContext.Default.CatalogueShard), some.Length));

    /// <summary>A shard as the records hold it.</summary>
    public static CatalogueShard Read(string document) => JsonSerializer.Deserialize(document, CatalogueShardContext.Default.CatalogueShard)!;
}

/// <summary>Read and written by code that is made when this is built: what is compiled ahead of time can make none.</summary>
[JsonSerializable(typeof(CatalogueShard))]
internal sealed partial class CatalogueShardContext : JsonSerializerContext;
