using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Yaml.Sources;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>What a rod says of its parts; null where it is silent or could not be understood.</summary>
internal sealed record ChosenParts(
    ChosenPart<ThreadedEnd>? Inner,
    ChosenPart<Sleeve>? Sleeve,
    ChosenPart<OuterEnd>? Outer,
    ChosenPart<JamNut>? InnerNut,
    ChosenPart<JamNut>? OuterNut)
{
    /// <summary>The place of the first part that is left open, or null.</summary>
    public TextSpan? FirstOpen =>
        Inner is { IsOpen: true } inner ? inner.Span
        : Sleeve is { IsOpen: true } sleeve ? sleeve.Span
        : Outer is { IsOpen: true } outer ? outer.Span
        : InnerNut is { IsOpen: true } innerNut ? innerNut.Span
        : OuterNut is { IsOpen: true } outerNut ? outerNut.Span
        : null;

    /// <summary>
    /// What the rod can be chosen from; null where a part could not be read. Where the rod says a sleeve, the outer end goes into it;
    /// where it says none, the outer end carries the internal thread.
    /// </summary>
    public RodCandidates? Candidates(Angle? clocking) => Inner is { } inner && Outer is { } outer
        ? new RodCandidates
        {
            Inner = inner.Candidates,
            Sleeves = Sleeve?.Candidates ?? [],
            Outer = Sleeve is null ? [] : [.. outer.Candidates.Select(end => end.Threaded).OfType<ThreadedEnd>()],
            Sockets = Sleeve is null ? [.. outer.Candidates.Select(end => end.Socket).OfType<SocketEnd>()] : [],
            InnerNuts = Nuts(InnerNut),
            OuterNuts = Nuts(OuterNut),
            Clocking = clocking,
        }
        : null;

    private static NutCandidates Nuts(ChosenPart<JamNut>? nut) => new(nut?.Candidates ?? [], Must: nut is { IsOpen: false });

    /// <summary>The place of the part whose thread does not fit: the nut, or the end where the sleeve is meant.</summary>
    public TextSpan SpanOf(ThreadMismatch mismatch) => (mismatch.Side, mismatch.Female) switch
    {
        (RodSide.Inner, FemalePart.JamNut) => InnerNut!.Value.Span,
        (RodSide.Outer, FemalePart.JamNut) => OuterNut!.Value.Span,
        (RodSide.Inner, _) => Inner!.Value.Span,
        _ => Outer!.Value.Span,
    };
}
