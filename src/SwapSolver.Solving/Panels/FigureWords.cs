using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Solving.Panels;

/// <summary>A printed figure as a sentence says it.</summary>
/// <param name="Given">The panel.</param>
/// <param name="Phrases">The words.</param>
internal sealed record FigureWords(PanelCase Given, Phrases Phrases)
{
    /// <summary>The serving, as "the serving of 30 g"; "100 g" where the panel is for that.</summary>
    public string Serving => Given.Panel.IsPerHundredGrams
        ? $"{Given.Panel.Serving.Text} g"
        : Phrases.Say("panel-serving", ("value", $"{Given.Panel.Serving.Text} g"));

    /// <summary>A line, as "fat 3.5 g".</summary>
    public string Of(PanelLine line) => $"{Given.Law.Words[line].Name} {Printed(line)}";

    /// <summary>Its figure, as "3.5 g".</summary>
    public string Printed(PanelLine line) => $"{Given.Panel.Figures[line].Text} {Given.Law.Words[line].Unit}";

    /// <summary>Several lines, and the serving, in one breath.</summary>
    public string List(IEnumerable<PanelLine> lines, bool serving) =>
        Phrases.List([.. lines.Order().Select(Of), .. serving ? new[] { Serving } : []]);
}
