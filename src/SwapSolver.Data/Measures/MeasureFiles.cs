using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Measures;

namespace SwapSolver.Data.Measures;

/// <summary>Reads <c>data/measures/</c>: units, fillings, pieces and names.</summary>
public static class MeasureFiles
{
    /// <summary>What is known of measures.</summary>
    /// <exception cref="DataFaultException">A file cannot be believed.</exception>
    public static MeasureTables Read(DataFolder folder, SourceKeys sources, Pantry pantry)
    {
        var units = new UnitFile(sources);
        var root = folder.Read("measures/units.json").Only("about", "notFor", "volumes", "masses", "systems", "numbers", "foreign");
        var pieces = new PieceFile(sources, pantry);
        var sold = folder.Read("measures/pieces.json").Only("about", "notFor", "pieces", "eggSizes");
        var seen = new NamesOnce();
        return new MeasureTables(
            units.ReadVolumes(root.Get("volumes"), seen),
            units.ReadMasses(root.Get("masses"), seen),
            pieces.ReadPieces(sold.Get("pieces"), seen),
            new FillingFile(sources, pantry).Read(folder.Read("measures/fillings.json")),
            pieces.ReadEggs(sold.Get("eggSizes")),
            UnitFile.ReadWords(root),
            new NameFile(sources, pantry).Read(folder.Read("measures/names.json")));
    }
}
