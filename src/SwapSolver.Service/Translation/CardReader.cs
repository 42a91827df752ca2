using SwapSolver.Cards;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Service.Faults;
using SwapSolver.V1;

namespace SwapSolver.Service.Translation;

/// <summary>Reads what is asked of a card, and names everything that is wrong with it.</summary>
internal sealed class CardReader(CardRoom room, Subject subject, ProblemList problems)
{
    private const int MostVersionLetters = 100;

    /// <summary>The wishes; null where there are problems.</summary>
    /// <param name="request">The request.</param>
    /// <param name="formula">The formula that it is about; null where it could not be read.</param>
    public CardWishes? Read(PrintCardRequest request, Kitchen.Formulas.Formula? formula)
    {
        var locale = LocaleOf(request.Locale);
        var label = new LabelReader(room.Laws, problems);
        var law = label.LawOf(request.Label, locale.LawId);
        var method = label.Method(request.EnergyMethod, law);
        var serving = label.ServingSlices(request, formula);
        var system = MeasureSystems.Read(request.Measures, "measures", problems);
        var origin = request.VariantOf is { } of ? subject.ReadAsGiven(of.Name, of.Formula, problems, "variantOf.formula") : null;
        if (!Enum.IsDefined(request.Format))
        {
            problems.Add("format", request.Format.ToString(), "is no way to print a card", "give MARKDOWN, HTML, JSONLD, CSV, SVG or LABEL_ONLY");
        }

        if (request.Version.Length > MostVersionLetters)
        {
            problems.Add("version", request.Version, $"has {request.Version.Length} letters", $"give at most {MostVersionLetters}");
        }

        return law is null || method is null ? null : new CardWishes(law, method, serving, system, locale, request.Version, origin?.Formula);
    }

    /// <summary>How numbers are written.</summary>
    /// <param name="id">Id of a locale; empty where none is said.</param>
    public Locale LocaleOf(string id)
    {
        if (string.IsNullOrWhiteSpace(id))
        {
            return Locales.Usual;
        }

        if (room.Locales.Find(id) is { } known)
        {
            return known;
        }

        problems.Add("locale", id, "is no language and region that is known", NearestNames.WayOut(id, room.Locales.All.Select(locale => locale.Id)));
        return Locales.Usual;
    }
}
