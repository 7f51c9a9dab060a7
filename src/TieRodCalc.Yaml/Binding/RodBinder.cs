using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Steering;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using TieRodCalc.Yaml.Sources;
using TieRodCalc.Yaml.Tree;
using UnitsNet;

namespace TieRodCalc.Yaml.Binding;

/// <summary>Reads the rods of a job.</summary>
internal sealed class RodBinder(LoadedFile file, PartTables tables, PlanRules jobRules, SteeringSetup steering)
{
    private readonly PartChooser _chooser = new(tables);
    private readonly Dictionary<string, ScalarNode> _names = new(StringComparer.Ordinal);

    /// <summary>Reads the rods; none where the job has none.</summary>
    public List<JobRod> Bind(MapReader job)
    {
        List<JobRod> rods = [];
        foreach (Node item in job.List("rods")?.Items ?? [])
        {
            if (MapReader.OpenItem(item, "rod", Keys.Rod, file) is { } map)
            {
                rods.Add(Bind(map, item));
            }
        }

        return rods;
    }

    private JobRod Bind(MapReader map, Node item)
    {
        string? name = Name(map);
        CarSide? side = map.Choose("side", Choices.Side);
        ChosenParts parts = Parts(map);
        RodLength length = RodLength.Read(map, steering.Gauges);
        RodAdjustment adjust = RodAdjustment.Read(map);
        Angle? clocking = map.Value("clocking", ValueText.ParseAngle);
        PlanRules rules = Rules.Read(map).Over(jobRules);
        (Measured? measured, BuiltReadings? built) = BuiltRecord.Read(map);
        length = length.FromToe is { } existing ? length with { Target = existing.Target(map, side, steering) } : length;
        Rod? rod = Make(map, parts, clocking, item.Span);
        if (rod is not null)
        {
            CheckAgainstOffset(map, rod, length, adjust);
        }

        RodRequest? request = length.Target is { } target && adjust is { Shorter: { } shorter, Longer: { } longer }
            ? Request(target, shorter, longer, rules, side)
            : null;
        JobRod read = new()
        {
            Name = name ?? string.Empty,
            Side = side,
            MeasuredLength = measured,
            NotPlanned = NotPlanned(parts),
        };
        if (request is null)
        {
            return read;
        }

        if (read.NotPlanned is null && rod is not null)
        {
            read = read with { Rod = rod, Request = request };
        }

        return OnCar.Place(read, map, rod, SocketRod(parts), request, built, steering);
    }

    private RodRequest Request(Length target, Length shorter, Length longer, PlanRules rules, CarSide? side) => new()
    {
        Target = target,
        Shorter = shorter,
        Longer = longer,
        Rules = rules,
        Steering = steering.WheelOf(side) is { } wheel
            ? wheel.Wheel.With(wheel.Side, target).Aligned(Angle.Zero, wheel.Wheel.Camber)
            : null,
        ToeOfBothWheels = steering.OneRodTurns is not null,
        Plates = steering.Gauges.Plates,
    };

    /// <summary>The rod with one threaded joint, or null where the parts are none; that its threads match is checked elsewhere.</summary>
    private static SocketRod? SocketRod(ChosenParts parts) =>
        parts is { Inner.Part: { } inner, Outer.Part.Socket: { } socket } ? new SocketRod(inner, socket, parts.InnerNut?.Part) : null;

    private string? Name(MapReader map)
    {
        string? name = map.Line("name", needed: true);
        if (name is null)
        {
            return null;
        }

        ScalarNode text = map.Text("name")!;
        if (!_names.TryAdd(name, text))
        {
            int line = file.Source.LineOf(_names[name].Span.Start);
            file.Findings.Problem(
                text.Span, string.Create(Wording.Invariant, $"there is a rod {Wording.Shown(name)} already, in line {line}"));
        }

        return name;
    }

