using System.Reflection;
using System.Text;

namespace TieRodCalc.Tests.Architecture;

/// <summary>Writes the page of the public types and members out of the XML documentation.</summary>
internal sealed class ApiPage
{
    private const int Width = 120;

    /// <summary>The rooms in the order of the arrows, with what a reader finds there.</summary>
    private static readonly (string Namespace, string Holds)[] s_rooms =
    [
        ("TieRodCalc.Threads", "designations, standard sizes, limits of size, strength of a pair, look-alikes"),
        ("TieRodCalc.Parts", "what is bought: ends, sleeves, jam nuts, materials; dimensions with a tolerance"),
        ("TieRodCalc.Rods", "what is made of the parts, and the limits of a rod"),
        ("TieRodCalc.Steering", "toe from rod length and back; geometry only"),
        ("TieRodCalc.Planning",
            "cut, setting, adjustment, worst case, remedies, choice from catalogs, made-up rods, turns for toe; most calls start here"),
        ("TieRodCalc.Text", "values as people write them, in and out; names of codes and sentences"),
        ("TieRodCalc.Yaml", "part and job files; a package of its own"),
    ];

    private readonly ApiComments _comments;
    private readonly StringBuilder _text = new();

    private ApiPage(ApiComments comments) => _comments = comments;

    /// <summary>The page: what stands before it, the contents by room, and every type.</summary>
    public static string Of(string introduction, params Assembly[] assemblies)
    {
        Type[] types =
        [
            .. assemblies
                .SelectMany(assembly => assembly.GetExportedTypes())
                .OrderBy(type => type.Name, StringComparer.OrdinalIgnoreCase),
        ];
        HashSet<string> ids = [.. types.Concat(types.SelectMany(ApiSignatures.Members)).Select(ApiSignatures.Id)];
        Dictionary<Assembly, ApiPage> pages = assemblies.ToDictionary(
            assembly => assembly, assembly => new ApiPage(new ApiComments(assembly.Location, ids)));
        StringBuilder page = new(introduction);
        ILookup<string?, Type> rooms = types.ToLookup(type => type.Namespace);
        if (rooms.Select(room => room.Key).Except(s_rooms.Select(room => room.Namespace)).FirstOrDefault() is { } unknown)
        {
            throw new InvalidOperationException($"{unknown} is no room of the page");
        }

        page.Append("\n## Contents\n\n");
        foreach ((string room, string holds) in s_rooms)
        {
            string links = string.Join(", ", rooms[room].Select(type => $"[{Heading(type)}](#{Anchor(Heading(type))})"));
            Wrap(page, "- ", $"[{room}](#{Anchor(room)}): {holds}.");
            Wrap(page, "  ", "  ", links);
        }

        foreach ((string room, string holds) in s_rooms)
        {
            page.Append('\n').Append("## ").Append(room).Append("\n\n");
            Wrap(page, "", $"{char.ToUpperInvariant(holds[0])}{holds[1..]}.");
            foreach (Type type in rooms[room])
            {
                page.Append(pages[type.Assembly].Entry(type));
            }
        }

        return page.ToString();
    }

    private string Entry(Type type)
    {
        string id = ApiSignatures.Id(type);
        _text.Clear().Append("\n### ").Append(Heading(type)).Append("\n\n");
        foreach (string paragraph in _comments.Paragraphs(id))
        {
            Wrap(_text, "", paragraph);
            _text.Append('\n');
        }

        _text.Append("```csharp\n");
        WrapCode(ApiSignatures.Of(type));
        _text.Append("```\n");
        MemberInfo[] members = [.. ApiSignatures.Members(type)];
        if (members.Length > 0)
        {
            _text.Append('\n');
        }

        foreach (MemberInfo member in members)
        {
            Member(member);
        }

        return _text.ToString();
    }

    private void Member(MemberInfo member)
    {
        string id = ApiSignatures.Id(member);
        IReadOnlyList<string> paragraphs = _comments.Paragraphs(id);
        Wrap(_text, "- ", "  ", $"`{ApiSignatures.Of(member)}`: {paragraphs[0]}");
        foreach (string paragraph in paragraphs.Skip(1))
        {
            _text.Append('\n');
            Wrap(_text, "  ", "  ", paragraph);
        }

        foreach ((string name, string text) in _comments.Parameters(id))
        {
            Wrap(_text, "  - ", "    ", $"`{name}`: {text}");
        }

        if (_comments.Returns(id) is { } returns)
        {
            Wrap(_text, "  - ", "    ", $"Gives: {returns}");
        }

        foreach ((string exception, string text) in _comments.Exceptions(id))
        {
            Wrap(_text, "  - ", "    ", $"Throws `{exception}`: {text}");
        }
    }

    /// <summary>A declaration; one that is too long has a parameter a line.</summary>
    private void WrapCode(string declaration) => _text
        .Append(declaration.Length <= Width
            ? declaration
            : declaration.Replace("(", "(\n    ", StringComparison.Ordinal).Replace(", ", ",\n    ", StringComparison.Ordinal))
        .Append('\n');

    /// <summary>The name of a type without its namespace; of a generic one with its parameters, which is no tag of HTML.</summary>
    private static string Heading(Type type) => type.IsGenericType ? $"`{PublicApi.Name(type)}`" : PublicApi.Name(type);

    /// <summary>The anchor that readers of Markdown give to a heading: letters and digits, small.</summary>
    private static string Anchor(string heading) => string.Concat(heading.Where(char.IsLetterOrDigit)).ToLowerInvariant();

    private static void Wrap(StringBuilder into, string first, string text) => Wrap(into, first, new string(' ', first.Length), text);

    private static void Wrap(StringBuilder into, string first, string next, string text)
    {
        int used = 0;
        foreach (string word in text.Split(' '))
        {
            // A line that began with one of these would be a list.
            bool breaks = used + 1 + word.Length > Width && word is not ("-" or "+" or "*" or "=" or "|" or "#" or ">");
            string before = used == 0 ? first : breaks ? $"\n{next}" : " ";
            into.Append(before).Append(word);
            used = (used == 0 || breaks ? before.TrimStart('\n').Length : used + 1) + word.Length;
        }

        into.Append('\n');
    }
}
