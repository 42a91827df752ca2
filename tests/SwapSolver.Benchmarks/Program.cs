using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Filters;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using SwapSolver.Benchmarks;
using SwapSolver.Benchmarks.Bakes;

// Ratios are measured side by side in one run; times on shared machines are noise and are not printed. '--dry' runs each
// once and for one question, to show that they compile and start.
var isDry = args.Contains("--dry");
var job = (isDry ? Job.Dry : Job.ShortRun.WithWarmupCount(1).WithIterationCount(3)).WithToolchain(InProcessEmitToolchain.Instance);
var config = ManualConfig.CreateMinimumViable()
    .AddJob(job)
    .AddDiagnoser(MemoryDiagnoser.Default)
    .AddColumn(new MinutesOffColumn())
    .AddFilter(new SimpleFilter(measured => !isDry || measured.Parameters["Question"] is null or Questions.Quickest))
    .HideColumns(
        Column.Job, Column.Toolchain, Column.IterationCount, Column.WarmupCount, Column.LaunchCount, Column.RunStrategy,
        Column.UnrollFactor, Column.InvocationCount, Column.Mean, Column.Error, Column.StdDev, Column.Median, Column.RatioSD)
    .WithSummaryStyle(BenchmarkDotNet.Reports.SummaryStyle.Default.WithMaxParameterColumnWidth(60))
    .WithOptions(ConfigOptions.DisableOptimizationsValidator);
var summaries = BenchmarkSwitcher.FromAssembly(typeof(Questions).Assembly).RunAll(config).ToList();
return summaries.Count > 0 && summaries.All(summary => summary.Reports.Length > 0 && summary.Reports.All(report => report.Success)) ? 0 : 1;
