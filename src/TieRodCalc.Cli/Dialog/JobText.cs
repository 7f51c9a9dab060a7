using TieRodCalc.Yaml;

namespace TieRodCalc.Cli.Dialog;

/// <summary>The answers as files, and where in the text each of them stands.</summary>
internal sealed class JobText
{
    /// <summary>The scopes beside those of the rods.</summary>
    public const string Job = "job";
    public const string Rules = "rules";
    public const string Steering = "steering";
    public const string Files = "files";

    private readonly BlockText _text = new();
    private readonly Dictionary<int, (int Column, string Key)> _places = [];
    private readonly Answers _answers;

    private JobText(Answers answers) => _answers = answers;

    /// <summary>The answer that a line holds, and the column at which its value begins; null for other lines.</summary>
    public (int Column, string Key)? At(int line) => _places.TryGetValue(line, out (int Column, string Key) place) ? place : null;

    /// <summary>The scope of a rod, counted from 1.</summary>
    public static Scope Rod(Answers answers, int count) => new(answers, $"rod{count}");

    /// <summary>The job as far as it is answered, its parts in it.</summary>
    public static JobText Whole(Answers answers)
    {
        JobText text = new(answers);
        text.Begin();
        text.AddJob();
        text.AddParts();
        text.AddRods();
        return text;
    }

    /// <summary>The part file.</summary>
    public static JobText PartFile(Answers answers)
    {
        JobText text = new(answers);
        text._text.Comment($"Parts of: {answers["job.job"]}").Comment("Measured and typed in; hold them against the real parts.");
        text.Begin();
        text.AddParts();
        return text;
    }

    /// <summary>The job file that names the part file.</summary>
    public static JobText JobFile(Answers answers, string partFile)
    {
        JobText text = new(answers);
        text._text.Comment("What is wanted of each rod; the parts are in the file beside this one.");
        text.Begin();
        text.AddJob();
        text._text.Open("parts").Entry(partFile).Close();
        text.AddRods();
        return text;
    }

    /// <summary>The text.</summary>
    public override string ToString() => _text.ToString();

    private void Begin() => _text.Field("tierodcalc", "1");

    private void AddJob() => AddFields(new Scope(_answers, Job), JobQuestions.Start);

    private void AddParts()
    {
        AddMaterials();
        foreach ((string list, string[] kinds) in PartAnswers.Lists.GroupBy(entry => entry.Value, entry => entry.Key)
            .Select(group => (group.Key, group.ToArray())))
        {
            Scope[] parts = [.. Rods().SelectMany(rod => kinds.Select(kind => rod.Of(kind)))
                .Where(part => part.IsBegun && PartAnswers.IsNew(part))];
            AddList(list, parts, part => AddFields(part, QuestionsOf(part.Kind)));
        }
    }

    private void AddMaterials() => AddList(
        "materials",
        [.. _answers.ScopesWith("material").DistinctBy(part => part["material"])],
        part =>
        {
            Add("id", part, "material");
            Add("kind", part, "material_kind");
            Add("tensile", part, "material_tensile");
        });

    private void AddRods()
    {
        if (new Scope(_answers, Rules) is var rules && JobQuestions.Rules.Any(rule => rules[rule.Key] is not null))
        {
            _text.Open("rules");
            AddFields(rules, JobQuestions.Rules);
            _text.Close();
        }

        AddList("rods", [.. Rods()], AddRod);
        if (new Scope(_answers, Steering) is var steering && steering["layout"] is not null)
        {
            _text.Open("steering");
            AddFields(steering, SteeringQuestions.All);
            _text.Close();
        }
    }

    private void AddRod(Scope rod)
    {
        AddFields(rod, JobQuestions.Rod);
        AddReference(rod, "inner", "inner");
        AddReference(rod, "sleeve", "sleeve");
        AddReference(rod, "outer", "outer");
        if (rod.Of("inner_nut").IsBegun)
        {
            _text.Open("nuts");
            AddReference(rod, "inner_nut", "inner");
            AddReference(rod, "outer_nut", "outer");
            _text.Close();
        }

        AddFields(rod, JobQuestions.Wanted);
    }

    /// <summary>The part that a rod takes; a nut may be none, and a rod without a sleeve says nothing of it.</summary>
    private void AddReference(Scope rod, string kind, string key)
    {
        Scope part = rod.Of(kind);
        if (!PartAnswers.IsNew(part))
        {
            if (kind != "sleeve" || part[PartAnswers.Use] != PartAnswers.None)
            {
                Add(key, part, PartAnswers.Use);
            }
        }
        else
        {
            Add(key, part, "id");
        }
    }

    private IEnumerable<Scope> Rods()
    {
        for (int count = 1; Rod(_answers, count) is { IsBegun: true } rod; count++)
        {
            yield return rod;
        }
    }

    private static Question[] QuestionsOf(string kind) => kind switch
    {
        "inner" => EndQuestions.Inner,
        "sleeve" => SleeveQuestions.All,
        "outer" => EndQuestions.Outer,
        _ => SleeveQuestions.Nut,
    };

    private void AddList(string list, Scope[] items, Action<Scope> add)
    {
        if (items.Length == 0)
        {
            return;
        }

        _text.Open(list);
        foreach (Scope item in items)
        {
            _text.Item();
            add(item);
            _text.Close();
        }

        _text.Close();
    }

    /// <summary>The answers to some questions under their keys; those with a point in the map before it.</summary>
    private void AddFields(Scope scope, Question[] questions)
    {
        string open = string.Empty;
        foreach (string key in questions
            .Where(question => question.IsWritten && !question.Key.StartsWith("material_", StringComparison.Ordinal))
            .Select(question => question.Key).Distinct().OrderBy(key => key is not ("id" or "name"))
            .Where(key => scope[key] is not null))
        {
            string[] path = key.Split('.');
            string map = path.Length > 1 ? path[0] : string.Empty;
            if (map != open)
            {
                _ = open.Length > 0 ? _text.Close() : _text;
                _ = map.Length > 0 ? _text.Open(map) : _text;
                open = map;
            }

            Add(path[^1], scope, key);
        }

        _ = open.Length > 0 ? _text.Close() : _text;
    }

    private void Add(string written, Scope scope, string key)
    {
        if (scope[key] is { } value)
        {
            _text.Field(written, value);
            (int line, int column) = _text.LastValue;
            _places[line] = (column, $"{scope.Name}.{key}");
        }
    }
}
