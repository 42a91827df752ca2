namespace SwapSolver.Console;

/// <summary>A value, or everything that is wrong with the text it was to be read from.</summary>
internal sealed class Checked<T>
{
    private readonly T? value;

    private Checked(T? value, IReadOnlyList<string> problems)
    {
        this.value = value;
        Problems = problems;
    }

    /// <summary>What is wrong, a line each; empty where there is a value.</summary>
    public IReadOnlyList<string> Problems { get; }

    /// <summary>Whether there is a value.</summary>
    public bool IsGood => Problems.Count == 0;

    /// <summary>The value; only to be asked for where <see cref="IsGood"/>.</summary>
    public T Value => IsGood ? value! : throw new InvalidOperationException("There is no value, only problems.");

    /// <summary>A good value.</summary>
    public static implicit operator Checked<T>(T value) => new(value, []);

    /// <summary>Good, with nothing given.</summary>
    public static Checked<T> None => new(default, []);

    /// <summary>No value: what is wrong.</summary>
    public static Checked<T> Bad(params IReadOnlyList<string> problems) => new(default, problems);

    /// <summary>Carries a good value on; problems stay as they are.</summary>
    public Checked<TNext> Then<TNext>(Func<T, TNext> next) => IsGood ? next(Value) : Checked<TNext>.Bad(Problems);
}
