using TieRodCalc.Yaml.Sources;
using TieRodCalc.Yaml.Tree;

namespace TieRodCalc.Yaml.Binding;

/// <summary>The ids of parts.</summary>
internal static class Ids
{
    /// <summary>The word that leaves a part open.</summary>
    public const string Any = "any";

    /// <summary>The word for no part.</summary>
    public const string None = "none";

    /// <summary>Reads the id of a part, or reports what is wrong with it.</summary>
    public static ScalarNode? Read(MapReader part)
    {
        ScalarNode? id = part.Text("id", needed: true);
        if (id is not null)
        {
            Check(id, part.Findings);
        }

        return id;
    }

    private static void Check(ScalarNode id, Findings findings)
    {
        if (id.Value is Any or None)
        {
            findings.Problem(id.Span, $"'{id.Value}' has a meaning of its own and cannot be an id");
            return;
        }

        for (int i = 0; i < id.Value.Length; i++)
        {
            char c = id.Value[i];
            if (!char.IsAsciiLetterOrDigit(c) && (i == 0 || c is not ('.' or '_' or '-')))
            {
                findings.Problem(
                    id.Part(i, 1),
                    i == 0
                        ? "an id begins with a letter or digit of the English alphabet"
                        : "an id has letters and digits of the English alphabet, '.', '_' and '-' only");
                return;
            }
        }
    }
}
