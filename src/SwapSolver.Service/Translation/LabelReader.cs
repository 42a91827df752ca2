using System.Collections.Frozen;
using SwapSolver.Kitchen.Labels;
using SwapSolver.Service.Faults;
using SwapSolver.V1;
using Law = SwapSolver.V1.Label.Types.Law;

namespace SwapSolver.Service.Translation;

/// <summary>Reads what is asked of a label.</summary>
internal sealed class LabelReader(LabelLaws laws, ProblemList problems)
{
    private static readonly FrozenDictionary<Law, string> Ids = new Dictionary<Law, string>
    {
        [Law.Us] = "us",
        [Law.Eu] = "eu",
        [Law.Uk] = "uk",
        [Law.AuNz] = "au-nz",
        [Law.Ca] = "ca",
    }.ToFrozenDictionary();

    /// <summary>The value of the contract for a law.</summary>
    public static Law Write(LabelLaw law) => Ids.First(pair => pair.Value == law.Id).Key;

    /// <summary>The law; null where a problem was added.</summary>
    /// <param name="asked">The law of the contract.</param>
    /// <param name="usual">Id of the law where none is said.</param>
    public LabelLaw? LawOf(Law asked, string usual)
    {
        if (asked == Law.Unspecified)
        {
            return laws.Find(usual);
        }

        if (Ids.TryGetValue(asked, out var id))
        {
            return laws.Find(id);
        }

        problems.Add("label", asked.ToString(), "is no law on labels that is known", "give US, EU, UK, AU_NZ or CA");
        return null;
    }

    /// <summary>How energy is counted: as asked, or by the law's usual way.</summary>
    /// <param name="asked">Id of a method; empty where none is said.</param>
    /// <param name="law">The law; null where it could not be read.</param>
    public EnergyMethod? Method(string asked, LabelLaw? law)
    {
        if (law is null || string.IsNullOrWhiteSpace(asked))
        {
            return law?.EnergyMethods[0];
        }

        var found = law.EnergyMethods.FirstOrDefault(method => method.Id == asked.Trim());
        if (found is null)
        {
            problems.Add("energyMethod", asked, $"is no way to count energy that {law.Text} lets count", $"give {string.Join(" or ", law.EnergyMethods.Select(method => method.Id))}");
        }

        return found;
    }

    /// <summary>Slices in a serving.</summary>
    public int ServingSlices(PrintCardRequest request, Kitchen.Formulas.Formula? formula)
    {
        if (!request.HasServingSlices)
        {
            return 1;
        }

        if (request.ServingSlices < 1 || request.ServingSlices > (formula?.Slices ?? FormulaReader.MostSlices))
        {
            problems.Add("servingSlices", request.ServingSlices, "slices are no serving of this formula", $"give 1 to {formula?.Slices ?? FormulaReader.MostSlices}");
        }

        return request.ServingSlices;
    }
}
