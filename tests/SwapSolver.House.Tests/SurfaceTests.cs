using SwapSolver.House.Tests.Built;

namespace SwapSolver.House.Tests;

/// <summary>What a room shows to others is written down and looked at: a change of it is a change of a file, and stands in the review.</summary>
public sealed class SurfaceTests
{
    private const string Folder = "tests/SwapSolver.House.Tests/Surface";

    /// <summary>Set by tests/surface.sh, which writes the files anew.</summary>
    private static readonly bool IsRenewed = Environment.GetEnvironmentVariable("SWAPSOLVER_SURFACE") == "write";

    public static TheoryData<string> Rooms => [.. BuiltRooms.Names];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_shows_what_is_written_down_of_it_and_nothing_else(string room)
    {
        var shown = Surface.Of(BuiltRooms.Load(room)).ToList();
        var file = $"{Folder}/{room}.txt";
        if (IsRenewed)
        {
            Directory.CreateDirectory(SourceTree.At(Folder));
            File.WriteAllText(SourceTree.At(file), string.Join('\n', shown) + "\n");
        }

        var written = SourceTree.Text(file).TrimEnd().Split('\n');
        var isNew = shown.Except(written).ToList();
        var isGone = written.Except(shown).ToList();
        Assert.True(
            shown.SequenceEqual(written),
            $"{room} shows something else than {file}; look at it, and write it anew with: bash tests/surface.sh\n"
            + string.Join('\n', [.. isNew.Select(line => $"  new:  {line.Trim()}"), .. isGone.Select(line => $"  gone: {line.Trim()}")]));
    }

    [Fact]
    public void Every_file_of_a_surface_belongs_to_a_room() => Assert.Equal(
        BuiltRooms.Names.Order(StringComparer.Ordinal),
        SourceTree.Files(Folder, "*.txt").Select(path => Path.GetFileNameWithoutExtension(path)));

    [Fact]
    public void A_service_shows_its_program_and_what_a_bad_setting_is_only() => Assert.Equal(
        [": class Program", "SwapSolver.Service.Limits: class SettingFaultException of Exception, ISerializable"],
        Surface.Of(BuiltRooms.Load("SwapSolver.Service")).Where(line => !line.StartsWith(' ')));
}
