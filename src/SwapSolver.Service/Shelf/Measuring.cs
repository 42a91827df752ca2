using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Kitchen.Foods;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Service.Faults;
using SwapSolver.V1;
using Fact = SwapSolver.Kitchen.Ingredients.Fact;
using Ingredient = SwapSolver.Kitchen.Ingredients.Ingredient;
using Range = SwapSolver.Kitchen.Ingredients.Range;
using SoakTest = SwapSolver.Kitchen.Foods.SoakTest;

namespace SwapSolver.Service.Shelf;

/// <summary>Reads what a kitchen measured.</summary>
internal sealed class Measuring(MeasuringRules rules, Phrases phrases, ProblemList problems)
{
    private const double MostGrams = 10_000;

    /// <summary>The facts that a request states, none where it only asks how to measure; where problems were added they are not to be used.</summary>
    public ImmutableArray<MeasuredFact> Read(MeasureIngredientRequest request, Ingredient ingredient)
    {
        return [.. Soaked(request.Soak, ingredient), .. Acid(request, ingredient), .. ReadPrice(request.HasPricePerKg ? request.PricePerKg : null, ingredient)];
    }

    /// <summary>What a kilogram costs; none where no price is given or a problem was added.</summary>
    public ImmutableArray<MeasuredFact> ReadPrice(double? price, Ingredient ingredient)
    {
        if (price is not { } paid)
        {
            return [];
        }

        if (paid >= 0 && paid <= Fact.Price.Most)
        {
            return [new MeasuredFact(ingredient.Id, Fact.Price, new Range(paid, paid, paid), phrases.Say("measured-price"))];
        }

        problems.Add("pricePerKg", paid, "is no price of a kilogram", "give 0 or more");
        return [];
    }

    private ImmutableArray<MeasuredFact> Soaked(V1.SoakTest? soak, Ingredient ingredient)
    {
        if (soak is null)
        {
            return [];
        }

        if (!SoakTest.Reads(ingredient))
        {
            problems.Add("soak", ingredient.Id, "binds no water by its nature, or dissolves: the test says nothing of it", "test a flour, meal, fibre or gel");
            return [];
        }

        if (!(soak.DryG >= rules.LeastDry.Value && soak.DryG <= MostGrams))
        {
            problems.Add("soak.dryG", soak.DryG, "is not enough, or too much, to weigh well", $"weigh {rules.LeastDry.Value:0.#} g or more before the soak");
            return [];
        }

        var test = new SoakTest(new Grams(soak.DryG), new Grams(soak.DrainedG));
        if (!(test.Held.Value >= 0 && test.Held.Value <= rules.MostHeld.Value))
        {
            problems.Add(
                "soak.drainedG", soak.DrainedG, $"cannot be left of {soak.DryG.ToString(CultureInfo.InvariantCulture)} g: nothing gets lighter by soaking or holds more than {rules.MostHeld.Value:0} times its weight", "weigh again after draining, cloth or sieve taken off");
            return [];
        }

        return test.Facts(ingredient, rules, phrases.Say("measured-soak", ("before", Figure(soak.DryG)), ("after", Figure(soak.DrainedG))));
    }

    private ImmutableArray<MeasuredFact> Acid(MeasureIngredientRequest request, Ingredient ingredient)
    {
        if (!request.HasAcidityPercent)
        {
            return [];
        }

        if (!LabelAcidity.Reads(ingredient, rules))
        {
            problems.Add("acidityPercent", ingredient.Id, "is no vinegar, and its label states no acidity", "give the acidity of a vinegar, as ingredients/vinegar-cider");
            return [];
        }

        if (!(request.AcidityPercent >= rules.LeastAcidity.Value && request.AcidityPercent <= rules.MostAcidity.Value))
        {
            problems.Add("acidityPercent", request.AcidityPercent, "is no acidity of a vinegar", $"give {rules.LeastAcidity.Value:0.#} to {rules.MostAcidity.Value:0.#}, as the label prints it");
            return [];
        }

        return new LabelAcidity(new Percent(request.AcidityPercent))
            .Facts(ingredient, rules, phrases.Say("measured-acidity", ("value", Figure(request.AcidityPercent))));
    }

    private static string Figure(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
