using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Solving.Answers;

namespace SwapSolver.Solving.Panels;

/// <summary>Says why figures cannot be true together.</summary>
/// <param name="Solve">The solving.</param>
/// <param name="Phrases">The words.</param>
internal sealed record PanelClashWords(PanelSolve Solve, Phrases Phrases)
{
    private static readonly ImmutableArray<PanelLine> Energies = [PanelLine.EnergyKcal, PanelLine.EnergyKilojoules];

    private readonly FigureWords words = new(Solve.Given, Phrases);

    /// <summary>Wholes, each with what lies within it. Fibre lies within carbohydrate where the law says so.</summary>
    private ImmutableArray<(PanelLine Whole, ImmutableArray<PanelLine> Parts)> Wholes =>
    [
        (PanelLine.Fat, [PanelLine.SaturatedFat]),
        (PanelLine.Polyols, [PanelLine.Erythritol]),
        (
            PanelLine.Carbohydrate,
            [
                PanelLine.Sugars, PanelLine.Starch, PanelLine.Polyols, PanelLine.Erythritol, PanelLine.Allulose,
                .. Solve.Given.Law.CarbohydrateHoldsFibre ? new[] { PanelLine.Fibre } : [],
            ]),
    ];

    /// <summary>Whether the weight of the serving is one of the figures; 100 g by definition are none.</summary>
    private bool IsServingSaid(PanelHolds clash) => clash.Serving && !Solve.Given.Panel.IsPerHundredGrams;

    /// <summary>The sentence of a smallest set.</summary>
    /// <exception cref="TimeoutException">Time ran out.</exception>
    public string Say(PanelHolds clash)
    {
        var lines = clash.Lines;
        var others = lines.Except(Energies);
        var energies = lines.Except(others);
        return (energies.Count, others.Count) switch
        {
            (2, 0) when !IsServingSaid(clash) => Two(lines, "panel-clash-energies"),
            (1, _) => Energy(clash, energies.Single()),
            (0, _) => Masses(clash),
            _ => Phrases.Say("panel-clash", ("figures", words.List(lines, IsServingSaid(clash)))),
        };
    }

    private string Two(ImmutableHashSet<PanelLine> lines, string phrase) =>
        Phrases.Say(phrase, ("value", words.Of(lines.Min())), ("limit", words.Of(lines.Max())));

    private string Masses(PanelHolds clash)
    {
        var lines = clash.Lines;
        if (lines.SetEquals([PanelLine.Salt, PanelLine.Sodium]))
        {
            return Two(lines, "panel-clash-salt");
        }

        foreach (var (whole, parts) in IsServingSaid(clash) ? [] : Wholes)
        {
            if (lines.Contains(whole) && lines.Count > 1 && lines.Remove(whole).IsSubsetOf(parts))
            {
                return Above(lines.Remove(whole), "panel-clash-part", "panel-clash-parts", words.Of(whole));
            }
        }

        return clash.Serving || Solve.Given.Panel.IsPerHundredGrams
            ? Above(lines, "panel-clash-more", "panel-clash-sum", words.Serving)
            : Phrases.Say("panel-clash", ("figures", words.List(lines, serving: false)));
    }

    private string Above(ImmutableHashSet<PanelLine> lines, string one, string many, string whole) =>
        Phrases.Say(lines.Count == 1 ? one : many, ("figures", words.List(lines, serving: false)), ("limit", whole));

    /// <summary>What the other figures give, for the very serving.</summary>
    private string Energy(PanelHolds clash, PanelLine energy)
    {
        var others = clash.Without(energy);
        var (low, high) = Solve.Ends(others, PanelNorm.Serving, family: false, Fact.Energy);
        var interval = Solve.Given.IntervalOf(energy);
        var ratio = Solve.Given.Rules.Energy.KilojoulesPerKcal;
        var isKilojoules = energy == PanelLine.EnergyKilojoules;
        var (least, most) = isKilojoules ? (low * ratio.Low, high * ratio.High) : (low, high);
        var isTooLow = interval.High < least;
        var limit = NumberWords.Level(new Level(isTooLow ? Math.Floor(least) : Math.Ceiling(most)));
        return Phrases.Say(
            isTooLow ? "panel-clash-energy-low" : "panel-clash-energy-high",
            ("value", words.Of(energy)),
            ("figures", words.List(others.Lines, IsServingSaid(clash) || others.Lines.IsEmpty)),
            ("limit", $"{limit} {Solve.Given.Law.Words[energy].Unit}"));
    }
}
