using Google.Rpc;
using Grpc.Core;
using SwapSolver.Records;
using SwapSolver.Records.Keys;
using SwapSolver.Service.Access;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Stored;
using SwapSolver.Service.Translation;
using SwapSolver.V1;
using Reason = SwapSolver.V1.CallFault.Types.Reason;
using Role = SwapSolver.Service.Access.Role;

namespace SwapSolver.Service.Services;

/// <summary>Keeps the keys to this kitchen.</summary>
internal sealed class KeyService(KitchenRecords records, TimeProvider clock) : V1.KeyService.KeyServiceBase
{
    private const string Keys = "keys/";

    private const int MostLetters = 100;

    /// <inheritdoc/>
    public override async Task<CreateKeyResponse> CreateKey(CreateKeyRequest request, ServerCallContext context)
    {
        var problems = new ProblemList();
        if (string.IsNullOrWhiteSpace(request.DisplayName) || request.DisplayName.Length > MostLetters || request.DisplayName.Contains('\0', StringComparison.Ordinal))
        {
            problems.Add("displayName", request.DisplayName, "does not say whose key it is", $"give 1 to {MostLetters} letters, as the name of an oven or a tablet");
        }

        var role = request.Role switch { Key.Types.Role.Reader => Role.Reader, Key.Types.Role.Editor => Role.Editor, Key.Types.Role.Owner => Role.Owner, _ => Role.Anonymous };
        if (role == Role.Anonymous)
        {
            problems.Add("role", request.Role.ToString(), "is no role of a key", "give READER, EDITOR or OWNER");
        }

        problems.ThrowIfAny();
        var (kept, text) = ApiKey.Make(request.DisplayName.Trim(), role, Moment.Write(clock.GetUtcNow()));
        await records.Keys.CreateAsync(kept);
        return new CreateKeyResponse { Key = Write(kept), Secret = text };
    }

    /// <inheritdoc/>
    public override Task<ListKeysResponse> ListKeys(ListKeysRequest request, ServerCallContext context)
    {
        var (keys, next) = new PageReader("keys", new ProblemList()).Of([.. records.Keys.List()], request.PageSize, request.PageToken, key => key.Id);
        var response = new ListKeysResponse { NextPageToken = next };
        response.Keys.AddRange(keys.Select(Write));
        return Task.FromResult(response);
    }

    /// <inheritdoc/>
    public override async Task<Key> RevokeKey(RevokeKeyRequest request, ServerCallContext context)
    {
        var id = request.Name.StartsWith(Keys, StringComparison.Ordinal) ? request.Name[Keys.Length..] : request.Name;
        return Write(await records.Keys.RevokeAsync(id, Moment.Write(clock.GetUtcNow()))
            ?? throw RichFault.Of(Code.NotFound, $"'{request.Name}' is no key of this kitchen; see them with ListKeys (keys list)", RichFault.Info(Reason.NotFound, ("name", request.Name))));
    }

    private static Key Write(StoredKey key) => new()
    {
        Name = Keys + key.Id,
        DisplayName = key.DisplayName,
        Role = Enum.Parse<Role>(key.Role) switch { Role.Reader => Key.Types.Role.Reader, Role.Editor => Key.Types.Role.Editor, _ => Key.Types.Role.Owner },
        CreateTime = Moment.Read(key.Created),
        RevokeTime = Moment.Read(key.Revoked),
    };
}
