using Google.Protobuf;
using Google.Protobuf.Reflection;

namespace SwapSolver.Service.Tests.Fuzz;

/// <summary>Messages that nobody would send, made from their descriptors: each field missing, empty, usual, on an edge or absurd.</summary>
internal sealed class RandomMessages(int seed)
{
    private const int Deepest = 5;

    private static readonly double[] Edges =
    [
        0, -0.0, 1, -1, 0.1, 12, 200, 99_999, 100_000, 100_001, 1e9, -1e9, 1e300, -1e300, double.Epsilon, double.MaxValue, double.MinValue,
        double.NaN, double.PositiveInfinity, double.NegativeInfinity,
    ];

    private static readonly int[] WholeEdges = [0, 1, -1, 2, 14, 50, 1_000, 1_001, int.MaxValue, int.MinValue];

    private static readonly string[] Words =
    [
        "", " ", "ingredients/hazelnut-flour", "ingredients/egg-whole", "ingredients/water", "ingredients/baking-soda", "ingredients/cream-of-tartar",
        "ingredients/psyllium-husk-powder", "ingredients/", "ingredients/no-such-thing", "formulas/hazelnut-tin-loaf", "formulas/cocoa-cake", "formulas/none",
        "formulas/cocoa-cake/revisions/1", "formulas/../../x", "tree-nuts", "egg", "milk", "softer", "hydration", "net-carbohydrate", "salt", "protein", "US", "us", "eu",
        "1 1/2 tsp baking soda", "4 large eggs", "2 cups almond flour", "½ cup", "\0", "\u202E", "🥖🥖", "'; drop table formulas; --", "<script>alert(1)</script>", "%s%n",
    ];

    private readonly Random random = new(seed);

    /// <summary>A message of a kind.</summary>
    public IMessage Of(MessageDescriptor kind, int depth = 0)
    {
        var message = kind.Parser.ParseFrom(ByteString.Empty);
        foreach (var field in kind.Fields.InDeclarationOrder())
        {
            // Deep down most is left away, or a message would never end.
            if (random.NextDouble() < 0.35 + (0.15 * depth) || (depth >= Deepest && field.FieldType == FieldType.Message))
            {
                continue;
            }

            if (field.IsMap)
            {
                continue;
            }

            if (field.IsRepeated)
            {
                var list = (System.Collections.IList)field.Accessor.GetValue(message);
                var many = random.Next(20) == 0 ? random.Next(300) : random.Next(6);
                for (var item = 0; item < many; item++)
                {
                    list.Add(One(field, depth));
                }
            }
            else
            {
                field.Accessor.SetValue(message, One(field, depth));
            }
        }

        return message;
    }

    private object One(FieldDescriptor field, int depth) => field.FieldType switch
    {
        FieldType.Double => random.Next(3) == 0 ? Edges[random.Next(Edges.Length)] : Math.Round(random.NextDouble() * 500, random.Next(4)),
        FieldType.Float => (float)Edges[random.Next(Edges.Length)],
        FieldType.Int32 or FieldType.SInt32 => random.Next(3) == 0 ? WholeEdges[random.Next(WholeEdges.Length)] : random.Next(30),
        FieldType.UInt32 => (uint)random.Next(),
        FieldType.Int64 or FieldType.SInt64 => random.NextInt64(),
        FieldType.Bool => random.Next(2) == 0,
        FieldType.String => Text(),
        FieldType.Bytes => ByteString.CopyFrom(Junk(random.Next(200))),
        FieldType.Enum => random.Next(10) == 0 ? Unknown(field) : field.EnumType.Values[random.Next(field.EnumType.Values.Count)].Number is var number ? Enum.ToObject(field.EnumType.ClrType, number) : 0,
        FieldType.Message => Of(field.MessageType, depth + 1),
        _ => throw new InvalidOperationException($"no such value yet: {field.FieldType}"),
    };

    private object Unknown(FieldDescriptor field) => Enum.ToObject(field.EnumType.ClrType, WholeEdges[random.Next(WholeEdges.Length)]);

    private string Text() => random.Next(40) switch
    {
        0 => new string('q', random.Next(3_000)),
        1 => string.Concat(Enumerable.Range(0, random.Next(40)).Select(_ => char.ConvertFromUtf32(random.Next(0x20, 0xD7FF)))),
        _ => Words[random.Next(Words.Length)],
    };

    /// <summary>Bytes without any meaning.</summary>
    public byte[] Junk(int length)
    {
        var bytes = new byte[length];
        random.NextBytes(bytes);
        return bytes;
    }
}
