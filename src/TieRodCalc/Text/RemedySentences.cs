using TieRodCalc.Planning;
using TieRodCalc.Rods;

namespace TieRodCalc.Text;

/// <summary>The sentences that say why a rod cannot be built and what would make it buildable.</summary>
/// <param name="unit">The unit that lengths are told in first.</param>
public sealed class RemedySentences(LengthDisplay unit)
{
    /// <summary>The limits in the way of a rod, in a sentence or two; empty where none is.</summary>
    /// <param name="rod">A rod that cannot be built.</param>
    /// <param name="plan">Its plan.</param>
    public static string Reason(Rod rod, RodPlan plan)
    {
        ArgumentNullException.ThrowIfNull(rod);
        ArgumentNullException.ThrowIfNull(plan);
        List<string> sentences = [];
        AddBefore(sentences, rod, plan, AdjustmentPoint.Shortest, "Before the rod is short enough, ");
        AddBefore(sentences, rod, plan, AdjustmentPoint.Longest, "Before the rod is long enough, ");
        AddBefore(sentences, rod, plan, AdjustmentPoint.Any, "At every length, ");
        if (plan.Warnings.Any(warning => warning.Code == WarningCode.SleeveCannotAdjust) && plan.Solution is null)
        {
            sentences.Add("Turning the sleeve does not change the length, so the wanted adjustment cannot be had.");
        }

        if (sentences.Count > 0)
        {
            sentences.Add(plan.MoreCutWouldHelp
                ? "Cutting deeper than the parts allow would change that."
                : "Cutting an end does not change that.");
        }

        return string.Join(' ', sentences);
    }

    /// <summary>The remedy in words, with its sizes.</summary>
    public string Of(Remedy remedy)
    {
        ArgumentNullException.ThrowIfNull(remedy);
        string text = string.Join("; and ", remedy.Changes.Select(change => Of(change, remedy)));
        return char.ToUpperInvariant(text[0]) + text[1..] + ".";
    }

    /// <summary>What comes of it.</summary>
    public static string Verdict(Remedy remedy)
    {
        ArgumentNullException.ThrowIfNull(remedy);
        return remedy.Rod.AllLocked ? Names.Of(remedy.Plan.Verdict) : $"{Names.Of(remedy.Plan.Verdict)}, one joint not locked";
    }

    private static void AddBefore(List<string> sentences, Rod rod, RodPlan plan, AdjustmentPoint at, string before)
    {
        string[] obstacles =
        [
            .. plan.Binding.Where(binding => binding.At == at && binding.Limit != Limit.Cut)
                .GroupBy(binding => (binding.Limit, HasNut: HasNut(rod, binding)))
                .Select(same => Obstacle(same.Key.Limit, same.Key.HasNut, [.. same.Select(binding => binding.End).Distinct()]))
                .Select(obstacle => rod.Parts.OneJoint ? obstacle.Replace("sleeve", "outer end", StringComparison.Ordinal) : obstacle),
        ];
        if (obstacles.Length > 0)
        {
            string all = obstacles.Length == 1 ? obstacles[0] : $"{string.Join(", ", obstacles[..^1])} and {obstacles[^1]}";
            sentences.Add($"{before}{all}.");
        }
    }

    private static bool HasNut(Rod rod, BindingLimit binding) => binding.Limit == Limit.NutRoom
        && (binding.End == RodSide.Inner ? rod.Parts.InnerNut : rod.Parts.OuterNut) is not null;

    private static string Obstacle(Limit limit, bool hasNut, RodSide?[] ends)
    {
        string end = ends.Length > 1 ? "both ends" : ends[0] is { } side ? $"the {Names.Of(side)} end" : string.Empty;
        bool both = ends.Length > 1;
        return limit switch
        {
            Limit.Engagement => $"{end} {(both ? "have" : "has")} less thread engaged than is required",
            Limit.NutRoom when both && hasNut => "the nuts of both ends meet the sleeve",
            Limit.NutRoom when hasNut => $"the nut of {end} meets the sleeve",
            Limit.NutRoom when both => "the threads of both ends run out at the mouths of the sleeve",
            Limit.NutRoom => $"the thread of {end} runs out at the mouth of the sleeve",
            Limit.ClosedBore when both => "the tips of both ends meet the ends of the threads inside",
            Limit.ClosedBore => $"the tip of {end} meets the end of the thread inside",
            Limit.FarThread when both => "the tip of each end meets the thread of the other",
            Limit.FarThread => $"the tip of {end} meets the thread of the other end",
            Limit.Tips => "the two tips come too near to each other",
            Limit.Witness when both => "full thread uncovers both witness holes",
            Limit.Witness => $"full thread of {end} uncovers the witness hole",
            Limit.Clamp when both => "full thread of both ends leaves the clamps",
            Limit.Clamp => $"full thread of {end} leaves the clamp",
            _ => throw new ArgumentOutOfRangeException(nameof(limit)),
        };
    }

    private string Of(RodChange change, Remedy remedy)
    {
        string by = LengthFormat.Both(change.By, unit, LengthRounding.Up);
        string end = change.End is { } side ? Names.Of(side) : string.Empty;
        string least = LengthFormat.Both(change.To, unit, LengthRounding.Up);
        string most = LengthFormat.Both(change.To, unit, LengthRounding.Down);
        string left = LengthFormat.Both(change.To, unit);
        return change.Kind switch
        {
            ChangeKind.Cut =>
                $"cut the {end} end by at least {least}, {by} more than the part is said to allow",
            ChangeKind.ShorterSleeve =>
                $"a sleeve shorter by at least {by}, so at most {most} long, its threads as deep as now",
            ChangeKind.LongerSleeve =>
                $"a sleeve longer by at least {by}, so at least {least} long, its threads as deep as now",
            ChangeKind.ShorterOuterEnd =>
                $"an outer end shorter by at least {by}, so at most {most} from ball center to face",
            ChangeKind.LongerOuterEnd =>
                $"an outer end longer by at least {by}, so at least {least} from ball center to face",
            ChangeKind.Chase =>
                $"chase the thread of the {end} end at least {by} further up the shank, to {least} of full thread from the old tip",
            ChangeKind.LessShorter =>
                $"accept {by} less adjustment toward shorter; {most} is left",
            ChangeKind.LessLonger =>
                $"accept {by} less adjustment toward longer; {most} is left",
            ChangeKind.LessAdjustment =>
                $"accept {by} less adjustment each way; {most} each way is left",
            ChangeKind.ShorterTarget =>
                $"a rod shorter by at least {by}, so at most {most} center to center",
            ChangeKind.LongerTarget =>
                $"a rod longer by at least {by}, so at least {least} center to center",
            ChangeKind.LessEngagement =>
                $"accept {by} less engagement at the {end} joint, {left}; strength asks for no more than that",
            ChangeKind.NoNut when remedy.Rod.AllLocked =>
                $"leave out the {end} jam nut; the clamp locks that joint",
            ChangeKind.NoNut =>
                $"as a last resort leave out the {end} jam nut; nothing locks that joint then, and the other one alone holds the sleeve",
            _ => throw new ArgumentOutOfRangeException(nameof(change)),
        };
    }
}
