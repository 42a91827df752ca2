using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Forecasts;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Replacing;

/// <summary>What a baker is told of one leavening in another's place.</summary>
/// <param name="Bakehouse">Facts and words.</param>
internal sealed record ReplacementWords(Bakehouse Bakehouse)
{
    /// <summary>A scale that shows finer steps is not in every kitchen [g].</summary>
    private static readonly Grams FineScale = new(0.1);

    /// <summary>Sweetness from which it is worth a sentence, as sucrose [g].</summary>
    private const double SweetnessSaid = 0.5;

    /// <summary>Whether the gas comes faster or slower.</summary>
    public GasTiming Timing(RiseSketch before, RiseSketch after)
    {
        var practice = Bakehouse.Rise.Practice;
        var (wasOven, isOven) = (before.InOven.Value, after.InOven.Value);
        var oven = practice.OvenOnlyPercent.Range.Typical;
        var faster = after.InMixing.Value - before.InMixing.Value;
        var step = practice.SlowerByPercent.Range.Typical;
        return (isOven >= oven && wasOven < oven, faster) switch
        {
            (true, _) => GasTiming.OvenOnly,
            (_, var more) when more > step => GasTiming.Faster,
            (_, var more) when more < -step => GasTiming.Slower,
            _ => GasTiming.AsFast,
        };
    }

    /// <summary>The timing in a sentence.</summary>
    public string Say(GasTiming timing, RiseSketch before, RiseSketch after) => Bakehouse.Phrases.Say(
        timing switch
        {
            GasTiming.Faster => "timing-faster",
            GasTiming.Slower => "timing-slower",
            GasTiming.OvenOnly => "timing-oven-only",
            _ => "timing-as-fast",
        },
        ("after", Figure(after.InMixing.Value, "0")),
        ("before", Figure(before.InMixing.Value, "0")),
        ("count", Figure(after.WorkingWindow?.Value ?? 0, "0")));

    /// <summary>Why each line differs.</summary>
    /// <param name="reference">The formula before.</param>
    /// <param name="formula">The formula now.</param>
    /// <param name="from">What was replaced.</param>
    /// <param name="replaced">What was worked out.</param>
    public ImmutableArray<Change> Changes(Formula reference, Formula formula, Ingredient from, ReplacedLeavening replaced)
    {
        var ingredients = reference.Lines.Select(line => line.Ingredient).Union(formula.Lines.Select(line => line.Ingredient));
        return
        [
            .. ingredients
                .Select(one => (One: one, Before: reference.MassOf(one), After: formula.MassOf(one)))
                .Where(line => line.Before != line.After)
                .OrderBy(line => line.One.Equals(from) ? 0 : replaced.Doses.Any(dose => dose.Ingredient.Equals(line.One)) ? 1 : 2)
                .Select(line => new Change(line.One, line.Before, line.After, null, null, Reason(line.One, line.After, from, replaced))),
        ];
    }

    /// <summary>What else there is to say: the timing, what the water, the salt and the sweetness do, how it tastes.</summary>
    /// <param name="from">What was replaced.</param>
    /// <param name="replaced">What was worked out.</param>
    /// <param name="hasFormula">Whether there is a formula whose liquids made up for the water.</param>
    public ImmutableArray<string> Notes(Ingredient from, ReplacedLeavening replaced, bool hasFormula)
    {
        var phrases = Bakehouse.Phrases;
        var water = replaced.WaterLeft.Value;
        var sodium = replaced.SodiumMore.Value;
        var salt = Math.Abs(replaced.SaltMore.Value);
        return
        [
            replaced.TimingWords,
            .. If(water >= KitInBowl.LeastWater, () => phrases.Say(hasFormula ? "replace-water-too-much" : "replace-water-out", ("grams", Grams(water)))),
            .. If(water <= -KitInBowl.LeastWater, () => phrases.Say("replace-water-in", ("grams", Grams(-water)))),
            .. If(sodium > 0 && replaced.SaltIsTasted, () => phrases.Say("replace-sodium-more", ("value", Figure(1000 * sodium, "0")), ("grams", Grams(salt)))),
            .. If(sodium < 0 && replaced.SaltIsTasted, () => phrases.Say("replace-sodium-less", ("value", Figure(-1000 * sodium, "0")), ("grams", Grams(salt)))),
            .. If(Math.Abs(replaced.SweetnessMore.Value) >= SweetnessSaid, () => phrases.Say(
                replaced.SweetnessMore.Value > 0 ? "replace-sweeter" : "replace-less-sweet", ("grams", Grams(Math.Abs(replaced.SweetnessMore.Value))))),
            .. replaced.Doses.Where(dose => dose.FinerStep < FineScale).Select(dose => phrases.Say(
                "replace-fine-scale",
                ("ingredient", dose.Ingredient.Name),
                ("from", from.Name),
                ("grams", NumberWords.Grams(dose.Weighed)),
                ("value", NumberWords.Grams(dose.FinerStep!.Value)))),
            .. Tastes(replaced),
            .. from.Role == Role.LeaveningBlend && new SpoonRule(Bakehouse).Say(replaced) is { } rule ? [rule] : Array.Empty<string>(),
        ];
    }

    /// <summary>What a dose without a formula is called.</summary>
    public string Title(Grams grams, Ingredient from) => Bakehouse.Phrases.Say("replace-title", ("grams", NumberWords.Grams(grams)), ("from", from.Name));

    private string Reason(Ingredient one, Grams after, Ingredient from, ReplacedLeavening replaced)
    {
        var phrases = Bakehouse.Phrases;
        if (one.Equals(from))
        {
            return after == Kitchen.Quantities.Grams.None ? phrases.Say("replace-out") : phrases.Say("replace-stock", ("grams", NumberWords.Grams(after)));
        }

        if (replaced.Doses.FirstOrDefault(dose => dose.Ingredient.Equals(one)) is { } dose)
        {
            var id = one.Role == Role.Acid ? "replace-dose-acid" : one.Role == Role.LeaveningBlend ? "replace-dose-powder" : "replace-dose-base";
            return phrases.Say(id, ("value", Figure(dose.Equivalents.Value, "0.#")), ("from", from.Name));
        }

        var what = Kitchen.Wording.Phrases.List(replaced.Doses.Select(other => other.Ingredient.Name));
        return one.Role switch
        {
            Role.Base => phrases.Say("replace-own-soda", ("to", what)),
            Role.Acid => phrases.Say("replace-own-acid", ("to", what)),
            _ => replaced.WaterMore.Value > 0
                ? phrases.Say("replace-water-brought", ("to", what), ("grams", Grams(replaced.WaterMore.Value)))
                : phrases.Say("replace-water-gone", ("from", from.Name), ("grams", Grams(-replaced.WaterMore.Value))),
        };
    }

    private IEnumerable<string> Tastes(ReplacedLeavening replaced) => replaced.Doses
        .Select(dose => Bakehouse.Rise.Acidity.Chemistry.TryGet(dose.Ingredient, out var leavener)
            ? Bakehouse.Phrases.Say(dose.Ingredient.Role == Role.Base ? "replace-taste-base" : "replace-taste", ("ingredient", dose.Ingredient.Name), ("caution", leavener.Taste))
            : null)
        .OfType<string>();

    private static string Grams(double grams) => NumberWords.Grams(new Grams(Math.Round(grams, grams < 10 ? 1 : 0)));

    private static string Figure(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private static IEnumerable<string> If(bool holds, Func<string> sentence) => holds ? [sentence()] : [];
}
