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

    private static Dictionary<string, Func<ThreadedEnd, ThreadDesignation>> EndThread { get; } = new() { ["thread"] = end => end.Thread };

    private static Dictionary<string, Func<OuterEnd, ThreadDesignation>> OuterThread { get; } = new() { ["thread"] = end => end.Thread };

    private static Dictionary<string, Func<JamNut, ThreadDesignation>> NutThread { get; } = new() { ["thread"] = nut => nut.Thread };

    private static Dictionary<string, Func<Sleeve, ThreadDesignation>> SleeveThreads { get; } =
        new() { ["inner"] = sleeve => sleeve.Inner.Thread, ["outer"] = sleeve => sleeve.Outer.Thread };

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
        PlanRules rules = Rules.Read(map.Map("rules", Keys.Rules)).Over(jobRules);
        BuiltReadings? built = BuiltRecord.Read(map);
        length = length.FromToe is { } existing ? length with { Target = existing.Target(map, side, steering) } : length;
        Rod? rod = Make(map, parts, clocking, item.Span);
        if (rod is not null)
        {
            CheckAgainstOffset(map, rod, length, adjust);
            CheckMeasured(map, rod, built);
            if (rod.Parts.OneJoint && built is not null && built.Outer != default)
            {
                file.Findings.Problem(map.SpanOf("built"), $"{map.Title} has one threaded joint: nothing can be measured at an outer one");
            }
        }

        RodRequest? request = length.Target is { } target && adjust is { Shorter: { } shorter, Longer: { } longer }
            ? Request(target, shorter, longer, rules, side)
            : null;
        JobRod read = new()
        {
            Name = name ?? string.Empty,
            Side = side,
            Request = request,
            Built = built,
            Candidates = parts.Candidates(clocking),
            NotPlanned = parts.FirstOpen is { } open
                ? file.Source.At(open, $"a part of {map.Title} is left open: ask choose which parts reach the length, and name them")
                : null,
        };
        return request is null
            ? read
            : OnCar.Place(read with { Rod = read.NotPlanned is null ? rod : null }, map, request, steering);
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
            map, "inner", tables.InnerEnds, EndThread, ThreadGender.External, needed: true);
        ChosenPart<OuterEnd>? outer = _chooser.Read(
            map, "outer", tables.OuterEnds, OuterThread, ThreadGender.External, needed: true);
        bool socket = outer?.Part?.Socket is not null || (outer is { IsOpen: true } && !map.Has("sleeve"));
        ChosenPart<Sleeve>? sleeve = _chooser.Read(
            map, "sleeve", tables.Sleeves, SleeveThreads, ThreadGender.Internal, needed: outer?.Part?.Threaded is not null);
        if (outer?.Part?.Socket is not null && map.Find("sleeve") is { } entry)
        {
            file.Findings.Problem(
                entry.Key.Span, $"the outer end of {map.Title} carries the internal thread itself; there is no place for a sleeve");
        }

        MapReader? nuts = map.Map("nuts", Keys.Ends, needed: true);
        if (outer?.Part?.Socket is not null && nuts?.Find("outer") is { } second
            && second.Value is not ScalarNode { Value: Ids.None })
        {
            file.Findings.Problem(second.Key.Span, $"{map.Title} has one threaded joint: there is no outer joint for a nut");
        }

        ChosenPart<JamNut>? innerNut = nuts is null ? null : Nut(nuts, "inner", needed: true);
        ChosenPart<JamNut>? outerNut = nuts is null ? null : Nut(nuts, "outer", needed: !socket);
        return new ChosenParts(inner, sleeve, outer, innerNut, outerNut);
    }

    private ChosenPart<JamNut>? Nut(MapReader nuts, string key, bool needed) =>
        _chooser.Read(nuts, key, tables.JamNuts, NutThread, ThreadGender.Internal, needed, none: true);

    /// <summary>Makes the rod; what keeps its parts from going together is reported.</summary>
    private Rod? Make(MapReader map, ChosenParts parts, Angle? clocking, TextSpan span)
    {
        if (parts.Inner?.Part is not { } inner)
        {
            return null;
        }

        // A clocking that could not be read has its problem already.
        bool said = map.Has("clocking");
        Angle? angle = clocking ?? (said ? Angle.Zero : null);
        RodParts? made = parts switch
        {
            { Outer.Part.Socket: { } socket } => new(inner, socket, parts.InnerNut?.Part),
            { Outer.Part.Threaded: { } outer, Sleeve.Part: { } sleeve } =>
                new(inner, sleeve, outer, parts.InnerNut?.Part, parts.OuterNut?.Part, angle),
            _ => null,
        };
        if (made is null)
        {
            return null;
        }

        RodFaults? faults = Rod.Make(made, out Rod? rod);
        foreach (ThreadMismatch mismatch in faults?.Mismatches ?? [])
        {
            file.Findings.Problem(parts.SpanOf(mismatch), MismatchText.Of(mismatch));
        }

        if (faults is { ClockingMissing: true })
        {
            file.Findings.Problem(
                span, $"both ends of {map.Title} are bent: 'clocking' is missing, the angle between their offsets seen along the rod");
        }

        if (said && made is not { Inner.IsBent: true, Outer.IsBent: true })
        {
            file.Findings.Note(
                map.Find("clocking")?.Key.Span ?? span, "'clocking' changes nothing here: only where both ends are bent it does");
        }

        return rod;
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

    private void CheckMeasured(MapReader map, Rod rod, BuiltReadings? built)
    {
        if (built?.CenterToCenter is { } measured && !rod.CanHave(measured.Nominal))
        {
            file.Findings.Problem(
                map.SpanOf("built"),
                $"the rod's length of {Wording.Mm(measured.Nominal)} is not above {Wording.Mm(rod.Offset)}, the least distance that the "
                    + "bent ends leave between the ball centers");
        }
    }
}
