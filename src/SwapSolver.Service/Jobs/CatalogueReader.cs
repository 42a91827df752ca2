using System.Globalization;
using SwapSolver.Service.Faults;
using SwapSolver.Service.Stored;
using SwapSolver.Service.Translation;
using SwapSolver.Solving;
using SwapSolver.Solving.Wishes;
using SwapSolver.V1;
using Diet = SwapSolver.V1.VaryFormulaRequest.Types.Diet;
using Part = SwapSolver.V1.Catalogue.Types.Part;

namespace SwapSolver.Service.Jobs;

/// <summary>Reads what of a catalogue is to be solved.</summary>
internal sealed class CatalogueReader(Bakehouse bakehouse, FormulaLibrary library, ProblemList problems)
{
    private const string Path = "catalogue";

    private const int MostFormulas = 1000;

    private const int MostWishes = 100;

    /// <summary>The catalogue with everything said that was left to us; where problems were added it is not to be used.</summary>
    /// <exception cref="Grpc.Core.RpcException">NOT_FOUND for a formula that is not there.</exception>
    public Catalogue Read(Catalogue? asked)
    {
        var catalogue = asked?.Clone() ?? new Catalogue();
        if (catalogue.Parts.Count == 0 || catalogue.Parts.Any(part => part is not (Part.Variants or Part.Charts)))
        {
            problems.Add($"{Path}.parts", string.Join(' ', catalogue.Parts), "does not say what is to be solved", "give VARIANTS, CHARTS or both");
        }

        Bound(catalogue.Formulas.Count, MostFormulas, "formulas");
        Bound(catalogue.Without.Count, MostWishes, "without");
        ReadWithout(catalogue);
        ReadDiets(catalogue);
        foreach (var name in catalogue.Formulas.Take(MostFormulas))
        {
            if (library.Find(name).Head is { Deleted: not null })
            {
                throw FormulaRefusal.PutAway(name);
            }
        }

        return catalogue;
    }

    private void ReadWithout(Catalogue catalogue)
    {
        if (catalogue is { Without.Count: 0, Diets.Count: 0 })
        {
            catalogue.Without.AddRange(bakehouse.Pantry.Allergens.Select(allergen => allergen.Id));
            catalogue.Diets.AddRange([Diet.Vegetarian, Diet.Vegan, Diet.DairyFree]);
        }

        var leavingOut = new LeavingOut(bakehouse.Pantry, bakehouse.Phrases);
        for (var index = 0; index < Math.Min(catalogue.Without.Count, MostWishes); index++)
        {
            var word = ResourceName.IngredientId(catalogue.Without[index].Trim().ToLowerInvariant());
            if (leavingOut.Of(word) is null)
            {
                problems.Add(
                    string.Create(CultureInfo.InvariantCulture, $"{Path}.without[{index}]"),
                    catalogue.Without[index],
                    "is no allergen, group or ingredient that is known",
                    NearestNames.WayOut(word, leavingOut.KnownWords));
            }

            catalogue.Without[index] = word;
        }
    }

    private void ReadDiets(Catalogue catalogue)
    {
        foreach (var (index, diet) in catalogue.Diets.Index().Where(pair => pair.Item is not (Diet.Vegetarian or Diet.Vegan or Diet.DairyFree)).Take(1))
        {
            problems.Add(string.Create(CultureInfo.InvariantCulture, $"{Path}.diets[{index}]"), diet.ToString(), "is no diet that is known", "give VEGETARIAN, VEGAN or DAIRY_FREE");
        }
    }

    private void Bound(int count, int most, string field)
    {
        if (count > most)
        {
            problems.Add($"{Path}.{field}", count, "are too many", $"give at most {most}, or begin several jobs");
        }
    }
}
