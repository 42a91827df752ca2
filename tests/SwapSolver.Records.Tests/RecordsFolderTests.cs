namespace SwapSolver.Records.Tests;

public sealed class RecordsFolderTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("kitchen-records-");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void A_file_that_is_none_of_ours_is_named()
    {
        var file = Path.Combine(folder.FullName, "kitchen.db");
        File.WriteAllText(file, "this is a shopping list");

        Assert.Contains(file, Assert.Throws<RecordsFaultException>(() => new KitchenRecords(folder.FullName).Read()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_cannot_be_is_named()
    {
        var file = Path.Combine(folder.FullName, "a-file");
        File.WriteAllText(file, string.Empty);

        var fault = Assert.Throws<RecordsFaultException>(() => new KitchenRecords(Path.Combine(file, "records")).Put([new Kitchen.Foods.MeasuredFact("coconut-flour", Kitchen.Ingredients.Fact.WaterBound, new Kitchen.Ingredients.Range(1.9, 2, 2.1), "soaked and drained")]));
        Assert.Contains("a-file", fault.Message, StringComparison.Ordinal);
    }
}
