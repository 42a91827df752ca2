using System.Collections.Immutable;
using System.Globalization;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Kitchen.Panels;

/// <summary>Reads the texts of a panel. Whether the figures can be true together is not its question.</summary>
/// <param name="Rules">The rules of panels.</param>
/// <param name="Phrases">The words.</param>
public sealed record PanelReader(PanelRules Rules, Phrases Phrases)
{
    /// <summary>What a problem of the serving's weight is called.</summary>
    public const string Serving = "serving";

    /// <summary>What a problem of all figures is called.</summary>
    public const string Figures = "figures";

    /// <summary>The panel, or every mistake that is in it.</summary>
    /// <param name="basis">Whose law it follows.</param>
    /// <param name="serving">What the figures are for [g], as printed: above 0, at most what the rules allow.</param>
    /// <param name="figures">The figures as printed, without units; lines that are not printed are left out.</param>
    public PanelReading Read(PanelBasis basis, string serving, IReadOnlyDictionary<PanelLine, string> figures)
    {
        var problems = ImmutableArray.CreateBuilder<PanelProblem>();
        var weight = ServingOf(serving, problems);
        var read = ImmutableDictionary.CreateBuilder<PanelLine, PrintedFigure>();
        foreach (var (line, text) in figures.OrderBy(pair => pair.Key))
        {
            if (PrintedFigure.TryRead(text, out var figure))
            {
                read.Add(line, figure);
            }
            else
            {
                problems.Add(new PanelProblem(
                    Rules.IdOf(line), text, Phrases.Say("panel-no-figure"), Phrases.Say("panel-no-figure-way-out")));
            }
        }

        if (figures.Count == 0)
        {
            problems.Add(new PanelProblem(Figures, string.Empty, Phrases.Say("panel-empty"), Phrases.Say("panel-empty-way-out")));
        }

        return weight is null || problems.Count > 0
            ? new PanelReading(null, problems.ToImmutable())
            : new PanelReading(new NutritionPanel(basis, weight, read.ToImmutable()), []);
    }

    private PrintedFigure? ServingOf(string text, ImmutableArray<PanelProblem>.Builder problems)
    {
        if (!PrintedFigure.TryRead(text, out var figure))
        {
            problems.Add(new PanelProblem(Serving, text, Phrases.Say("panel-no-figure"), Phrases.Say("panel-no-figure-way-out")));
            return null;
        }

        var most = Rules.MostServing.Value;
        if (figure.IsLessThan || figure.Value.Value <= 0 || figure.Value.Value > most)
        {
            problems.Add(new PanelProblem(
                Serving,
                text,
                Phrases.Say("panel-no-serving", ("limit", most.ToString(CultureInfo.InvariantCulture))),
                Phrases.Say("panel-no-serving-way-out")));
            return null;
        }

        return figure;
    }
}