    private ChosenParts Parts(MapReader map)
    {
        ChosenPart<ThreadedEnd>? inner = _chooser.Read(
            map, "inner", tables.InnerEnds, Keys.ThreadFilter, ThreadGender.External, needed: true);
        ChosenPart<OuterEnd>? outer = _chooser.Read(
            map, "outer", tables.OuterEnds, Keys.ThreadFilter, ThreadGender.External, needed: true);
        bool socket = outer?.Part?.Socket is not null;
        bool threaded = outer?.Part?.Threaded is not null;
        ChosenPart<Sleeve>? sleeve = _chooser.Read(
            map, "sleeve", tables.Sleeves, Keys.Ends, ThreadGender.Internal, needed: threaded);
        if (socket && map.Find("sleeve") is { } entry)
        {
            file.Findings.Problem(
                entry.Key.Span, $"the outer end of {map.Title} carries the internal thread itself; there is no place for a sleeve");
        }

        MapReader? nuts = map.Map("nuts", Keys.Ends, needed: true);
        ChosenPart<JamNut>? innerNut = nuts is null ? null : Nut(nuts, "inner", needed: true);
        ChosenPart<JamNut>? outerNut = nuts is null ? null : Nut(nuts, "outer", needed: !socket);
        return new ChosenParts(inner, sleeve, outer, innerNut, outerNut);
    }

    private ChosenPart<JamNut>? Nut(MapReader nuts, string key, bool needed) =>
        _chooser.Read(nuts, key, tables.JamNuts, Keys.ThreadFilter, ThreadGender.Internal, needed, none: true);

    /// <summary>Makes the rod; what keeps its parts from going together is reported.</summary>
    private Rod? Make(MapReader map, ChosenParts parts, Angle? clocking, TextSpan span)
    {
        if (parts.Inner?.Part is not { } inner)
        {
            return null;
        }

        if (parts.Outer?.Part?.Socket is { } socket)
        {
            Compare(parts.Inner.Value.Span, inner, $"the socket of {socket.Info.Id}", socket.Socket.Thread);
            if (parts.InnerNut is { Part: { } nut } chosen)
            {
                Compare(chosen.Span, inner, $"nut {nut.Info.Id}", nut.Thread);
            }

            return null;
        }

        if (parts.Outer?.Part?.Threaded is not { } outer || parts.Sleeve?.Part is not { } sleeve)
        {
            return null;
        }

        // A clocking that could not be read has its problem already.
        bool said = map.Has("clocking");
        Angle? angle = clocking ?? (said ? Angle.Zero : null);
        RodFaults? faults = Rod.Make(
            new RodParts(inner, sleeve, outer, parts.InnerNut?.Part, parts.OuterNut?.Part, angle), out Rod? rod);
        foreach (ThreadMismatch mismatch in faults?.Mismatches ?? [])
        {
            file.Findings.Problem(parts.SpanOf(mismatch), MismatchText.Of(mismatch));
        }

        if (faults is { ClockingMissing: true })
        {
            file.Findings.Problem(
                span, $"both ends of {map.Title} are bent: 'clocking' is missing, the angle between their offsets seen along the rod");
        }

        if (said && !(inner.IsBent && outer.IsBent))
        {
            file.Findings.Note(
                map.Find("clocking")?.Key.Span ?? span, "'clocking' changes nothing here: only where both ends are bent it does");
        }

        return rod;
    }

    private void Compare(TextSpan span, ThreadedEnd male, string female, ThreadDesignation thread)
    {
        ThreadDifference difference = Rod.Difference(male.Thread, thread);
        if (difference != ThreadDifference.None)
        {
            file.Findings.Problem(span, MismatchText.Of(male.Info.Id, male.Thread, female, thread, difference));
        }
    }

    private void CheckAgainstOffset(MapReader map, Rod rod, RodLength length, RodAdjustment adjust)
    {
        if (length.Target is not { } target)
        {
            return;
        }

        Length least = rod.Offset;
        string written = map.Find("length")?.Value is ScalarNode text ? Wording.Shown(text.Value) : Wording.Mm(target);
        string bound = least > Length.Zero
            ? $"{Wording.Mm(least)}, the least distance that the bent ends leave between the ball centers"
            : "zero";
        if (!rod.CanHave(target))
        {
            file.Findings.Problem(map.SpanOf("length"), $"the length of {written} is not above {bound}");
        }
        else if (adjust.Shorter is { } shorter && !rod.CanHave(target - shorter))
        {
            file.Findings.Problem(
                map.SpanOf("length"), $"the length of {written} less {Wording.Mm(shorter)} of adjustment is not above {bound}");
        }
    }

    /// <summary>Why this version cannot plan the rod, or null.</summary>
    private Problem? NotPlanned(ChosenParts parts)
    {
        if (parts.FirstOpen is { } open)
        {
            return file.Source.At(open, "this version plans only rods whose parts are all named");
        }

        return parts.Outer is { Part.Socket: not null } socket
            ? file.Source.At(socket.Span, "rods with one threaded joint are read, but this version does not plan them yet")
            : null;
    }
}
