using TieRodCalc.Cli.Dialog;
using static TieRodCalc.Cli.Tests.NewRun;

namespace TieRodCalc.Cli.Tests;

/// <summary>How the dialog takes words, wrong answers and the end of its input, at every question.</summary>
public sealed class NewDialogTests : IDisposable
{
    private readonly NewRun _run = new();

    public void Dispose() => _run.Dispose();

    public static TheoryData<int> Questions => [.. Enumerable.Range(0, Left.Length)];

    [Fact]
    public void Back_at_every_question_takes_another_answer()
    {
        CommandLine plain = _run.Answer(Left);
        (string job, string parts) = (File.ReadAllText(_run.JobFile), File.ReadAllText(_run.PartFile));
        CommandLine again = _run.Answer([.. Left[..^1].SelectMany(answer => new[] { answer, "back", answer }), Left[^1]], "--force");

        Assert.Equal((plain.Status, plain.Output), (again.Status, again.Output));
        Assert.Equal((job, parts), (File.ReadAllText(_run.JobFile), File.ReadAllText(_run.PartFile)));
    }

    [Fact]
    public void All_the_way_back_every_answer_is_there_to_be_taken()
    {
        IEnumerable<string> back = Enumerable.Repeat("BACK", Left.Length - 1);
        CommandLine again = _run.Answer([.. Left[..^1], .. back, .. Enumerable.Repeat(string.Empty, Left.Length - 1), Left[^1]]);

        Assert.True(again.Status == ExitStatus.Holds, again.Error);
        Assert.Equal(CommandLine.Run("plan", Repository.Sample("jobs", "car-27.yaml"), "--rod", "left").Output, again.Output);
    }

    [Fact]
    public void An_answer_that_was_changed_on_the_way_back_counts()
    {
        int length = At("8 in");
        _run.Answer([.. Left[..(length + 1)], "back", "7 3/4 in", .. Left[(length + 1)..]]);
        Assert.Contains("    length: 7 3/4 in\n", File.ReadAllText(_run.PartFile), StringComparison.Ordinal);
    }

