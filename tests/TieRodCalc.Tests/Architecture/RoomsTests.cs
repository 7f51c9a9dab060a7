using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using TieRodCalc.Planning;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Architecture;

/// <summary>The rooms of the library and what each may know: the arrows run one way.</summary>
public partial class RoomsTests
{
    private const string Library = "TieRodCalc";

    /// <summary>The folder of a type that stands in no room: the bridge to the quantities.</summary>
    private const string NoRoom = "";

    private static readonly Dictionary<string, string[]> s_mayUse = new()
    {
        [NoRoom] = [],
        ["Threads"] = [NoRoom],
        ["Parts"] = [NoRoom, "Threads"],
        ["Rods"] = [NoRoom, "Threads", "Parts"],
        ["Steering"] = [NoRoom],
        ["Planning"] = [NoRoom, "Threads", "Parts", "Rods", "Steering"],
        ["Text"] = [NoRoom, "Threads", "Parts", "Rods", "Steering", "Planning"],
    };

    private static readonly Assembly[] s_assemblies = [typeof(RodPlanner).Assembly, typeof(JobReader).Assembly];

    public static TheoryData<string> Rooms => [.. s_mayUse.Keys];

    [Fact]
    public void Every_folder_is_a_room_and_every_file_says_the_room_it_stands_in()
    {
        Assert.All(SourceTree.Files(Library), file =>
        {
            Assert.Contains(file.Folder, s_mayUse.Keys);
            string room = file.Folder == NoRoom ? Library : $"{Library}.{file.Folder}";
            Assert.Contains($"namespace {room};", File.ReadAllText(file.Path), StringComparison.Ordinal);
        });
        Assert.Equal(s_mayUse.Keys.Order(), SourceTree.Files(Library).Select(file => file.Folder).Distinct().Order());
    }

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_names_only_rooms_that_it_may_know(string room)
    {
        Assert.All(SourceTree.Files(Library).Where(file => file.Folder == room), file =>
            Assert.All(
                RoomName().Matches(SourceTree.Code(file.Path)).Select(match => match.Groups["room"].Value).Where(s_mayUse.ContainsKey),
                named => Assert.True(
                    named == room || s_mayUse[room].Contains(named), $"{Path.GetFileName(file.Path)} of {room} names {named}")));
    }

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_uses_only_types_that_it_may_know(string room)
    {
        Type[] types = [.. typeof(RodPlanner).Assembly.GetTypes().Where(type => RoomOf(type) == room)];
        Assert.NotEmpty(types);
        Assert.All(types, type => Assert.All(
            TypeUses.Of(type).Where(used => used.Assembly == type.Assembly),
            used => Assert.True(
                RoomOf(used) is not { } usedRoom || usedRoom == room || s_mayUse[room].Contains(usedRoom),
                $"{type} of {room} uses {used}")));
    }

    [Fact]
    public void The_uses_of_a_type_are_found()
    {
        // The tests above are worth what the search for uses is worth.
        HashSet<string?> planning = [.. typeof(RodPlanner).Assembly.GetTypes().Where(type => RoomOf(type) == "Planning")
            .SelectMany(TypeUses.Of).Where(used => used.Assembly == typeof(RodPlanner).Assembly).Select(RoomOf)];
        Assert.Superset(new HashSet<string?> { NoRoom, "Threads", "Parts", "Rods", "Steering", "Planning" }, planning);
    }

    [Fact]
    public void No_type_of_the_library_uses_a_file_clock_console_or_thread()
    {
        HashSet<Type> never =
        [
            typeof(Console), typeof(Environment), typeof(File), typeof(Directory), typeof(Path), typeof(DateTime), typeof(DateTimeOffset),
            typeof(TimeProvider), typeof(System.Diagnostics.Stopwatch), typeof(Random), typeof(Thread), typeof(Task), typeof(Guid),
        ];
        Assert.All(typeof(RodPlanner).Assembly.GetTypes(), type => Assert.All(
            TypeUses.Of(type).Where(used => !IsOfIterator(type, used)),
            used => Assert.False(never.Contains(used) || used.Namespace == "System.IO", $"{type} uses {used}")));

        // What the compiler makes of "yield return" asks the environment for the thread that it was called on.
        static bool IsOfIterator(Type type, Type used) =>
            used == typeof(Environment) && IsGenerated(type) && typeof(System.Collections.IEnumerator).IsAssignableFrom(type);
    }

