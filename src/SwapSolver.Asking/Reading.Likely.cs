using System.Collections.Immutable;
using SwapSolver.Asking.Grammar;
using SwapSolver.Asking.Text;
using SwapSolver.Asking.Things;

namespace SwapSolver.Asking;

/// <content>What a question is likely to mean that no clause reads: one figure of one reading, or one thing of the formula beside a word of going
/// or of replacing. It is always told, and so is every word that was not read.</content>
internal sealed partial class Reading
{
    /// <summary>Classes of words beside which nothing is likely: they may turn what is asked.</summary>
    private static readonly ImmutableArray<string> Unlikely =
        ["hard", "raw", "animals", "claim", "health", "topic", "praise", "tale", "reported", "states", "howmuch", "amountof", "bigger", "addto", "keep", "howlong", "diet", "between", "byword", "factor", "times", "measure", "tin", "length", "alittle", "riseask"];

    /// <summary>What a clause may mean beside which a figure is likely one of a slice.</summary>
    private static readonly ImmutableArray<string> BesideFigure = ["LESS", "MORE", "GOAL", "TARGET_BELOW", "TARGET_ABOVE", "TARGET_PLAIN", "BARE_BELOW", "BARE_ABOVE", "BARE_TO", "IDLE", "SLICES", "PIECES"];

    /// <summary>What a clause may mean beside which a thing is likely to go.</summary>
    private static readonly ImmutableArray<string> BesideThing = ["LACK", "TO", "IDLE"];

    private static readonly ImmutableArray<string> ForAtMost = ["below", "orless", "toomuch"];

    private static readonly ImmutableArray<string> ForAtLeast = ["above", "ormore"];

    private static readonly ImmutableArray<string> Denying = ["not", "out", "lack", "bareout"];

    private static readonly ImmutableArray<string> ForStandIn = [.. OfStandIn, "likelyother"];

    private static readonly ImmutableArray<string> ForGoing = [.. OfGoing, "lack", "not", "allergy", "andno", "likelygoing"];

    /// <summary>What is likely asked; null where nothing is.</summary>
    /// <param name="fresh">The names in the formula, with nothing taken for granted yet.</param>
    private Understanding? Likely(ThingMeaning fresh)
    {
        if (!amounts.IsEmpty || clauses.Any(clause => clause.IsNegated) || lexemes.Any(lexeme => Unlikely.Any(lexeme.Is)))
        {
            return null;
        }

        var taken = new List<string>(spelt);
        var read = new HashSet<Lexeme>(ReferenceEqualityComparer.Instance);
        var likely = LikelyFigure(taken, read) ?? LikelyThing(fresh, taken, read);
        if (likely is null)
        {
            return null;
        }

        var left = lexemes.Where(lexeme => !read.Contains(lexeme) && !lexeme.MayBeSkipped && !lexeme.MayBeUnread).Select(lexeme => lexeme.Text).ToList();
        return likely with
        {
            Assumed = [.. taken.Concat(fresh.Assumed).Distinct()],
            Problem = left.Count == 0 ? string.Empty : sentences.Say("asked-not-read", ("words", string.Join(", ", left))),
        };
    }

    /// <summary>One reading and one figure, and nothing else that could be meant: at most or at least so much a slice.</summary>
    private Understanding? LikelyFigure(List<string> taken, HashSet<Lexeme> read)
    {
        var named = lexemes.Where(lexeme => lexeme.Is("reading") || lexeme.Is("goal")).ToList();
        var figures = lexemes.Where(lexeme => IsFigure(lexeme) && !IsOneSlice(lexeme)).ToList();
        var isOfOneReading = named.Count > 0 && named.All(lexeme => TargetClauses.ReadingOf(lexeme).Length > 0) && named.Select(TargetClauses.ReadingOf).Distinct().Count() == 1;
        if (!isOfOneReading || figures is not [var figure] || IsOfPieces(figure) || lexemes.Any(lexeme => lexeme.Thing is not null || lexeme.Is("free") || lexeme.Is("perword"))
            || clauses.Any(clause => !BesideFigure.Contains(clause.Means) && !IsBareFigure(clause)))
        {
            return null;
        }

        var reading = named.FirstOrDefault(lexeme => lexeme.Is("reading")) ?? named[0];
        var (isMost, isLeast) = (lexemes.Any(lexeme => ForAtMost.Any(lexeme.Is)), lexemes.Any(lexeme => ForAtLeast.Any(lexeme.Is)));
        if (lexemes.Any(lexeme => Denying.Any(lexeme.Is)) && (isMost || isLeast))
        {
            // Not above and not below it are each other's contrary.
            return null;
        }

        var mass = Behind(figure).FirstOrDefault() is { } unit && unit.Is("mass") ? unit : null;
        var per = lexemes.FirstOrDefault(lexeme => lexeme.Is("per"));
        ImmutableArray<Filled> parts =
        [
            new Filled("reading", reading), new Filled(Lexeme.Count, figure),
            .. mass is null ? [] : ImmutableArray.Create(new Filled("mass", mass)),
            .. per is null ? [] : ImmutableArray.Create(new Filled("per", per)),
        ];
        var clause = new Clause(isMost == isLeast ? "TARGET_PLAIN" : isMost ? "TARGET_BELOW" : "TARGET_ABOVE", parts, IsNegated: false);
        if (targets.Figures(clause, formula, isSized: false, taken) is not { } target)
        {
            return null;
        }

        read.UnionWith(parts.Select(part => part.Lexeme).Concat(named).Concat(lexemes.Where(lexeme => lexeme.Is("slice") || lexeme.Is("hold") || IsOneSlice(lexeme) || ForAtMost.Any(lexeme.Is) || ForAtLeast.Any(lexeme.Is))));
        taken.Add(sentences.Say("asked-likely-figure", ("words", clause.Words), ("limit", sentences.Say(target.High is null ? "asked-side-least" : "asked-side-most"))));
        return new Understanding { Kind = QuestionKind.Reformulate, Targets = [target] };
    }

