using System.Collections.Immutable;
using SwapSolver.Kitchen.Balances;
using SwapSolver.Kitchen.Formulas;
using SwapSolver.Kitchen.Ingredients;
using SwapSolver.Kitchen.Practice;
using SwapSolver.Kitchen.Quantities;
using SwapSolver.Kitchen.Wording;

namespace SwapSolver.Solving.Wishes;

/// <summary>Turns goals and figures into wishes, and makes room for them among the default bands.</summary>
/// <param name="Balances">The rules.</param>
/// <param name="Reference">The formula that is known to work.</param>
public sealed record Targets(BalanceList Balances, Formula Reference)
{
    /// <summary>The wish that a reading lies in a band.</summary>
    public static Hold Of(Balance balance, Band band) => new(balance.Id, balance, band, FromCaller: true);

    /// <summary>The wish for so much of one ingredient of the formula.</summary>
    /// <param name="ingredient">The ingredient.</param>
    /// <param name="phrases">The words.</param>
    public static LineMass OfLine(Ingredient ingredient, Phrases phrases) =>
        LineMass.Of(ingredient, phrases.Say("line-below-target"), phrases.Say("line-above-target"));

    /// <summary>The wishes that a goal stands for.</summary>
    public IEnumerable<Hold> Of(Goal goal) => goal.Aims.Select(aim => Of(aim.Balance, aim.Share.Of(Own(aim.Balance))) with { Share = aim.Share });

    /// <summary>One wish a reading: several on one reading must all be kept, and a side that is left open does not let
    /// a reading of the crumb run away.</summary>
    public ImmutableArray<Hold> Joined(IEnumerable<Hold> targets) =>
    [
        .. targets.GroupBy(target => target.Balance)
            .Select(group => group.Count() == 1 ? group.First() : Of(group.Key, group.Aggregate(Band.Open, (band, target) => band.And(target.Band))))
            .Select(target => target with { Band = Closed(target) }),
    ];

    /// <summary>The default bands and the wishes, with the default bands that a wish replaces left away: that of its own
    /// reading, and that of a role that gives way to it.</summary>
    /// <param name="targets">The readings that are to move.</param>
    /// <param name="limits">Limits that are kept besides.</param>
    public ImmutableArray<Hold> Among(ImmutableArray<Hold> targets, ImmutableArray<Hold> limits) =>
        WithRoomFor(targets.Select(target => (target.Balance, WayOf(target))), [.. limits, .. targets])
            .RemoveAll(hold => !hold.FromCaller && targets.Any(target => target.Balance == hold.Balance));

    /// <summary>The default bands and wishes, with the usual mass of a role given way to a reading on the side that it
    /// moves to: for less salt there may be less of the salt, and never more.</summary>
    /// <param name="moved">The readings, each with the way that it moves.</param>
    /// <param name="wishes">What the caller wishes.</param>
    public ImmutableArray<Hold> WithRoomFor(IEnumerable<(Balance Balance, Better Way)> moved, ImmutableArray<Hold> wishes)
    {
        var freed = moved.SelectMany(one => one.Balance.Settings.Target.FreedRoles.Select(role => (Role: role, one.Way))).ToLookup(one => one.Role, one => one.Way);
        return
        [
            .. HoldList.Around(Balances, Reference, wishes)
                .Select(hold => hold is { FromCaller: false, Balance: RoleMass mass } && freed.Contains(mass.Role)
                    ? freed[mass.Role].Aggregate(hold, Freed)
                    : hold),
        ];
    }

    /// <summary>Roles in which something new may come in for these readings. What a loaf has none of, it is given none
    /// of: a loaf without sweetener stays without.</summary>
    public Role[] NewRoles(IEnumerable<Balance> moved) =>
    [
        .. moved.SelectMany(balance => balance.Settings.Target.NewRoles).Distinct()
            .Where(role => role is Role.Flour or Role.Gel or Role.Liquid or Role.Egg || Reference.Lines.Any(line => line.Grams > Grams.None && Kin(role).Contains(line.Ingredient.Role))),
    ];

    private static ImmutableArray<Role> Kin(Role role) => role is Role.Acid or Role.Base or Role.LeaveningBlend
        ? [Role.Acid, Role.Base, Role.LeaveningBlend]
        : [role];

    /// <summary>An open side is what a role may do for a reading; the band no longer hangs on the reference alone.</summary>
    private static Hold Freed(Hold mass, Better way) => way switch
    {
        Better.Lower => mass with { Band = mass.Band with { Low = null }, IsAnchored = false },
        Better.Higher => mass with { Band = mass.Band with { High = null }, IsAnchored = false },
        _ => mass,
    };

    /// <summary>The way that a wish moves its reading; neither where the formula's own is wished for.</summary>
    private Better WayOf(Hold target) => Own(target.Balance) is { } own
        ? target.Band.Of(own) switch { Standing.Above => Better.Lower, Standing.Below => Better.Higher, _ => Better.Neither }
        : Better.Neither;

    private Level? Own(Balance balance) => balance.Read(Reference, Reference, Draws.Typical);

    private Band Closed(Hold target)
    {
        if (target.Balance.Band(Reference, Draws.Typical) is not { Low: { } low, High: { } high })
        {
            return target.Band;
        }

        // Half a band's width is room enough for whole grams and whole eggs.
        var room = (high.Value - low.Value) / 2;
        return target.Band switch
        {
            { Low: { } floor, High: null } => new Band(floor, new Level(Math.Max(high.Value, floor.Value + room))),
            { Low: null, High: { } ceiling } => new Band(new Level(Math.Max(0, Math.Min(low.Value, ceiling.Value - room))), ceiling),
            _ => target.Band,
        };
    }
}