    [Fact]
    public void Back_at_the_first_question_stays_there()
    {
        CommandLine asked = _run.Answer(["back", .. Left]);
        Assert.Equal(ExitStatus.Holds, asked.Status);
        Assert.Contains("Not taken: this is the first question\n", asked.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_at_every_question_says_more_and_changes_nothing()
    {
        CommandLine plain = _run.Answer(Left);
        CommandLine helped = _run.Answer(Left.SelectMany(answer => new[] { "?", answer }), "--force");

        Assert.Equal((plain.Status, plain.Output), (helped.Status, helped.Output));
        Assert.Equal(Left.Length, Count(helped.Error, "Words: back, to the question before;"));
        Assert.Equal(2 * Count(plain.Error, "|<----- center to tip ------>|"), Count(helped.Error, "|<----- center to tip ------>|"));
    }

    /// <summary>Names take any text; everything else refuses this one, and asks again.</summary>
    [Fact]
    public void A_wrong_answer_at_every_question_is_said_and_asked_again()
    {
        HashSet<int> names = [0, 2, .. Enumerable.Range(0, Left.Length).Where(at => Left[at].Contains("hand", StringComparison.Ordinal)),
            At("8 in sleeve")];
        CommandLine asked = _run.Answer(
            Left.SelectMany((answer, at) => names.Contains(at) ? [answer] : new[] { "@@ wrong", answer }));

        Assert.Equal((ExitStatus.Holds, Left.Length - names.Count), (asked.Status, Count(asked.Error, "  Not taken: ")));
        Assert.Equal(CommandLine.Run("plan", Repository.Sample("jobs", "car-27.yaml"), "--rod", "left").Output, asked.Output);
    }

    [Theory]
    [MemberData(nameof(Questions))]
    public void Input_that_ends_at_any_question_writes_nothing(int at)
    {
        CommandLine asked = _run.Answer(Left[..at]);

        Assert.Equal((ExitStatus.WrongInput, string.Empty), (asked.Status, asked.Output));
        Assert.Matches("\ntierodcalc: the input ended at the question '[^'\n]+: [^'\n]+'; nothing was written\\.\n$", asked.Error);
        Assert.Empty(_run.Files);
    }

    [Theory]
    [InlineData(0, "Job: name of the job")]
    [InlineData(5, "Rod left, inner end: ball center to tip")]
    [InlineData(18, "Rod left, sleeve: length of the sleeve")]
    public void Quit_names_the_question_and_writes_nothing(int at, string question)
    {
        CommandLine asked = _run.Answer([.. Left[..at], "quit"]);

        Assert.Equal((ExitStatus.WrongInput, string.Empty), (asked.Status, asked.Output));
        Assert.EndsWith($"tierodcalc: left at the question '{question}'; nothing was written.\n", asked.Error, StringComparison.Ordinal);
        Assert.Empty(_run.Files);
    }

    [Theory]
    [InlineData("M18x1.5-6g LH", "M18x1.5-6H LH", "6H is a class of internal threads; this one is external: 6g")]
    [InlineData("212 mm ± 0.5 mm", "212", "the unit is missing: write 212 mm or 212 in")]
    [InlineData("212 mm ± 0.5 mm", "0 mm", "'center_to_tip' must be above zero")]
    [InlineData("80 mm", "8 ft", "feet are not read")]
    [InlineData("80 mm", "213 mm", "the thread of 213 mm is longer than the 212 mm ± 0.5 mm from ball center to tip")]
    [InlineData("tapered stud", "taperd stud", "'joint' must be tapered stud or rod end, not 'taperd stud'; nearest: tapered stud")]
    [InlineData("850 MPa", "850", "the unit is missing")]
    [InlineData("M18x1.5-6H LH", "M18x1.5", "THE THREADS DO NOT MATCH: hand differs.")]
    [InlineData("M18x1.5-6H LH", "M16x1.5 LH", "THE THREADS DO NOT MATCH: diameter differs.")]
    [InlineData("5/8-18 UNF-2A", "M16x1.5", "THE THREADS DO NOT MATCH: diameter, pitch and form differ.")]
    [InlineData("hex 1 in", "hex 1/2 in", "the outside, hex 1/2 in, must be larger than the threads inside it")]
    [InlineData("15 1/2 in", "10 mm", "the length of 10 mm is not above 14")]
    [InlineData("15 1/2 in", "15 1/2 in ± 1 mm", "tolerance")]
    [InlineData("6 in", "none", "expected")]
    [InlineData("1/8 in out", "1/8 in", "the direction is missing")]
    [InlineData("no-27-coupe.yaml", "no-27-coupe", "the name must end in .yaml")]
    [InlineData("no-27-coupe.yaml", "../no-27-coupe.yaml", "a name alone, without folder: --folder says where the files go")]
    [InlineData("no-27-coupe-parts.yaml", "No-27-coupe.yaml", "that is the job file")]
    [InlineData("yes", "perhaps", "the answer is yes or no")]
    [InlineData("in-m18l-212", "any", "'any' has a meaning of its own and cannot be an id")]
    public void A_wrong_answer_is_told_in_the_words_of_the_reader(string right, string wrong, string words)
    {
        int at = At(right);
        CommandLine asked = _run.Answer([.. Left[..at], wrong, .. Left[at..]]);

        Assert.True(asked.Status == ExitStatus.Holds, asked.Error);
        Assert.Equal(1, Count(asked.Error, "  Not taken: "));
        string told = asked.Error[asked.Error.IndexOf("  Not taken: ", StringComparison.Ordinal)..];
        Assert.Contains(words, told[..told.IndexOf('\n')], StringComparison.Ordinal);
    }

    [Fact]
    public void The_place_of_a_fault_is_marked_in_the_answer()
    {
        CommandLine asked = _run.Answer([.. Left[..5], "212 mm ± x", .. Left[5..]]);
        Assert.Contains("\n    212 mm ± x\n             ^\n", asked.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("15 1/2 in")]
    [InlineData("15 1/2\"")]
    [InlineData("15-1/2\"")]
    [InlineData("15-1/2 in")]
    [InlineData("15.5in")]
    [InlineData("15.5 inch")]
    [InlineData("31/2 inches")]
    [InlineData("393.7 mm")]
    [InlineData("39.37cm")]
    public void Every_spelling_of_a_length_is_taken_as_it_is_typed(string written)
    {
        CommandLine asked = _run.Answer(With(Left, (At("15 1/2 in"), written)), "--json");

        Assert.Equal(
            CommandLine.Run("plan", Repository.Sample("jobs", "car-27.yaml"), "--rod", "left", "--json").Output, asked.Output);
        Assert.Contains(written, File.ReadAllText(_run.JobFile), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("212 ± 0.5 mm")]
    [InlineData("212 mm +/- 0.5 mm")]
    [InlineData("21.2 cm ± 0.05 cm")]
    public void Every_spelling_of_a_tolerance_is_taken(string written) => Assert.Equal(
        CommandLine.Run("plan", Repository.Sample("jobs", "car-27.yaml"), "--rod", "left", "--json").Output,
        _run.Answer(With(Left, (5, written)), "--json").Output);

    [Theory]
    [InlineData("Nº 27: \"Čárka\" # 'one' \\ two")]
    [InlineData("it's a car: 27")]
    [InlineData("- [27] {x} & * ! % @ `")]
    [InlineData("氷の車 🏁 27")]
    [InlineData("car: 27 # rear")]
    [InlineData("null")]
    [InlineData("27")]
    public void A_name_may_hold_anything_printable(string name)
    {
        CommandLine asked = _run.Answer(With(Left, (0, name)));

        Assert.True(asked.Status == ExitStatus.Holds, asked.Error);
        Assert.StartsWith($"{name}\n", asked.Output, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Holds, CommandLine.Run("check", _run.JobFile, _run.PartFile).Status);
    }

    [Theory]
    [InlineData("bell\u0007", "there is a character in it that cannot be printed")]
    [InlineData("line\u2028end", "there is a character in it that cannot be printed")]
    [InlineData("half\uFFFD", "this is not UTF-8 text")]
    public void A_name_that_no_file_can_hold_is_refused(string name, string words)
    {
        CommandLine asked = _run.Answer([name, .. Left]);
        Assert.Equal(ExitStatus.Holds, asked.Status);
        Assert.Contains($"Not taken: {words}\n", asked.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_with_the_line_ends_of_another_system_and_without_a_last_one_are_the_same()
    {
        CommandLine plain = _run.Answer(Left);
        CommandLine other = CommandLine.RunWith(string.Join("\r\n", Left), "new", "--folder", _run.Folder, "--force");
        Assert.Equal((plain.Status, plain.Output), (other.Status, other.Output));
    }

    [Fact]
    public void Only_answers_and_names_of_files_make_a_line_longer_than_the_screen()
    {
        CommandLine asked = _run.Answer(Left.SelectMany(answer => new[] { "?", answer }));
        foreach (string line in asked.Error.Replace(_run.Folder, ".", StringComparison.Ordinal).Split('\n'))
        {
            int answer = line.LastIndexOf("> ", StringComparison.Ordinal);
            Assert.True((answer < 0 ? line.Length : answer + 2) <= 79, line);
        }
    }

    [Fact]
    public void A_drawing_has_at_most_12_lines_of_78_columns_in_plain_characters()
    {
        string[] drawings =
        [
            .. new[]
                {
                    JobQuestions.Wanted, EndQuestions.Inner, EndQuestions.Outer, SleeveQuestions.All, SleeveQuestions.Nut,
                    SteeringQuestions.All,
                }
                .SelectMany(questions => questions).Select(question => question.Drawing).OfType<string>(),
        ];
        Assert.True(drawings.Length > 20);
        Assert.All(drawings, drawing => Assert.InRange(drawing.Split('\n').Length, 3, 12));
        Assert.All(drawings.SelectMany(drawing => drawing.Split('\n')), line => Assert.InRange(line.Length, 0, 78));
        Assert.All(drawings, drawing => Assert.True(drawing.All(char.IsAscii), drawing));
    }

    private static int Count(string text, string part) => text.Split(part).Length - 1;
}
