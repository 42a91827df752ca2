using System.Collections.Concurrent;
using Google.Protobuf;
using Google.Protobuf.Reflection;
using SwapSolver.Service.Translation;
using SwapSolver.V1;

namespace SwapSolver.Service.Solves;

/// <summary>Gives an answer the order in which its caller wrote the lines. Questions are answered in the order of ids, so that
/// two who ask the same in another order are told the same.</summary>
internal sealed class CallersOrder(ReadFormula asked)
{
    /// <summary>What has an order of its caller's.</summary>
    private static readonly MessageDescriptor[] Ordered = [Formula.Descriptor, Answer.Descriptor, BalanceFormulaResponse.Descriptor];

    /// <summary>The fields of a kind of message that lead to something in its caller's order: most of an answer is readings and words.</summary>
    private static readonly ConcurrentDictionary<MessageDescriptor, FieldDescriptor[]> Leading = new();

    private readonly Dictionary<string, int> places = asked.Lines
        .Select(line => ResourceName.Of(line.Line.Ingredient))
        .Distinct()
        .Index()
        .ToDictionary(pair => pair.Item, pair => pair.Index);

    /// <summary>A message in its caller's order.</summary>
    public T Given<T>(T message)
        where T : IMessage
    {
        Give(message);
        TellLines(message);
        return message;
    }

    /// <summary>Sorts the lines of every formula in a message, its changes and percentages.</summary>
    private void Give(IMessage message)
    {
        switch (message)
        {
            case Formula formula:
                Sort(formula.Lines, line => line.Ingredient);
                return;
            case Answer answer:
                SortChanges(answer);
                break;
            case BalanceFormulaResponse balance:
                Sort(balance.BakersPercentages, share => share.Ingredient);
                break;
        }

        foreach (var field in Leading.GetOrAdd(message.Descriptor, static kind => [.. PartsOf(kind).Where(part => Leads(part.MessageType, []))]))
        {
            foreach (var part in PartsOf(message, field))
            {
                Give(part);
            }
        }
    }

    /// <summary>Tells what the lines of the formula were read as that gave no grams, where the answer has a place for it.</summary>
    private void TellLines(IMessage answer)
    {
        if (answer.Descriptor.FindFieldByName("lines_read")?.Accessor.GetValue(answer) is Google.Protobuf.Collections.RepeatedField<ConvertedLine> lines)
        {
            var others = lines.Skip(asked.LinesRead.Count()).ToList();
            lines.Clear();
            lines.AddRange(asked.LinesRead.Concat(others));
        }
    }

    private static IEnumerable<FieldDescriptor> PartsOf(MessageDescriptor kind) =>
        kind.Fields.InDeclarationOrder().Where(field => field.FieldType == FieldType.Message && !field.IsMap);

    private static bool Leads(MessageDescriptor kind, HashSet<MessageDescriptor> seen) =>
        seen.Add(kind) && (Ordered.Contains(kind) || PartsOf(kind).Any(part => Leads(part.MessageType, seen)));

    private static IEnumerable<IMessage> PartsOf(IMessage message, FieldDescriptor field) => field.Accessor.GetValue(message) switch
    {
        IMessage part => [part],
        System.Collections.IEnumerable parts => parts.Cast<IMessage>(),
        _ => [],
    };

    /// <summary>What goes out stays first, then what comes in.</summary>
    private void SortChanges(Answer answer) => Sort(
        answer.Changes,
        change => change.Ingredient,
        change => change.AfterGrams == 0 ? 0 : change.BeforeGrams == 0 ? 1 : 2);

    private void Sort<T>(Google.Protobuf.Collections.RepeatedField<T> items, Func<T, string> nameOf, Func<T, int>? groupOf = null)
    {
        var sorted = items
            .OrderBy(item => groupOf?.Invoke(item) ?? 0)
            .ThenBy(item => places.GetValueOrDefault(nameOf(item), int.MaxValue))
            .ToList();
        items.Clear();
        items.AddRange(sorted);
    }
}
