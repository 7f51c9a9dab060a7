using TieRodCalc.Yaml.Sources;

namespace TieRodCalc.Tests.Yaml;

/// <summary>The names of part files as problems show them.</summary>
public class ShownNameTests
{
    [Theory]
    [InlineData("parts.yaml", "parts.yaml")]
    [InlineData("./parts.yaml", "parts.yaml")]
    [InlineData("jobs/../parts/ends.yaml", "parts/ends.yaml")]
    [InlineData("jobs/./../parts//ends.yaml", "parts/ends.yaml")]
    [InlineData("../parts/ends.yaml", "../parts/ends.yaml")]
    [InlineData("jobs/../../parts/ends.yaml", "../parts/ends.yaml")]
    public void A_relative_path_stays_relative_without_detours(string path, string shown) =>
        Assert.Equal(Native(shown), Guard.ShownName(Native(path)));

    [Fact]
    public void A_full_path_stays_full_without_detours()
    {
        string folder = Path.GetTempPath();
        string plain = Path.Combine(folder, "parts", "ends.yaml");
        Assert.Equal(plain, Guard.ShownName(plain));
        Assert.Equal(plain, Guard.ShownName(Path.Combine(folder, "jobs", "..", "parts", ".", "ends.yaml")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("a\0b")]
    [InlineData("/a\0b")]
    public void What_is_no_path_is_shown_as_it_was_written(string path) => Assert.Equal(path, Guard.ShownName(path));

    private static string Native(string path) => path.Replace('/', Path.DirectorySeparatorChar);
}
