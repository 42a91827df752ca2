using SwapSolver.House.Tests.Built;

namespace SwapSolver.House.Tests;

/// <summary>Within a room, too, what knows of what goes one way: no two folders know of each other, directly or by way of others.</summary>
public sealed class CycleTests
{
    private const string Service = "SwapSolver.Service";

    /// <summary>Arrows of the service that run back, and why they are left. One that is gone goes from here too.</summary>
    private static readonly Dictionary<(string From, string To), string> RunBack = new()
    {
        [("Desk", "Services")] = "a reader's question is answered by the very methods that others call, and is itself asked through one",
        [("Translation", "Stored")] = "the subject of a question is a formula in the message or a stored one, and the reader of messages fetches it",
        [("Translation", "Learned")] = "what was learned is told in the contract's words where all else is",
        [("Records", "Learned")] = "what the kitchen's shelf shows of a bag holds what trials taught of its water",
    };

    public static TheoryData<string> Rooms => [.. BuiltRooms.Names];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void The_folders_of_a_room_know_of_each_other_one_way_only(string room)
    {
        var folders = FoldersOf(room);
        var arrows = TypeUses.Of(BuiltRooms.Load(room))
            .Select(use => (From: FolderOf(use.User)!, To: FolderOf(use.Used)!, Why: $"{use.User.Name} uses {use.Used.Name}"))
            .Where(arrow => arrow.From is not null && arrow.To is not null && arrow.From != arrow.To)
            .GroupBy(arrow => (arrow.From, arrow.To))
            .ToDictionary(group => group.Key, group => string.Join(", ", group.Select(arrow => arrow.Why).Order(StringComparer.Ordinal).Take(6)));
        Assert.All(RunBack.Keys.Where(_ => room == Service), arrow => Assert.Contains(arrow, arrows.Keys));
        var loops = Loops(arrows.Keys.Where(arrow => room != Service || !RunBack.ContainsKey(arrow))).ToList();
        var report = string.Join('\n', loops.Select(loop => $"{string.Join(", ", loop)}\n" + string.Join('\n', arrows.Where(arrow => loop.Contains(arrow.Key.From) && loop.Contains(arrow.Key.To)).Select(arrow => $"  {arrow.Key.From} -> {arrow.Key.To}: {arrow.Value}"))));
        Assert.True(loops.Count == 0, report);

        // What the compiler made up has no file.
        string? FolderOf(Type type) => folders[type.Name.Split('`')[0]].OrderByDescending(folder => $"{type.Namespace}".Contains($".{folder}", StringComparison.Ordinal)).FirstOrDefault();
    }

    /// <summary>The first folder below the room in which the file of a type lies, by the type's name. A file at the room's door stands
    /// for itself: what joins the folders and what they all speak of stand side by side there.</summary>
    private static ILookup<string, string> FoldersOf(string room) => SourceTree.Files($"src/{room}", "*.cs")
        .Select(path => path.Split('/'))
        .ToLookup(parts => Path.GetFileNameWithoutExtension(parts[^1]), parts => parts[2]);

    /// <summary>Groups of folders each of which can be reached from each other one.</summary>
    private static IEnumerable<IReadOnlyList<string>> Loops(IEnumerable<(string From, string To)> arrows)
    {
        var next = arrows.ToLookup(arrow => arrow.From, arrow => arrow.To);
        var reached = next.ToDictionary(from => from.Key, from => Reached(next, from.Key));
        return reached.Keys.Where(folder => reached[folder].Contains(folder))
            .GroupBy(folder => string.Join(' ', reached.Keys.Where(other => reached[folder].Contains(other) && reached[other].Contains(folder)).Order(StringComparer.Ordinal)))
            .Select(group => (IReadOnlyList<string>)[.. group.Order(StringComparer.Ordinal)]);
    }

    private static HashSet<string> Reached(ILookup<string, string> next, string start)
    {
        var reached = new HashSet<string>();
        var open = new Stack<string>([start]);
        while (open.TryPop(out var folder))
        {
            foreach (var other in next[folder].Where(reached.Add))
            {
                open.Push(other);
            }
        }

        return reached;
    }
}
