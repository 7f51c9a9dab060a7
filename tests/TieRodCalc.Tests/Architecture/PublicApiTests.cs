using System.Reflection;
using TieRodCalc.Planning;
using TieRodCalc.Yaml;

namespace TieRodCalc.Tests.Architecture;

/// <summary>The public face of the libraries as it was last accepted, so that a change of it shows.</summary>
public class PublicApiTests
{
    [Fact]
    public void Public_face_of_the_library_is_as_accepted() => Compare(typeof(RodPlanner).Assembly);

    [Fact]
    public void Public_face_of_the_reader_is_as_accepted() => Compare(typeof(JobReader).Assembly);

    private static void Compare(Assembly assembly)
    {
        string name = $"PublicApi.{assembly.GetName().Name}.txt";
        string accepted = Path.Combine("tests", "TieRodCalc.Tests", "Architecture", name);
        string acceptedPath = Path.Combine(SourceTree.Root, accepted);
        string expected = File.Exists(acceptedPath) ? File.ReadAllText(acceptedPath) : "";
        string actual = PublicApi.Of(assembly);
        if (expected == actual)
        {
            return;
        }

        string received = Path.Combine("artifacts", name);
        Directory.CreateDirectory(Path.Combine(SourceTree.Root, "artifacts"));
        File.WriteAllText(Path.Combine(SourceTree.Root, received), actual);
        string[] before = expected.Split('\n');
        string[] after = actual.Split('\n');
        Assert.Fail(
            $"The public face of {assembly.GetName().Name} has changed.\n"
            + string.Concat(before.Except(after).Select(line => $"- {line.Trim()}\n"))
            + string.Concat(after.Except(before).Select(line => $"+ {line.Trim()}\n"))
            + $"Where the change is meant, accept it from the root of the repository: cp {received} {accepted}");
    }
}
