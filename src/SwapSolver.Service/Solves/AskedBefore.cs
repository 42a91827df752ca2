using System.Buffers;
using System.Buffers.Binary;
using System.Diagnostics;
using Google.Protobuf;
using Grpc.Core;
using Microsoft.Extensions.Caching.Memory;
using SwapSolver.Records;
using SwapSolver.Service.Access;
using SwapSolver.Service.Limits;
using SwapSolver.Service.Watching;

namespace SwapSolver.Service.Solves;

/// <summary>Gives an answer again, as it went over the wire, to who asks in the very same bytes while nothing was written down since:
/// neither question nor answer is read. What it does not know, or may not give, goes on to the methods, which say so.</summary>
/// <param name="kept">What is kept, with the answers that <see cref="AnswerCache"/> keeps and within the same bounds.</param>
/// <param name="records">What the kitchen wrote down.</param>
/// <param name="access">What a caller may do.</param>
/// <param name="callers">How often a caller may ask.</param>
/// <param name="meter">Counts what is given.</param>
internal sealed class AskedBefore(IMemoryCache kept, KitchenRecords records, AccessInterceptor access, CallerLimits callers, CallMeter meter)
{
    /// <summary>What an entry takes beside its answer [bytes].</summary>
    private const int EntryBytes = 512;

    /// <summary>A caller that says no more once its question is there is waited for no longer.</summary>
    private static readonly TimeSpan UntilItsEnd = TimeSpan.FromSeconds(1);

    private static readonly object Slot = new();

    /// <summary>Answers a call, or passes it on.</summary>
    /// <param name="context">The call.</param>
    /// <param name="next">What comes after.</param>
    public async Task Answer(HttpContext context, RequestDelegate next)
    {
        var began = Stopwatch.GetTimestamp();
        if (!PlainCall.Is(context.Request) || QuestionOf(context) is not { } question)
        {
            await next(context);
            return;
        }

        if (!kept.TryGetValue(question, out byte[]? answer) || !callers.TryAdmit(context))
        {
            context.Items[Slot] = question;
            await next(context);
            return;
        }

        var name = Contract.MethodOf(question.Path);
        CallMeter.Question.Value = name;
        await ReadToItsEnd(context);
        context.Response.ContentType = PlainCall.ContentType;
        // Not sent off yet: headers, answer and end leave together.
        context.Response.BodyWriter.Write(answer);
        context.Response.AppendTrailer("grpc-status", "0");
        meter.Answered(kept: true, unread: true);
        meter.Ended(name, nameof(StatusCode.OK), Stopwatch.GetElapsedTime(began));
    }

    /// <summary>Keeps an answer for who asks in the same bytes again.</summary>
    /// <param name="http">The call.</param>
    /// <param name="question">Its question, as it was read; a question that was asked on behalf of another is none of the wire.</param>
    /// <param name="answer">The answer that goes out.</param>
    public static void Keep(HttpContext http, IMessage question, IMessage answer)
    {
        if (http.Items.TryGetValue(Slot, out var asked) && asked is Question { Path: var path } && Contract.MethodOf(path) == NameOf(question)
            && answer.CalculateSize() is <= PlainCall.MostBytes and var size)
        {
            var framed = new byte[PlainCall.PrefixBytes + size];
            BinaryPrimitives.WriteInt32BigEndian(framed.AsSpan(1), size);
            answer.WriteTo(framed.AsSpan(PlainCall.PrefixBytes));
            http.RequestServices.GetRequiredService<IMemoryCache>().Set(asked, framed, new MemoryCacheEntryOptions { Size = framed.Length + EntryBytes });
        }
    }

    /// <summary>Nothing of a call is kept: a part of its answer could be better another time.</summary>
    /// <param name="http">The call.</param>
    public static void KeepNothing(HttpContext http) => http.Items.Remove(Slot);

    /// <summary>The method that a request is of: by the contract's own rule it is named for it.</summary>
    private static string NameOf(IMessage question) => question.Descriptor.Name[..^"Request".Length];

    /// <summary>What is asked, where all of it is there and its caller may ask it; else null. Nothing is taken from what came in.</summary>
    private Question? QuestionOf(HttpContext context)
    {
        var path = context.Request.Path.Value ?? string.Empty;
        try
        {
            if (records.Stamp is { } stamp && access.RoleOf(context, stamp) is { } role && role >= MethodRoles.Of(Contract.MethodOf(path))
                && PlainCall.DigestOf(context) is { } digest)
            {
                return new Question(path, role == Role.Anonymous, stamp, digest);
            }
        }
        catch (RecordsFaultException)
        {
            // The method will meet it too, and says it.
        }

        return null;
    }

    /// <summary>Takes what came in, so that the call ends on both sides.</summary>
    private static async Task ReadToItsEnd(HttpContext context)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted);
        var reader = context.Request.BodyReader;
        while (true)
        {
            if (!reader.TryRead(out var read))
            {
                patience.CancelAfter(UntilItsEnd);
                try
                {
                    read = await reader.ReadAsync(patience.Token);
                }
                catch (OperationCanceledException) when (!context.RequestAborted.IsCancellationRequested)
                {
                    return;
                }
            }

            reader.AdvanceTo(read.Buffer.End);
            if (read.IsCompleted)
            {
                return;
            }
        }
    }

    /// <summary>A question in its bytes.</summary>
    /// <param name="Path">The method.</param>
    /// <param name="IsAnonymous">Whether its caller sees only what is published.</param>
    /// <param name="Stamp">State of the kitchen's records.</param>
    /// <param name="Digest">Digest of the bytes, half a SHA-256.</param>
    private sealed record Question(string Path, bool IsAnonymous, long Stamp, UInt128 Digest);
}
