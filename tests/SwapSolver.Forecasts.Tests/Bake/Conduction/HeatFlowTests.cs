using MathNet.Numerics;
using MathNet.Numerics.RootFinding;

namespace SwapSolver.Forecasts.Tests;

/// <summary>The finite volumes against exact solutions of conduction, and against the front of Stefan.</summary>
public sealed class HeatFlowTests
{
    /// <summary>How far a time may lie from the exact one [1].</summary>
    private const double TimeTolerance = 0.005;

    private const double Conductivity = 0.4, Diffusivity = 1.4e-7, Heat = Conductivity / Diffusivity;

    [Theory]
    [InlineData(nameof(BodyKind.Slab), 1)]
    [InlineData(nameof(BodyKind.Slab), 5)]
    [InlineData(nameof(BodyKind.Slab), double.PositiveInfinity)]
    [InlineData(nameof(BodyKind.Cylinder), 1)]
    [InlineData(nameof(BodyKind.Cylinder), 5)]
    [InlineData(nameof(BodyKind.Cylinder), double.PositiveInfinity)]
    [InlineData(nameof(BodyKind.Sphere), 1)]
    [InlineData(nameof(BodyKind.Sphere), 5)]
    [InlineData(nameof(BodyKind.Sphere), double.PositiveInfinity)]
    public void Slab_cylinder_and_sphere_keep_the_exact_time(string name, double biot)
    {
        var kind = Enum.Parse<BodyKind>(name);
        const double half = 0.05;
        foreach (var theta in new[] { 0.8, 0.5, 0.2, 0.05 })
        {
            var exact = new ExactBody(kind, biot).FourierAt(theta) * half * half / Diffusivity;
            var flow = new HeatFlow(OneWay.Cut(kind, half, 40), OneWay.Stuff(Conductivity, Heat), 20);
            var transfer = double.IsInfinity(biot) ? 1e9 : biot * Conductivity / half;
            var found = flow.Until(Surroundings.Plain(120, transfer), () => flow.Coldest, 120 - (100 * theta), 1e6);

            // The middle of the innermost cell stands in for the middle of the body: half a cell beside it.
            Assert.NotNull(found);
            Assert.InRange(found.Value / exact, 1 - TimeTolerance, 1 + TimeTolerance);
        }
    }

    [Theory]
    [InlineData(20)]
    [InlineData(1e9)]
    public void A_brick_keeps_the_exact_time(double transfer)
    {
        // Product of three slabs (textbooks of heat transfer): 210 by 110 by 65 mm.
        var sides = new[] { 0.21, 0.11, 0.065 };
        var slabs = sides.Select(side => (Half: side / 2, Body: new ExactBody(BodyKind.Slab, transfer > 1e6 ? double.PositiveInfinity : transfer * side / 2 / Conductivity))).ToList();
        double Exact(double seconds) => slabs.Aggregate(1.0, (theta, slab) => theta * slab.Body.Middle(Diffusivity * seconds / (slab.Half * slab.Half)));
        foreach (var theta in new[] { 0.7, 0.3, 0.08 })
        {
            var flow = new HeatFlow(new Brick(sides[0], sides[1], sides[2], IsDomed: false).Cut(18), OneWay.Stuff(Conductivity, Heat), 22);
            var found = flow.Until(Surroundings.Plain(175, transfer), () => flow.Coldest, 175 - (153 * theta), 1e5);

            Assert.InRange(found!.Value / ExactBody.When(Exact, theta, 1e5), 1 - TimeTolerance, 1 + TimeTolerance);
        }
    }

    [Fact]
    public void A_brick_that_was_computed_elsewhere_keeps_its_histories()
    {
        // Reference notes on bakes, section 2.3: brick 65 x 110 x 210 mm, k 0.4, diffusivity 1.4e-7, h 20: theta at 1200, 2400, 3600 s
        // by the exact series; calculated.
        var flow = new HeatFlow(new Brick(0.21, 0.11, 0.065, IsDomed: false).Cut(18), OneWay.Stuff(Conductivity, Heat), 0);
        foreach (var theta in new[] { 0.957081, 0.815259, 0.662601 })
        {
            flow.For(Surroundings.Plain(100, 20), 1200);
            Assert.Equal(theta, 1 - (flow.Coldest / 100), 0.002);
        }
    }

