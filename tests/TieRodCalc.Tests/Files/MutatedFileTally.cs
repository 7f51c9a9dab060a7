using System.Globalization;
using System.Text;

namespace TieRodCalc.Tests.Files;

/// <summary>What came of mutated files.</summary>
internal sealed class MutatedFileTally
{
    /// <summary>Files with a problem.</summary>
    public int Refused { get; private set; }

    /// <summary>Files without one.</summary>
    public int Valid { get; private set; }

    /// <summary>How many files of each kind of mutation were refused, and of how many.</summary>
    public SortedDictionary<MutationKind, (int Refused, int All)> Kinds { get; } = [];

    /// <summary>How many files gave each kind of result.</summary>
    public SortedDictionary<string, int> Computed { get; } = new(StringComparer.Ordinal);

    /// <summary>Numbers that were looked at.</summary>
    public long Numbers { get; set; }

    /// <summary>The most that one case allocated, what was let go of included.</summary>
    public long MostBytes { get; private set; }

    /// <summary>The case that did.</summary>
    public int CaseOfMostBytes { get; private set; }

    /// <summary>The longest that one case took, on a machine that may do other work.</summary>
    public TimeSpan MostTime { get; private set; }

    public static MutatedFileTally Sum(IEnumerable<MutatedFileTally> tallies)
    {
        MutatedFileTally sum = new();
        foreach (MutatedFileTally one in tallies)
        {
            (sum.Refused, sum.Valid, sum.Numbers) = (sum.Refused + one.Refused, sum.Valid + one.Valid, sum.Numbers + one.Numbers);
            sum.Measured(one.CaseOfMostBytes, one.MostBytes, one.MostTime);
            foreach ((MutationKind kind, (int refused, int all)) in one.Kinds)
            {
                (int Refused, int All) before = sum.Kinds.GetValueOrDefault(kind);
                sum.Kinds[kind] = (before.Refused + refused, before.All + all);
            }

            foreach ((string what, int count) in one.Computed)
            {
                sum.Computed[what] = sum.Computed.GetValueOrDefault(what) + count;
            }
        }

        return sum;
    }

    public void Add(MutationKind kind, bool refused)
    {
        (Refused, Valid) = refused ? (Refused + 1, Valid) : (Refused, Valid + 1);
        (int Refused, int All) before = Kinds.GetValueOrDefault(kind);
        Kinds[kind] = (before.Refused + (refused ? 1 : 0), before.All + 1);
    }

    public void Add(WholeComputation computed)
    {
        Count("plans", computed.Plans.Count);
        Count("remedies", computed.Remedies.Count);
        Count("rods that cannot be built", computed.Plans.Count(plan => plan.Solution is null));
        Count("swing", computed.Swing.Count);
        Count("made-up rods", computed.Built.Count);
        Count("toe", computed.Toes.Count);
        Count("bump", computed.Bumps.Count);
        Count("rods of another length", computed.Relengths.Count);
        Count("corners", computed.Corners.Count);
        Count("choices", computed.Choices.Count(choice => choice.Combinations > 1 && choice.Found.Count > 0));
    }

    public void Measured(int index, long bytes, TimeSpan time)
    {
        (MostBytes, CaseOfMostBytes) = bytes > MostBytes ? (bytes, index) : (MostBytes, CaseOfMostBytes);
        MostTime = time > MostTime ? time : MostTime;
    }

    public override string ToString()
    {
        StringBuilder text = new();
        CultureInfo plain = CultureInfo.InvariantCulture;
        text.Append(plain, $"{Refused + Valid} mutated files: {Refused} refused, {Valid} valid; ");
        text.AppendJoin(", ", Kinds.Select(kind => string.Create(plain, $"{kind.Key}: {kind.Value.Refused} of {kind.Value.All} refused")));
        text.Append("\nfiles with ").AppendJoin(", ", Computed.Select(one => string.Create(plain, $"{one.Key}: {one.Value}")));
        text.Append(plain, $"\n{Numbers} numbers; most allocated {MostBytes / 1e6:0.0} MB, longest {MostTime.TotalMilliseconds:0} ms");
        return text.ToString();
    }

    private void Count(string what, int count) => Computed[what] = Computed.GetValueOrDefault(what) + (count > 0 ? 1 : 0);
}
