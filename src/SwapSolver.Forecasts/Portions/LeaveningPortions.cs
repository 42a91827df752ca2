using System.Collections.Immutable;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Forecasts;

/// <summary>The acid and the bicarbonate of a formula, portion by portion: powders taken apart.</summary>
/// <param name="Acids">Acid to the soda end point.</param>
/// <param name="Sodas">Bicarbonates.</param>
internal sealed record LeaveningPortions(ImmutableArray<AcidPortion> Acids, ImmutableArray<SodaPortion> Sodas)
{
    /// <summary>All acid [mmol].</summary>
    public double Acid { get; } = Acids.Sum(static portion => portion.Equivalents);

    /// <summary>All bicarbonate [mmol].</summary>
    public double Soda { get; } = Sodas.Sum(static portion => portion.Millimoles);

    /// <summary>Bicarbonate that the acid uses up [mmol].</summary>
    public double Neutralised => Math.Min(Acid, Soda);

    /// <summary>Share of the bicarbonate that is left over [1]; 0 where there is none.</summary>
    public double LeftShare => Soda > 0 ? 1 - (Neutralised / Soda) : 0;

    /// <summary>The portions of a formula that was looked up.</summary>
    /// <param name="lines">Its lines.</param>
    /// <param name="chemistry">What is known of acids and bases.</param>
    /// <param name="doubts">Which facts are moved.</param>
    public static LeaveningPortions Of(ImmutableArray<BatterLine> lines, LeaveningChemistry chemistry, Doubts doubts)
    {
        var acids = ImmutableArray.CreateBuilder<AcidPortion>();
        var sodas = ImmutableArray.CreateBuilder<SodaPortion>();
        foreach (var line in lines)
        {
            if (!line.MayLeaven)
            {
                continue;
            }

            var acid = doubts.Of(Fact.Acid, line.Facts) * line.Grams;
            var soda = doubts.Of(Fact.Base, line.Facts) * line.Grams;
            if (line.Leavener is LeaveningBlend blend)
            {
                AddPowder(acids, sodas, line, blend, (acid, soda), chemistry);
                continue;
            }

            if (acid > 0)
            {
                acids.Add(new AcidPortion(line, line.Leavener, acid));
            }

            if (soda > 0 && line.Leavener is Bicarbonate bicarbonate)
            {
                sodas.Add(new SodaPortion(bicarbonate, soda));
            }
        }

        return new LeaveningPortions(acids.DrainToImmutable(), sodas.DrainToImmutable());
    }

    /// <summary>The parts of a powder, each its share of what the powder brings.</summary>
    private static void AddPowder(
        ImmutableArray<AcidPortion>.Builder acids,
        ImmutableArray<SodaPortion>.Builder sodas,
        BatterLine line,
        LeaveningBlend blend,
        (double Acid, double Soda) brought,
        LeaveningChemistry chemistry)
    {
        acids.AddRange(Shared(blend, part => part.Of is PureAcid of ? of.Counted(chemistry.Constants.SodaGramsPerMole).Value : 0)
            .Select(part => new AcidPortion(line, part.Of, brought.Acid * part.Share)));
        sodas.AddRange(Shared(blend, static part => part.Of is Bicarbonate of ? 1 / of.Substance.GramsPerMole.Range.Typical : 0)
            .Select(part => new SodaPortion((Bicarbonate)part.Of, brought.Soda * part.Share)));
    }

    /// <summary>The parts of a powder by their share of something that a gram of each brings.</summary>
    private static IEnumerable<(Leavener Of, double Share)> Shared(LeaveningBlend blend, Func<BlendPart, double> perGram)
    {
        double Brought(BlendPart part) => part.Percent.Range.Typical * perGram(part);
        var sum = blend.Parts.Sum(Brought);
        return blend.Parts.Where(part => Brought(part) > 0).Select(part => (part.Of, Brought(part) / sum));
    }
}
