using System.CommandLine;
using SwapSolver.Console.Arguments;
using SwapSolver.Console.Asking;
using SwapSolver.Console.Screens;
using SwapSolver.V1;
using Client = SwapSolver.V1.KeyService.KeyServiceClient;

namespace SwapSolver.Console.Verbs;

/// <summary><c>keys</c>: who may do what with the kitchen's records over the network.</summary>
internal static class Keys
{
    private const string Collection = "keys/";

    /// <summary>The verb with its own verbs.</summary>
    public static Command Create(Errand errand) =>
        new("keys", "Keys to this kitchen, for those who ask its service over the network.") { Make(errand), List(errand), Revoke(errand) };

    private static VerbCommand Make(Errand errand)
    {
        var role = new Argument<Key.Types.Role>("ROLE")
        {
            Description = "What the key may do: reader, editor or owner.",
            CustomParser = result => OptionText.Each(result, "ROLE", text => EnumWord.Read<Key.Types.Role>(KeyServiceReflection.Descriptor.MessageTypes[0].EnumTypes[0], text)).FirstOrDefault(),
        };
        var whose = new Argument<string>("WHOSE") { Description = "Whose key it is, as the bench tablet." };
        var verb = new VerbCommand("create", "Makes a key and shows it this once.", "swapsolver keys create reader \"bench tablet\"") { role, whose };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<CreateKeyResponse>(
                _ => Task.FromResult<Checked<ServiceCall<CreateKeyResponse>>>(Ask(new CreateKeyRequest { Role = parse.GetValue(role), DisplayName = parse.GetRequiredValue(whose) })),
                ShowNew,
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static VerbCommand List(Errand errand)
    {
        var verb = new VerbCommand("list", "The keys, without their secrets.", "swapsolver keys list");
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<ListKeysResponse>(
                _ => Task.FromResult<Checked<ServiceCall<ListKeysResponse>>>(AskForAll()), ShowAll, _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static VerbCommand Revoke(Errand errand)
    {
        var id = new Argument<string>("ID") { Description = "Id of the key, as keys list shows it." };
        var verb = new VerbCommand("revoke", "Takes a key back: from now on it opens nothing.", "swapsolver keys revoke 0a1b2c3d4e") { id };
        verb.SetAction((parse, cancel) => errand.RunAsync(
            parse,
            new Question<Key>(
                _ => Task.FromResult<Checked<ServiceCall<Key>>>(Ask(new RevokeKeyRequest { Name = parse.GetRequiredValue(id) is var text && text.StartsWith(Collection, StringComparison.Ordinal) ? text : Collection + text })),
                (screen, key) => screen.Sentence($"The key of {key.DisplayName} opens nothing any more."),
                _ => ExitCode.Answer),
            cancel));
        return verb;
    }

    private static ServiceCall<CreateKeyResponse> Ask(CreateKeyRequest request) => async (service, options) => await new Client(service).CreateKeyAsync(request, options);

    private static ServiceCall<Key> Ask(RevokeKeyRequest request) => async (service, options) => await new Client(service).RevokeKeyAsync(request, options);

    private static ServiceCall<ListKeysResponse> AskForAll() => (service, options) => AllPages.OfAsync(
        token => new Client(service).ListKeysAsync(new ListKeysRequest { PageSize = AllPages.Size, PageToken = token }, options));

    private static void ShowNew(Screen screen, CreateKeyResponse response)
    {
        screen.Sentence($"A key for {response.Key.DisplayName} ({Word(response.Key)}):");
        screen.Verbatim(response.Secret + Environment.NewLine);
        screen.Warning("It is shown this once, and only a hash of it is kept. Whoever has it may do what its role may.");
    }

    private static void ShowAll(Screen screen, ListKeysResponse response)
    {
        if (response.Keys.Count == 0)
        {
            screen.Sentence("No key was made. Your own records need none; who asks a service over the network does.");
            return;
        }

        var table = new PlainTable().Marks("id").Words("whose").Marks("role").Marks("made").Marks("taken back");
        foreach (var key in response.Keys)
        {
            table.Row(key.Name[Collection.Length..], key.DisplayName, Word(key), MomentText.Of(key.CreateTime), MomentText.Of(key.RevokeTime));
        }

        screen.Table(table);
    }

    private static string Word(Key key) => key.Role.ToString().ToLowerInvariant();
}
