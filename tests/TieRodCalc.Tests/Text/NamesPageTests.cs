using System.Globalization;
using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Tests.Architecture;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Text;

/// <summary>
/// The page of the names that programs rely on is what <see cref="Names"/> gives. Set the environment variable TIERODCALC_UPDATE_DOCS to
/// write it anew.
/// </summary>
public partial class NamesPageTests
{
    private const string Introduction =
        """
        # Names

        What the JSON output and the files call a limit, a verdict, a warning and so on, written by a test out of the library; do not edit.
        Sentences for people may change from version to version, these names only where the [changelog](changelog.md) says so.

        """;

    private static readonly Assembly s_library = typeof(Names).Assembly;

    [Fact]
    public void The_page_is_what_the_library_says() => AcceptedFile.AssertIs(Page(), "docs", "names.md");

    [Fact]
    public void What_is_no_value_has_no_name()
    {
        // One of two is the other; every series that is none of the tables is UNS; differences are combined.
        IEnumerable<MethodInfo> some = Named().Where(method => method.GetParameters()[0].ParameterType is var type
            && Enum.GetValues(type).Length > 2 && type != typeof(UnifiedSeries) && type != typeof(ThreadDifference));
        Assert.All(some, method =>
        {
            object none = Enum.ToObject(method.GetParameters()[0].ParameterType, 99);
            Exception thrown = Assert.Throws<TargetInvocationException>(() => method.Invoke(null, [none])).InnerException!;
            Assert.Equal(method.GetParameters()[0].Name, Assert.IsType<ArgumentOutOfRangeException>(thrown).ParamName);
        });
    }

    [Fact]
    public void Remedies_are_called_as_their_page_says()
    {
        IEnumerable<string> rows = File.ReadLines(Path.Combine(SourceTree.Root, "docs", "remedies.md"))
            .Where(line => line.StartsWith("| `", StringComparison.Ordinal));
        IEnumerable<string> written = rows.SelectMany(row => Quoted().Matches(row.Split('|')[1])).Select(match => match.Groups["id"].Value);
        ChangeKind[] ofAnEnd = [ChangeKind.Cut, ChangeKind.Chase, ChangeKind.LessEngagement, ChangeKind.NoNut];
        IEnumerable<string> called =
            from kind in Enum.GetValues<ChangeKind>()
            from end in ofAnEnd.Contains(kind) ? new RodSide?[] { RodSide.Inner, RodSide.Outer } : [null]
            select Called((kind, end));
        Assert.Equal(written.Order(), called.Order());
        Assert.Equal("cut-outer+longer-sleeve", Called((ChangeKind.Cut, RodSide.Outer), (ChangeKind.LongerSleeve, null)));
    }

    private static string Called(params (ChangeKind Kind, RodSide? End)[] changes) => Names.Of(new Remedy(
        [.. changes.Select(change => new RodChange(change.Kind, change.End, Length.Zero, Length.Zero))], null, null!, null!, null!));

    private static IEnumerable<MethodInfo> Named() =>
        from method in typeof(Names).GetMethods(BindingFlags.Static | BindingFlags.Public)
        where method.GetParameters() is [{ ParameterType.IsEnum: true }]
        orderby method.GetParameters()[0].ParameterType.Name
        select method;

    private static string Page()
    {
        IEnumerable<MemberInfo> all = s_library.GetExportedTypes().SelectMany(type => ApiSignatures.Members(type).Prepend(type));
        ApiComments comments = new(s_library.Location, [.. all.Select(ApiSignatures.Id)]);
        string Summary(MemberInfo member) => comments.Paragraphs(ApiSignatures.Id(member))[0];
        StringBuilder page = new(Introduction);
        foreach (MethodInfo method in Named())
        {
            Type type = method.GetParameters()[0].ParameterType;
            page.Append(CultureInfo.InvariantCulture, $"\n## {type.Name}\n\n{Summary(type)}\n\n| name | meaning |\n|---|---|\n");
            foreach (object value in Enum.GetValues(type).Cast<object>().Where(value => (string)method.Invoke(null, [value])! is not ""))
            {
                FieldInfo field = type.GetField(Enum.GetName(type, value)!)!;
                page.Append(CultureInfo.InvariantCulture, $"| `{method.Invoke(null, [value])}` | {Summary(field)} |\n");
            }
        }

        return page.ToString();
    }

    [GeneratedRegex("`(?<id>[^`]+)`")]
    private static partial Regex Quoted();
}
