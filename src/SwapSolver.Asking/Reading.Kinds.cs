using System.Collections.Immutable;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Asking;

/// <content>Which question it is.</content>
internal sealed partial class Reading
{
    private QuestionKind KindOf()
    {
        if (told is { AlsoFrom.Length: > 0, To: "" } && GoesAnyway(meaning.Found(told.AlsoFrom)))
        {
            // Without milk, what can replace the cream and the butter? The butter goes by itself.
            assumed.Add(sentences.Say("asked-goes-too", ("ingredient", meaning.Found(told.AlsoFrom).Name)));
            told = told with { AlsoFrom = string.Empty };
        }

        // One thing for two is a question by itself.
        if (told.AlsoFrom.Length > 0 && (isMadeOf || told.IsSized || !told.Without.IsEmpty || told.Diet.Length > 0 || told.AlsoFrom == told.From || told.AlsoFrom == told.To || told.To.Length == 0))
        {
            return Refused("asked-not-read", Phrases.List(All("REPLACE").SelectMany(clause => clause.All("also")).Select(lexeme => lexeme.Text)));
        }

        if (told.FromGrams is not null && (told.To.Length == 0 || told.AlsoFrom.Length > 0 || !told.AlsoSwaps.IsEmpty || told.AlsoTo.Length > 0 || told.IsSized || !told.Without.IsEmpty || told.Diet.Length > 0 || isMadeOf))
        {
            return Refused("asked-not-read", going!.Words);
        }

        if (!told.AlsoSwaps.IsEmpty && (told.AlsoTo.Length > 0 || told.IsSized || !told.Without.IsEmpty || told.Diet.Length > 0))
        {
            return Refused("asked-not-read", Phrases.List(All("REPLACE").Skip(1).Select(clause => clause.Words)));
        }

        if (IsTimed && WhatBakesOtherwise() is { } otherwise)
        {
            return Refused("asked-unsupported", otherwise);
        }

        if (IsOfFigures)
        {
            ReadFiguresOfSize();
            return QuestionKind.Figures;
        }

        if (IsOfMinutes)
        {
            assumed.Add(sentences.Say("asked-minutes", ("words", All("MINUTES").First().Words)));
            return QuestionKind.Bake;
        }

        if (All("BAKE").Any() || (All("HOW_LONG").Any() && (All("HOW_LONG").Any(clause => clause.First("bakeword") is not null) || All("BAKE_WORD").Any() || told.OvenCelsius is not null || told.IsSized || unread.Any(lexeme => lexeme.Is("fan"))))
            || IsOfHeat)
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
            return told.To.Length > 0 && !isMadeOf && told.AlsoTo.Length == 0 && (IsDoubted() || IsForAnotherUse() || told.FromGrams is not null || told.AlsoFrom.Length > 0 || !told.AlsoSwaps.IsEmpty) ? QuestionKind.Check : QuestionKind.Replace;
        }

        if (All("TO").FirstOrDefault(clause => !IsPlenty(clause)) is { } only && told.Without.IsEmpty)
        {
            problems.Add(sentences.Say("asked-in-place-of-what", ("thing", only.First("to")!.Text)));
            return QuestionKind.NotUnderstood;
        }

        if (IsAsked && clauses.All(clause => clause.Means == "IDLE") && unread.Where(lexeme => !lexeme.MayBeUnread).ToList() is [{ Thing: { } offered } bare] && told.Without.IsEmpty && !meaning.IsOwn(offered))
        {
            // Almond flour? Of several flours nobody says which goes.
            problems.Add(sentences.Say("asked-in-place-of-what", ("thing", bare.Text)));
        }

