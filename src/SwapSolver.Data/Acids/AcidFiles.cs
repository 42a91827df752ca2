using System.Collections.Frozen;
using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Data.Acids;

/// <summary>Reads <c>data/acids/</c>, one file an acid, base or powder, and <c>data/chemistry/</c>.</summary>
public static class AcidFiles
{
    /// <summary>The chemistry of leavening of a data folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="sources">The bibliography.</param>
    /// <param name="pantry">The ingredients.</param>
    /// <exception cref="DataFaultException">A file cannot be believed.</exception>
    public static LeaveningChemistry Read(DataFolder folder, SourceKeys sources, Pantry pantry)
    {
        var figures = new FigureReader(sources);
        var (ions, dissociations) = new DissociationFile(figures).Read(folder.Read("chemistry/dissociations.json"));
        var (buffers, guess) = new BufferFile(figures, pantry).Read(folder.Read("chemistry/buffers.json"));
        var constants = ConstantsOf(folder.Read("chemistry/solution.json"), figures);
        var leaveners = LeavenersOf(folder, new AcidFile(figures, ions, dissociations), pantry);
        // Looked up thousands of times a forecast, and never changed.
        return new LeaveningChemistry(constants, Frozen(ions), Frozen(dissociations), Frozen(leaveners), Frozen(buffers), guess);
    }

    private static ImmutableDictionary<string, Leavener> LeavenersOf(DataFolder folder, AcidFile reader, Pantry pantry)
    {
        var files = folder.JsonFilesOf("acids").Select(name => (Id: Path.GetFileNameWithoutExtension(name), Root: folder.Read(name))).ToList();
        var made = new Dictionary<string, Leavener>(StringComparer.Ordinal);
        // Powders last: they are made of the others.
        foreach (var (id, root) in files.OrderBy(file => file.Root.Get("kind").Text == AcidFile.Blend))
        {
            if (root.Get("id") is var stated && stated.Text != id)
            {
                throw stated.Fault($"the id '{stated.Text}' is not the file's name '{id}'");
            }

            made[id] = root.Get("kind").Text == AcidFile.Blend ? reader.ReadBlend(root, made) : reader.Read(root);
        }

        var parts = made.Values.OfType<LeaveningBlend>().SelectMany(blend => blend.Parts).Select(part => part.Of.Id).ToHashSet();
        foreach (var (id, root) in files)
        {
            if (!pantry.TryGet(id, out _) && !parts.Contains(id))
            {
                throw root.Get("id").Fault($"'{id}' is no ingredient of the pantry and no part of a powder");
            }
        }

        return made.ToImmutableDictionary(StringComparer.Ordinal);
    }

    private static FrozenDictionary<string, T> Frozen<T>(ImmutableDictionary<string, T> made) => made.ToFrozenDictionary(StringComparer.Ordinal);

    private static WaterChemistry ConstantsOf(JsonPlace root, FigureReader figures)
    {
        var constants = root.Only("about", "constants").Get("constants").Only(
            "sodaGramsPerMole", "carbonDioxideGramsPerMole", "waterExponent", "daviesSlope", "daviesTerm",
            "mostIonicStrengthMolPerKg", "carbonDioxideMolPerKgAtm", "bitartrateExponent");
        Figure Of(string name, double most) => figures.Read(constants.Get(name), name, 0, most);
        return new WaterChemistry(
            Of("sodaGramsPerMole", 100),
            Of("carbonDioxideGramsPerMole", 50),
            Of("waterExponent", 15),
            Of("daviesSlope", 1),
            Of("daviesTerm", 1),
            Of("mostIonicStrengthMolPerKg", 1),
            Of("carbonDioxideMolPerKgAtm", 1),
            Of("bitartrateExponent", 10));
    }
}
