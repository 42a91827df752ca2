using System.CommandLine;
using Google.Protobuf.Reflection;
using SwapSolver.Console.Files;
using SwapSolver.V1;

namespace SwapSolver.Console.Arguments;

/// <summary>The options for a packet's panel: one for each line of the contract's panel, or a file that holds them.</summary>
internal sealed class PanelOptions
{
    private readonly Option<NutritionPanel.Types.Basis?> basis = new("--basis")
    {
        Description = "Whose law the panel follows: US (carbohydrate holds fibre) or EU (it does not; United Kingdom too).",
        HelpName = "US|EU",
        CustomParser = result => OptionText.One(result, "--basis", text => EnumWord.Read<NutritionPanel.Types.Basis>(NutritionPanel.Descriptor.EnumTypes[0], text)),
    };

    private readonly Option<string?> file = new("--panel")
    {
        Description = "A JSON file of the panel's lines, in place of the options below.",
        HelpName = "FILE",
    };

    private readonly IReadOnlyList<(FieldDescriptor Field, Option<string?> Option)> lines =
    [
        .. NutritionPanel.Descriptor.Fields.InDeclarationOrder().Where(field => field.FieldType == FieldType.String).Select(field => (field, LineOf(field))),
    ];

    /// <summary>Offers the options under a verb.</summary>
    public void AddTo(Command verb)
    {
        verb.Add(basis);
        verb.Add(file);
        foreach (var (_, option) in lines)
        {
            verb.Add(option);
        }

        verb.Validators.Add(result =>
        {
            if (result.GetResult(file) is not null && lines.FirstOrDefault(line => result.GetResult(line.Option) is not null) is { Option: { } also })
            {
                result.AddError($"{also.Name} cannot stand beside --panel: give the line in the file.");
            }
        });
    }

    /// <summary>The panel as the command line gives it.</summary>
    public async Task<Checked<NutritionPanel>> ReadAsync(ParseResult parse, CancellationToken cancel)
    {
        var panel = parse.GetValue(file) is { } path ? await PanelFile.ReadAsync(path, cancel) : FromOptions(parse);
        if (panel.IsGood && parse.GetValue(basis) is { } law)
        {
            panel.Value.Basis = law;
        }

        return panel;
    }

    private NutritionPanel FromOptions(ParseResult parse)
    {
        var panel = new NutritionPanel();
        foreach (var (field, option) in lines)
        {
            if (parse.GetValue(option) is { } printed)
            {
                field.Accessor.SetValue(panel, printed);
            }
        }

        return panel;
    }

    /// <summary>The option of a line: <c>saturated_fat_g</c> is <c>--saturated-fat</c>, in grams. Energy has two units, so it keeps them.</summary>
    private static Option<string?> LineOf(FieldDescriptor field)
    {
        var cut = field.Name.LastIndexOf('_');
        var unit = field.Name[(cut + 1)..];
        var isEnergy = unit.StartsWith('k');
        return new Option<string?>($"--{(isEnergy ? field.Name : field.Name[..cut]).Replace('_', '-')}")
        {
            Description = unit switch
            {
                _ when field.FieldNumber == NutritionPanel.ServingGFieldNumber => "What the figures are for.",
                "kcal" or "kj" => $"Energy in {(unit == "kj" ? "kJ" : unit)}, as printed.",
                _ => $"{char.ToUpperInvariant(field.Name[0])}{field.Name[1..cut].Replace('_', ' ')}, as printed.",
            },
            HelpName = unit switch
            {
                "kj" => "KJ",
                "kcal" => "KCAL",
                "mg" => "MILLIGRAMS",
                _ => "GRAMS",
            },
        };
    }
}
