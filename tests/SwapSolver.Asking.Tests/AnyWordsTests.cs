using CsCheck;
using SwapSolver.Data.Files;
using SwapSolver.Data.Wording;
using SwapSolver.Loaves;

namespace SwapSolver.Asking.Tests;

/// <summary>Heaps of words that questions are made of, of foods, numbers and stops: whatever stands beside what, it is understood or refused.</summary>
public sealed class AnyWordsTests
{
    private static readonly string[] Foods =
        ["butter", "eggs", "egg whites", "psyllium", "almond flour", "salt", "flax", "nuts", "milk", "vinegar", "oil", "water", "sugar", "whole eggs", "white", "cocoa", "chia", "cream of tartar", "soda", "flax eggs"];

    private static readonly string[] Others = [",", ".", "?", "!", "-", ":", "0", "1", "2", "3", "8", "0.5", "12", "100", "1e9", "é"];

    private static readonly string[] Loaves = ["almond-rolls", "cocoa-cake", "hazelnut-tin-loaf", "seeded-free-form-loaf", "vanilla-muffins"];

    private static readonly Gen<string> Word = Gen.Frequency(
        (5, One([.. QuestionFiles.Read(TestKitchen.Folder, SourceKeys.Read(TestKitchen.Folder)).Words.Select(word => word.Phrase)])),
        (3, One(Foods)),
        (2, One(Others)));

    [Fact]
    public void Any_heap_of_words_is_understood_or_refused_with_its_reason() => Gen.Select(One(Loaves), Word.Array[1, 10]).Sample(
        (loaf, words) =>
        {
            var told = TestQuestions.Read(loaf, string.Join(' ', words));
            Assert.True(told.Kind != QuestionKind.NotUnderstood || told.Problem.Length > 0);
            Assert.All(told.Targets, target => Assert.NotEmpty(target.Name));
        },
        iter: 1500);

    private static Gen<string> One(string[] words) => Gen.Int[0, words.Length - 1].Select(place => words[place]);
}
