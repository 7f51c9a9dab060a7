using System.Globalization;
using System.Text;
using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Text;
using TieRodCalc.Yaml.Binding;
using UnitsNet;

namespace TieRodCalc.Yaml;

/// <summary>Writes the build record: a job file that holds its parts itself, with what is known of its made-up rods.</summary>
public static class JobWriter
{
    /// <summary>The record of some rods, in millimeters and degrees.</summary>
    /// <param name="job">The job that they are of; its name and its unit are kept.</param>
    /// <param name="rods">The rods, each with what is known of it.</param>
    /// <exception cref="ArgumentException">A part of a rod is left open.</exception>
    public static string Record(Job job, IReadOnlyList<(JobRod Rod, BuiltReadings Built)> rods)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(rods);
        if (rods.Any(one => one.Rod is not { Rod: not null, Request: not null }))
        {
            throw new ArgumentException("A rod whose parts are left open cannot be recorded.", nameof(rods));
        }

        StringBuilder text = new();
        text.Append("# Build record. Lengths are those of the parts named, and what was measured on the rods made of them.\n");
        text.Append("tierodcalc: 1\n");
        if (job.Name is { } name)
        {
            text.Append(CultureInfo.InvariantCulture, $"job: {Scalars.Quoted(name)}\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"units: {(job.Units == LengthDisplay.Inch ? "in" : "mm")}\n");
        RodParts[] parts = [.. rods.Select(one => one.Rod.Rod!.Parts)];
        Add(text, "materials", parts.SelectMany(Infos).Select(info => info.Material).OfType<Material>(), part => part.Id, Of);
        Add(text, "inner_ends", parts.Select(rod => rod.Inner), part => part.Info.Id, Of);
        Add(text, "sleeves", parts.Select(rod => rod.Sleeve).OfType<Sleeve>(), part => part.Info.Id, Of);
        AddOuter(text, parts);
        Add(
            text,
            "jam_nuts",
            parts.SelectMany(rod => new[] { rod.InnerNut, rod.OuterNut }).OfType<JamNut>(),
            part => part.Info.Id,
            Of);
        text.Append("rods:\n");
        foreach ((JobRod rod, BuiltReadings built) in rods)
        {
            AddRod(text, rod, built);
        }

        return text.ToString();
    }

    private static IEnumerable<PartInfo> Infos(RodParts rod) => new[]
    {
        rod.Inner.Info, rod.Sleeve?.Info, rod.Outer?.Info, rod.Socket?.Info, rod.InnerNut?.Info, rod.OuterNut?.Info,
    }.OfType<PartInfo>();

    private static void Add<T>(StringBuilder text, string list, IEnumerable<T> parts, Func<T, string> id, Func<T, Fields> of)
    {
        T[] each = [.. parts.DistinctBy(id)];
        if (each.Length > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"{list}:\n");
            foreach (T part in each)
            {
                text.Append(CultureInfo.InvariantCulture, $"  - {of(part)}\n");
            }
        }
    }

    private static void AddOuter(StringBuilder text, RodParts[] parts)
    {
        Add(
            text,
            "outer_ends",
            parts.Select(rod => (Info: rod.Outer?.Info ?? rod.Socket!.Info, Fields: rod.Outer is { } outer ? Of(outer) : Of(rod.Socket!))),
            part => part.Info.Id,
            part => part.Fields);
    }

    private static Fields Of(Material material) => new Fields()
        .Add("id", material.Id)
        .Add("name", material.Name is { } name ? Scalars.Quoted(name) : null)
        .Add("kind", Written(Choices.Material, material.Kind))
        .Add("tensile", material.TensileStrength is { } strength ? $"{Number(strength.Megapascals)} MPa" : null)
        .Add("source", material.Source is { } source ? Scalars.Quoted(source) : null);

    private static Fields Of(ThreadedEnd end) => Held(
        Part(end.Info)
            .Add("thread", Scalars.Quoted(ThreadText.Format(end.Thread)))
            .Add("center_to_tip", end.CenterToTip)
            .Add("thread_length", end.ThreadLength)
            .Add("lead", end.Lead)
            .Add("offset", Unless0(end.Offset))
            .Add("max_cut", Unless0(end.MaxCut))
            .Add("rethread", Unless0(end.Rethread)),
        end.Joint,
        end.Swing,
        end.Stud);

    private static Fields Of(SocketEnd end) => Held(
        Part(end.Info).Add("center_to_face", end.CenterToFace).Add("socket", Of(end.Socket).ToString()), end.Joint, end.Swing, end.Stud);

    private static Fields Of(Sleeve sleeve) => Part(sleeve.Info)
        .Add("length", sleeve.Length)
        .Add("inner", Of(sleeve.Inner).ToString())
        .Add("outer", Of(sleeve.Outer).ToString())
        .Add("outside", sleeve.Outside is { } outside
            ? $"{(outside.Shape == OutsideShape.Hexagon ? "hex" : "round")} {Written(outside.Across)}"
            : null);

    private static Fields Of(JamNut nut) =>
        Part(nut.Info).Add("thread", Scalars.Quoted(ThreadText.Format(nut.Thread))).Add("thickness", nut.Thickness);

