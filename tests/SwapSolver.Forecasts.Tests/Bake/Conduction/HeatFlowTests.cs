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
            var flow = new HeatFlow(new Brick(sides[0], sides[1], sides[2], IsDomed: false).Cut(Bake.Fine), OneWay.Stuff(Conductivity, Heat), 22);
            var found = flow.Until(Surroundings.Plain(175, transfer), () => flow.Coldest, 175 - (153 * theta), 1e5);

            Assert.InRange(found!.Value / ExactBody.When(Exact, theta, 1e5), 1 - TimeTolerance, 1 + TimeTolerance);
        }
    }

    [Fact]
    public void A_brick_that_was_computed_elsewhere_keeps_its_histories()
    {
        // Reference notes on bakes, section 2.3: brick 65 x 110 x 210 mm, k 0.4, diffusivity 1.4e-7, h 20: theta at 1200, 2400, 3600 s
        // by the exact series; calculated.
        var flow = new HeatFlow(new Brick(0.21, 0.11, 0.065, IsDomed: false).Cut(Bake.Fine), OneWay.Stuff(Conductivity, Heat), 0);
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
            var flow = new HeatFlow(new Round(0.05, 0.1, IsDomed: false).Cut((int)(Bake.Fine * LoafBody.RoundFineness)), OneWay.Stuff(Conductivity, Heat), 20);
            var found = flow.Until(Surroundings.Plain(120, 20), () => flow.Coldest, 120 - (100 * theta), 1e5);

            Assert.InRange(found!.Value / ExactBody.When(Exact, theta, 1e5), 1 - TimeTolerance, 1 + TimeTolerance);
        }
    }

    [Theory]
    [InlineData(true, 20)]
    [InlineData(true, 1e9)]
    [InlineData(false, 20)]
    [InlineData(false, 1e9)]
    public void A_dome_whose_foot_lets_nothing_through_is_half_a_ball(bool isRound, double transfer)
    {
        // In cells as large as those of a forecast.
        const double radius = 0.06;
        var half = WithoutFoot(isRound
            ? new Round(radius, radius, IsDomed: true).Cut((int)(Bake.Fine * LoafBody.RoundFineness))
            : new Brick(2 * radius, 2 * radius, radius, IsDomed: true).Cut(Bake.Fine));
        var body = new ExactBody(BodyKind.Sphere, transfer > 1e6 ? double.PositiveInfinity : transfer * radius / Conductivity);
        foreach (var theta in new[] { 0.8, 0.6, 0.2, 0.05 })
        {
            var exact = body.FourierAt(theta) * radius * radius / Diffusivity;
            var flow = new HeatFlow(half, OneWay.Stuff(Conductivity, Heat), 20);
            var found = flow.Until(Surroundings.Plain(120, transfer), () => flow.Coldest, 120 - (100 * theta), 1e5);

            Assert.InRange(found!.Value / exact, 1 - TimeTolerance, 1 + TimeTolerance);
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_flat_dome_has_its_volume_its_skin_and_its_foot(bool isRound)
    {
        // Half a flat ellipsoid of revolution, in textbooks of geometry: volume 2/3 pi r² h; dome pi (r² + h² artanh(e) / e), e² = 1 - h²/r².
        const double radius = 0.09, height = 0.06;
        var solid = isRound ? new Round(radius, height, IsDomed: true).Cut(14) : new Brick(2 * radius, 2 * radius, height, IsDomed: true).Cut(Bake.Fine);
        var whole = isRound ? 1 : 4;
        double Area(Face face) => whole * solid.Skins.Where(skin => skin.Face == face).Sum(skin => skin.Area);
        var e = Math.Sqrt(1 - (height * height / (radius * radius)));

        Assert.InRange(whole * solid.Volumes.Sum() / (2.0 / 3 * Math.PI * radius * radius * height), 0.999, 1.001);
        Assert.InRange(Area(Face.Top) / (Math.PI * ((radius * radius) + (height * height * Math.Atanh(e) / e))), 0.999, 1.001);
        Assert.InRange(Area(Face.Under) / (Math.PI * radius * radius), 0.995, 1.005);
    }

    [Fact]
    public void A_long_dome_that_is_round_bakes_as_a_round_one()
    {
        // Two ways to cut one body, which share no wall: rings, and bricks.
        var stuff = OneWay.Stuff(Conductivity, Heat);
        var (rings, bricks) = (
            new HeatFlow(new Round(0.09, 0.06, IsDomed: true).Cut(14), stuff, 20),
            new HeatFlow(new Brick(0.18, 0.18, 0.06, IsDomed: true).Cut(Bake.Fine), stuff, 20));
        double Time(HeatFlow flow) => flow.Until(Surroundings.Plain(120, 20), () => flow.Coldest, 90, 1e5)!.Value;

        Assert.InRange(Time(rings) / Time(bricks), 1 - TimeTolerance, 1 + TimeTolerance);
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

    /// <summary>The same body, of whose foot nothing is skin.</summary>
    private static Solid WithoutFoot(Solid solid)
    {
        var half = new Solid();
        foreach (var volume in solid.Volumes)
        {
            half.AddCell(volume);
        }

        // Conducting walls as they are, given back as area by a distance of one.
        solid.Walls.ToList().ForEach(wall => half.AddWall(wall.One, wall.Other, wall.Way, 1));
        solid.Skins.Where(skin => skin.Face != Face.Under).ToList().ForEach(skin => half.AddSkin(skin.Cell, skin.Face, skin.Area, skin.Depth));
        half.Axis.AddRange(solid.Axis);
        return half;
    }
}
