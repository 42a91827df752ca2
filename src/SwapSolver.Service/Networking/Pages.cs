using System.Security.Cryptography;
using Microsoft.Net.Http.Headers;

namespace SwapSolver.Service.Networking;

/// <summary>The pages as they were built, from the folder <c>pages</c> beside the program. They are few and small, so all are
/// held in memory, each with its packed forms.</summary>
internal static class Pages
{
    /// <summary>Scripts, styles and pictures of this origin alone, and none written into a page or into its markup by a script.</summary>
    private const string PagePolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; frame-ancestors 'none'; base-uri 'none'; "
        + "form-action 'none'; require-trusted-types-for 'script'; trusted-types 'none'";

    private const string NotBuilt =
        "The pages are not built yet: run 'npm ci' and 'npm run build' in clients/web, then build the service again.\n";

    /// <summary>Where a page stands, by its file.</summary>
    private static readonly Dictionary<string, string> Places = new(StringComparer.Ordinal) { ["index.html"] = "/", ["kitchen.html"] = "/kitchen" };

    /// <summary>How a kind of file is told to a browser; no other is served.</summary>
    private static readonly Dictionary<string, string> Kinds = new(StringComparer.Ordinal)
    {
        [".html"] = "text/html; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".svg"] = "image/svg+xml",
    };

    /// <summary>Serves every file of the folder; where there is none, says how the pages are built.</summary>
    /// <param name="app">The service.</param>
    /// <param name="folder">The folder.</param>
    public static void Map(IEndpointRouteBuilder app, string folder)
    {
        var files = Read(folder).ToList();
        foreach (var file in files)
        {
            app.MapMethods(file.Path, [HttpMethods.Get, HttpMethods.Head], context => Send(context, file));
        }

        foreach (var place in Places.Values.Except(files.Select(file => file.Path)))
        {
            app.MapGet(place, () => Results.Text(NotBuilt, statusCode: StatusCodes.Status503ServiceUnavailable));
        }
    }

    private static IEnumerable<PageFile> Read(string folder)
    {
        if (!Directory.Exists(folder))
        {
            return [];
        }

        return
            from path in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            where Kinds.ContainsKey(Path.GetExtension(path))
            let below = Path.GetRelativePath(folder, path).Replace('\\', '/')
            let bytes = File.ReadAllBytes(path)
            select new PageFile(
                Places.GetValueOrDefault(below, $"/{below}"),
                Kinds[Path.GetExtension(path)],
                // When it is first asked for: the library that makes it is not small, and a service that nobody looks at needs none.
                new Lazy<EntityTagHeaderValue>(() => new($"\"{Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, 16))}\"")),
                new Dictionary<string, byte[]>(StringComparer.Ordinal) { [string.Empty] = bytes }
                    .Concat(Packed(path, "br", ".br")).Concat(Packed(path, "gzip", ".gz"))
                    .ToDictionary(pair => pair.Key, pair => pair.Value, StringComparer.Ordinal));
    }

    private static Dictionary<string, byte[]> Packed(string path, string coding, string ending) =>
        File.Exists(path + ending) ? new() { [coding] = File.ReadAllBytes(path + ending) } : [];

    private static Task Send(HttpContext context, PageFile file)
    {
        var taken = context.Request.GetTypedHeaders().AcceptEncoding.Where(coding => coding.Quality != 0).Select(coding => coding.Value.ToString()).ToList();
        var coding = new[] { "br", "gzip" }.FirstOrDefault(coding => taken.Contains(coding) && file.ByCoding.ContainsKey(coding), string.Empty);
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = PagePolicy;
        headers.Vary = HeaderNames.AcceptEncoding;
        // A name holds the hash of what is in it, but for the pages themselves: those are asked for anew each time.
        headers.CacheControl = Places.ContainsValue(file.Path) ? "no-cache" : "public, max-age=31536000, immutable";
        if (coding.Length > 0)
        {
            headers.ContentEncoding = coding;
        }

        return Results.Bytes(file.ByCoding[coding], file.Kind, entityTag: file.Tag.Value).ExecuteAsync(context);
    }

    /// <summary>One file.</summary>
    /// <param name="Path">Where it stands.</param>
    /// <param name="Kind">Its kind, as a browser is told.</param>
    /// <param name="Tag">A tag of what is in it.</param>
    /// <param name="ByCoding">Its bytes by how they are packed; not packed under the empty name.</param>
    private sealed record PageFile(string Path, string Kind, Lazy<EntityTagHeaderValue> Tag, Dictionary<string, byte[]> ByCoding);
}
