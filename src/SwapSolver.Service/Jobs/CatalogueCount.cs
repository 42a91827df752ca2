using System.Globalization;
using SwapSolver.Records.Formulas;
using SwapSolver.Records.Jobs;
using SwapSolver.Service.Stored;
using SwapSolver.Service.Translation;
using SwapSolver.V1;
using Part = SwapSolver.V1.Catalogue.Types.Part;

namespace SwapSolver.Service.Jobs;

/// <summary>Counts the items of a catalogue, some formulas at a time, so that neither memory nor a transaction grows with it.</summary>
internal sealed class CatalogueCount(FormulaLibrary library, IServiceScopeFactory scopes)
{
    /// <summary>Where counting begins.</summary>
    public const string Start = "";

    private const int FormulasAtOnce = 20;

    /// <summary>The shards of the next formulas, and where to go on; null where nothing is left.</summary>
    /// <param name="catalogue">What is asked.</param>
    /// <param name="from">Where counting stopped.</param>
    public (IReadOnlyList<NewShard> Found, string? Further) Next(Catalogue catalogue, string from)
    {
        var (names, further) = catalogue.Formulas.Count > 0 ? Named(catalogue, from) : All(from);
        return ([.. names.SelectMany(name => CatalogueShard.Cut(name, Items(catalogue, name)))], further);
    }

    private (IReadOnlyList<string> Names, string? Further) Named(Catalogue catalogue, string from)
    {
        var start = from.Length == 0 ? 0 : int.Parse(from, CultureInfo.InvariantCulture);
        var end = Math.Min(start + FormulasAtOnce, catalogue.Formulas.Count);
        return (
            [.. catalogue.Formulas.Take(start..end).Select(name => Pinned(library.Find(name).Formula))],
            end < catalogue.Formulas.Count ? end.ToString(CultureInfo.InvariantCulture) : null);
    }

    private (IReadOnlyList<string> Names, string? Further) All(string from)
    {
        var page = library.List(from, FormulasAtOnce, FormulaFilter.InUse);
        return ([.. page.Select(Pinned)], page.Count == FormulasAtOnce ? ResourceName.FormulaId(page[^1].Name) : null);
    }

    /// <summary>The revision that is newest now: what is saved later does not move the job.</summary>
    private static string Pinned(Formula formula) => formula.HasRevision ? ResourceName.OfRevision(ResourceName.FormulaParts(formula.Name).Id, formula.Revision) : formula.Name;

    private IReadOnlyList<CatalogueItem> Items(Catalogue catalogue, string name)
    {
        using var solve = new CatalogueSolve(scopes, name);
        if (solve.Problem.Length > 0)
        {
            return [CatalogueItem.Unread];
        }

        return
        [
            .. catalogue.Parts.Contains(Part.Variants) ? catalogue.Diets.Distinct().Select(CatalogueItem.OfDiet).Concat(catalogue.Without.Distinct().Select(CatalogueItem.OfWithout)) : [],
            .. catalogue.Parts.Contains(Part.Charts) ? solve.Pairs() : [],
        ];
    }
}
