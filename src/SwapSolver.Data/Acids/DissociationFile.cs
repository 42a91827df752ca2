using System.Collections.Immutable;
using SwapSolver.Data.Files;
using SwapSolver.Kitchen.Acids;

namespace SwapSolver.Data.Acids;

/// <summary>Reads <c>chemistry/dissociations.json</c>.</summary>
/// <param name="Figures">Reads its figures.</param>
internal sealed record DissociationFile(FigureReader Figures)
{
    /// <summary>The ions and the dissociating things by id.</summary>
    public (ImmutableDictionary<string, Ion> Ions, ImmutableDictionary<string, Dissociation> Dissociations) Read(JsonPlace root)
    {
        root.Only("about", "ions", "dissociations");
        var ions = Distinct(root.Get("ions"), IonOf);
        return (ions, Distinct(root.Get("dissociations"), place => DissociationOf(place, ions)));
    }

    /// <summary>An ion that the file names.</summary>
    public static Ion Known(JsonPlace place, ImmutableDictionary<string, Ion> ions) => ions.TryGetValue(place.Text, out var ion)
        ? ion
        : throw place.Fault($"'{place.Text}' is not an ion of chemistry/dissociations.json");

    /// <summary>A count within bounds.</summary>
    public static int Whole(JsonPlace place, int least, int most) =>
        double.IsInteger(place.Number) && place.Number >= least && place.Number <= most
            ? (int)place.Number
            : throw place.Fault($"{place.Number} must be a whole number from {least} to {most}");

    private static ImmutableDictionary<string, T> Distinct<T>(JsonPlace list, Func<JsonPlace, T> read)
    {
        var made = new Dictionary<string, T>(StringComparer.Ordinal);
        foreach (var place in list.Items)
        {
            if (!made.TryAdd(place.Get("id").Text, read(place)))
            {
                throw place.Get("id").Fault($"'{place.Get("id").Text}' stands twice; keep one");
            }
        }

        return made.ToImmutableDictionary(StringComparer.Ordinal);
    }

    private static Ion IonOf(JsonPlace place)
    {
        place.Only("id", "symbol", "charge");
        var charge = place.Get("charge");
        return Whole(charge, -4, 4) is var number and not 0
            ? new Ion(place.Get("id").Text, place.Get("symbol").Text, number)
            : throw charge.Fault("an ion has a charge that is not 0");
    }

    private Dissociation DissociationOf(JsonPlace place, ImmutableDictionary<string, Ion> ions)
    {
        place.Only("id", "name", "chargeWithAllProtons", "protonsToSoda", "pka", "pairs");
        var pkas = place.Get("pka").Items.Select(step => Figures.Read(step, "pKa", -2, 15)).ToImmutableArray();
        if (pkas.Length > Dissociation.MostSteps)
        {
            throw place.Get("pka").Fault($"{pkas.Length} protons are given one after the other; at most {Dissociation.MostSteps} can be reckoned with");
        }

        foreach (var (step, index) in place.Get("pka").Items.Select((step, index) => (step, index)))
        {
            if (index > 0 && pkas[index].Range.Typical < pkas[index - 1].Range.Typical)
            {
                throw step.Fault($"pKa {pkas[index].Range.Typical} stands after {pkas[index - 1].Range.Typical}; a later proton is given less readily");
            }
        }

        return new Dissociation(
            place.Get("id").Text,
            place.Get("name").Text,
            Whole(place.Get("chargeWithAllProtons"), -4, 4),
            Whole(place.Get("protonsToSoda"), 0, pkas.Length),
            pkas,
            [.. place.Get("pairs").Items.Select(pair => PairOf(pair, ions, pkas.Length))]);
    }

    private IonPair PairOf(JsonPlace place, ImmutableDictionary<string, Ion> ions, int steps)
    {
        place.Only("ion", "protonsGiven", "logConstant");
        return new IonPair(
            Known(place.Get("ion"), ions),
            Whole(place.Get("protonsGiven"), 0, steps),
            Figures.Read(place.Get("logConstant"), "logConstant", -2, 10));
    }
}
