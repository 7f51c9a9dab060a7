using System.CommandLine;
using System.CommandLine.Parsing;
using TieRodCalc.Cli.Rendering;
using TieRodCalc.Parts;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Cli.Commands;

/// <summary>What <c>thread</c> is asked. The words of each value are joined by spaces.</summary>
internal sealed class ThreadInput
{
    private const string Designation = "DESIGNATION";

    private readonly Argument<string[]> _thread = new(Designation)
    {
        Description = "The thread, such as 5/8-18 UNF-2A LH or M18x1.5; several words are one designation.",
        Arity = ArgumentArity.OneOrMore,
    };

    private readonly Option<string[]> _into = Words(
        "--into", Designation, "The internal thread that it is turned into; DESIGNATION is the external one then.");

    private readonly Option<string[]> _maleTensile = Words(
        "--male-tensile", "STRESS", "Tensile strength of the male part, such as 120 ksi or 830 MPa.");

    private readonly Option<string[]> _femaleTensile = Words("--female-tensile", "STRESS", "Tensile strength of the female part.");

    private readonly Option<string[]> _outside = Words(
        "--outside", "OUTSIDE", "Outside of the female part, such as hex 1 in or round 25 mm.");

    private readonly Option<bool> _json = new("--json") { Description = "Print the result as JSON." };

    /// <summary>Adds argument and options to a command.</summary>
    public Command AddTo(Command command)
    {
        _thread.Validators.Add(RefuseOptions);
        command.Add(_thread);
        command.Add(_into);
        command.Add(_maleTensile);
        command.Add(_femaleTensile);
        command.Add(_outside);
        command.Add(_json);
        return command;
    }

    /// <summary>Whether the result is wanted as JSON.</summary>
    public bool WantsJson(ParseResult parsed) => parsed.GetValue(_json);

    /// <summary>What is asked, or null where something is wrong with it; that has been said then.</summary>
    public ThreadQuestion? Read(ParseResult parsed, Terminal terminal)
    {
        ValueFaults faults = new();
        string male = Joined(parsed.GetValue(_thread))!;
        string? female = Joined(parsed.GetValue(_into));
        ThreadLimits? external = null;
        ThreadLimits? @internal = null;
        if (ReadThread(Designation, male, female is null ? null : ThreadGender.External) is { } thread)
        {
            external = LimitsOf(Designation, male, thread, ThreadGender.External);
            @internal = female is null ? LimitsOf(Designation, male, thread, ThreadGender.Internal) : null;
        }

        if (female is not null && ReadThread(_into.Name, female, ThreadGender.Internal) is { } other)
        {
            @internal = LimitsOf(_into.Name, female, other, ThreadGender.Internal);
        }

        Pressure? maleTensile = ReadStress(_maleTensile);
        Pressure? femaleTensile = ReadStress(_femaleTensile);
        Outside? outside = ReadOutside(@internal?.Thread);
        if (faults.None)
        {
            return new(external!, @internal!, female is not null, maleTensile, femaleTensile, outside);
        }

        terminal.Complain(faults + UsageErrors.Help(parsed));
        return null;

        ThreadDesignation? ReadThread(string name, string written, ThreadGender? gender) =>
            faults.TryRead(name, written, text => ThreadText.Parse(text, gender), out ThreadDesignation read) ? read : null;

        Pressure? ReadStress(Option<string[]> option) =>
            Joined(parsed.GetValue(option)) is { } written && faults.TryRead(option.Name, written, ValueText.ParseStress, out Pressure read)
                ? read
                : null;

        ThreadLimits? LimitsOf(string name, string written, ThreadDesignation read, ThreadGender gender)
        {
            if (ThreadLimits.Of(read, gender) is { } limits)
            {
                return limits;
            }

            int at = read.ToleranceClass is { } said ? written.LastIndexOf(said, StringComparison.Ordinal) : -1;
            ParseFault fault = at >= 0 ? new(at, read.ToleranceClass!.Length, string.Empty) : new(0, written.Length, string.Empty);
            faults.Add(name, written, fault with { Message = ThreadSentences.OfMissingClass(read, gender) });
            return null;
        }

        Outside? ReadOutside(ThreadDesignation? inside)
        {
            if (Joined(parsed.GetValue(_outside)) is not { } written
                || !faults.TryRead(_outside.Name, written, ValueText.ParseOutside, out Outside read))
            {
                return null;
            }

            if (inside is not null && !read.Encloses(inside.Size))
            {
                faults.Add(_outside.Name, written, new(0, written.Length, ThreadSentences.OfNarrowOutside(inside)));
            }

            return read;
        }
    }

    private static Option<string[]> Words(string name, string helpName, string description)
    {
        Option<string[]> option = new(name)
        {
            Description = description,
            HelpName = helpName,
            Arity = ArgumentArity.OneOrMore,
            AllowMultipleArgumentsPerToken = true,
        };
        option.Validators.Add(RefuseOptions);
        option.Validators.Add(result =>
        {
            if (result.IdentifierTokenCount > 1)
            {
                result.AddError($"{name} is given more than once.");
            }
        });
        return option;
    }

    private static string? Joined(string[]? words) => words is { Length: > 0 } ? string.Join(' ', words) : null;

    /// <summary>A word that is written like an option is none of a value's; -2A and -LH are.</summary>
    private static void RefuseOptions(SymbolResult result)
    {
        foreach (string word in result.Tokens.Select(token => token.Value).Where(IsLikeOption))
        {
            result.AddError(UsageErrors.NoSuchOption(word, result));
        }
    }

    private static bool IsLikeOption(string word) =>
        word.Length > 1 && word[0] == '-' && (word[1] == '-' || (word.Length == 2 && char.IsLetter(word[1])));
}