        return !told.Without.IsEmpty || told.Diet.Length > 0 ? QuestionKind.Variant
            : told.IsSized ? QuestionKind.Resize
            : wanted.Count > 0 ? QuestionKind.Reformulate
            : All("RISE").Any() ? QuestionKind.Rise
            : All("FIGURES").Any() || ReadBareReading() ? QuestionKind.Figures
            : QuestionKind.NotUnderstood;
    }

    /// <summary>Whether what comes in does not sour or raise as that does which goes out: whether it does is checked, a dose of it is none.</summary>
    private bool IsForAnotherUse() => Raises(meaning.Found(told.From)) && !Raises(meaning.Found(told.To));

    private static bool Raises(Ingredient ingredient) => ingredient.Role is Role.Acid or Role.Base or Role.LeaveningBlend;

    private bool IsAsked => question.Contains('?', StringComparison.Ordinal);

    /// <summary>Who tells how it was asks for nothing, unless a word of asking goes with it.</summary>
    private void ReadPraise()
    {
        if (lexemes.FirstOrDefault(lexeme => lexeme.Is("praise")) is { } praise && !question.Contains('?', StringComparison.Ordinal) && !lexemes.Any(lexeme => lexeme.Is("ask") || lexeme.Is("please") || lexeme.Is("how") || lexeme.Is("wish")))
        {
            Refused("asked-unsupported", praise.Text);
        }
    }

    private bool IsTimed => All("BAKE", "HOW_LONG").Any() || IsOfMinutes || IsOfHeat;

    /// <summary>Whether an oven's heat is named and minutes are asked for: fan oven at 155, minutes?</summary>
    private bool IsOfHeat => told.OvenCelsius is not null && IsAsked && lexemes.Any(lexeme => lexeme.Is("minutes")) && clauses.All(clause => clause.Means is "OVEN" or "GAS" or "BAKE_WORD" or "IDLE");

    /// <summary>Whether minutes are named, and nothing else is asked: would 18 minutes be long enough? They were gone in five minutes, how much for 18?</summary>
    private bool IsOfMinutes =>
        All("MINUTES").Any() && !(told.IsSized && lexemes.Any(lexeme => lexeme.Is("amountfor"))) && told.From.Length == 0 && told.Without.IsEmpty && !All("REPLACE", "WITHOUT", "LACK", "DIET", "MEASURE", "CONVERT").Any() && wanted.Count == 0;

    private QuestionKind Refused(string sentence, string said)
    {
        isTurned = true;
        problems.Add(sentences.Say(sentence, ("words", said)));
        return QuestionKind.NotUnderstood;
    }

    /// <summary>The words of what bakes otherwise than the formula, in a way that cannot be told; null where nothing does. Loaves side by side bake
    /// as one does.</summary>
    private string? WhatBakesOtherwise()
    {
        if (told.Factor is > 1 && LoavesCounted is { } loaves)
        {
            assumed.Add(sentences.Say("asked-side-by-side", ("words", loaves)));
            told = told with { Factor = null };
        }

        if (told.Tin is null && formula.Shape is not (Tin or Pieces) && lexemes.FirstOrDefault(lexeme => lexeme.Is("tin")) is { } tin)
        {
            return tin.Text;
        }

        if (told.Tin is null && formula.Shape is Pieces && lexemes.FirstOrDefault(lexeme => lexeme.Is("loaftin") || lexeme.Is("asone")) is { } whole)
        {
            // Muffins' batter in a loaf tin is no muffin.
            return whole.Text;
        }

        if (formula.Shape is Tin && All("SMALL_LOAVES").FirstOrDefault() is { } small)
        {
            // A third of the batter in the same tin is no small loaf.
            return small.Words;
        }

        ReadFreeFormPieces();
        // Rolls made of a loaf's dough are no loaf, and twice the batter shared among tins is not one of twice the size.
        return (formula.Shape is Pieces || isOfPieces ? null : lexemes.FirstOrDefault(lexeme => lexeme.Is("single"))?.Text)
            ?? (told.Factor is > 1 ? lexemes.FirstOrDefault(lexeme => lexeme.Is("eachone"))?.Text : null);
    }

    /// <summary>More pieces of one free-form loaf are too small to be timed as loaves [1]; our estimate, no source.</summary>
    private const int MostFreeFormPieces = 20;

    /// <summary>Buns of a free-form loaf's dough are free-form loaves of so much less.</summary>
    private void ReadFreeFormPieces()
    {
        if (formula.Shape is FreeForm && told is { Slices: > 1 and <= MostFreeFormPieces and var count, Tin: null, MassGrams: null, Factor: null or 1 }
            && All("SLICES").FirstOrDefault(clause => clause.First("slice")?.Is("single") is true || CutOf(clause)?.Is("single") is true || IsOfSingles(clause)) is { } pieces)
        {
            var share = ShareOf(pieces, count);
            assumed.Remove(AsLarge(count));
            assumed.Remove(sentences.Say("asked-cut-of-loaf", ("words", pieces.Words)));
            told = told with { Slices = null, Factor = share };
            isOfPieces = true;
        }
    }

    /// <summary>A time to bake is told of the loaf in its size, and of no other change.</summary>
    private void ReadBesidesBaking()
    {
        ImmutableArray<string> besides =
        [
            .. All("REPLACE", "LACK", "TO", "WITHOUT", "DIET", "GOAL", "LESS", "MORE", "LINE_LESS", "LINE_MORE", "LINE_TIMES", "EGGS", "EGGS_MOST", "TARGET_BELOW", "TARGET_ABOVE", "TARGET_BETWEEN", "TARGET_PLAIN", "BARE_BELOW", "BARE_ABOVE", "BARE_TO", "RISE")
                .Where(clause => clause != rescaled)
                .Select(clause => clause.Words),
        ];
        if (besides.IsEmpty)
        {
            return;
        }

        problems.Add(sentences.Say("asked-bake-besides", ("words", Phrases.List(besides))));
        told = told with { From = string.Empty, FromGrams = null, AlsoFrom = string.Empty, AlsoSwaps = [], AlsoTo = string.Empty, To = string.Empty, Without = [], Diet = string.Empty };
        wanted.Clear();
    }

    /// <summary>Whether a swap is asked about, and not asked for.</summary>
    private bool IsDoubted() => isOffered || All("TO", "REPLACE").Any(clause => clause.First("only") is not null)
        || (!lexemes.Any(lexeme => lexeme.Is("how")) && (lexemes.Any(lexeme => lexeme.Is("ask")) || question.Contains('?', StringComparison.Ordinal)));
}
