using TieRodCalc.Parts;
using TieRodCalc.Text;
using TieRodCalc.Yaml.Tree;

namespace TieRodCalc.Yaml.Binding;

/// <summary>The parts of all files together.</summary>
internal sealed class PartTables
{
    public PartTable<Material> Materials { get; } = new("a material");

    public PartTable<ThreadedEnd> InnerEnds { get; } = new("an inner end");

    public PartTable<Sleeve> Sleeves { get; } = new("a sleeve");

    public PartTable<OuterEnd> OuterEnds { get; } = new("an outer end");

    public PartTable<JamNut> JamNuts { get; } = new("a jam nut");

    /// <summary>What ends say of the swing of their joints.</summary>
    public SwingNotes Swings { get; } = new();

    /// <summary>False where a file could not be read whole: an id that is not in the tables may stand in the rest.</summary>
    public bool Whole { get; set; } = true;

    private IPartTable[] All => [InnerEnds, Sleeves, OuterEnds, JamNuts, Materials];

    /// <summary>Reads the parts of some files; the materials first, since a part may name one of a later file.</summary>
    public static PartTables Of(IReadOnlyList<LoadedFile> files, bool whole)
    {
        PartTables tables = new() { Whole = whole };
        foreach (LoadedFile file in files)
        {
            tables.Whole &= file.Whole;
            MaterialBinder.Bind(file, tables);
        }

        foreach (LoadedFile file in files)
        {
            new PartBinder(file, tables).Bind();
        }

        return tables;
    }

    /// <summary>The catalog of the sound parts.</summary>
    public PartCatalog ToCatalog()
    {
        List<ThreadedEnd> threaded = [];
        List<SocketEnd> sockets = [];
        foreach (OuterEnd end in OuterEnds.Parts)
        {
            if (end.Threaded is not null)
            {
                threaded.Add(end.Threaded);
            }

            if (end.Socket is not null)
            {
                sockets.Add(end.Socket);
            }
        }

        return new PartCatalog
        {
            Materials = Materials.Parts,
            InnerEnds = InnerEnds.Parts,
            Sleeves = Sleeves.Parts,
            OuterEnds = threaded,
            SocketEnds = sockets,
            JamNuts = JamNuts.Parts,
        };
    }

    /// <summary>The part that a text names, or null; a name that no part has is reported.</summary>
    public Definition<T>? Resolve<T>(PartTable<T> table, ScalarNode name, LoadedFile file)
        where T : class
    {
        if (table.Find(name.Value) is { } found)
        {
            return found;
        }

        string asked = Wording.Quote(name.Value);
        foreach (IPartTable other in All)
        {
            if (!ReferenceEquals(other, table) && other.Has(name.Value))
            {
                file.Findings.Problem(
                    name.Span, $"{Wording.Shown(name.Value)} is {other.Kind}, not {table.Kind}", Nearest.Of(name.Value, table.Ids));
                return null;
            }
        }

        if (Whole)
        {
            string kind = table.Kind[(table.Kind.IndexOf(' ') + 1)..];
            file.Findings.Problem(name.Span, $"there is no {kind} {asked}", Nearest.Of(name.Value, table.Ids));
        }

        return null;
    }
}
