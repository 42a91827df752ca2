using System.Net.Http.Json;
using System.Text.Json;
using SwapSolver.Service.Tests.Running;
using SwapSolver.V1;
using Format = SwapSolver.V1.PrintCardRequest.Types.Format;
using Law = SwapSolver.V1.Label.Types.Law;

namespace SwapSolver.Service.Tests.Services;

[Collection(OpenKitchen.Name)]
public sealed class CardServiceTests(OpenKitchen kitchen)
{
    [Theory]
    [InlineData(Format.Unspecified, true, false, false)]
    [InlineData(Format.LabelOnly, false, false, false)]
    [InlineData(Format.Markdown, true, false, false)]
    [InlineData(Format.Html, false, true, false)]
    [InlineData(Format.Jsonld, false, false, true)]
    public async Task A_card_comes_in_the_format_that_is_asked_for_and_in_no_other(Format format, bool markdown, bool html, bool jsonld)
    {
        var response = await Print(new PrintCardRequest { Formula = Bakes.Hazelnut, Format = format });

        Assert.Equal((markdown, html, jsonld), (response.HasMarkdown, response.HasHtml, response.HasJsonld));
        Assert.Contains(markdown ? "# Hazelnut tin loaf" : html ? "<h1 dir=\"auto\">Hazelnut tin loaf</h1>" : jsonld ? "\"Hazelnut tin loaf\"" : string.Empty, response.Markdown + response.Html + response.Jsonld, StringComparison.Ordinal);
        Assert.NotEmpty(response.Label);
        Assert.NotEmpty(response.Version);
    }

    [Fact]
    public async Task Lines_come_as_a_table_and_readings_as_pictures()
    {
        var table = await Print(new PrintCardRequest { Formula = Bakes.Hazelnut, Format = Format.Csv });
        var pictures = await Print(new PrintCardRequest { Formula = Bakes.Hazelnut, Format = Format.Svg });

        Assert.Contains("line,hazelnut-flour,hazelnut flour,g,180,75,", table.Csv, StringComparison.Ordinal);
        Assert.Equal("svg", System.Xml.Linq.XElement.Parse(pictures.Svg).Name.LocalName);
        Assert.Contains("acid by soda", pictures.Svg, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de-DE", Law.Eu)]
    [InlineData("en-US", Law.Us)]
    [InlineData("en-AU", Law.AuNz)]
    [InlineData("fr-CA", Law.Ca)]
    [InlineData("en-GB", Law.Uk)]
    public async Task The_region_says_whose_label_is_printed_where_nobody_else_does(string locale, Law law)
    {
        Assert.Equal(law, (await Print(new PrintCardRequest { Formula = Bakes.Hazelnut, Locale = locale })).LabelLaw.Law);
        Assert.Equal(Law.Ca, (await Print(new PrintCardRequest { Formula = Bakes.Hazelnut, Locale = locale, Label = Law.Ca })).LabelLaw.Law);
    }

    [Fact]
    public async Task A_variant_says_what_it_was_made_without()
    {
        var response = await Print(new PrintCardRequest
        {
            Name = "formulas/seeded-free-form-loaf",
            VariantOf = new CardOrigin { Name = "formulas/hazelnut-tin-loaf" },
        });

        Assert.Contains(response.Statements, statement => statement.StartsWith("Made without milk and tree-nut ingredients (US list)", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Steps_and_words_about_a_formula_come_back_as_they_went_in()
    {
        var formula = Bakes.Hazelnut;
        var read = (await kitchen.Service.Balances.BalanceFormulaAsync(new BalanceFormulaRequest { Formula = formula })).Formula;

        Assert.NotEmpty(formula.Steps);
        Assert.Equal(formula.Steps, read.Steps);
        Assert.Equal(formula.Description, read.Description);
    }

    [Fact]
    public async Task Everything_that_is_wrong_with_the_card_is_named_at_once()
    {
        var formula = Bakes.Hazelnut;
        formula.Steps.Add(new string('x', 1001));
        formula.Steps.Add(" ");
        var refusal = await Refusal.Of(() => kitchen.Service.Cards.PrintCardAsync(new PrintCardRequest
        {
            Formula = formula,
            Format = (Format)99,
            Measures = (Line.Types.System)44,
            Locale = "de-DD",
            Version = new string('v', 101),
            VariantOf = new CardOrigin(),
        }));

        refusal.Names("format", "99", "MARKDOWN");
        refusal.Names("measures", "44", "METRIC");
        refusal.Names("locale", "de-DD", "de-DE");
        refusal.Names("version", "vvv", "100");
        refusal.Names("variantOf.formula", string.Empty, "name");
        refusal.Names("formula.steps[6]", "1001", "1 to 1000");
        refusal.Names("formula.steps[7]", " ", "1 to 1000");
    }

    [Fact]
    public async Task Over_http_the_card_is_the_same_text()
    {
        var body = new { name = "formulas/almond-rolls", format = "MARKDOWN", label = "UK", measures = "UK_IMPERIAL", locale = "en-GB" };
        var answer = await kitchen.Service.Http.PostAsJsonAsync("/v1/formulas:card", body);
        answer.EnsureSuccessStatusCode();
        var tree = await answer.Content.ReadFromJsonAsync<JsonElement>();
        var response = await Print(new PrintCardRequest
        {
            Name = "formulas/almond-rolls",
            Format = Format.Markdown,
            Label = Law.Uk,
            Measures = Line.Types.System.UkImperial,
            Locale = "en-GB",
        });

        Assert.Equal(response.Markdown, tree.GetProperty("markdown").GetString());
        Assert.Equal(response.Label.Count, tree.GetProperty("label").GetArrayLength());
    }

    private async Task<PrintCardResponse> Print(PrintCardRequest request) => await kitchen.Service.Cards.PrintCardAsync(request);
}
