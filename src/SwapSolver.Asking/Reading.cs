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
internal sealed class Reading(
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
        ["not", "hard", "health", "claim", "raw", "animals", "below", "above", "less", "more", "orless", "ormore", "between", "bigger", "gas", "hold", "howlong", "goal", "free", "round", Lexeme.Count];

    /// <summary>Classes of words with which something dangerous may be asked: the caution goes with the refusal.</summary>
    private static readonly ImmutableArray<string> Cautioned = ["health", "claim", "raw", "animals"];

    /// <summary>Parts of a swap that say for certain which of two things goes out.</summary>
    private static readonly ImmutableArray<string> Directed = ["only", "out", "andno", "not"];

    private readonly SizeReader sizes = new(words, dials, sentences);

    private readonly TargetClauses targets = new(sentences);

    private readonly List<string> assumed = [.. spelt];

    private readonly List<string> problems = [];

    private readonly List<Lexeme> unread = [.. notRead];

    private readonly List<AskedTarget> wanted = [];

    private Understanding told = new();

    private bool isTurned;

    /// <summary>How the question is understood.</summary>
    public Understanding Understand()
    {
        ReadSizes();
        // Who says how large has said what a bigger one is.
        foreach (var clause in clauses.Where(clause => clause.IsNegated || (clause.Means == "UNSUPPORTED" && !(clause.First("bigger") is not null && told.IsSized))))
        {
            isTurned |= !clause.IsNegated;
            problems.Add(sentences.Say(clause.IsNegated ? "asked-negated" : "asked-unsupported", ("words", clause.Words)));
            problems.AddRange(Cautioned.Where(care => clause.First(care) is not null).Select(care => sentences.Say($"asked-{care}")));
        }

        ReadTargets();
        told = told with { Without = [.. All("WITHOUT").SelectMany(clause => clause.All("without")).SelectMany(meaning.LeftOut).DistinctBy(wish => wish.Id)] };
        foreach (var clause in All("WITHOUT").Where(clause => clause.First("contains") is not null || clause.First("need") is not null || clause.First("needed") is not null))
        {
            assumed.Add(sentences.Say("asked-whether-without", ("words", clause.Words)));
        }

        told = told with { Diet = All("DIET").Select(clause => clause.First("diet")!.Means("diet")).FirstOrDefault(string.Empty) };
        ReadSwap();
        var kind = IsMeasure() ? ReadMeasure() : KindOf();
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

    private void ReadSizes()
    {
        foreach (var clause in All("SLICES", "MASS", "FACTOR", "NAMED_TIN", "TIN", "SQUARE", "ROUND", "OVEN", "GAS"))
        {
            if (!ReadSize(clause))
            {
                unread.AddRange(clause.Parts.Select(part => part.Lexeme));
            }
        }
    }

    private bool ReadSize(Clause clause)
    {
        switch (clause.Means)
        {
            case "SLICES" when told.Slices is null && SizeReader.SlicesOf(clause) is { } slices:
                told = told with { Slices = slices };
                return true;
            case "MASS" when told.MassGrams is null && SizeReader.MassOf(clause) is { } grams:
                told = told with { MassGrams = grams };
                return true;
            case "FACTOR" when told.Factor is null && SizeReader.FactorOf(clause) is > 0 and <= 100 and var factor:
                told = told with { Factor = factor };
                return true;
            case "NAMED_TIN" when told.Tin is null && sizes.NamedTin(clause) is { } named:
                assumed.Add(named.Assumed);
                told = told with { Tin = named.Tin };
                return true;
            case "TIN" or "SQUARE" when told.Tin is null:
                var (tin, taken) = sizes.TinOf(clause, formula, clause.Means == "SQUARE");
                assumed.AddRange(taken);
                told = told with { Tin = tin };
                return true;
            case "ROUND" when told.Tin is null:
                var (round, roundTaken) = sizes.RoundTinOf(clause, formula);
                assumed.AddRange(roundTaken);
                told = told with { Tin = round };
                return true;
            case "GAS" when told.OvenCelsius is null && sizes.GasOf(clause) is { } gas:
                assumed.Add(gas.Assumed);
                told = told with { OvenCelsius = gas.Celsius };
                return true;
            case "OVEN" when told.OvenCelsius is null && clause.First("ovenheat") is not null:
                var (celsius, scale) = sizes.OvenOf(clause);
                assumed.AddRange(scale is null ? [] : [scale]);
                told = told with { OvenCelsius = celsius, Fan = clause.First("fan") is not null };
                return true;
            default:
                return false;
        }
    }

    private void ReadTargets()
    {
        foreach (var clause in All("TARGET_BELOW", "TARGET_ABOVE", "TARGET_BETWEEN", "TARGET_PLAIN", "EGGS", "EGGS_MOST", "GOAL", "LESS", "MORE"))
        {
            var target = clause.Means switch
            {
                "GOAL" => new AskedTarget(clause.First("goal")!.Means("goal"), null, null),
                "LESS" => Word(clause, ["net-carbohydrate:fewer-net-carbs", "sugars:less-sugar", "salt:less-salt", "sodium:less-salt", "energy:less-energy", "fat:less-fat", "price:cheaper", "eggs:fewer-eggs"]),
                "MORE" => Word(clause, ["protein:more-protein", "fibre:more-fibre"]),
                "EGGS" or "EGGS_MOST" => TargetClauses.EggsOf(clause),
                _ => targets.Figures(clause, assumed),
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
        }
    }

    private static AskedTarget? Word(Clause clause, ImmutableArray<string> known)
    {
        var reading = $"{clause.First("reading")!.Means("reading")}:";
        return known.FirstOrDefault(pair => pair.StartsWith(reading, StringComparison.Ordinal)) is { } pair ? new AskedTarget(pair[reading.Length..], null, null) : null;
    }

    private void ReadSwap()
    {
        var swaps = All("REPLACE", "LACK").OrderBy(clause => clause.First("to") is null ? 1 : 0).ToList();
        // Who has only ghee and no butter asks for ghee in butter's place.
        if (swaps.Count == 0 && All("TO").FirstOrDefault() is { } only && only.First("only") is not null && All("WITHOUT").ToList() is [var lacked] && lacked.All("without").ToList() is [var lone])
        {
            swaps.Add(lacked with { Parts = [new Filled("only", only.First("only")!), new Filled("from", lone)] });
            told = told with { Without = [] };
        }

        if (swaps.Count == 0)
        {
            ReadNewcomer();
            return;
        }

        var first = swaps[0];
        var outLexeme = first.First("from")!;
        var inLexeme = first.First("to") ?? All("TO").Select(clause => clause.First("to")).FirstOrDefault() ?? LoneThing();
        // Who writes 'butter for ghee' may mean either way; what the formula has goes out. Who wants one and none of the other may not.
        if (!Directed.Any(part => first.First(part) is not null) && inLexeme?.Thing?.Ingredient is { } maybe && meaning.IsInFormula(maybe.Id) && outLexeme.Thing!.Ingredient is { } other && !meaning.IsInFormula(other.Id))
        {
            assumed.Add(sentences.Say("asked-turned-round", ("from", maybe.Name), ("to", other.Name)));
            (outLexeme, inLexeme) = (inLexeme, outLexeme);
        }

        var goesOut = meaning.Out(outLexeme);
        var comesIn = inLexeme is null ? null : meaning.In(inLexeme, goesOut);
        isTurned |= goesOut is null || (inLexeme is not null && comesIn is null);
        told = told with { From = goesOut?.Id ?? string.Empty, To = comesIn?.Id ?? string.Empty };
        foreach (var more in swaps.Skip(1).Where(clause => clause.First("to") is not null || clause.First("from")!.Thing!.Words.SequenceEqual(outLexeme.Thing!.Words) is false))
        {
            // Half of two swaps would be sent out as the whole.
            isTurned = true;
            problems.Add(sentences.Say("asked-not-read", ("words", more.Words)));
        }
    }

    /// <summary>Something that is to come in, and nobody says in whose place, as in 'would stevia work?': in that of the one line that does
    /// the same, where there is one.</summary>
    private void ReadNewcomer()
    {
        // What is added stands in nobody's place, and a word that is not known may say where it goes.
        if (!told.Without.IsEmpty || told.Diet.Length > 0 || told.IsSized || wanted.Count > 0 || !IsDoubted() || All("BAKE", "HOW_LONG", "MEASURE", "CONVERT").Any()
            || lexemes.Any(lexeme => lexeme.Is("addto")) || unread.Any(lexeme => lexeme.Is(Lexeme.Unknown)))
        {
            return;
        }

        var named = All("TO").Select(clause => clause.First("to")).FirstOrDefault() ?? OnlyThingUnread();
        if (named is not null && meaning.OneThatDoesTheSame(named) is var (own, newcomer))
        {
            unread.RemoveAll(lexeme => ReferenceEquals(lexeme, named) || lexeme.Is("use"));
            assumed.Add(sentences.Say("asked-in-place-of", ("to", newcomer.Name), ("from", own.Name)));
            told = told with { From = own.Id, To = newcomer.Id };
        }
    }

    /// <summary>The one thing that is named and stands in no clause, as in 'will ghee do?'; it is then no longer unread.</summary>
    private Lexeme? LoneThing()
    {
        if (OnlyThingUnread() is not { } only || !lexemes.Any(lexeme => lexeme.Is("ask")) || (only.Thing!.Ingredient is { } known && meaning.IsInFormula(known.Id)))
        {
            return null;
        }

        unread.Remove(only);
        return only;
    }

    private Lexeme? OnlyThingUnread() => unread.Where(lexeme => lexeme.Thing is not null).ToList() is [var only] ? only : null;

    private QuestionKind KindOf()
    {
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
            return told.To.Length > 0 && IsDoubted() ? QuestionKind.Check : QuestionKind.Replace;
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

    /// <summary>Whether something is to come in the place of another, as in 'this instead of butter'.</summary>
    private bool IsInsteadOf() => All("REPLACE").Any(clause => clause.First("instead") is not null);

    /// <summary>Whether a word stands in the sentence in which something is to come in another's place.</summary>
    private bool IsInSentenceOfSwap(Lexeme word) =>
        All("REPLACE").Any(clause => SentenceOf(clause.First("instead") ?? clause.First("from")!) == SentenceOf(word));

    private int SentenceOf(Lexeme word) =>
        lexemes.TakeWhile(lexeme => !ReferenceEquals(lexeme, word)).Count(lexeme => lexeme.Is(Lexeme.Stop));

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

        if (told.OvenCelsius is not null && !All("BAKE", "HOW_LONG").Any())
        {
            problems.Add(sentences.Say("asked-not-read", ("words", string.Join(' ', All("OVEN", "GAS").Select(clause => clause.Words)))));
        }

        var rest = unread.Where(lexeme => !lexeme.MayBeUnread).ToList();
        if (rest.Count == 0)
        {
            return;
        }

        // A name that stands in no clause may be what somebody cannot eat; a word beside a measure, or beside a swap that says
        // not what comes in, may belong to it.
        isTurned |= rest.Any(lexeme => Turning.Any(lexeme.Is) || lexeme.Thing is not null) || told.Text.Length > 0 || (told.To.Length == 0 && IsInsteadOf() && rest.Any(lexeme => lexeme.Is(Lexeme.Unknown) && IsInSentenceOfSwap(lexeme)));
        problems.Add(sentences.Say("asked-not-read", ("words", string.Join(", ", rest.Select(lexeme => lexeme.Text)))));
    }
}
