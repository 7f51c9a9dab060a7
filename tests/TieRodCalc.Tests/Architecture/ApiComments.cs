using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace TieRodCalc.Tests.Architecture;

/// <summary>The XML documentation of an assembly, as Markdown.</summary>
internal sealed partial class ApiComments
{
    private readonly Dictionary<string, XElement> _members;
    private readonly HashSet<string> _public;

    /// <summary>Reads the documentation that lies beside an assembly.</summary>
    /// <param name="assembly">Path of the assembly.</param>
    /// <param name="publicIds">What a comment may refer to: the ids of all public types and members.</param>
    public ApiComments(string assembly, HashSet<string> publicIds)
    {
        _members = XDocument.Load(Path.ChangeExtension(assembly, ".xml")).Descendants("member")
            .ToDictionary(member => member.Attribute("name")!.Value);
        _public = publicIds;
    }

    /// <summary>Summary and remarks of a type or member, one string a paragraph.</summary>
    public IReadOnlyList<string> Paragraphs(string id)
    {
        XElement summary = Of(id, "summary").FirstOrDefault()
            ?? throw new InvalidOperationException($"{id} has no summary");
        return [.. Of(id, "summary").Concat(Of(id, "remarks")).SelectMany(Parts).Where(text => text.Length > 0)];

        // A paragraph element stands on its own; what lies between two of them is a paragraph, too.
        IEnumerable<string> Parts(XElement element) => element.Elements("para").Any()
            ? element.Nodes().Select(node => node is XElement { Name.LocalName: "para" } part ? Text(part, id) : Text(new("p", node), id))
            : [Text(element, id)];
    }

    /// <summary>What is said of the parameters, by name.</summary>
    public IEnumerable<(string Name, string Text)> Parameters(string id) =>
        Of(id, "param").Concat(Of(id, "typeparam")).Select(element => (element.Attribute("name")!.Value, Text(element, id)));

    /// <summary>What a method gives, or null where its summary says that already.</summary>
    public string? Returns(string id) => Of(id, "returns").Select(element => Text(element, id)).FirstOrDefault();

    /// <summary>What is thrown, and when.</summary>
    public IEnumerable<(string Type, string Text)> Exceptions(string id) =>
        Of(id, "exception").Select(element => (element.Attribute("cref")!.Value.Split('.')[^1], Text(element, id)));

    private IEnumerable<XElement> Of(string id, string name) => _members.GetValueOrDefault(id)?.Elements(name) ?? [];

    private string Text(XElement element, string id) =>
        Blank().Replace(string.Concat(element.Nodes().Select(node => node switch
        {
            XText text => Special().Replace(text.Value, @"\$0"),
            XElement part => Part(part, id),
            _ => "",
        })), " ").Trim();

    /// <summary>An element inside a text. One that the page does not know is an error: nothing of a comment gets lost.</summary>
    private string Part(XElement part, string id) => part switch
    {
        { Name.LocalName: "c" } => $"`{part.Value}`",
        { Name.LocalName: "paramref" or "typeparamref" } => $"`{part.Attribute("name")!.Value}`",
        { Name.LocalName: "see" } when part.Attribute("langword") is { } word => $"`{word.Value}`",
        { Name.LocalName: "see" } when part.Attribute("cref") is { } target => $"`{Named(target.Value, id)}`",
        _ => throw new NotSupportedException($"{id}: {part}"),
    };

    /// <summary>What a reference names, by its type where it is of another one.</summary>
    private string Named(string target, string id)
    {
        if (!_public.Contains(target))
        {
            throw new InvalidOperationException($"{id} is public and refers to {target}, which is not");
        }

        string[] name = target.Split('(')[0][2..].Split('.');
        string own = string.Join('.', id.Split('(')[0][2..].Split('.')[..^1]);
        return target[0] == 'T' || string.Join('.', name[..^1]) == own || $"T:{string.Join('.', name[..^1])}" == id
            ? name[^1]
            : $"{name[^2]}.{name[^1]}";
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blank();

    [GeneratedRegex(@"[*<\[\]`\\]")]
    private static partial Regex Special();
}
