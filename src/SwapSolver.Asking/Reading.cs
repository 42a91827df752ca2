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
    ImmutableArray<Share> amounts,
    ImmutableArray<Share> shares)
{
    /// <summary>Classes of words that turn what is asked: left unread, nothing is sure.</summary>
    private static readonly ImmutableArray<string> Turning =
        ["not", "hard", "health", "claim", "raw", "animals", "below", "above", "between", "bigger", "gas", "howlong", "goal", "free", "round", "perword", Lexeme.Count];

    /// <summary>Classes of words with which something dangerous may be asked: the caution goes with the refusal.</summary>
    private static readonly ImmutableArray<string> Cautioned = ["health", "claim", "raw", "animals"];

    private readonly SizeReader sizes = new(words, dials, sentences);

    private readonly TargetClauses targets = new(sentences);

    private readonly List<string> assumed = [.. spelt];

    private readonly List<string> problems = [];

    private readonly List<Lexeme> unread = [.. notRead];

    private readonly List<AskedTarget> wanted = [];

    private Understanding told = new();

    private bool isTurned;

    private bool isMadeOf;

    private bool isOffered;

    private bool isOfPieces;

    private Clause? rescaled;

    private Clause? leftAway;

    private Share? going;

    private AskedTarget? hadAtMost;

    /// <summary>How the question is understood.</summary>
    /// <param name="isPart">Whether more was asked than this: then nothing is taken for likely.</param>
    public Understanding Understand(bool isPart)
    {
        ReadSizes();
        rescaled = ReadRescale() ?? ReadHad();
        ReadALittle();
        foreach (var clause in clauses.Where(clause => clause != rescaled).Where(clause => clause.IsNegated || (clause.Means == "UNSUPPORTED" && !IsSaidBySize(clause))))
        {
            if (clause is { IsNegated: false } && clause.First("animals")?.Is("animalsathome") is true && IsOfPoisonGone)
            {
                problems.Add(sentences.Say("asked-animals"));
                continue;
            }

            // What a word of another subject is about is not answered; what else is asked is, and the reply says so.
            isTurned |= !clause.IsNegated && clause.First("topic") is null && clause.First("health") is null && clause.First("aday") is null;
            problems.Add(sentences.Say(clause.IsNegated ? "asked-negated" : "asked-unsupported", ("words", clause.Words)));
            problems.AddRange(Cautioned.Where(care => clause.First(care) is not null).Select(care => sentences.Say($"asked-{care}")));
        }

        ReadReported();
        ReadEffects();
        ReadChoices();
        ReadCounted();
        ReadForbidden();
        ReadPraise();
        ReadEither();
        ReadTargets();
        ReadBareFigures();
        ReadAtOdds();
        ReadWhatFor();
        ReadLeftOut();
        foreach (var diet in All("DIET").Where(clause => IsKindOf(clause.First("diet")!)))
        {
            isTurned = true;
            NotRead(diet.Words);
        }

        foreach (var (diet, next) in All("DIET").Select(clause => (clause, Behind(clause.Parts[^1].Lexeme).FirstOrDefault())).Where(pair => pair.Item2?.Is(Lexeme.Unknown) is true))
        {
            // My daughter's vegan phase may be no wish for a vegan loaf.
            assumed.Add(sentences.Say("asked-wished", ("words", $"{diet.Words} {next!.Text}"), ("goal", diet.First("diet")!.Means("diet").ToLowerInvariant())));
        }

        ReadNobody();
        ReadAllBut();
        told = told with { Diet = All("DIET").Select(clause => clause.First("diet")!.Means("diet")).OrderBy(diet => diet == "VEGAN" ? 0 : 1).FirstOrDefault(string.Empty) };
        ReadPartly();
        ReadSwap();
        ReadHurt();
        ReadLoneCount();
        ReadGuess(isPart);
        ReadHarm();
        ReadExempt();
        ReadWelcome();
        if (told.To.Length > 0 && lexemes.Contains(ThingMeaning.Asked))
        {
            // No butter, coconut oil? might leave out both.
            assumed.Add(sentences.Say("asked-guessed-swap", ("to", meaning.Found(told.To)!.Name), ("from", meaning.Found(told.From)!.Name)));
        }

        if (told.From.Length > 0 && All("FACTOR").FirstOrDefault(IsOfOneThing) is { } ofOne)
        {
            // Half the butter and olive oil for the rest is no half of the cake.
            Refused("asked-unsupported", ofOne.Words);
        }

        ReadStays();
        ReadBesidesLines();
        ReadRise();
        var kind = IsMeasure() ? ReadMeasure() : KindOf();
        if (kind is not (QuestionKind.Convert or QuestionKind.NotUnderstood) && All("CONVERT").ToList() is { Count: > 0 } converted)
        {
            NotRead(converted);
        }

        if (kind is not (QuestionKind.Convert or QuestionKind.NotUnderstood) && All("MEASURE").ToList() is { Count: > 0 } measured)
        {
            // A tablespoon of yogurt to make them moister.
            NotRead(measured);
        }

        if (kind == QuestionKind.Convert && clauses.Where(clause => !clause.IsNegated && clause.Means is not ("MEASURE" or "CONVERT" or "BAKE_WORD" or "UNSUPPORTED" or "IDLE")).ToList() is { Count: > 0 } besides)
        {
            told = new Understanding { Text = told.Text };
            wanted.Clear();
            NotRead(besides);
        }

        if (kind != QuestionKind.Figures && kind != QuestionKind.NotUnderstood && All("FIGURES").ToList() is { Count: > 0 } figures)
        {
            // What a slice of another loaf has is read off that loaf.
            NotRead(figures);
        }

        ReadBesidesRise(kind);
        ReadOtherBake(kind);
        // Whether it suits a way of eating is for the reader to say: what a slice has is told.
        problems.AddRange(All("FIGURES").Where(clause => kind == QuestionKind.Figures && clause.Parts.Any(part => part.Lexeme.Is("topic"))).Select(clause => sentences.Say("asked-unsupported", ("words", clause.Words))));
        if (kind == QuestionKind.Figures)
        {
            ReadOffThePanel();
        }

        if (kind == QuestionKind.Bake)
        {
            ReadBesidesBaking();
        }

        if ((lexemes.Any(lexeme => lexeme.Is("asis")) || IsAskedOfOne()) && (kind == QuestionKind.Resize || kind == QuestionKind.Reformulate || (kind == QuestionKind.Variant && clauses.Any(clause => clause.First("free") is not null || clause.Means == "DIET"))))
        {
            assumed.Add(sentences.Say("asked-as-is"));
        }

        ReadContrary(kind);
        var isRefused = isTurned;
        ReadRest();
        if (!isPart && !isRefused && (isTurned || kind == QuestionKind.NotUnderstood) && Likely(meaning.Anew()) is { } likely)
        {
            return likely;
        }

        problems.InsertRange(0, meaning.Problems);
        assumed.AddRange(meaning.Assumed);
        return kind == QuestionKind.NotUnderstood || isTurned ? NotUnderstood() : told with
        {
            Kind = kind,
            Targets = [.. wanted.GroupBy(target => target.Name).Select(same => new AskedTarget(same.Key, same.Max(target => target.Low), same.Min(target => target.High)))],
            Assumed = [.. assumed.Distinct()],
            Problem = string.Join(' ', problems.Distinct()),
        };
    }

    /// <summary>Whether only what poisons animals is to go, as xylitol from a house with a dog: that is answered, with the caution.</summary>
    private bool IsOfPoisonGone => All("WITHOUT", "LACK", "REPLACE").SelectMany(clause => clause.All("without").Concat(clause.All("from"))).ToList() is { Count: > 0 } gone && gone.All(name => name.Is("poisonous"))
        && !All("REPLACE", "TO").SelectMany(clause => clause.All("to").Concat(clause.All("alsoto")).Concat(clause.All(ClausePattern.OrTo))).Any(name => name.Is("poisonous"));

    /// <summary>Whether a size says it: who says how large has said what a bigger one is, and who names the tin that it is one loaf; of another
    /// size all amounts are told, that of the flour too.</summary>
    private bool IsSaidBySize(Clause clause) =>
        (told.IsSized && (clause.First("bigger") is not null || clause.First("amountof") is not null))
        || (told is { Slices: not null, Factor: 1 } && (clause.First("smallpieces") ?? clause.First("bigpieces")) is not null) || (told.MassGrams is not null && All("PIECES").Any() && clause.First("bigpieces") is not null) || (told.Tin is not null && clause.First("asone") is not null);

    private Understanding NotUnderstood()
    {
        problems.Add(sentences.Say("asked-what-can-be"));
        return new Understanding { Problem = string.Join(' ', problems.Distinct()) };
    }

    private IEnumerable<Lexeme> Before(Lexeme word) => lexemes.TakeWhile(lexeme => !ReferenceEquals(lexeme, word));

    /// <summary>The word before a name, without 'of the' between; null where it stands first.</summary>
    private Lexeme? JustBefore(Lexeme name) => Before(name).LastOrDefault(lexeme => lexeme.Text is not ("of" or "the" or "of the"));

    private IEnumerable<Lexeme> Behind(Lexeme word) => lexemes.SkipWhile(lexeme => !ReferenceEquals(lexeme, word)).Skip(1);

    private IEnumerable<Clause> All(params ReadOnlySpan<string> means)
    {
        var wantedMeans = means.ToArray();
        return clauses.Where(clause => !clause.IsNegated && wantedMeans.Contains(clause.Means));
    }
}
