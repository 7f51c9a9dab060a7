using TieRodCalc.Cli.Rendering;

namespace TieRodCalc.Cli.Dialog;

/// <summary>Asks the questions of a script one by one; a person and a file are answered alike.</summary>
internal sealed class Interview(Script script, AnswerReader reader, Terminal terminal)
{
    private const string Back = "back";
    private const string Quit = "quit";
    private const string Help = "?";
    private const string None = "none";

    private readonly Answers _answers = new();
    private string _heading = string.Empty;

    /// <summary>What an answer makes of the dialog.</summary>
    private enum Step
    {
        /// <summary>The same question again.</summary>
        Again,

        /// <summary>The next question, or that before.</summary>
        On,

        /// <summary>There are no more answers.</summary>
        Ended,

        /// <summary>Left by the word for it.</summary>
        Left,
    }

    /// <summary>Asks until everything is answered.</summary>
    /// <returns>The answers; null where the dialog was left or its input ended, which has been said then.</returns>
    public Answers? Run()
    {
        while (true)
        {
            while (script.Next(_answers) is { } asked)
            {
                Show(asked, more: false);
                Step step;
                while ((step = Take(asked)) == Step.Again)
                {
                }

                if (step != Step.On)
                {
                    terminal.Complain(step == Step.Left
                        ? $"tierodcalc: left at the question '{asked.Shown}'; nothing was written.\n"
                        : $"tierodcalc: the input ended at the question '{asked.Shown}'; nothing was written.\n");
                    return null;
                }
            }

            if (AnswerCheck.Fault(_answers) is not { } fault)
            {
                return _answers;
            }

            Say(fault);
            _answers.DropLast();
        }
    }

    private Step Take(Asked asked)
    {
        terminal.Complain(Prompt(asked));
        if (reader.Read() is not { } line)
        {
            terminal.Complain("\n");
            return Step.Ended;
        }

        terminal.Complain(terminal.IsTyped ? string.Empty : $"{line}\n");
        if (AnswerReader.FaultOf(line) is { } fault)
        {
            Say($"{fault}\n");
            return Step.Again;
        }

        switch (line.ToLowerInvariant())
        {
            case Help:
                Show(asked, more: true);
                return Step.Again;
            case Quit:
                return Step.Left;
            case Back when _answers.Count == 0:
                Say("this is the first question\n");
                return Step.Again;
            case Back:
                _answers.DropLast();
                return Step.On;
            default:
                return Answer(asked, line);
        }
    }

    private Step Answer(Asked asked, string line)
    {
        Question question = asked.Question;
        bool optional = question.LeftOut is not null;
        IReadOnlyList<string> words = question.Words?.Invoke(asked.Scope) ?? [];
        if (line.Length == 0)
        {
            if (Usual(asked) is { Length: > 0 } usual)
            {
                return Give(asked, usual);
            }

            if (optional)
            {
                return Give(asked, string.Empty);
            }

            Say("an answer is needed here; ? says more\n");
            return Step.Again;
        }

        string value = optional && line.Equals(None, StringComparison.OrdinalIgnoreCase) ? string.Empty : Completed(line, words);
        Step step = Give(asked, value);
        if (step == Step.On)
        {
            _answers.Remember(asked.Key, value);
        }

        return step;
    }

    /// <summary>Takes an answer where nothing speaks against it.</summary>
    private Step Give(Asked asked, string value)
    {
        if (value.Length > 0 && asked.Question.Refuse(asked.Scope, value) is { } refusal)
        {
            Say($"{refusal}\n");
            return Step.Again;
        }

        _answers.Give(asked.Key, value);
        if (AnswerCheck.Fault(_answers, asked.Key) is not { } fault)
        {
            return Step.On;
        }

        _answers.DropLast();
        Say(fault);
        return Step.Again;
    }

    /// <summary>What an empty line takes: what was typed here before, or what is usual; empty where it leaves out.</summary>
    private string? Usual(Asked asked) => _answers.Before(asked.Key) ?? asked.Question.Default?.Invoke(asked.Scope);

    /// <summary>The one word that begins with what was typed, or what was typed.</summary>
    private static string Completed(string line, IReadOnlyList<string> words)
    {
        string[] begun = [.. words.Where(word => word.StartsWith(line, StringComparison.OrdinalIgnoreCase))];
        return words.FirstOrDefault(word => word.Equals(line, StringComparison.OrdinalIgnoreCase)) ?? (begun is [{ } one] ? one : line);
    }

    private void Show(Asked asked, bool more)
    {
        Question question = asked.Question;
        if (asked.Heading != _heading)
        {
            _heading = asked.Heading;
            terminal.Complain($"\n{_heading.ToUpperInvariant()}\n");
        }

        Page page = new Page().Heading($"{char.ToUpperInvariant(question.Title[0])}{question.Title[1..]}").Sentence(question.What);
        if (question.Drawing is { } drawing)
        {
            terminal.Complain($"{page}\n{drawing}\n\n");
            page = new Page();
        }

        _ = question.How is { } how ? page.Sentence(how) : page;
        _ = more && question.More is { } further ? page.Sentence(further) : page;
        _ = more ? page.Sentence("Words: back, to the question before; quit, which writes nothing; ?, this again.") : page;
        _ = more && question.LeftOut is not null ? page.Sentence("none leaves it out.") : page;
        terminal.Complain(page.ToString());
    }

    private string Prompt(Asked asked)
    {
        IReadOnlyList<string> words = asked.Question.Words?.Invoke(asked.Scope) ?? [];
        string choice = words.Count > 0 ? $"({string.Join(", ", words)}) " : string.Empty;
        string usual = Usual(asked) is { Length: > 0 } value ? $"[{value}] "
            : asked.Question.LeftOut is { } leftOut ? $"[{leftOut}] "
            : string.Empty;
        return $"  {choice}{usual}> ";
    }

    private void Say(string fault) => terminal.Complain($"  Not taken: {fault}");
}
