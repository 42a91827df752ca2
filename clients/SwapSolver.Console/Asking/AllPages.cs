using Google.Protobuf;
using Grpc.Core;

namespace SwapSolver.Console.Asking;

/// <summary>A list that comes in pages, as one: neither a script nor a person sees where it was cut.</summary>
internal static class AllPages
{
    /// <summary>Most things on a page that is asked for.</summary>
    public const int Size = 1000;

    private const string Next = "next_page_token";

    /// <summary>Asks page after page.</summary>
    /// <typeparam name="TList">The answer to one page, and to all.</typeparam>
    /// <param name="ask">Asks for the page of a token; the first has none.</param>
    public static async Task<TList> OfAsync<TList>(Func<string, AsyncUnaryCall<TList>> ask)
        where TList : class, IMessage<TList>, new()
    {
        var (all, token) = (new TList(), string.Empty);
        var next = all.Descriptor.FindFieldByName(Next).Accessor;
        do
        {
            var page = await ask(token);
            token = (string)next.GetValue(page);
            all.MergeFrom(page);
        }
        while (token.Length > 0);
        next.Clear(all);
        return all;
    }
}
