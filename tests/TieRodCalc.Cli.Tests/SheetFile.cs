using System.Xml.Linq;

namespace TieRodCalc.Cli.Tests;

/// <summary>A bench sheet, read as a browser would: the page behind its first line.</summary>
internal sealed class SheetFile
{
    private SheetFile(CommandLine run, string text)
    {
        (Run, Text) = (run, text);
        Page = XElement.Parse(text["<!DOCTYPE html>\n".Length..]);
    }

    public CommandLine Run { get; }

    public string Text { get; }

    public XElement Page { get; }

    public IReadOnlyList<XElement> Rods =>
        [.. Page.Descendants("section").Where(section => ((string)section.Attribute("class")!).Split(' ')[0] == "rod")];

    /// <summary>The sheet of a job from standard input.</summary>
    public static SheetFile Of(string job, params string[] more) => Written(job, "-", more);

    /// <summary>The sheet of one of the samples.</summary>
    public static SheetFile OfSample(string name, params string[] more) => Written(string.Empty, Repository.Sample("jobs", name), more);

    /// <summary>All words of an element, one space between them.</summary>
    public static string Words(XElement element) => string.Join(
        ' ',
        element.DescendantNodes().OfType<XText>().SelectMany(text => text.Value.Replace('\u00A0', ' ').Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)));

    private static SheetFile Written(string input, string job, string[] more)
    {
        string folder = Directory.CreateTempSubdirectory("tierodcalc-").FullName;
        try
        {
            string path = Path.Combine(folder, "sheet.html");
            CommandLine run = CommandLine.RunWith(input, ["sheet", job, "-o", path, .. more]);
            Assert.True(File.Exists(path), $"status {run.Status}\n{run.Error}{run.Output}");
            Assert.Empty(run.Error);
            string text = File.ReadAllText(path);
            Assert.StartsWith("<!DOCTYPE html>\n", text, StringComparison.Ordinal);
            return new SheetFile(run, text);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
