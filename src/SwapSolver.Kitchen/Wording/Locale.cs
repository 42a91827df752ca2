using System.Collections.Immutable;

namespace SwapSolver.Kitchen.Wording;

/// <summary>How one language and region write numbers and temperatures.</summary>
/// <param name="Id">Its id, as <c>de-DE</c>.</param>
/// <param name="DecimalSign">The sign between whole and parts.</param>
/// <param name="IsFahrenheitFirst">Whether Fahrenheit comes first.</param>
/// <param name="LawId">Whose law on labels is taken where none is named.</param>
public sealed record Locale(string Id, string DecimalSign, bool IsFahrenheitFirst, string LawId);

/// <summary>The locales that are known, from <c>data/wording/locales.json</c>.</summary>
/// <param name="All">The locales; the first is used where none is named.</param>
public sealed record Locales(ImmutableArray<Locale> All)
{
    /// <summary>What is written where nobody names a locale: a point, Celsius first, the label of the United States.</summary>
    public static readonly Locale Usual = new("en", ".", false, "us");

    /// <summary>The locale of an id, or the first of its language; null where neither is known.</summary>
    /// <param name="id">As <c>de-DE</c>, <c>de_de</c> or <c>de</c>.</param>
    public Locale? Find(string id)
    {
        var plain = id.Trim().Replace('_', '-');
        return All.FirstOrDefault(locale => locale.Id.Equals(plain, StringComparison.OrdinalIgnoreCase))
            ?? (plain.Contains('-', StringComparison.Ordinal) ? null : All.FirstOrDefault(locale => locale.Id.StartsWith($"{plain}-", StringComparison.OrdinalIgnoreCase)));
    }
}
