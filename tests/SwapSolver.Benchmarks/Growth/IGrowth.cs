namespace SwapSolver.Benchmarks.Growth;

/// <summary>The same work in kitchens that wrote more and more foods down.</summary>
public interface IGrowth
{
    /// <summary>In a kitchen with a hundred foods of its own.</summary>
    int Of100();

    /// <summary>With a thousand.</summary>
    int Of1000();

    /// <summary>With eight thousand, which is a whole national table.</summary>
    int Of8000();
}
