using System.Collections.Immutable;
using SwapSolver.Asking.Grammar;
using SwapSolver.Asking.Sizes;
using SwapSolver.Asking.Text;
using SwapSolver.Asking.Things;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking;

/// <summary>Makes one understanding of the clauses of a question.</summary>
internal sealed partial class Reading(
    QuestionWords words,
    OvenDials dials,
    Phrases sentences,
    ThingMeaning meaning,
    Formula formula,
    string question,
    ImmutableArray<Lexeme> lexemes,
    ImmutableArray<Clause> clauses,
    ImmutableArray<Lexeme> notRead,
    ImmutableArray<string> spelt,
    ImmutableArray<string> amounts)
{
    /// <summary>Classes of words that turn what is asked: left unread, nothing is sure.</summary>
    private static readonly ImmutableArray<string> Turning =
        ["not", "hard", "health", "claim", "raw", "animals", "below", "above", "less", "more", "orless", "ormore", "between", "bigger", "gas", "hold", "howlong", "goal", "free", "round", "perword", Lexeme.Count];

    /// <summary>Classes of words with which something dangerous may be asked: the caution goes with the refusal.</summary>
    private static readonly ImmutableArray<string> Cautioned = ["health", "claim", "raw", "animals"];

    private readonly SizeReader sizes = new(words, dials, sentences);

    private readonly TargetClauses targets = new(sentences);

    private readonly List<string> assumed = [.. spelt];

    private readonly List<string> problems = [];

    private readonly List<Lexeme> unread = [.. notRead];

    private readonly List<AskedTarget> wanted = [];

    private Understanding told = new();

    /// <summary>So many times fewer slices than the formula has are hardly another size.</summary>
    private const int FewOf = 3;

    /// <summary>Words of how many eggs fewer.</summary>
    private static readonly ImmutableArray<string> OneFewer = ["one", "an egg"];

    private static readonly ImmutableArray<string> Whole = ["loaves", "cakes", "breads"];

    private bool isTurned;

    private bool isMadeOf;

    private Clause? rescaled;

    /// <summary>How the question is understood.</summary>
    public Understanding Understand()
    {
        ReadSizes();
        rescaled = ReadRescale();
        // Who says how large has said what a bigger one is.
        foreach (var clause in clauses.Where(clause => clause != rescaled).Where(clause => clause.IsNegated || (clause.Means == "UNSUPPORTED" && !(clause.First("bigger") is not null && told.IsSized))))
        {
            isTurned |= !clause.IsNegated;
            problems.Add(sentences.Say(clause.IsNegated ? "asked-negated" : "asked-unsupported", ("words", clause.Words)));
            problems.AddRange(Cautioned.Where(care => clause.First(care) is not null).Select(care => sentences.Say($"asked-{care}")));
        }

        ReadTargets();
        ReadBareFigures();
        ReadWhatFor();
        told = told with { Without = [.. All("WITHOUT").SelectMany(LeftOutBy).DistinctBy(wish => wish.Id)] };
        foreach (var clause in All("WITHOUT").Where(clause => clause.First("contains") is not null || clause.First("need") is not null || clause.First("needed") is not null))
        {
            if (clause.First("needed") is { } needed && !question.Contains('?', StringComparison.Ordinal) && !IsAskedBefore(needed))
            {
                // That vanilla is essential is no question.
                isTurned = true;
                problems.Add(sentences.Say("asked-keep", ("words", clause.Words)));
                continue;
            }

            assumed.Add(sentences.Say("asked-whether-without", ("words", clause.Words)));
        }

        told = told with { Diet = All("DIET").Select(clause => clause.First("diet")!.Means("diet")).FirstOrDefault(string.Empty) };
        ReadSwap();
        ReadLoneCount();
        var kind = IsMeasure() ? ReadMeasure() : KindOf();
        if (kind is not (QuestionKind.Convert or QuestionKind.NotUnderstood) && All("CONVERT").ToList() is { Count: > 0 } converted)
        {
            problems.Add(sentences.Say("asked-not-read", ("words", Phrases.List(converted.Select(clause => clause.Words)))));
        }

        if (kind == QuestionKind.Convert && All("BAKE", "WITHOUT", "DIET", "REPLACE", "LACK").ToList() is { Count: > 0 } besides)
        {
            problems.Add(sentences.Say("asked-not-read", ("words", Phrases.List(besides.Select(clause => clause.Words)))));
        }

        if (kind == QuestionKind.Bake)
        {
            ReadBesidesBaking();
        }

        ReadRest();
        problems.InsertRange(0, meaning.Problems);
        assumed.AddRange(meaning.Assumed);
        return kind == QuestionKind.NotUnderstood || isTurned ? NotUnderstood() : told with
        {
            Kind = kind,
            Targets = [.. wanted.DistinctBy(target => target.Name)],
            Assumed = [.. assumed.Distinct()],
            Problem = string.Join(' ', problems.Distinct()),
        };
    }

    private Understanding NotUnderstood()
    {
        problems.Add(sentences.Say("asked-what-can-be"));
        return new Understanding { Problem = string.Join(' ', problems.Distinct()) };
    }

    private IEnumerable<Clause> All(params ReadOnlySpan<string> means)
    {
        var wantedMeans = means.ToArray();
        return clauses.Where(clause => !clause.IsNegated && wantedMeans.Contains(clause.Means));
    }

    private void ReadTargets()
    {
        foreach (var clause in All("TARGET_BELOW", "TARGET_ABOVE", "TARGET_BETWEEN", "TARGET_PLAIN", "EGGS", "EGGS_MOST", "GOAL", "LESS", "MORE").Where(clause => clause != rescaled))
        {
            var target = clause.Means switch
            {
                "GOAL" => new AskedTarget(clause.First("goal")!.Means("goal"), null, null),
                "LESS" or "MORE" => TargetClauses.Word(clause),
                "EGGS" or "EGGS_MOST" => TargetClauses.EggsOf(clause),
                _ => targets.Figures(clause, formula, told.IsSized, assumed),
            };
            if (target is null)
            {
                isTurned = true;
                problems.Add(sentences.Say("asked-unsupported", ("words", clause.Words)));
            }
            else
            {
                wanted.Add(target);
            }

            if (clause.Means == "EGGS_MOST" && clause.First("only") is not null)
            {
                assumed.Add(sentences.Say("asked-eggs-had", ("words", clause.Words)));
            }

            if (clause.First("goal") is { } goal && goal.Text.Contains("egg", StringComparison.Ordinal) && OneFewer.Any(word => goal.Text.Contains(word, StringComparison.Ordinal)))
            {
                assumed.Add(sentences.Say("asked-fewer-eggs", ("words", goal.Text)));
            }
        }
    }

    /// <summary>A figure that stands apart from what it is a figure of, as in 'more fibre: 4 g or better'.</summary>
    private void ReadBareFigures()
    {
        var bare = All("BARE_BELOW", "BARE_ABOVE", "BARE_TO").ToList();
        if (bare.Count == 0)
        {
            return;
        }

        var loose = unread.Where(lexeme => lexeme.Is("reading")).ToList();
        var readings = All("LESS", "MORE", "GOAL", "BARE_TO").SelectMany(clause => clause.All("reading").Concat(clause.All("goal")).Concat(clause.All("figured"))).Concat(loose).Where(lexeme => TargetClauses.ReadingOf(lexeme).Length > 0).ToList();
        var isOne = bare is [_] && readings.Count > 0 && readings.Select(TargetClauses.ReadingOf).Distinct().Count() == 1;
        var isMore = All("MORE").Any() || readings.Any(TargetClauses.IsGreater);
        var means = bare[0].Means == "BARE_TO" ? (isMore ? "BARE_ABOVE" : "BARE_BELOW") : bare[0].Means;
        if (!isOne || targets.Figures(new Clause(means, [.. bare[0].Parts, new Filled("reading", readings[0])], IsNegated: false), formula, told.IsSized, assumed) is not { } target)
        {
            unread.AddRange(bare.SelectMany(clause => clause.Parts).Select(part => part.Lexeme));
            return;
        }

        unread.RemoveAll(loose.Contains);
        wanted.Add(target);
    }

    /// <summary>What a figure is for where it is not sure: two slices under 3 g may be two slices together, and the whole loaf is not a slice.</summary>
    private void ReadWhatFor()
    {
        if (!wanted.Any(target => target.Low is not null || target.High is not null))
        {
            return;
        }

        if (told.Slices is { } few && few * FewOf <= formula.Slices)
        {
            isTurned = true;
            problems.Add(sentences.Say("asked-slices-figure", ("count", few.ToString(System.Globalization.CultureInfo.InvariantCulture))));
        }

        if ((told.Slices is null || told.Slices == formula.Slices) && All("TARGET_BELOW", "TARGET_ABOVE", "TARGET_BETWEEN", "TARGET_PLAIN", "BARE_BELOW", "BARE_ABOVE", "BARE_TO").FirstOrDefault(clause => clause.First("per") is null) is { } bare
            && (lexemes.Any(lexeme => lexeme.Text == "all") || lexemes.Any(lexeme => lexeme.Is("loaf") && lexeme.Thing is null)))
        {
            assumed.Add(sentences.Say("asked-for-a-slice", ("words", bare.Words)));
        }

        foreach (var whole in unread.Where(lexeme => lexeme.Is("per") && lexeme.Means("per") != "slice"))
        {
            isTurned = true;
            problems.Add(sentences.Say("asked-not-read", ("words", whole.Text)));
        }
    }

    private IEnumerable<LeftOutWish> LeftOutBy(Clause clause)
    {
        var isAllergy = clause.Parts.Any(part => part.Lexeme.Is("bodily")) || unread.Any(lexeme => lexeme.Is("bodily"));
        var named = clause.All("without").ToList();
        if (named.Count > 1 && clause.First("both")?.Text == "either")
        {
            assumed.Add(sentences.Say("asked-list", ("words", Phrases.List(named.Select(lexeme => lexeme.Text)))));
        }

        if (named.Count == 2 && JoinsBetween(named[0], named[1]).All(join => join.Text == ","))
        {
            // Two names with a comma between may be one that goes and one that comes.
            assumed.Add(sentences.Say("asked-list", ("words", $"{named[0].Text}, {named[1].Text}")));
        }

        return named.SelectMany(lexeme => meaning.LeftOut(lexeme, isAllergy));
    }

    private bool IsAskedBefore(Lexeme word) => lexemes.TakeWhile(lexeme => !ReferenceEquals(lexeme, word)).Any(lexeme => lexeme.Thing is null && lexeme.Is("ask") && !lexemes.TakeWhile(other => !ReferenceEquals(other, lexeme)).Any(other => other.Thing is not null));

    private IEnumerable<Lexeme> JoinsBetween(Lexeme first, Lexeme last) =>
        lexemes.SkipWhile(lexeme => !ReferenceEquals(lexeme, first)).TakeWhile(lexeme => !ReferenceEquals(lexeme, last)).Where(lexeme => lexeme.Is("join"));

    private QuestionKind KindOf()
    {
        if (told.Factor is > 1 && All("BAKE", "HOW_LONG").Any() && lexemes.FirstOrDefault(lexeme => lexeme.Is("factor") && Whole.Any(word => lexeme.Text.EndsWith(word, StringComparison.Ordinal))) is { } loaves)
        {
            assumed.Add(sentences.Say("asked-side-by-side", ("words", loaves.Text)));
            told = told with { Factor = null };
        }

        if (told.Tin is null && formula.Shape is not (Tin or Pieces) && lexemes.FirstOrDefault(lexeme => lexeme.Is("tin")) is { } tin && All("BAKE", "HOW_LONG").Any())
        {
            isTurned = true;
            problems.Add(sentences.Say("asked-unsupported", ("words", tin.Text)));
            return QuestionKind.NotUnderstood;
        }

        if (formula.Shape is not Pieces && lexemes.FirstOrDefault(lexeme => lexeme.Is("single")) is { } single && All("BAKE", "HOW_LONG").Any())
        {
            // Rolls made of a loaf's dough bake otherwise than the loaf does.
            isTurned = true;
            problems.Add(sentences.Say("asked-unsupported", ("words", single.Text)));
            return QuestionKind.NotUnderstood;
        }

        if (told.Factor is > 1 && lexemes.FirstOrDefault(lexeme => lexeme.Is("eachone")) is { } each && All("BAKE", "HOW_LONG").Any())
        {
            // Two loaves side by side are not one of twice the size.
            isTurned = true;
            problems.Add(sentences.Say("asked-unsupported", ("words", each.Text)));
            return QuestionKind.NotUnderstood;
        }

        if (All("BAKE").Any() || (All("HOW_LONG").Any() && (All("HOW_LONG").Any(clause => clause.First("bakeword") is not null) || All("BAKE_WORD").Any() || told.OvenCelsius is not null || told.IsSized || unread.Any(lexeme => lexeme.Is("fan")))))
        {
            return QuestionKind.Bake;
        }

        if (All("HOW_LONG").Any(clause => clause.First("howlong")!.Text != "time") || (told.OvenCelsius is not null && clauses.All(clause => clause.Means is "OVEN" or "GAS" or "BAKE_WORD")))
        {
            isTurned = true;
            problems.Add(sentences.Say("asked-how-long"));
            return QuestionKind.NotUnderstood;
        }

        if (told.From.Length > 0)
        {
            return told.To.Length > 0 && !isMadeOf && (IsDoubted() || told.AlsoFrom.Length > 0) ? QuestionKind.Check : QuestionKind.Replace;
        }

        if (All("TO").FirstOrDefault() is { } only && told.Without.IsEmpty)
        {
            problems.Add(sentences.Say("asked-in-place-of-what", ("thing", only.First("to")!.Text)));
            return QuestionKind.NotUnderstood;
        }

        return !told.Without.IsEmpty || told.Diet.Length > 0 ? QuestionKind.Variant
            : told.IsSized ? QuestionKind.Resize
            : wanted.Count > 0 ? QuestionKind.Reformulate
            : QuestionKind.NotUnderstood;
    }

    /// <summary>Whether a swap is asked about, and not asked for.</summary>
    private bool IsDoubted() => All("TO", "REPLACE").Any(clause => clause.First("only") is not null)
        || (!lexemes.Any(lexeme => lexeme.Is("how")) && (lexemes.Any(lexeme => lexeme.Is("ask")) || question.Contains('?', StringComparison.Ordinal)));

    /// <summary>A time to bake is told of the loaf in its size, and of no other change.</summary>
    private void ReadBesidesBaking()
    {
        ImmutableArray<string> besides =
        [
            .. All("REPLACE", "LACK", "TO", "WITHOUT", "DIET", "GOAL", "LESS", "MORE", "EGGS", "EGGS_MOST", "TARGET_BELOW", "TARGET_ABOVE", "TARGET_BETWEEN", "TARGET_PLAIN")
                .Select(clause => clause.Words),
        ];
        if (besides.IsEmpty)
        {
            return;
        }

        problems.Add(sentences.Say("asked-bake-besides", ("words", Phrases.List(besides))));
        told = told with { From = string.Empty, AlsoFrom = string.Empty, To = string.Empty, Without = [], Diet = string.Empty };
        wanted.Clear();
    }

    private bool IsMeasure() =>
        (All("MEASURE").Any() && (All("CONVERT").Any() || clauses.All(clause => clause.Means is "MEASURE" or "BAKE_WORD")))
        || (All("CONVERT").Any() && told.From.Length == 0 && told.Without.IsEmpty && OnlyThingUnread() is not null);

    private QuestionKind ReadMeasure()
    {
        if (All("MEASURE").FirstOrDefault() is { } clause)
        {
            var many = clause.First(Lexeme.Count)?.Text ?? "1";
            var measure = clause.First("measure")!.Means("measure");
            told = told with { Text = char.IsAsciiDigit(measure[0]) ? $"{measure} {clause.First("thing")!.Text}" : $"{many} {measure} {clause.First("thing")!.Text}" };
            return QuestionKind.Convert;
        }

        var thing = OnlyThingUnread()!;
        var count = unread.FirstOrDefault(lexeme => lexeme.Is(Lexeme.Count));
        unread.Remove(thing);
        unread.RemoveAll(lexeme => lexeme == count);
        told = told with { Text = $"{count?.Text ?? "1"} {thing.Text}" };
        return QuestionKind.Convert;
    }

    /// <summary>Says what was not read, and whether it can turn what is asked.</summary>
    private void ReadRest()
    {
        if (!amounts.IsEmpty)
        {
            problems.Add(sentences.Say("asked-amount", ("words", Phrases.List(amounts))));
        }

        if (All("KEEP").Any())
        {
            problems.Add(sentences.Say("asked-keep", ("words", Phrases.List(All("KEEP").Select(clause => clause.Words)))));
        }

        if (told.To.Length == 0 && told.From.Length == 0 && All("TO").Any())
        {
            problems.Add(sentences.Say("asked-not-read", ("words", Phrases.List(All("TO").Select(clause => clause.Words)))));
        }

        if (told.OvenCelsius is not null && !All("BAKE", "HOW_LONG").Any())
        {
            problems.Add(sentences.Say("asked-not-read", ("words", string.Join(' ', All("OVEN", "GAS").Select(clause => clause.Words)))));
        }

        var rest = unread.Where(lexeme => !lexeme.MayBeUnread && !IsSaidAlready(lexeme) && !IsAmountOfSize(lexeme) && !(lexeme.Is("bodily") && !told.Without.IsEmpty)).ToList();
        if (rest.Count == 0)
        {
            return;
        }

        // A name that stands in no clause may be what somebody cannot eat; a word beside a measure, or beside a swap that says
        // not what comes in, may belong to it.
        isTurned |= rest.Any(lexeme => Turning.Any(lexeme.Is) || lexeme.Thing is not null || IsBeforeLimit(lexeme)) || told.Text.Length > 0 || (told.To.Length == 0 && IsInsteadOf() && rest.Any(lexeme => lexeme.Is(Lexeme.Unknown) && IsInSentenceOfSwap(lexeme)));
        problems.Add(sentences.Say("asked-not-read", ("words", string.Join(", ", rest.Select(lexeme => lexeme.Text)))));
    }

    /// <summary>Whether a word unread denies the limit behind it: what I cannot have more than is at most that.</summary>
    private bool IsBeforeLimit(Lexeme lexeme) =>
        (lexeme.Is("out") || lexeme.Is("lack"))
        && lexemes.SkipWhile(other => !ReferenceEquals(other, lexeme)).Skip(1).FirstOrDefault(other => !other.MayBeSkipped) is { } next && (next.Is("below") || next.Is("above") || next.Is("slice"));

    /// <summary>Whether something unread is named that is left out anyway, as in 'no egg please: I get hives from egg'.</summary>
    private bool IsSaidAlready(Lexeme lexeme) =>
        lexeme.Thing is not null && meaning.LeftOut(lexeme, isAllergy: false).ToList() is { Count: > 0 } wishes && wishes.All(wish => told.Without.Any(other => other.Id == wish.Id));

    /// <summary>Whether the amount of one line is asked for in another size: the amounts of all are told.</summary>
    private bool IsAmountOfSize(Lexeme lexeme) =>
        told.IsSized && lexeme.Thing is not null && meaning.IsOwn(lexeme.Thing)
        && lexemes.TakeWhile(other => !ReferenceEquals(other, lexeme)).LastOrDefault(other => other.Text is not ("of" or "the")) is { Text: "how much" or "how many" };
}
