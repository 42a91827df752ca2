using Google.Protobuf.Reflection;

namespace SwapSolver.House.Tests;

/// <summary>What a released contract promised, its successors keep: scripts and generated clients depend on it. A release replaces
/// <c>protos/released.protoset</c>, as the project's DEVELOPERS.md says.</summary>
public sealed class ContractReleaseTests
{
    [Fact]
    public void Nothing_that_was_released_is_gone_or_is_something_else() =>
        Assert.Empty(Broken(DescribedContract.Released, DescribedContract.Now));

    [Fact]
    public void A_field_that_is_gone_renamed_or_of_another_kind_is_found()
    {
        Assert.Contains("swapsolver.v1.Formula.slices is gone", Broken(DescribedContract.Now, Changed(message => message.Field.Remove(message.Field.Single(field => field.Name == "slices")))));
        Assert.Contains("swapsolver.v1.Formula.slices is gone", Broken(DescribedContract.Now, Changed(message => message.Field.Single(field => field.Name == "slices").Name = "pieces")));
        Assert.Contains(
            Broken(DescribedContract.Now, Changed(message => message.Field.Single(field => field.Name == "slices").Number = 99)),
            one => one.StartsWith("swapsolver.v1.Formula.slices was Int32 4 ", StringComparison.Ordinal));
    }

    private static FileDescriptorSet Changed(Action<DescriptorProto> change)
    {
        var set = DescribedContract.Now.Clone();
        change(set.File.SelectMany(file => file.MessageType).Single(message => message.Name == "Formula"));
        return set;
    }

    private static List<string> Broken(FileDescriptorSet before, FileDescriptorSet now)
    {
        var (then, today) = (Promises(before), Promises(now));
        return
        [
            .. then.Where(promise => !today.ContainsKey(promise.Key)).Select(promise => $"{promise.Key} is gone"),
            .. then.Where(promise => today.TryGetValue(promise.Key, out var kept) && kept != promise.Value)
                .Select(promise => $"{promise.Key} was {promise.Value}, and is {today[promise.Key]}"),
        ];
    }

    /// <summary>Every element that a caller may depend on, with what it is.</summary>
    private static Dictionary<string, string> Promises(FileDescriptorSet set)
    {
        var promises = new Dictionary<string, string>();
        foreach (var file in set.File.Where(file => file.Package == "swapsolver.v1"))
        {
            foreach (var message in file.MessageType)
            {
                Add(promises, file.Package, message);
            }

            foreach (var words in file.EnumType)
            {
                Add(promises, file.Package, words);
            }

            foreach (var service in file.Service)
            {
                foreach (var method in service.Method)
                {
                    promises[$"{file.Package}.{service.Name}.{method.Name}"] = $"{method.InputType} {method.OutputType} {method.ClientStreaming} {method.ServerStreaming} {method.Options}";
                }
            }
        }

        return promises;
    }

    private static void Add(Dictionary<string, string> promises, string within, DescriptorProto message)
    {
        var name = $"{within}.{message.Name}";
        promises[name] = "message";
        foreach (var field in message.Field)
        {
            promises[$"{name}.{field.Name}"] = $"{field.Type} {field.Number} {field.Label} {field.TypeName} {field.JsonName} {(field.HasOneofIndex ? message.OneofDecl[field.OneofIndex].Name : string.Empty)}";
        }

        foreach (var nested in message.NestedType)
        {
            Add(promises, name, nested);
        }

        foreach (var nested in message.EnumType)
        {
            Add(promises, name, nested);
        }
    }

    private static void Add(Dictionary<string, string> promises, string within, EnumDescriptorProto words)
    {
        foreach (var value in words.Value)
        {
            promises[$"{within}.{words.Name}.{value.Name}"] = $"{value.Number}";
        }
    }
}