    [Fact]
    public void A_drum_keeps_the_exact_time()
    {
        // Product of slab and cylinder: radius 50, height 100 mm.
        var (slab, cylinder) = (new ExactBody(BodyKind.Slab, 20 * 0.05 / Conductivity), new ExactBody(BodyKind.Cylinder, 20 * 0.05 / Conductivity));
        double Exact(double seconds) => slab.Middle(Diffusivity * seconds / 0.0025) * cylinder.Middle(Diffusivity * seconds / 0.0025);
        foreach (var theta in new[] { 0.8, 0.4, 0.1 })
        {
            var flow = new HeatFlow(new Round(0.05, 0.1, IsDomed: false).Cut(20), OneWay.Stuff(Conductivity, Heat), 20);
            var found = flow.Until(Surroundings.Plain(120, 20), () => flow.Coldest, 120 - (100 * theta), 1e5);

            Assert.InRange(found!.Value / ExactBody.When(Exact, theta, 1e5), 1 - TimeTolerance, 1 + TimeTolerance);
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_dome_whose_foot_lets_nothing_through_is_half_a_ball(bool isRound)
    {
        const double radius = 0.06, transfer = 20;
        var solid = isRound ? new Round(radius, radius, IsDomed: true).Cut(24) : new Brick(2 * radius, 2 * radius, radius, IsDomed: true).Cut(16);
        var half = new Solid();
        foreach (var volume in solid.Volumes)
        {
            half.AddCell(volume);
        }

        // Conducting walls as they are, given back as area by a distance of one.
        solid.Walls.ToList().ForEach(wall => half.AddWall(wall.One, wall.Other, wall.Way, 1));
        solid.Skins.Where(skin => skin.Face != Face.Under).ToList().ForEach(skin => half.AddSkin(skin.Cell, skin.Face, skin.Area, skin.Depth));
        half.Axis.AddRange(solid.Axis);
        foreach (var theta in new[] { 0.6, 0.2 })
        {
            var exact = new ExactBody(BodyKind.Sphere, transfer * radius / Conductivity).FourierAt(theta) * radius * radius / Diffusivity;
            var flow = new HeatFlow(half, OneWay.Stuff(Conductivity, Heat), 20);
            var found = flow.Until(Surroundings.Plain(120, transfer), () => flow.Coldest, 120 - (100 * theta), 1e5);

            // A body of steps: its skin lies up to a cell too far in or out.
            Assert.InRange(found!.Value / exact, 0.985, 1.015);
        }
    }

    [Fact]
    public void The_front_of_the_crust_moves_as_Stefans()
    {
        // A half space at its boiling point whose skin is held 70 K hotter: k 0.12, heat 6.916e5 J/(m3 K), latent 6.771e8 J/m3, so
        // s = 2 lambda sqrt(diffusivity t) with lambda exp(lambda²) erf(lambda) = Stefan / sqrt(pi): 3.814, 6.605 and 9.341 mm after
        // 600, 1,800 and 3,600 s (reference notes, section 8, calculated).
        const double conductivity = 0.12, heat = 6.916e5, latent = 6.771e8, hotter = 70;
        var stefan = heat * hotter / latent;
        var lambda = Brent.FindRoot(root => (root * Math.Exp(root * root) * SpecialFunctions.Erf(root)) - (stefan / Math.Sqrt(Math.PI)), 0.01, 2, 1e-12);
        var crumb = new Crumb(_ => 1.0, _ => 1000, _ => 0)
        {
            DryDensity = heat / 1000,
            WaterDensity = latent / 2.257e6,
            CrustWaterDensity = 0,
            CrustConductivity = conductivity,
            Boiling = 100,
            Latent = 2.257e6,
        };
        var flow = new HeatFlow(OneWay.Cut(BodyKind.Slab, 0.02, 80), crumb, 100);
        var printed = new Dictionary<double, double> { [600] = 3.814, [1800] = 6.605, [3600] = 9.341 };
        var before = 0.0;
        foreach (var (seconds, millimetres) in printed)
        {
            flow.For(Surroundings.Plain(100 + hotter, 1e9), seconds - before);
            before = seconds;
            var exact = 2 * lambda * Math.Sqrt(conductivity / heat * seconds);
            var front = flow.Boiled / crumb.WaterDensity;

            Assert.Equal(millimetres, exact * 1000, 0.002);
            Assert.InRange(front / exact, 0.99, 1.01);
        }
    }
}