    private static Fields Of(TappedHole hole) => new Fields()
        .Add("thread", Scalars.Quoted(ThreadText.Format(hole.Thread)))
        .Add("depth", hole.Depth)
        .Add("bore", Written(Choices.Bore, (Bore?)hole.Bore))
        .Add("countersink", hole.Countersink)
        .Add("witness", hole.Witness)
        .Add("clamp", hole.Clamp);

    private static Fields Part(PartInfo info) =>
        new Fields().Add("id", info.Id).Add("name", info.Name is { } name ? Scalars.Quoted(name) : null)
            .Add("material", info.Material?.Id)
            .Add("price", info.Price is { } price ? $"{price.Amount.ToString(CultureInfo.InvariantCulture)} {price.Currency}" : null)
            .Add("mass", info.Mass is { } mass ? $"{Number(mass.Kilograms)} kg" : null);

    private static Fields Held(Fields part, JointKind? joint, Angle? swing, StudDirection? stud) => part
        .Add("joint", Written(Choices.Joint, joint))
        .Add("swing", swing is { } angle ? $"{Number(angle.Degrees)} deg" : null)
        .Add("stud", Written(Choices.Stud, stud));

    private static void AddRod(StringBuilder text, JobRod rod, BuiltReadings built)
    {
        RodParts parts = rod.Rod!.Parts;
        RodRequest request = rod.Request!;
        PlanRules rules = request.Rules;
        Fields nuts = new Fields().Add("inner", parts.InnerNut?.Info.Id ?? Ids.None);
        Fields fields = new Fields()
            .Add("name", Scalars.Quoted(rod.Name))
            .Add("side", Written(Choices.Side, rod.Side))
            .Add("inner", parts.Inner.Info.Id)
            .Add("sleeve", parts.Sleeve?.Info.Id)
            .Add("outer", (parts.Outer?.Info ?? parts.Socket!.Info).Id)
            .Add("nuts", (parts.OneJoint ? nuts : nuts.Add("outer", parts.OuterNut?.Info.Id ?? Ids.None)).ToString())
            .Add("length", $"{Number(request.Target.Millimeters)} mm")
            .Add("adjust", $"{{shorter: {Number(request.Shorter.Millimeters)} mm, longer: {Number(request.Longer.Millimeters)} mm}}")
            .Add(
                "clocking",
                parts is { Inner.IsBent: true, Outer.IsBent: true, Clocking: { } angle } ? $"{Number(angle.Degrees)} deg" : null)
            .Add("rules", new Fields()
                .Add("engagement", rules.Engagement is { } rule
                    ? rule.AsLength is { } length ? $"{Number(length.Millimeters)} mm" : $"{Number(rule.InDiameters!.Value)} diameters"
                    : null)
                .Add("tip_gap", $"{Number(rules.TipGap.Millimeters)} mm")
                .Add("mark", $"{Number(rules.Mark.Millimeters)} mm")
                .Add("allowance", $"{Number(rules.Allowance.Millimeters)} mm")
                .Add("load", rules.Load is { } load ? $"{Number(load.Newtons)} N" : null)
                .ToString())
            .Add("built", new Fields()
                .Add("center_to_center", built.CenterToCenter)
                .Add("showing", Ends(built, end => end.Showing, parts.OneJoint))
                .Add("cut", Ends(built, end => end.Cut, parts.OneJoint))
                .Add("depth", Ends(built, end => end.Depth, parts.OneJoint))
                .ToString());
        string lines = fields.ToString().Replace(", built: ", ",\n     built: ", StringComparison.Ordinal);
        text.Append(CultureInfo.InvariantCulture, $"  - {lines}\n");
    }

    private static string? Ends(BuiltReadings built, Func<EndReadings, Measured?> of, bool oneJoint)
    {
        Fields ends = new Fields().Add("inner", of(built.Inner)).Add("outer", oneJoint ? null : of(built.Outer));
        return ends.Any ? ends.ToString() : null;
    }

    private static Measured? Unless0(Measured measured) => measured == default ? null : measured;

    private static string? Written<T>(Choice<T> choice, T? value)
        where T : struct => value is { } known ? choice.Names[Array.IndexOf(choice.Values, known)] : null;

    private static string Written(Measured measured) => measured.PlusMinus > Length.Zero
        ? $"{Number(measured.Nominal.Millimeters)} mm ± {Number(measured.PlusMinus.Millimeters)} mm"
        : $"{Number(measured.Nominal.Millimeters)} mm";

    /// <summary>A number without an exponent, as exact as a double is.</summary>
    private static string Number(double value) => value.ToString("0.#################", CultureInfo.InvariantCulture);

    /// <summary>The fields of one map, on one line.</summary>
    private sealed class Fields
    {
        private readonly List<string> _fields = [];

        public bool Any => _fields.Count > 0;

        public Fields Add(string key, string? value)
        {
            if (value is not null && value != "{}")
            {
                _fields.Add($"{key}: {value}");
            }

            return this;
        }

        public Fields Add(string key, Measured? value) => Add(key, value is { } measured ? Written(measured) : null);

        public override string ToString() => $"{{{string.Join(", ", _fields)}}}";
    }
}