    [Fact]
    public void Culture_is_named_in_the_text_room_alone_and_never_the_present_one()
    {
        Type[] users = [.. typeof(RodPlanner).Assembly.GetTypes().Where(type => TypeUses.Of(type).Contains(typeof(CultureInfo)))];
        Assert.All(users, type => Assert.Equal("Text", RoomOf(type)));
        Assert.All(SourceTree.Files(Library), file =>
        {
            string code = SourceTree.Code(file.Path);
            Assert.DoesNotContain("CurrentCulture", code, StringComparison.Ordinal);
            Assert.DoesNotContain("CurrentUICulture", code, StringComparison.Ordinal);
            Assert.True(file.Folder == "Text" || !code.Contains(nameof(CultureInfo), StringComparison.Ordinal), file.Path);
        });
    }

    [Fact]
    public void The_library_depends_on_its_quantities_alone_and_the_reader_on_its_parser()
    {
        Assert.Equal(["UnitsNet"], References(typeof(RodPlanner).Assembly));
        Assert.Subset(new HashSet<string> { "TieRodCalc", "UnitsNet", "YamlDotNet" }, References(typeof(JobReader).Assembly).ToHashSet());

        static IEnumerable<string> References(Assembly assembly) => assembly.GetReferencedAssemblies()
            .Select(reference => reference.Name!)
            .Where(name => !name.StartsWith("System.", StringComparison.Ordinal))
            .Order();
    }

    [Fact]
    public void No_type_holds_state_that_can_change()
    {
        const BindingFlags Static = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;
        Assert.All(
            s_assemblies
                .SelectMany(assembly => assembly.GetTypes())
                .Where(type => !IsGenerated(type))
                .SelectMany(type => type.GetFields(Static)),
            field => Assert.True(field.IsInitOnly || field.IsLiteral || IsGenerated(field), $"{field.DeclaringType}.{field.Name}"));
    }

    [Theory]
    [InlineData("TieRodCalc")]
    [InlineData("TieRodCalc.Yaml")]
    [InlineData("TieRodCalc.Cli")]
    public void No_source_declares_state_that_can_change(string project)
    {
        Assert.All(SourceTree.Files(project), file =>
        {
            string code = SourceTree.Code(file.Path);
            Assert.DoesNotMatch(StaticField(), code);
            Assert.DoesNotMatch(StaticSetter(), code);
        });
    }

    private static string? RoomOf(Type type)
    {
        string? name = type.Namespace;
        return name == Library ? NoRoom
            : name is not null && name.StartsWith(Library + ".", StringComparison.Ordinal) ? name[(Library.Length + 1)..].Split('.')[0]
            : null;
    }

    private static bool IsGenerated(MemberInfo member) =>
        member.IsDefined(typeof(CompilerGeneratedAttribute), false) || (member.DeclaringType is { } outer && IsGenerated(outer));

    /// <summary>A room named from the root of the namespaces.</summary>
    [GeneratedRegex(@"\bTieRodCalc\.(?<room>[A-Z]\w*)")]
    private static partial Regex RoomName();

    /// <summary>A field that is static, not constant and not read-only.</summary>
    [GeneratedRegex(
        @"^[ \t]*(?:(?:public|private|internal|protected|volatile|unsafe)[ \t]+)*static[ \t]+"
        + @"(?!readonly\b|class\b|partial\b|extern\b|event\b|async\b)"
        + @"(?:\([^()]*\)[\[\]?]*|[\w.<>?,\[\] ]+?)[ \t]+\w+[ \t]*(?:;|=(?!>))",
        RegexOptions.Multiline)]
    private static partial Regex StaticField();

    /// <summary>A static property that can be set.</summary>
    [GeneratedRegex(@"\bstatic\b[^;{}()=]*\{[^{}]*\bset\b\s*[;{=]")]
    private static partial Regex StaticSetter();
}
