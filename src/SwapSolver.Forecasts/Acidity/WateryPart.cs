using System.Collections.Immutable;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;

namespace SwapSolver.Forecasts;

/// <summary>Gathers what a formula dissolves in its water, like with like.</summary>
/// <param name="chemistry">What is known of acids, bases and buffers.</param>
/// <param name="practice">What the forecast goes by.</param>
/// <param name="doubts">Which figure is moved.</param>
internal sealed class WateryPart(LeaveningChemistry chemistry, AcidityPractice practice, Doubts doubts)
{
    /// <summary>Ends of the span that buffers are stated for [pH], from chemistry/buffers.json.</summary>
    private const double BufferFrom = 6, BufferTo = 8;

    /// <summary>Ionic strength of juice and vinegar, at which their acid is counted back [mol/kg]; the answer hardly hangs on it.</summary>
    private const double IonicStrengthOfJuice = 0.1;

    private const string FallingOut = "falling-out", CarbonDioxideId = "carbonic", PotassiumId = "potassium";

    // In order of their ids, a handful each: so what is found does not hang on the order of lines.
    private readonly List<(string Id, Dissociation Of, double Millimoles)> solutes = [];

    private readonly List<(string Id, Ion Of, double Millimoles)> ions = [];

    private double bufferSlope;

    private double bufferSlopeTimesPh;

    private double inertSalt;

    /// <summary>A pure acid, so much of it as has dissolved.</summary>
    /// <param name="acid">The acid.</param>
    /// <param name="equivalents">Protons to the soda end point [mmol].</param>
    public void AddAcid(PureAcid acid, double equivalents)
    {
        var protons = acid.ProtonsToSoda(chemistry.Constants.SodaGramsPerMole).Value;
        var millimoles = equivalents / protons;
        Add(acid.Substance, millimoles, millimoles);
        Add(chemistry.Dissociations[FallingOut], millimoles * Math.Max(0, protons - acid.Substance.ProtonsByCount.Value));
    }

    /// <summary>A bicarbonate without its carbon dioxide.</summary>
    /// <param name="bicarbonate">The bicarbonate.</param>
    /// <param name="millimoles">How much [mmol].</param>
    /// <param name="keptShare">Share of what heat can drive off that is still there [1].</param>
    public void AddSoda(Bicarbonate bicarbonate, double millimoles, double keptShare) =>
        Add(bicarbonate.Substance, millimoles, millimoles * keptShare);

    /// <summary>A sour food: so much acid, and so much of it with its protons gone, that its acidity and its own pH are both met.</summary>
    /// <param name="food">The food.</param>
    /// <param name="equivalents">Protons to the end of a titration [mmol].</param>
    /// <param name="waterGrams">Water that it brings [g].</param>
    public void AddFood(FoodAcid food, double equivalents, double waterGrams)
    {
        var native = doubts.Of("pH", food.Id, food.NativePh);
        var end = practice.TitratedToPh.Range.Typical;
        if (food.Acid is not { } acid)
        {
            AddBuffer(equivalents / (end - native), native);
            return;
        }

        var activity = new DaviesActivity(chemistry.Constants, IonicStrengthOfJuice);
        var hydrogen = Math.Pow(10, -native - activity.Log(1)) * waterGrams;
        var chargeAtNative = Forms.MeanCharge(acid, native, activity);
        var chargeAtEnd = Forms.MeanCharge(acid, end, activity);
        // Of strong mineral acid there is none in food: what little hydrogen the acidity cannot bear is not counted.
        var millimoles = Math.Max(0, equivalents - hydrogen) / (chargeAtNative - chargeAtEnd);
        Add(acid, millimoles);
        // The counter-ions of its own salts, taken as potassium, the chief one of fruit.
        AddIon(chemistry.Ions[PotassiumId], Math.Max(0, (-chargeAtNative * millimoles) - hydrogen));
    }

    /// <summary>A food that only buffers, and the salt in it.</summary>
    public void AddOther(BatterLine line)
    {
        var (facts, grams) = (line.Facts, line.Grams);
        var perGram = line.Buffer is { } row
            ? doubts.Of("buffer of foods", row.MilliequivalentsPer100G) / 100
            : doubts.Of("buffer of foods", chemistry.Guess.MilliequivalentsPerGProtein) * facts[Fact.Protein];
        if (perGram > 0)
        {
            AddBuffer(
                perGram * grams / (BufferTo - BufferFrom),
                doubts.Of("pH", facts.Ingredient.Id, line.Buffer?.NativePh ?? chemistry.Guess.NativePh));
        }

        inertSalt += grams * line.InertSalt;
    }

    /// <summary>The solution of it all.</summary>
    /// <param name="waterGrams">Water of the formula [g], above 0.</param>
    /// <param name="carbonDioxide">Carbon dioxide that there is if none leaves [mmol].</param>
    /// <param name="mostAtm">Pressure at which it leaves [atm].</param>
    /// <param name="air">Other gas in the bubbles [mol/kg of water].</param>
    public Solution In(double waterGrams, double carbonDioxide, double mostAtm, double air) => new(
        chemistry.Constants,
        Each(solutes, part => new Solute(part.Of, part.Millimoles / waterGrams)),
        Each(ions, part => new FreeIon(part.Of, part.Millimoles / waterGrams)),
        new CarbonDioxideAbove(chemistry.Dissociations[CarbonDioxideId], carbonDioxide / waterGrams, mostAtm, air))
    {
        BufferSlope = bufferSlope / waterGrams,
        BufferSlopeTimesPh = bufferSlopeTimesPh / waterGrams,
        InertSalt = inertSalt / waterGrams,
    };

    private void Add(PureSubstance substance, double millimoles, double volatileMillimoles)
    {
        foreach (var part in substance.Dissolved)
        {
            if (part.Dissociation.Id != CarbonDioxideId)
            {
                Add(part.Dissociation, part.Count * volatileMillimoles);
            }
        }

        foreach (var part in substance.Ions)
        {
            AddIon(part.Ion, part.Count * millimoles);
        }
    }

    private void Add(Dissociation dissociation, double millimoles) => Add(solutes, dissociation.Id, dissociation, millimoles);

    private void AddIon(Ion ion, double millimoles) => Add(ions, ion.Id, ion, millimoles);

    private static void Add<T>(List<(string Id, T Of, double Millimoles)> parts, string id, T of, double millimoles)
    {
        if (!(millimoles > 0))
        {
            return;
        }

        var place = 0;
        while (place < parts.Count && string.CompareOrdinal(parts[place].Id, id) < 0)
        {
            place++;
        }

        if (place < parts.Count && parts[place].Id == id)
        {
            parts[place] = (id, of, parts[place].Millimoles + millimoles);
        }
        else
        {
            parts.Insert(place, (id, of, millimoles));
        }
    }

    private static ImmutableArray<TMade> Each<TPart, TMade>(List<TPart> parts, Func<TPart, TMade> make)
    {
        var made = ImmutableArray.CreateBuilder<TMade>(parts.Count);
        foreach (var part in parts)
        {
            made.Add(make(part));
        }

        return made.MoveToImmutable();
    }

    private void AddBuffer(double slope, double native)
    {
        bufferSlope += slope;
        bufferSlopeTimesPh += slope * native;
    }
}
