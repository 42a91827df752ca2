using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace SwapSolver.House.Tests;

/// <summary>Each room knows only the rooms below it.</summary>
public sealed partial class ArrowTests
{
    /// <summary>What a room may know. A room that is not listed has no place in the house yet.</summary>
    private static readonly Dictionary<string, string[]> MayKnow = new()
    {
        ["SwapSolver.Kitchen"] = [],
        ["SwapSolver.Contract"] = [],
        ["SwapSolver.Solving"] = ["SwapSolver.Kitchen", "SwapSolver.Forecasts"],
        ["SwapSolver.Data"] = ["SwapSolver.Kitchen", "SwapSolver.Learning"],
        ["SwapSolver.Learning"] = ["SwapSolver.Kitchen"],
        ["SwapSolver.Lines"] = ["SwapSolver.Kitchen"],
        ["SwapSolver.Asking"] = ["SwapSolver.Kitchen", "SwapSolver.Lines"],
        ["SwapSolver.Forecasts"] = ["SwapSolver.Kitchen"],
        ["SwapSolver.Tables"] = ["SwapSolver.Kitchen"],
        ["SwapSolver.Records"] = ["SwapSolver.Kitchen"],
        ["SwapSolver.OrTools"] = ["SwapSolver.Solving", "SwapSolver.Kitchen"],
        ["SwapSolver.Cards"] = ["SwapSolver.Solving", "SwapSolver.Forecasts", "SwapSolver.Kitchen"],
        ["SwapSolver.Service"] =
        [
            "SwapSolver.Kitchen", "SwapSolver.Solving", "SwapSolver.OrTools", "SwapSolver.Data", "SwapSolver.Lines", "SwapSolver.Asking", "SwapSolver.Forecasts", "SwapSolver.Tables",
            "SwapSolver.Records", "SwapSolver.Cards", "SwapSolver.Learning", "SwapSolver.Contract",
        ],
        ["SwapSolver.Console"] = ["SwapSolver.Contract"],
    };

    public static TheoryData<string> Rooms => [.. RoomFiles];

    private static IEnumerable<string> RoomFiles => SourceTree.Files("src", "*.csproj").Concat(SourceTree.Files("clients", "*.csproj"));

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_knows_only_the_rooms_below_it(string project)
    {
        var room = Path.GetFileNameWithoutExtension(project);
        Assert.Contains(room, MayKnow.Keys);
        var known = XDocument.Load(SourceTree.At(project)).Descendants("ProjectReference")
            .Where(reference => reference.Attribute("ReferenceOutputAssembly")?.Value != "false")
            .Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value));
        Assert.Empty(known.Except(MayKnow[room]));
    }

    /// <summary>The questions have two more: sums over rows of kitchens, and the place of a figure in an order.</summary>
    [Theory]
    [InlineData("SwapSolver.Kitchen")]
    [InlineData("SwapSolver.Solving", "System.Numerics.Tensors", "MathNet.Numerics")]
    [InlineData("SwapSolver.Data")]
    public void The_rules_and_the_questions_use_hardly_a_package_but_the_one_that_bans(string room, params string[] besides)
    {
        var packages = XDocument.Load(SourceTree.At($"src/{room}/{room}.csproj")).Descendants("PackageReference").Select(package => package.Attribute("Include")!.Value);
        Assert.Empty(packages.Except(["Microsoft.CodeAnalysis.BannedApiAnalyzers", .. besides]));
    }

    [Fact]
    public void A_room_sees_nothing_through_another_room() =>
        Assert.Contains("<DisableTransitiveProjectReferences>true</DisableTransitiveProjectReferences>", SourceTree.Text("Directory.Build.props"), StringComparison.Ordinal);

    [Fact]
    public void One_room_alone_names_the_solver_library()
    {
        var naming = SourceTree.Files("src", "*.cs").Concat(SourceTree.Files("src", "*.csproj")).Concat(SourceTree.Files("clients", "*.cs")).Concat(SourceTree.Files("clients", "*.csproj"))
            .Where(path => SourceTree.Text(path).Contains("Google.OrTools", StringComparison.Ordinal));
        Assert.All(naming, path => Assert.StartsWith("src/SwapSolver.OrTools/", path, StringComparison.Ordinal));
        Assert.NotEmpty(naming);
    }

    [Fact]
    public void The_wire_is_known_at_the_door_only()
    {
        var naming = SourceTree.Files("src", "*.cs").Where(path => Wire().IsMatch(SourceTree.Text(path)));
        Assert.All(naming, path => Assert.StartsWith("src/SwapSolver.Service/", path, StringComparison.Ordinal));
        Assert.NotEmpty(naming);
    }

    [Fact]
    public void What_was_built_keeps_the_same_arrows_as_what_is_written()
    {
        var rooms = new[]
        {
            typeof(Kitchen.Ingredients.Ingredient).Assembly, typeof(Solving.Models.Model).Assembly, typeof(Data.Files.DataFolder).Assembly, typeof(Lines.IngredientLines).Assembly, typeof(Forecasts.Rise).Assembly, typeof(Tables.FoodTable).Assembly, typeof(Cards.Card).Assembly, typeof(OrTools.OrToolsSolver).Assembly,
        };
        Assert.All(rooms, room => Assert.DoesNotContain(room.GetReferencedAssemblies(), other => Wire().IsMatch($"{other.Name};")));
        Assert.All(
            rooms.Where(room => room.GetReferencedAssemblies().Any(other => other.Name == "Google.OrTools")),
            room => Assert.Equal("SwapSolver.OrTools", room.GetName().Name));
    }

    [Fact]
    public void The_contract_room_has_not_one_written_line() => Assert.Empty(SourceTree.Files("src/SwapSolver.Contract", "*.cs"));

    [Fact]
    public void Every_project_is_in_the_solution_and_names_no_version_of_its_own()
    {
        var solution = SourceTree.Text("SwapSolver.sln").Replace('\\', '/');
        var projects = RoomFiles.Concat(SourceTree.Files("tests", "*.csproj"));
        Assert.All(projects, project =>
        {
            Assert.Contains(project, solution, StringComparison.Ordinal);
            Assert.DoesNotContain(XDocument.Load(SourceTree.At(project)).Descendants("PackageReference"), package => package.Attribute("Version") is not null);
        });
    }

    [GeneratedRegex(@"\b(Grpc|Google\.Protobuf|Google\.Rpc|SwapSolver\.V1|SwapSolver\.Contract)\b")]
    private static partial Regex Wire();
}
