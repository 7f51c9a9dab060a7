namespace TieRodCalc.Cli.Tests;

/// <summary>What <c>choose</c> refuses: status 2, nothing on standard output, and the place.</summary>
public sealed class ChooseErrorTests
{
    private const string Line =
        "  - {name: left, inner: any, sleeve: any, outer: any, nuts: {inner: any, outer: any}, length: 285 mm, adjust: 3 mm}";

    [Theory]
    [InlineData("--top", "0")]
    [InlineData("--top", "-1")]
    [InlineData("--top", "many")]
    [InlineData("--top", "2.5")]
    [InlineData("--top", "99999999999")]
    [InlineData("--sort", "length")]
    [InlineData("--sort", "Margin")]
    [InlineData("--rod", "right")]
    [InlineData("--nonsense", "1")]
    [InlineData("--top")]
    [InlineData("--sort")]
    public void Options(params string[] options) =>
        Refused(ChooseJobs.Open, options[0] is "--rod" or "--sort" ? options[^1] : options[0], options);

    [Fact]
    public void An_unknown_order_is_told_what_orders_there_are()
    {
        CommandLine run = CommandLine.RunWith(ChooseJobs.Open, "choose", "-", "--sort", "length");
        Assert.All(["margin", "price", "mass", "cut"], order => Assert.Contains(order, run.Error, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("inner: any, sleeve", "inner: [i, j], sleeve", "j]", "there is no inner end 'j'")]
    [InlineData("inner: any, sleeve", "inner: j, sleeve", "j,", "there is no inner end 'j'")]
    [InlineData("inner: any, sleeve", "inner: [], sleeve", "[]", "the list of 'inner' is empty")]
    [InlineData("inner: any, sleeve", "inner: none, sleeve", "none", "there is no inner end 'none'")]
    [InlineData("inner: any, sleeve", "inner: {tread: M16x1.5 LH}, sleeve", "tread", "has no key 'tread'")]
    [InlineData("inner: any, sleeve", "inner: {thread: 5/8-18 UNF-2B LH}, sleeve", "2B", "internal threads")]
    [InlineData("inner: any, sleeve", "inner: {thread: 16x1.5}, sleeve", "x1.5", "expected - and the threads per inch")]
    [InlineData("sleeve: any", "sleeve: {thread: M16x1.5}", "thread: M16x1.5}", "has no key 'thread'")]
    [InlineData("sleeve: any", "sleeve: {inner: 5/8-18 UNF-2A}", "2A", "external threads")]
    [InlineData("sleeve: any", "sleeve: [o]", "o]", "o is an outer end, not a sleeve")]
    [InlineData("outer: any, nuts", "outer: [any], nuts", "any], nuts", "there is no outer end 'any'")]
    [InlineData("nuts: {inner: any", "nuts: {inner: [none]", "none]", "there is no jam nut 'none'")]
    [InlineData("nuts: {inner: any", "nuts: {inner: s", "s, outer", "s is a sleeve, not a jam nut")]
    [InlineData("length: 285 mm", "length: 285", ",", "the unit is missing")]
    public void A_job_with_an_error_at_its_place(string piece, string instead, string mark, string phrase)
    {
        string line = Line.With(piece, instead);
        int from = line.IndexOf(instead, StringComparison.Ordinal);
        int column = line.IndexOf(mark, instead == "length: 285" ? from + instead.Length : from, StringComparison.Ordinal) + 1;
        int number = ChooseJobs.Open[..ChooseJobs.Open.IndexOf(Line, StringComparison.Ordinal)].Count(c => c == '\n') + 1;
        Refused(ChooseJobs.Open.With(Line, line), $"-:{number}:{column}: error: ", []);
        Refused(ChooseJobs.Open.With(Line, line), phrase, []);
    }

    [Fact]
    public void A_job_without_rods() => Refused("tierodcalc: 1\njob: none\n", "no rods", []);

    [Fact]
    public void A_file_that_is_not_there()
    {
        CommandLine run = CommandLine.Run("choose", "/nowhere/job.yaml", "--json");
        Assert.Equal(ExitStatus.WrongInput, run.Status);
        Assert.Empty(run.Output);
        Assert.Contains("/nowhere/job.yaml: error: ", run.Error, StringComparison.Ordinal);
    }

    private static void Refused(string job, string words, string[] options)
    {
        foreach (string[] form in (string[][])[[], ["--json"]])
        {
            CommandLine run = CommandLine.RunWith(job, ["choose", "-", .. form, .. options]);

            Assert.Equal(ExitStatus.WrongInput, run.Status);
            Assert.Empty(run.Output);
            Assert.Contains(words, run.Error, StringComparison.Ordinal);
        }
    }
}
