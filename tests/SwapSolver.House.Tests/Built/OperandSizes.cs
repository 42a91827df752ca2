using System.Reflection.Emit;

namespace SwapSolver.House.Tests.Built;

/// <summary>What follows each instruction of built code, from the platform's own list of instructions.</summary>
internal static class OperandSizes
{
    private const byte TwoByteMark = 0xFE;

    private static readonly Dictionary<ushort, OperandType> Operands = typeof(OpCodes).GetFields()
        .Select(field => field.GetValue(null)).OfType<OpCode>().ToDictionary(code => (ushort)code.Value, code => code.OperandType);

    /// <summary>The tokens that the instructions of a method name: types, fields and methods.</summary>
    public static IEnumerable<int> Tokens(byte[] code)
    {
        for (var at = 0; at < code.Length;)
        {
            var name = code[at] == TwoByteMark ? (ushort)((TwoByteMark << 8) | code[at + 1]) : code[at];
            at += name > byte.MaxValue ? 2 : 1;
            switch (Operands[name])
            {
                case OperandType.InlineNone:
                    break;
                case OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar:
                    at += 1;
                    break;
                case OperandType.InlineVar:
                    at += 2;
                    break;
                case OperandType.InlineI8 or OperandType.InlineR:
                    at += 8;
                    break;
                case OperandType.InlineSwitch:
                    at += 4 * (1 + BitConverter.ToInt32(code, at));
                    break;
                case OperandType.InlineField or OperandType.InlineMethod or OperandType.InlineTok or OperandType.InlineType:
                    yield return BitConverter.ToInt32(code, at);
                    at += 4;
                    break;
                default:
                    at += 4;
                    break;
            }
        }
    }
}
