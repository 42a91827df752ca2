using System.Globalization;
using SwapSolver.Kitchen.Wording;
using SwapSolver.V1;

namespace SwapSolver.Service.Desk;

/// <summary>Words to answer a reader with.</summary>
/// <param name="phrases">The sentences.</param>
internal sealed class DeskWords(Phrases phrases)
{
    /// <summary>Changes in one breath.</summary>
    public string Of(IEnumerable<Change> changes) => Phrases.List(changes.Select(Of));

    /// <summary>A sentence with its gaps filled.</summary>
    public string Say(string id, params ReadOnlySpan<(string Gap, string Filling)> fillings) => phrases.Say(id, fillings);

    /// <summary>A number for a sentence.</summary>
    public static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>Several things that were said, a sentence each.</summary>
    public static string Sentences(IEnumerable<string> said) => string.Join(
        ' ', said.Where(one => one.Length > 0).Select(one => $"{char.ToUpperInvariant(one[0])}{one[1..]}{(one[^1] is '.' or '!' or '?' ? string.Empty : ".")}"));

    /// <summary>Minutes with their range.</summary>
    public string Minutes(Estimate estimate) => phrases.Say(
        "desk-minutes", ("value", Number(Math.Round(estimate.Value))), ("low", Number(Math.Floor(estimate.Low))), ("high", Number(Math.Ceiling(estimate.High))));

    /// <summary>What a slice has; what is not known of a line is not told of the slice.</summary>
    public string Slice(Nutrition nutrition)
    {
        var slice = nutrition.PerSlice;
        return phrases.Say(
            "desk-slice",
            ("grams", Number(Math.Round(slice.MassG))),
            ("figures", Figures(slice, isAll: true)),
            ("hundred", Figures(nutrition.Per100G, isAll: false)),
            ("whole", Figures(nutrition.PerLoaf, isAll: false)));
    }

    /// <summary>What something has; net carbs and energy alone, or all.</summary>
    private string Figures(NutritionFacts has, bool isAll)
    {
        var figures = new List<string>();
        void Add(string id, bool isKnown, double value, string format)
        {
            if (isKnown)
            {
                figures.Add(phrases.Say(id, ("value", value.ToString(format, CultureInfo.InvariantCulture))));
            }
        }

        Add("desk-net-carbs", has.HasNetCarbsG, has.NetCarbsG, "0.0");
        Add("desk-carbohydrate", isAll, has.CarbohydrateG, "0.0");
        Add("desk-energy", true, has.EnergyKcal, "0");
        Add("desk-fat", isAll, has.FatG, "0.0");
        Add("desk-fibre", isAll && has.HasFibreG, has.FibreG, "0.0");
        Add("desk-sugars", isAll && has.HasSugarsG, has.SugarsG, "0.0");
        Add("desk-protein", isAll, has.ProteinG, "0.0");
        Add("desk-sodium", isAll && has.HasSodiumMg, has.SodiumMg, "0");
        return Phrases.List(figures);
    }

    /// <summary>The size that was asked for.</summary>
    public string Size(AskedFor asked)
    {
        var parts = new List<string>();
        if (asked.Tin is { } tin)
        {
            parts.Add(phrases.Say("desk-size-tin", ("size", $"{Number(tin.LengthMm)} x {Number(tin.WidthMm)} x {Number(tin.HeightMm)} mm")));
        }

        if (asked.HasMassGrams)
        {
            parts.Add(phrases.Say("desk-size-mass", ("grams", Number(asked.MassGrams))));
        }

        if (asked.HasFactor)
        {
            parts.Add(phrases.Say("desk-size-factor", ("value", Number(asked.Factor))));
        }

        if (asked.HasSlices)
        {
            parts.Add(phrases.Say("desk-size-slices", ("count", Number(asked.Slices))));
        }

        return Phrases.List(parts);
    }

    private string Of(Change change)
    {
        var name = change.DisplayName;
        return change.BeforeGrams == 0 ? phrases.Say("desk-comes-in", ("ingredient", name), ("after", After(change)))
            : change.AfterGrams == 0 ? phrases.Say("desk-goes-out", ("ingredient", name), ("before", Number(change.BeforeGrams)))
            : phrases.Say("desk-changes", ("ingredient", name), ("before", Number(change.BeforeGrams)), ("after", After(change)));
    }

    private string After(Change change) => change.HasAfterCount
        ? phrases.Say("desk-counted", ("count", Number(change.AfterCount)), ("grams", Number(change.AfterGrams)))
        : phrases.Say("desk-grams", ("grams", Number(change.AfterGrams)));
}
