using SwapSolver.Data.Files;
using SwapSolver.Data.Ingredients;
using SwapSolver.Data.Learning;
using SwapSolver.Loaves;

namespace SwapSolver.Data.Tests.Learning;

public sealed class LearningFileTests
{
    [Fact]
    public void What_can_be_learned_starts_inside_what_is_possible()
    {
        var rules = LearningFile.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder));
        Assert.All(new[] { rules.OvenFactor, rules.BakeLoss, rules.GasKept }, fact =>
        {
            Assert.True(fact.Published.IsInOrder && fact.Possible.Low <= fact.Published.Low && fact.Published.High <= fact.Possible.High, fact.Id);
            Assert.True(fact.Scatter > 0);
        });
        // A loss of a hundred percent leaves no loaf, and a crumb keeps no more gas than there is.
        Assert.True(rules.BakeLoss.Possible.High < 100 && rules.GasKept.Possible.High <= 1);
    }

    [Fact]
    public void Every_bag_that_binds_water_can_be_learned_and_no_other()
    {
        var rules = LearningFile.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder));
        var learned = PantryFiles.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder)).Ingredients.ToDictionary(ingredient => ingredient.Id, rules.WaterBoundOf);
        Assert.NotNull(learned["coconut-flour"]);
        Assert.Null(learned["salt"]);
        Assert.All(learned.Values.OfType<SwapSolver.Learning.LearnableFact>(), fact => Assert.True(fact.Before.Told().IsInOrder));
    }
}
