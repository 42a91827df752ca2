using System.Collections.Immutable;
using SwapSolver.Asking.Grammar;
using SwapSolver.Asking.Text;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Asking;

/// <content>What a reading is to become.</content>
internal sealed partial class Reading
{
    /// <summary>Words of how large eggs are, which a count of them does not hold.</summary>
    private static readonly ImmutableArray<string> EggSizes = ["small", "medium", "large", "big"];

    /// <summary>So many times fewer slices than the formula has are hardly another size [1]; our estimate, no source.</summary>
    private const int FewOf = 3;

    private void ReadTargets()
    {
        foreach (var clause in All("TARGET_BELOW", "TARGET_ABOVE", "TARGET_BETWEEN", "TARGET_PLAIN", "EGGS", "EGGS_MOST", "GOAL", "LESS", "MORE", "LINE_LESS", "LINE_MORE", "LINE_TIMES").Where(clause => clause != rescaled))
        {
            if (clause.Means == "GOAL" && IsNoWish(clause))
            {
                continue;
            }

            var target = clause.Means switch
            {
                "GOAL" => GoalOf(clause.First("goal")!),
                "LESS" or "MORE" => TargetClauses.Word(clause) ?? LineTarget(clause),
                "LINE_LESS" or "LINE_MORE" or "LINE_TIMES" => LineTarget(clause),
                "EGGS" or "EGGS_MOST" => TargetClauses.EggsOf(clause),
                _ => SaltOfDough(clause) ?? targets.Figures(clause, formula, told.IsSized, assumed),
            };
            if (target is null)
            {
                isTurned = true;
                problems.Add(sentences.Say("asked-unsupported", ("words", clause.Words)));
            }
            else
            {
                wanted.Add(target);
                var named = target.Name.Replace('-', ' ');
                if (clause.Means == "GOAL" && clause.Words != named && !IsWishedOutright(clause.First("goal")!))
                {
                    assumed.Add(sentences.Say("asked-wished", ("words", clause.Words), ("goal", named)));
                }
            }

            if (clause.Means is "EGGS" or "EGGS_MOST" && lexemes.FirstOrDefault(lexeme => EggSizes.Contains(lexeme.Text)) is { } size)
            {
                NotRead(size.Text);
            }

            if (clause.Means == "EGGS_MOST" && clause.First("only") is not null)
            {
                assumed.Add(sentences.Say("asked-eggs-had", ("words", clause.Words)));
            }

            if (clause.First("goal") is { } goal && goal.Is("onefewer"))
            {
                assumed.Add(sentences.Say("asked-fewer-eggs", ("words", goal.Text)));
            }
        }
    }

    /// <summary>Figures by themselves up to this are grams of net carbs in a slice [g]; our estimate, no source.</summary>
    private const double MostBareGrams = 15;

    /// <summary>The reading that a bare figure is of.</summary>
    private static readonly Lexeme NetCarbs = new("net carbs", Lexeme.OneClass("reading", "net-carbohydrate"), null);

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
        if (readings.Count == 0 && IsOfNetCarbs(bare))
        {
            assumed.Add(sentences.Say("asked-bare-net", ("words", bare[0].Words)));
            readings.Add(NetCarbs);
        }

        var isOne = bare is [_] && readings.Count > 0 && readings.Select(TargetClauses.ReadingOf).Distinct().Count() == 1;
        var isMore = All("MORE").Any() || readings.Any(TargetClauses.IsGreater);
        var means = bare[0].Means == "BARE_TO" ? (isMore ? "BARE_ABOVE" : "BARE_BELOW") : bare[0].Means;
        var figure = isOne ? new Clause(means, [.. bare[0].Parts, new Filled("reading", readings[0])], IsNegated: false) : null;
        if (figure is null || (SaltOfDough(figure) ?? targets.Figures(figure, formula, told.IsSized, assumed)) is not { } target)
        {
            unread.AddRange(bare.SelectMany(clause => clause.Parts).Select(part => part.Lexeme));
            return;
        }

        unread.RemoveAll(loose.Contains);
        wanted.Add(target);
    }

    /// <summary>Whether a figure stands with nothing that it could be a figure of: at a low-carb table two grams are two of net carbs.</summary>
    private bool IsOfNetCarbs(List<Clause> bare) =>
        bare is [{ Means: "BARE_BELOW" } figure] && figure.Counts[0] * (figure.First("mass")?.Number("mass") ?? 1) <= MostBareGrams
        && !lexemes.Any(lexeme => lexeme.Is("reading") || lexeme.Is("goal") || lexeme.Is("perword"))
        && !All("WITHOUT").SelectMany(clause => clause.All("without")).Any(name => meaning.LineOf(name)?.Role == Role.Salt)
        && clauses.All(clause => clause.Means is "BARE_BELOW" or "WITHOUT" or "DIET" or "IDLE" or "REPLACE");

    /// <summary>What a figure is for where it is not sure: two slices under 3 g may be two slices together, and the whole loaf is not a slice.</summary>
    private void ReadWhatFor()
    {
        if (!wanted.Any(target => target.Low is not null || target.High is not null))
        {
            return;
        }

        if (told.Slices == 1)
        {
            // One muffin under 2 g is one of them.
            told = told with { Slices = null };
        }

        if (told.Slices is { } few && few * FewOf <= formula.Slices)
        {
            isTurned = true;
            problems.Add(sentences.Say("asked-slices-figure", ("count", few.ToString(System.Globalization.CultureInfo.InvariantCulture))));
        }

        if (All("TARGET_BELOW", "TARGET_ABOVE", "TARGET_BETWEEN", "TARGET_PLAIN", "BARE_BELOW", "BARE_ABOVE", "BARE_TO").FirstOrDefault(clause => clause.First("per") is null) is { } bare
            && (told.Slices is not null || told.Factor is not null || lexemes.Any(lexeme => lexeme.Is("allof") || (lexeme.Is("loaf") && lexeme.Thing is null))))
        {
            assumed.Add(sentences.Say("asked-for-a-slice", ("words", bare.Words)));
        }

        if (unread.FirstOrDefault(lexeme => lexeme.Is("states")) is { } has)
        {
            // Whether a slice has less than so much is a question about the formula as it stands.
            isTurned = true;
            NotRead(has.Text);
        }

        foreach (var whole in unread.Where(lexeme => lexeme.Is("per") && lexeme.Means("per") != "slice"))
        {
            isTurned = true;
            NotRead(whole.Text);
        }
    }

    /// <summary>Whether it is asked if one has so much as it stands: is a slice under 3 g; are the slices?</summary>
    private bool IsAskedOfOne() => wanted.Count > 0
        && lexemes.FirstOrDefault(lexeme => lexeme.Is("isasked")) is { } asks && !Before(asks).Any(lexeme => !lexeme.MayBeSkipped || lexeme.Is("ask"))
        && Behind(asks).FirstOrDefault(lexeme => !lexeme.Is("article")) is { } one
        && (one.Is("per") || one.Is("slice") || one.Is("ofwhole") || one.Text == "it" || one.Is("below") || one.Is("above"));
}
