using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Filters;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using SwapSolver.Benchmarks;
using SwapSolver.Benchmarks.Bakes;
using SwapSolver.Benchmarks.Cluster;
using SwapSolver.Benchmarks.Growth;
using SwapSolver.Benchmarks.Kitchens;
using SwapSolver.Benchmarks.Load;
using SwapSolver.Benchmarks.Race;
using SwapSolver.Benchmarks.References;

// Ratios are measured side by side in one run; times on shared machines are noise and are not printed. '--dry' runs each
// once, for one question and for the smallest pantry, to show that they compile and start. Other arguments name classes to run.
// '--race' measures the fixed questions by several solvers, run from the root of the sources.
if (args is ["--race"])
{
    return SolverRace.Write("tests/SwapSolver.Benchmarks/results/solvers.md");
}

// '--kitchens 2000' measures nothing: it proves so many random kitchens by independent solvers, run from the root of the sources.
if (args is ["--kitchens", var kitchens])
{
    return KitchenRun.Write(Count(kitchens), "tests/SwapSolver.Benchmarks/results/kitchens.md");
}

// '--references FOLDER' measures nothing: it writes tests/REFERENCES.md from what the tests compared (tests/references.sh).
if (args is ["--references", var folder])
{
    return LedgerPage.Write(folder);
}

// '--records' measures the kitchen's records, and with two connection strings behind it a server's too, run from the root of the sources.
if (args is ["--records", .. var servers])
{
    return await RecordsRun.Write("tests/SwapSolver.Benchmarks/results/records.md", servers);
}

// What the service does under load, each a section of results/load.md, run from the root of the sources.
switch (args)
{
    case ["--fuzz", var requests, var bodies]:
        return await Fuzz.Run(Count(requests), Count(bodies));
    case ["--overload", var seconds]:
        return await Overload.Run(TimeSpan.FromSeconds(Count(seconds)));
    case ["--deadlines", var calls]:
        return await Deadlines.Run(Count(calls));
    case ["--stalled", var connections]:
        return await Stalled.Run(Count(connections));
    case ["--first-answer", var console]:
        return await FirstAnswer.Run(console);
    case ["--empty-service"]:
        return await FirstAnswer.ServeNothing();
    case ["--any-text", var texts]:
        return AnyText.Run(Count(texts));
    case ["--bake", var bakes]:
        return BakeTime.Run(Count(bakes));
    case ["--pages", var rounds]:
        return await Pages.Run(Count(rounds));
    case ["--throughput", var rows]:
        return await Throughput.Run(Count(rows));
    case ["--soak", var minutes]:
        return await Soak.Run(TimeSpan.FromMinutes(Count(minutes)));
    // Several services with a PostgreSQL and a Redis, and everything killed once: results/cluster.md.
    case ["--cluster", var items]:
        return await ClusterRun.Run(Count(items));
    case ["--two-beside-one", var items]:
        return await ClusterRun.Compare(Count(items));
    default:
        break;
}

var isDry = args.Contains("--dry");
var job = (isDry ? Job.Dry : Job.ShortRun.WithWarmupCount(1).WithIterationCount(3)).WithToolchain(InProcessEmitToolchain.Instance);
var config = ManualConfig.CreateMinimumViable()
    .AddJob(job)
    .AddDiagnoser(MemoryDiagnoser.Default)
    .AddColumn(new MinutesOffColumn())
    .AddFilter(new SimpleFilter(measured => !isDry || IsQuick(measured)))
    .HideColumns(
        Column.Job, Column.Toolchain, Column.IterationCount, Column.WarmupCount, Column.LaunchCount, Column.RunStrategy,
        Column.UnrollFactor, Column.InvocationCount, Column.Mean, Column.Error, Column.StdDev, Column.Median, Column.RatioSD)
    .WithSummaryStyle(BenchmarkDotNet.Reports.SummaryStyle.Default.WithMaxParameterColumnWidth(60))
    .WithOptions(ConfigOptions.DisableOptimizationsValidator);
var named = args.Where(word => !word.StartsWith('-')).ToHashSet();
var types = typeof(Questions).Assembly.GetTypes()
    .Where(type => type.GetMethods().Any(method => method.IsDefined(typeof(BenchmarkAttribute), inherit: false)))
    .Where(type => named.Count == 0 || named.Contains(type.Name))
    .ToArray();
var summaries = BenchmarkRunner.Run(types, config);
return summaries.Length > 0 && summaries.All(summary => summary.Reports.Length > 0 && summary.Reports.All(report => report.Success)) ? 0 : 1;

static int Count(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

static bool IsQuick(BenchmarkCase measured) => typeof(IGrowth).IsAssignableFrom(measured.Descriptor.Type)
    ? measured.Descriptor.WorkloadMethod.Name == nameof(IGrowth.Of100) && measured.Parameters["Question"] is null or Questions.Quickest
    : measured.Descriptor.Type == typeof(BakeCells) || Equals(measured.Parameters["Question"], Questions.Quickest);
