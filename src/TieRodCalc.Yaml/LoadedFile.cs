using TieRodCalc.Yaml.Binding;
using TieRodCalc.Yaml.Sources;
using TieRodCalc.Yaml.Tree;

namespace TieRodCalc.Yaml;

/// <summary>A file that was read into a tree, with what was found in it so far.</summary>
internal sealed class LoadedFile
{
    private readonly bool _readToEnd;
    private MapReader? _top;

    private LoadedFile(SourceText source, Findings findings, MapNode? root = null, bool readToEnd = false) =>
        (Source, Findings, Root, _readToEnd) = (source, findings, root, readToEnd);

    /// <summary>The text.</summary>
    public SourceText Source { get; }

    /// <summary>What was found.</summary>
    public Findings Findings { get; }

    /// <summary>The keys at the top; null where the file is not one that this program reads.</summary>
    public MapNode? Root { get; }

    /// <summary>
    /// The reader of the keys at the top, null where there are none; unknown keys are reported when it is first asked for.
    /// </summary>
    public MapReader? Top => _top ??= Root is null
        ? null
        : JobKey is null
            ? MapReader.Open(Root, "the part file", Keys.PartFile, this)
            : MapReader.Open(Root, "the job", Keys.Job, this);

    /// <summary>True where the whole file was read, so that what is not in it does not exist.</summary>
    public bool Whole => Root is { Whole: true } && _readToEnd;

    /// <summary>The key that makes the file a job, or null in a part file.</summary>
    public ScalarNode? JobKey => (Root?.Find("job") ?? Root?.Find("rods"))?.Key;

    /// <summary>Reads a file's content.</summary>
    /// <param name="name">The file as it was named.</param>
    /// <param name="bytes">Its content, or why there is none.</param>
    public static LoadedFile Load(string name, FileBytes bytes)
    {
        Findings findings = new();
        if (bytes.Fault is { } fault)
        {
            findings.Problem(TextSpan.WholeFile, fault);
            return new LoadedFile(new SourceText(name, string.Empty), findings);
        }

        SourceText source = Decoder.Decode(name, bytes.Content.Span, findings);
        if (findings.Count > 0)
        {
            return new LoadedFile(source, findings);
        }

        Node? root = TreeBuilder.Build(source, findings, out bool whole);
        return new LoadedFile(source, findings, OfThisVersion(root, whole, findings), whole);
    }

    /// <summary>
    /// The keys of a file that says this program's version. A file of another version, or of none, gets that problem and no
    /// other, since nothing else in it can be trusted to mean what it means here.
    /// </summary>
    private static MapNode? OfThisVersion(Node? root, bool whole, Findings findings)
    {
        MapNode? map = root as MapNode;
        if (map?.Find(JobVersion.Key) is { } entry)
        {
            if (entry.Value is ScalarNode { Value: JobVersion.Number })
            {
                return map;
            }

            if (entry.Value is RefusedNode)
            {
                return null;
            }

            bool nothing = entry.Value is ScalarNode { IsEmpty: true };
            findings.Only(nothing ? entry.Key.Span : entry.Value.Span, $"this is another version: {JobVersion.Wanted}");
        }
        else if (whole)
        {
            // It belongs at the top: of a file of comments alone too.
            findings.Only(root?.Span ?? new TextSpan(0, 1), $"'{JobVersion.Key}' is missing: {JobVersion.Wanted}");
        }

        return null;
    }
}
