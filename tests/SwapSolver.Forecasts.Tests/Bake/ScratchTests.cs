using System.Diagnostics;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Quantities;
using Xunit.Abstractions;

namespace SwapSolver.Forecasts.Tests;

public sealed class ScratchTests(ITestOutputHelper o)
{
    [Fact]
    public void Look()
    {
        foreach (var f in new[] { 3, 4, 5, 6, 8, 10, 12, 16 })
        {
            foreach (var (n, l) in new[] { ("tin", BakeKitchen.InTin(800)), ("free", BakeKitchen.NutAndSeed(900)) })
            {
                l.Run(96, f);
                var w = Stopwatch.StartNew();
                var r = l.Run(96, f);
                o.WriteLine($"{n} f={f} {r.Baked / 60:0.00} min loss {100 * r.LostShare:0.00} cool {r.Cooled / 60:0.0} steps {r.InOven.Length} {r.OnRack.Length} {w.Elapsed.TotalMilliseconds:0} ms");
            }
        }
        foreach (var (n, l) in new[] { ("tin 0.8", BakeKitchen.InTin(800)), ("free 900", BakeKitchen.NutAndSeed(900)), ("tin 1.6", BakeKitchen.InTin(1600)) , ("tin .4", BakeKitchen.InTin(400)), ("tin190", BakeKitchen.InTin(800,190))})
        {
            var w = Stopwatch.StartNew();
            var b = l.Bakes();
            o.WriteLine($"{n}: {b.Target.Value:0.0} {b.TimeToCore} loss {b.Loss} cool {b.CoolToSlice} {w.ElapsedMilliseconds} ms");
        }
        var model = new BakeModel(BakeKitchen.Practice, StandardAtmosphere.PressureAt(new Metres(0)), false, Draws.Typical);
        foreach (var l in new[] { BakeKitchen.InTin(800), BakeKitchen.NutAndSeed(900) })
        {
            var s = Scattered<BakeRun>.Of(d => model.Run(l, new Celsius(96), d, 5, true));
            o.WriteLine($"{s.Value.Baked/60:0.0} {s.Value.Cooled/60:0} {100*s.Value.LostShare:0.0}");
            foreach (var (k, v) in s.Moved) o.WriteLine($"   {k}: {v.AtLow.Baked/60:0.0} {v.AtHigh.Baked/60:0.0} cool {v.AtLow.Cooled/60:0} {v.AtHigh.Cooled/60:0} loss {100*v.AtLow.LostShare:0.0} {100*v.AtHigh.LostShare:0.0}");
        }
        var free = BakeKitchen.NutAndSeed(900);
        var half = BakeKitchen.NutAndSeed(450);
        var k2 = new KnownBake(free, new Minutes(70), new Celsius(96));
        o.WriteLine($"half {half.Bakes(BakeKitchen.AtSea with { Known = k2 }).TimeToCore}");
        var twice = BakeKitchen.InTin(1600);
        o.WriteLine($"2x {twice.Bakes(BakeKitchen.AtSea with { Known = new KnownBake(BakeKitchen.InTin(800), new Minutes(50), new Celsius(96)) }).TimeToCore}");
    }
}
