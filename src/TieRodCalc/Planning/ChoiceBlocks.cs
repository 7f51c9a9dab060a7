using TieRodCalc.Parts;
using TieRodCalc.Rods;
using TieRodCalc.Threads;

namespace TieRodCalc.Planning;

/// <summary>All blocks of a choice: sleeves and sockets joined with the ends whose threads match.</summary>
internal sealed class ChoiceBlocks
{
    private readonly RodRequest _request;
    private readonly double _target;
    private readonly double _shorter;
    private readonly double _longer;
    private readonly double _tipGap;
    private readonly bool _every;
    private readonly List<ChoiceBlock> _all = [];

    /// <summary>Joins the candidates.</summary>
    /// <param name="candidates">What to choose from.</param>
    /// <param name="request">What is wanted.</param>
    /// <param name="every">Whether blocks are kept of which no pair can reach the length.</param>
    public ChoiceBlocks(RodCandidates candidates, RodRequest request, bool every = false)
    {
        _every = every;
        Candidates = candidates;
        _request = request;
        _target = Millimeters.Positive(request.Target, nameof(request));
        _shorter = Millimeters.NotNegative(request.Shorter, nameof(request));
        _longer = Millimeters.NotNegative(request.Longer, nameof(request));
        _tipGap = Millimeters.NotNegative(request.Rules.TipGap, nameof(request));
        ILookup<ThreadKey, EndGroup> inner = EndGroup.Of(candidates.Inner);
        ILookup<ThreadKey, EndGroup> outer = EndGroup.Of(candidates.Outer);
        NutChoice innerNuts = new(candidates.InnerNuts);
        NutChoice outerNuts = new(candidates.OuterNuts);
        for (int place = 0; place < candidates.Sleeves.Count; place++)
        {
            Sleeve sleeve = candidates.Sleeves[place];
            if (PartFaults.Of(sleeve).Any())
            {
                continue;
            }

            foreach (EndGroup innerGroup in inner[ThreadKey.Of(sleeve.Inner.Thread)])
            {
                foreach (EndGroup outerGroup in outer[ThreadKey.Of(sleeve.Outer.Thread)])
                {
                    AddSleeve(sleeve, place, innerGroup, outerGroup, innerNuts, outerNuts);
                }
            }
        }

        for (int place = 0; place < candidates.Sockets.Count; place++)
        {
            SocketEnd socket = candidates.Sockets[place];
            if (PartFaults.Of(socket).Any())
            {
                continue;
            }

            foreach (EndGroup group in inner[ThreadKey.Of(socket.Socket.Thread)])
            {
                AddSocket(socket, place, group, innerNuts);
            }
        }
    }

    public RodCandidates Candidates { get; }

    public RodRequest Request => _request;

    /// <summary>How many combinations have threads that match.</summary>
    public long Combinations { get; private set; }

    /// <summary>How many of them are left out for want of a clocking.</summary>
    public long WithoutClocking { get; private set; }

    /// <summary>How many of them are left out because a named nut does not fit the end.</summary>
    public long WithoutNut { get; private set; }

    /// <summary>The blocks, those alone of which some pair may reach the length where not every one was asked for.</summary>
    public IReadOnlyList<ChoiceBlock> All => _all;

    /// <summary>The parts of one pair of a block.</summary>
    public RodParts Parts(ChoiceBlock block, int inner, int outer) => block.Like.OneJoint
        ? block.Like with { Inner = Candidates.Inner[inner] }
        : block.Like with { Inner = Candidates.Inner[inner], Outer = Candidates.Outer[outer] };

    private void AddSleeve(Sleeve sleeve, int place, EndGroup inner, EndGroup outer, NutChoice innerNuts, NutChoice outerNuts)
    {
        long pairs = (long)inner.Ends.Length * outer.Ends.Length;
        Combinations += pairs;
        if (Candidates.Clocking is null && inner.Like!.IsBent && outer.Like!.IsBent)
        {
            WithoutClocking += pairs;
            return;
        }

        if (innerNuts.Of(inner.Like!, sleeve.Inner, out JamNut? innerNut) && outerNuts.Of(outer.Like!, sleeve.Outer, out JamNut? outerNut))
        {
            Add(new RodParts(inner.Like!, sleeve, outer.Like!, innerNut, outerNut, Candidates.Clocking), inner, outer, place);
        }
        else
        {
            WithoutNut += pairs;
        }
    }

    private void AddSocket(SocketEnd socket, int place, EndGroup inner, NutChoice nuts)
    {
        Combinations += inner.Ends.Length;
        if (nuts.Of(inner.Like!, socket.Socket, out JamNut? nut))
        {
            Add(new RodParts(inner.Like!, socket, nut), inner, EndGroup.None, place);
        }
        else
        {
            WithoutNut += inner.Ends.Length;
        }
    }

    private void Add(RodParts like, EndGroup inner, EndGroup outer, int place)
    {
        RodDimensions rod = RodDimensions.Nominal(
            like, Required(like, RodSide.Inner), like.OneJoint ? 0 : Required(like, RodSide.Outer), _tipGap);
        RodProblem problem = new(rod, _target, _shorter, _longer);
        if (!(_target - _shorter > rod.Offset + Millimeters.Negligible) || !problem.Adjusts)
        {
            return;
        }

        int locked = like.Joints.Count(side => like.NutAt(side) is not null || like.HoleAt(side).Clamp is not null);
        ChoiceBlock block = new(like, problem, inner, outer, place, locked == like.Joints.Count ? 0 : locked > 0 ? 1 : 2);
        if (_every || block.MayReach)
        {
            _all.Add(block);
        }
    }

    /// <summary>The required engagement; where a strength is not known the rule alone says it, without the limits of size.</summary>
    private double Required(RodParts like, RodSide side)
    {
        EngagementRule? rule = _request.Rules.EngagementAt(side);
        ThreadedEnd end = like.EndAt(side);
        Material? female = like.Female.Material;
        return end.Info.Material?.TensileStrength is null || female?.TensileStrength is null
            ? rule?.AsLength is { } length
                ? Millimeters.Of(length)
                : (rule?.InDiameters ?? EngagementRequirement.Usual(female)) * end.Thread.Size.DiameterMm
            : JointNeeds.Of(like, side, _request.Rules).RequiredMm;
    }

    /// <summary>The thinnest nut for each thread.</summary>
    private sealed class NutChoice(NutCandidates candidates)
    {
        private readonly Dictionary<ThreadKey, JamNut> _thinnest = candidates.Nuts
            .GroupBy(nut => ThreadKey.Of(nut.Thread))
            .ToDictionary(same => same.Key, same => same.MinBy(nut => nut.Thickness.Mm)!);

        /// <summary>Whether an end can be taken, and its nut.</summary>
        public bool Of(ThreadedEnd end, TappedHole hole, out JamNut? nut)
        {
            nut = null;
            if (candidates.Must)
            {
                return candidates.Nuts.Count == 0 || _thinnest.TryGetValue(ThreadKey.Of(end.Thread), out nut);
            }

            if (hole.Clamp is null)
            {
                _thinnest.TryGetValue(ThreadKey.Of(end.Thread), out nut);
            }

            return true;
        }
    }
}
