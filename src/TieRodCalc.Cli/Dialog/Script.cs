namespace TieRodCalc.Cli.Dialog;

/// <summary>The questions in the order in which one works at the bench.</summary>
internal sealed class Script(FileQuestions files)
{
    /// <summary>The first question that has no answer yet; null at the end.</summary>
    public Asked? Next(Answers answers) => All(answers).FirstOrDefault(asked => !answers.Has(asked.Key));

    /// <summary>The questions as far as the answers decide them.</summary>
    private IEnumerable<Asked> All(Answers answers)
    {
        IEnumerable<(string Heading, Scope Scope, Question[] Questions)> groups =
            Start(answers).Concat(Rods(answers)).Concat(End(answers));
        foreach ((string heading, Scope scope, Question[] questions) in groups)
        {
            foreach (Question question in questions.Where(question => question.When(scope)))
            {
                yield return new Asked(question, scope, heading);
            }
        }
    }

    private static IEnumerable<(string Heading, Scope Scope, Question[] Questions)> Start(Answers answers)
    {
        yield return ("Job", new Scope(answers, JobText.Job), JobQuestions.Start);
    }

    private static IEnumerable<(string Heading, Scope Scope, Question[] Questions)> Rods(Answers answers)
    {
        int count = 1;
        Scope rod;
        do
        {
            rod = JobText.Rod(answers, count);
            yield return ($"Rod {count}", rod, JobQuestions.Rod);
            string name = rod["name"] ?? string.Empty;
            yield return ($"Rod {name}, inner end", rod.Of("inner"), EndQuestions.Inner);
            yield return ($"Rod {name}, sleeve", rod.Of("sleeve"), SleeveQuestions.All);
            yield return ($"Rod {name}, outer end", rod.Of("outer"), EndQuestions.Outer);
            yield return ($"Rod {name}, inner jam nut", rod.Of("inner_nut"), SleeveQuestions.Nut);
            if (!PartAnswers.HasSocket(rod))
            {
                yield return ($"Rod {name}, outer jam nut", rod.Of("outer_nut"), SleeveQuestions.Nut);
            }

            yield return ($"Rod {name}, what is wanted", rod, JobQuestions.Wanted);
            count++;
        }
        while (rod["another"] == "yes");
    }

    private IEnumerable<(string Heading, Scope Scope, Question[] Questions)> End(Answers answers)
    {
        yield return ("Rules", new Scope(answers, JobText.Rules), JobQuestions.Rules);
        yield return ("Steering", new Scope(answers, JobText.Steering), SteeringQuestions.All);
        yield return ("Files", new Scope(answers, JobText.Files), files.All);
    }
}
