using SwapSolver.Kitchen.Ingredients;

namespace SwapSolver.Kitchen.Tests.Ingredients;

public sealed class RoleWordsTests
{
    [Fact]
    public void A_role_is_found_by_its_own_word() =>
        Assert.All(Enum.GetValues<Role>(), role => Assert.Equal(role, RoleWords.Find(RoleWords.Of(role))));

    [Fact]
    public void The_words_are_those_that_files_use()
    {
        Assert.Equal("leavening-blend", RoleWords.Of(Role.LeaveningBlend));
        Assert.Contains("flour", RoleWords.All);
        Assert.Null(RoleWords.Find("flours"));
    }
}
