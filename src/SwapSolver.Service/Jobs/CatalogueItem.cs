using SwapSolver.V1;
using Diet = SwapSolver.V1.VaryFormulaRequest.Types.Diet;

namespace SwapSolver.Service.Jobs;

/// <summary>One thing that a catalogue job asks of a formula: a variant, or a pair of its chart. As text it stands in the
/// shard that it belongs to, so that it stays the same whatever is written down while the job goes on.</summary>
/// <param name="Without">What is left out; empty where it is no such variant.</param>
/// <param name="Diet">The way of eating; unspecified where it is no such variant.</param>
/// <param name="From">Id of what goes out of a pair; empty where it is none.</param>
/// <param name="To">Id of what comes in; empty where nothing does.</param>
internal sealed record CatalogueItem(string Without, Diet Diet, string From, string To)
{
    private const char Between = ':';

    private const string WithoutWord = "without", DietWord = "diet", PairWord = "pair";

    /// <summary>A formula that cannot be read: it has one item, which says why.</summary>
    public static readonly CatalogueItem Unread = new(string.Empty, Diet.Unspecified, string.Empty, string.Empty);

    public static CatalogueItem OfWithout(string word) => Unread with { Without = word };

    public static CatalogueItem OfDiet(Diet diet) => Unread with { Diet = diet };

    public static CatalogueItem OfPair(string from, string to) => Unread with { From = from, To = to };

    /// <summary>The item of a text.</summary>
    public static CatalogueItem Read(string text) => text.Split(Between) switch
    {
        [WithoutWord, var word] => OfWithout(word),
        [DietWord, var diet] => OfDiet(Enum.Parse<Diet>(diet)),
        [PairWord, var from, var to] => OfPair(from, to),
        _ => Unread,
    };

    /// <summary>The item as text.</summary>
    public string Write() => this switch
    {
        { Without.Length: > 0 } => $"{WithoutWord}{Between}{Without}",
        { Diet: not Diet.Unspecified } => $"{DietWord}{Between}{Diet}",
        { From.Length: > 0 } => $"{PairWord}{Between}{From}{Between}{To}",
        _ => string.Empty,
    };

    /// <summary>The item as its result names it.</summary>
    public JobItem Named(string formula) => new() { Formula = formula, Without = Without, Diet = Diet, From = From, To = To };
}
