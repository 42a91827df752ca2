using Google.Rpc;
using Grpc.Core;
using SwapSolver.Records;
using SwapSolver.Service.Faults;
using Reason = SwapSolver.V1.CallFault.Types.Reason;

namespace SwapSolver.Service.Access;

/// <summary>Lets a call through where its caller may make it.</summary>
internal sealed class AccessInterceptor(ServiceOptions options, KitchenRecords records) : Gate
{
    private const string Scheme = "Bearer ";

    private static readonly object Slot = new();

    /// <summary>Health and reflection: that the kitchen is open, and what can be asked of it, is no secret.</summary>
    public const string GeneralServices = "/grpc.";

    /// <inheritdoc/>
    protected override void Admit(ServerCallContext context)
    {
        if (context.Method.StartsWith(GeneralServices, StringComparison.Ordinal))
        {
            return;
        }

        var http = context.GetHttpContext();
        var known = KnownOf(http, null);
        var role = known.Role ?? throw Refuse(Code.Unauthenticated, Reason.UnknownKey, "the key is not known, or was taken back; give another, or none for what everybody may ask");
        var method = Contract.MethodOf(context.Method);
        var least = MethodRoles.Of(method);
        if (role < least)
        {
            throw role == Role.Anonymous
                ? Refuse(Code.Unauthenticated, Reason.KeyNeeded, $"{method} needs a key; show one of a kitchen's {Words(least)} in the header 'authorization: Bearer KEY' (console: --key or SWAPSOLVER_KEY). Keys are made on the service's own machine with: keys create")
                : Refuse(Code.PermissionDenied, Reason.RoleTooLow, $"a key of a {Words(role)} may not call {method}; ask a kitchen's {Words(least)}");
        }

        var caller = http.RequestServices.GetRequiredService<Caller>();
        (caller.Role, caller.Stamp) = (role, known.Stamp);
    }

    /// <summary>What a caller may do, looked up once a call; null where its key is not known.</summary>
    /// <param name="http">The call.</param>
    /// <param name="stamp">The stamp of the records that was looked at for this call, where it was.</param>
    public Role? RoleOf(HttpContext http, long? stamp = null) => KnownOf(http, stamp).Role;

    private Known KnownOf(HttpContext http, long? stamp)
    {
        if (http.Items.TryGetValue(Slot, out var before) && before is Known known)
        {
            return known;
        }

        var looked = new Known(Looked(http, stamp), stamp);
        http.Items[Slot] = looked;
        return looked;
    }

    private static RpcException Refuse(Code code, Reason reason, string words) => RichFault.Of(code, words, RichFault.Info(reason));

    private static string Words(Role role) => role.ToString().ToLowerInvariant();

    private Role? Looked(HttpContext http, long? stamp)
    {
        // The private socket belongs to the user who started it, as the records do.
        if (options.EmbeddedSocket is not null)
        {
            return Role.Owner;
        }

        var header = http.Request.Headers.Authorization.ToString();
        if (header.Length == 0)
        {
            return Role.Anonymous;
        }

        var text = header.StartsWith(Scheme, StringComparison.OrdinalIgnoreCase) ? header[Scheme.Length..].Trim() : string.Empty;
        return ApiKey.IdOf(text) is { Length: > 0 } id && records.Keys.Find(id, stamp) is { Revoked: null } key && ApiKey.Matches(key, text)
            ? Enum.Parse<Role>(key.Role)
            : null;
    }

    /// <summary>What was looked up for a call.</summary>
    /// <param name="Role">What its caller may do; null where its key is not known.</param>
    /// <param name="Stamp">The stamp of the records that was looked at; null where it was not.</param>
    private sealed record Known(Role? Role, long? Stamp);
}
