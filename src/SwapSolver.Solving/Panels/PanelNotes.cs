using System.Collections.Immutable;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Panels;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Solving.Panels;

/// <summary>Says what was taken for granted when a panel was read.</summary>
/// <param name="Given">The panel.</param>
/// <param name="Phrases">The words.</param>
internal sealed record PanelNotes(PanelCase Given, Phrases Phrases)
{
    /// <summary>Lines that every reader asks for; the rest is named only where something was taken for it.</summary>
    private static readonly ImmutableArray<PanelLine> Asked =
    [
        PanelLine.EnergyKcal, PanelLine.Fat, PanelLine.SaturatedFat, PanelLine.Carbohydrate, PanelLine.Fibre, PanelLine.Sugars,
        PanelLine.Protein, PanelLine.Salt, PanelLine.Sodium, PanelLine.Potassium, PanelLine.Calcium, PanelLine.Iron,
    ];

    private static readonly ImmutableArray<PanelLine> OnlyWhereSaid = [PanelLine.Polyols, PanelLine.Allulose];

    /// <summary>The notes.</summary>
    /// <param name="figures">What came of the panel.</param>
    /// <param name="familyGaveWay">Whether the printed figures do not fit what the like may be.</param>
    public IEnumerable<string> Of(ImmutableDictionary<Fact, Figure> figures, bool familyGaveWay)
    {
        var like = Given.Like?.Name ?? string.Empty;
        if (familyGaveWay)
        {
            yield return Phrases.Say("panel-note-unlike", ("like", like));
        }

        var missing = Enum.GetValues<PanelLine>().Where(line => line != OtherWord && !Given.IsPrinted(PanelFacts.FactOf(line))).ToList();
        var taken = missing.Where(line => figures.TryGetValue(PanelFacts.FactOf(line), out var figure) && figure.Source == Given.Foods.LikeSource);
        if (Names(taken) is { Length: > 0 } after)
        {
            yield return Phrases.Say("panel-note-like", ("figures", after), ("like", like));
        }

        var unknown = missing.Where(line => Asked.Contains(line) && !figures.ContainsKey(PanelFacts.FactOf(line)) && !IsNoneByNature(line));
        if (Names(unknown) is { Length: > 0 } left)
        {
            yield return Phrases.Say("panel-note-unknown", ("figures", left));
        }

        var none = OnlyWhereSaid.Where(line => !Given.MayHold(PanelFacts.FactOf(line)));
        if (Given.IsPrinted(Fact.Carbohydrate) && Given.Like is null && Names(none) is { Length: > 0 } absent)
        {
            yield return Phrases.Say("panel-note-none", ("figures", absent));
        }
    }

    /// <summary>Salt and sodium are one thing, which each law has its own word for.</summary>
    private PanelLine OtherWord => Given.Panel.Basis == PanelBasis.UnitedStates ? PanelLine.Salt : PanelLine.Sodium;

    private bool IsNoneByNature(PanelLine line) => Given.Like?.NoneByNature.Contains(PanelFacts.FactOf(line)) == true;

    private string Names(IEnumerable<PanelLine> lines) => Phrases.List(lines.Select(line => Given.Law.Words[line].Name).Distinct());
}
