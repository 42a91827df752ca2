using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;

namespace SwapSolver.Kitchen.Measures;

/// <summary>Turns a volume of an ingredient into grams, by its household weights. A row of the very measure is used as it
/// stands; any other measure by the largest measure that is known, since small spoons are rounded hard.</summary>
internal sealed class VolumeWeighing(MeasureTables tables, MeasureSystem? kitchen)
{
    /// <summary>The system of the published household weights.</summary>
    private const MeasureSystem OfRows = MeasureSystem.UsCustomary;

    /// <summary>From here on two rows contradict each other [share].</summary>
    private const double Contradiction = 0.05;

    /// <summary>The problem of an ingredient without a weight by volume.</summary>
    public static string NoDensity(Ingredient ingredient) =>
        $"what a spoon or cup of {ingredient.Name} weighs is not known; weigh it and give grams";

    /// <summary>The volume that a row is of [mL].</summary>
    public static Millilitres OfRow(HouseholdRow row) => row.Unit!.In(OfRows)!.Value;

    /// <summary>The row of the largest measure of the form that is meant; null where there is none.</summary>
    public HouseholdRow? DensestRow(Ingredient ingredient, Measured measured) =>
        Best(HouseholdRow.Of(ingredient, tables.Volumes).Where(row => row.Unit is not null), measured);

    /// <summary>The mass of a volume, with what was assumed; or the problem.</summary>
    public Weighed Weigh(Measured measured, VolumeUnit unit, Ingredient ingredient)
    {
        var system = measured.System ?? kitchen ?? MeasureSystem.UsCustomary;
        if ((unit.In(system) ?? unit.OnlySize) is not { } size)
        {
            return Weighed.Refused($"{NameOf(system)} measures know no {unit.Id}; give grams or another measure");
        }

        if (DensestRow(ingredient, measured) is not { } largest)
        {
            return Weighed.Refused(NoDensity(ingredient));
        }

        var assumed = ImmutableArray.CreateBuilder<string>();
        if (unit.In(system) is null)
        {
            assumed.Add($"a {unit.Id} of {size.Value:0.##} mL, its only size");
        }
        else if (unit.DiffersBySystem && measured.System is null && kitchen is null)
        {
            assumed.Add($"a US customary {unit.Id} of {size.Value:0.##} mL");
        }

        var byLargest = largest.Each * (size / OfRow(largest));
        var same = system == OfRows
            ? Best(HouseholdRow.Of(ingredient, tables.Volumes).Where(row => row.Unit?.Id == unit.Id), measured)
            : null;
        var level = same is { } own && Matches(own, measured.Words) >= Matches(largest, measured.Words) ? own.Each : byLargest;
        var filling = Fill(ingredient, measured, same ?? largest, assumed);
        var each = filling.Of(level);
        if (Math.Abs(byLargest / level - 1) > Contradiction && (same is null || same.Form.SequenceEqual(largest.Form)))
        {
            var other = filling.Of(byLargest);
            each = each.Holding(other.Low).Holding(other.High);
            assumed.Add($"the weights known of a {unit.Id} and a {largest.Unit!.Id} contradict each other ({level.Value:0.#} g here, {byLargest.Value:0.#} g by the {largest.Unit.Id})");
        }

        if ((same ?? largest) is { Estimate: { } estimate } row)
        {
            each = each.Holding(level * (estimate.Low / row.Each)).Holding(level * (estimate.High / row.Each));
            assumed.Add(IsEstimate(ingredient));
        }

        if (tables.Fillings.Whole.Mislead(ingredient.Id, measured))
        {
            each = each.Holding(level * tables.Fillings.Whole.LeastGround.Share);
            assumed.Add($"what a {unit.Id} weighs is known of the whole seed only; ground, it is a third to nearly a half less: use a scale");
        }

        return Weighed.As(each * measured.Amount, assumed.ToImmutable());
    }

    /// <summary>What is said where a household weight is an estimate.</summary>
    public static string IsEstimate(Ingredient ingredient) => $"what a spoon of {ingredient.Name} weighs is an estimate; use a scale where it matters";

    private Filling Fill(Ingredient ingredient, Measured measured, HouseholdRow row, ImmutableArray<string>.Builder assumed)
    {
        // A row that was weighed so filled already holds what the word would add.
        var said = measured.Filling is { } one && !row.Form.Contains(one.Id) ? one : null;
        var filling = tables.Fillings.Of(ingredient, said);
        if (said is null && filling == tables.Fillings.Powder)
        {
            assumed.Add("filled as cooks usually do; spooned or dipped makes up to 15 % either way");
        }

        return filling;
    }

    private static HouseholdRow? Best(IEnumerable<HouseholdRow> rows, Measured measured) => rows
        .OrderByDescending(row => Matches(row, measured.Words))
        .ThenByDescending(row => Matches(row, measured.UsualForm))
        .ThenBy(row => row.Rank)
        .ThenByDescending(row => OfRow(row).Value)
        .FirstOrDefault();

    /// <summary>How many words of its form the line says.</summary>
    private static int Matches(HouseholdRow row, ImmutableArray<string> words) => row.Form.Count(words.Contains);

    private static string NameOf(MeasureSystem system) => system switch
    {
        MeasureSystem.UsCustomary => "US customary",
        MeasureSystem.UsLabelling => "US labelling",
        MeasureSystem.Metric => "metric",
        MeasureSystem.Australian => "Australian",
        _ => "UK imperial",
    };
}
