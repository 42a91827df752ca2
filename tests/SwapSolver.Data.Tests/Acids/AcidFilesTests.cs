using SwapSolver.Data.Files;
using SwapSolver.Data.Tests.Ingredients;
using SwapSolver.Kitchen.Acids;
using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Data.Tests.Acids;

public sealed class AcidFilesTests
{
    private const string Tartar = "acids/cream-of-tartar.json";

    private const string Soda = "acids/baking-soda.json";

    private const string Powder = "acids/baking-powder-phosphate.json";

    private const string Dissociations = "chemistry/dissociations.json";

    private const string Buffers = "chemistry/buffers.json";

    public static TheoryData<string> Relied =>
    [
        .. ShippedPantry.Pantry.Ingredients.Where(ingredient => ingredient.Role is Role.Acid or Role.Base or Role.LeaveningBlend).Select(ingredient => ingredient.Id),
    ];

    [Theory]
    [MemberData(nameof(Relied))]
    public void Every_acid_base_and_powder_of_the_pantry_has_a_file(string id)
    {
        var role = ShippedPantry.Pantry.Ingredients.Single(ingredient => ingredient.Id == id).Role;
        var leavener = ShippedAcids.Chemistry.Leaveners[id];

        Assert.Equal(role, leavener switch { Bicarbonate => Role.Base, LeaveningBlend => Role.LeaveningBlend, _ => Role.Acid });
    }

    [Theory]
    [InlineData(Tartar, "\"id\": \"cream-of-tartar\"", "\"id\": \"tartar\"", "^\"tartar\"", "'tartar'")]
    [InlineData(Tartar, "\"kind\": \"acid\"", "\"kind\": \"sour\"", "^\"sour\"", "'sour'")]
    [InlineData(Tartar, "\"dissociation\": \"tartaric\"", "\"dissociation\": \"tartric\"", "^\"tartric\"", "'tartric'")]
    [InlineData(Tartar, "\"ion\": \"potassium\"", "\"ion\": \"kalium\"", "^\"kalium\"", "'kalium'")]
    [InlineData(Tartar, "\"strengthPercent\": 100", "\"strengthPercent\": 0", "\"strengthPercent\": ^0", "0 %")]
    [InlineData(Tartar, "\"ion\": \"potassium\", \"count\": 1", "\"ion\": \"potassium\", \"count\": 2", "\"dissolved\": ^[", "0 protons")]
    [InlineData(Tartar, "\"dissolves\": \"as-it-reacts\"", "\"dissolves\": \"slowly\"", "^\"slowly\"", "'slowly'")]
    [InlineData(Tartar, "\"counts\": \"computed\"", "\"counts\": \"guessed\"", "^\"guessed\"", "'guessed'")]
    [InlineData(Tartar, "{ \"low\": 60, \"typical\": 70", "{ \"low\": 60, \"typical\": 75", "\"timing\": ^{", "105")]
    [InlineData(Tartar, "{ \"low\": 60, \"typical\": 70", "{ \"low\": 76, \"typical\": 70", "^{ \"low\": 76", "in order")]
    [InlineData(Tartar, "\"taste\":", "\"flavour\":", "\"flavour\": ^\"Clean", "'flavour'")]
    [InlineData(Tartar, "\"source\": \"leavening-nv\"", "\"source\": \"hearsay\"", "^\"hearsay\"", "'hearsay'")]
    [InlineData(Soda, "\"count\": 1 } ],\n  \"freed", "\"count\": 2 } ],\n  \"freed", "\"dissolved\": ^[", "takes 2 protons")]
    [InlineData(Powder, "\"of\": \"baking-soda\"", "\"of\": \"lemon-juice\"", "^\"lemon-juice\"", "'lemon-juice'")]
    [InlineData(Powder, "\"low\": 34, \"typical\": 36, \"high\": 40", "\"low\": 34, \"typical\": 86, \"high\": 90", "\"parts\": ^[", "114.8 %")]
    [InlineData(Dissociations, "\"low\": 4.34, \"typical\": 4.366, \"high\": 4.37", "\"low\": 1, \"typical\": 2, \"high\": 3", "^{ \"low\": 1, \"typical\": 2", "pKa 2")]
    [InlineData(Dissociations, "\"symbol\": \"Na+\", \"charge\": 1", "\"symbol\": \"Na+\", \"charge\": 0", "\"charge\": ^0", "not 0")]
    [InlineData(Dissociations, "\"symbol\": \"Na+\", \"charge\": 1", "\"symbol\": \"Na+\", \"charge\": 1.5", "\"charge\": ^1.5", "whole")]
    [InlineData(Dissociations, "\"id\": \"malic\"", "\"id\": \"citric\"", "\"id\": ^\"citric\", \"name\": \"malic acid\"", "twice")]
    [InlineData(Buffers, "\"ingredient\": \"almond-meal\"", "\"ingredient\": \"almonds\"", "^\"almonds\"", "'almonds'")]
    [InlineData(Buffers, "\"ingredient\": \"almond-meal\"", "\"ingredient\": \"almond-flour-blanched\"", "^\"almond-flour-blanched\",\n      \"nativePh\": { \"low\": 6.0, \"typical\": 6.3, \"high\": 6.6, \"source\": \"food-ph-memory\", \"mark\": \"memory\" },\n      \"meqPer100G\": { \"low\": 4.1, \"typical\": 8.2, \"high\": 12.3, \"source\": \"food-buffer-estimate\", \"mark\": \"calculated\" }\n    },\n    {\n      \"ingredient\": \"flaxseed-ground\"", "twice")]
    [InlineData("chemistry/solution.json", "\"daviesTerm\"", "\"davisTerm\"", "\"davisTerm\": ^{", "'davisTerm'")]
    public void What_cannot_be_believed_is_shown_where_it_stands(string file, string written, string spoilt, string place, string says)
    {
        using var folder = new SpoiltFolder();
        var text = folder.Replace(file, written, spoilt);

        Assert.Throws<DataFaultException>(folder.ReadAcids).AssertPointsAt(file, text, place, says);
    }

    [Fact]
    public void More_protons_than_can_be_reckoned_with_are_refused()
    {
        const string second = "{ \"low\": 4.34, \"typical\": 4.366, \"high\": 4.37, \"source\": \"pka-tartaric-bates\", \"mark\": \"memory\" }";
        using var folder = new SpoiltFolder();
        var text = folder.Replace(Dissociations, second, string.Join(", ", Enumerable.Repeat(second, Dissociation.MostSteps)));

        Assert.Throws<DataFaultException>(folder.ReadAcids).AssertPointsAt(Dissociations, text, "\"pka\": ^[\n        { \"low\": 2.98", "13 protons");
    }

    [Fact]
    public void An_acid_that_nothing_uses_is_refused()
    {
        using var folder = new SpoiltFolder();
        folder.Remove("acids/baking-powder-double-acting.json");

        var fault = Assert.Throws<DataFaultException>(folder.ReadAcids);
        Assert.Equal("acids/sodium-aluminium-sulphate.json", fault.File);
    }
}
