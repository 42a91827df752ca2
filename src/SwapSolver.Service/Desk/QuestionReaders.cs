using System.Runtime.CompilerServices;
using SwapSolver.Asking;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Wording;
using SwapSolver.Service.Records;

namespace SwapSolver.Service.Desk;

/// <summary>The reader of questions for each state of the kitchen. The words are read from their file when the first question
/// in words comes, so that a service that is asked none starts no slower.</summary>
internal sealed class QuestionReaders(Func<QuestionWords> words, OvenDials dials, Phrases phrases)
{
    private readonly Lazy<QuestionWords> words = new(words);

    private readonly ConditionalWeakTable<KitchenToday, QuestionReader> readers = [];

    /// <summary>The reader for a state of the kitchen.</summary>
    public QuestionReader For(KitchenToday kitchen) =>
        readers.GetValue(kitchen, state => new QuestionReader(words.Value, state.Lines.Spoken, state.Pantry, dials, phrases));
}
