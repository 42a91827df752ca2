using System.CommandLine;
using SwapSolver.V1;
using Format = SwapSolver.V1.PrintCardRequest.Types.Format;
using MeasureSystem = SwapSolver.V1.Line.Types.System;

namespace SwapSolver.Console.Arguments;

/// <summary>How a card is printed.</summary>
internal sealed class CardOptions
{
    private static readonly Dictionary<string, MeasureSystem> Systems = new(StringComparer.OrdinalIgnoreCase)
    {
        ["us"] = MeasureSystem.UsCustomary,
        ["metric"] = MeasureSystem.Metric,
        ["au"] = MeasureSystem.Australian,
        ["uk"] = MeasureSystem.UkImperial,
    };

    private readonly FormatOption format = new(
        "How the card is printed: markdown, html, jsonld, csv, or svg for its pictures. Without it: markdown.",
        Format.Markdown, Format.Html, Format.Jsonld, Format.Csv, Format.Svg);

    private readonly LawOption label = new("--label");

    private readonly Option<MeasureSystem?> measures = new("--measures")
    {
        Description = "Whose cups and spoons stand beside the grams: us, metric, au or uk. Without it: none.",
        HelpName = "SYSTEM",
        CustomParser = result => OptionText.One(result, "--measures", text => Systems.TryGetValue(text.Trim(), out var system)
            ? (Checked<MeasureSystem>)system
            : Checked<MeasureSystem>.Bad($"'{text}' is not known. Write one of {string.Join(", ", Systems.Keys)}.")),
    };

    private readonly Option<string?> locale = new("--locale")
    {
        Description = "How numbers and temperatures are written, as de-DE. Without it: a decimal point, Celsius first.",
        HelpName = "LOCALE",
    };

    private readonly WholeFigureOption serving = new("--serving", "Slices in a serving of the label. Without it: 1.");

    private readonly Option<string?> version = new("--card-version")
    {
        Description = "Your word for this version of the formula. Without it: a fingerprint of what is baked.",
        HelpName = "WORDS",
    };

    private readonly Option<string?> variantOf = new("--variant-of")
    {
        Description = "The formula that this one is a variant of; the card then says what was left out.",
        HelpName = "FORMULA",
    };

    private readonly Option<string?> outFile = new("--out")
    {
        Description = "Write the card to this file. Without it: to standard output.",
        HelpName = "FILE",
    };

    /// <summary>Offers the options under a verb.</summary>
    public void AddTo(Command verb)
    {
        verb.Add(format);
        verb.Add(label);
        verb.Add(measures);
        verb.Add(locale);
        verb.Add(serving);
        verb.Add(version);
        verb.Add(variantOf);
        verb.Add(outFile);
    }

    /// <summary>The formula that the card's is a variant of; null where none is named.</summary>
    public string? VariantOf(ParseResult parse) => parse.GetValue(variantOf);

    /// <summary>The file that the card goes to; null for standard output.</summary>
    public string? Out(ParseResult parse) => parse.GetValue(outFile);

    /// <summary>The request, still without its formula.</summary>
    public PrintCardRequest Read(ParseResult parse)
    {
        var request = new PrintCardRequest
        {
            Format = parse.GetValue(format) ?? Format.Markdown,
            Label = parse.GetValue(label) ?? Label.Types.Law.Unspecified,
            Measures = parse.GetValue(measures) ?? MeasureSystem.Unspecified,
            Locale = parse.GetValue(locale) ?? string.Empty,
            Version = parse.GetValue(version) ?? string.Empty,
        };
        if (parse.GetValue(serving) is int slices)
        {
            request.ServingSlices = slices;
        }

        return request;
    }
}
