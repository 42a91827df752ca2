namespace SwapSolver.Records;

/// <summary>What a writing of foods did.</summary>
/// <param name="Added">Foods that were new.</param>
/// <param name="Changed">Foods that stood there in other words.</param>
/// <param name="Same">Foods that stood there already, to the digit.</param>
public sealed record FoodsWritten(int Added, int Changed, int Same);