    /// <summary>One thing of the formula beside a word of replacing, or of going.</summary>
    private Understanding? LikelyThing(ThingMeaning fresh, List<string> taken, HashSet<Lexeme> read)
    {
        var named = lexemes.Select(Standing).Where(lexeme => lexeme.Thing is not null).DistinctBy(lexeme => string.Join(' ', lexeme.Thing!.Words)).ToList();
        if (named is not [var lone] || lexemes.Any(lexeme => lexeme.Is("reading") || lexeme.Is("goal") || IsFigure(lexeme) || lexeme.Is("more") || lexeme.Is("less")) || clauses.Any(clause => !BesideThing.Contains(clause.Means)))
        {
            return null;
        }

        read.UnionWith(lexemes.Where(lexeme => lexeme.Thing is not null && IsOneOf(lexeme, lone)));
        if (lone.Is("standsfor") || (lexemes.Any(lexeme => ForStandIn.Any(lexeme.Is)) && (meaning.IsOwn(lone.Thing!) || meaning.IsOfRole(lone.Thing!))))
        {
            read.UnionWith(lexemes.Where(lexeme => lexeme.Thing is null && (ForStandIn.Any(lexeme.Is) || OfReplacing.Any(lexeme.Is) || ForGoing.Any(lexeme.Is))));
            taken.Add(sentences.Say("asked-guessed-stand-in", ("words", lone.Text)));
            ImmutableArray<LeftOutWish> never = IsBodily ? [.. fresh.LeftOut(lone, isAllergy: true)] : [];
            return fresh.Out(lone) is { } own ? new Understanding { Kind = QuestionKind.Replace, From = own.Id, Without = never } : null;
        }

        if (!lexemes.Any(lexeme => lexeme.Is("only") || lexeme.Is("sole")) && lexemes.Any(lexeme => ForGoing.Any(lexeme.Is)) && (meaning.IsOwn(lone.Thing!) || lone.Thing!.LeftOut is not null))
        {
            read.UnionWith(lexemes.Where(lexeme => lexeme.Thing is null && ForGoing.Any(lexeme.Is)));
            taken.Add(sentences.Say("asked-guessed-without", ("words", lone.Text)));
            return new Understanding { Kind = QuestionKind.Variant, Without = [.. fresh.LeftOut(lone, isAllergy: IsBodily)] };
        }

        return null;
    }

    /// <summary>A word for what stands in for something names that: an egg substitute is one for egg, another sweetener one for the sweetener.</summary>
    private static Lexeme Standing(Lexeme lexeme) => lexeme.Is("standsfor")
        ? lexeme with { Thing = new Thing([lexeme.Means("standsfor")], null, null, null, lexeme.Means("standsfor")) }
        : lexeme;

    /// <summary>Whether somebody must not eat what is named: it stays out, whatever comes in for one line of it.</summary>
    private bool IsBodily => lexemes.Any(lexeme => lexeme.Is("allergy") || lexeme.Is("bodily"));

    /// <summary>Whether it counts or measures: the one of 'the one thing' does neither.</summary>
    private bool IsFigure(Lexeme lexeme) =>
        lexeme.Is(Lexeme.Count) && (!lexeme.Is(Lexeme.Filler) || (Behind(lexeme).FirstOrDefault() is { } next && (next.Is("mass") || next.Is("slice") || next.Is("per"))));

    /// <summary>Whether it counts slices or loaves.</summary>
    private bool IsOfPieces(Lexeme figure) =>
        Behind(figure).FirstOrDefault(lexeme => !lexeme.MayBeSkipped) is { } next && (next.Is("slice") || next.Is("loaf") || next.Is("ofthese"));

    /// <summary>Whether it is the one of one slice.</summary>
    private bool IsOneSlice(Lexeme count) =>
        count.Is(Lexeme.Count) && count.Number(Lexeme.Count) == 1 && Behind(count).FirstOrDefault(lexeme => !lexeme.MayBeSkipped) is { } next && (next.Is("slice") || next.Is("per"));
}
