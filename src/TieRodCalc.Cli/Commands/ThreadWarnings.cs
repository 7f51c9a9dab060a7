using TieRodCalc.Planning;
using TieRodCalc.Threads;

namespace TieRodCalc.Cli.Commands;

/// <summary>What was assumed or not checked of a question.</summary>
internal static class ThreadWarnings
{
    private static readonly (StrengthCaveats Caveat, ThreadWarningCode Code)[] Caveats =
    [
        (StrengthCaveats.OutsideUnknown, ThreadWarningCode.OutsideUnknown),
        (StrengthCaveats.SleeveTooThin, ThreadWarningCode.SleeveTooThin),
        (StrengthCaveats.SleeveSlit, ThreadWarningCode.SleeveSlit),
        (StrengthCaveats.BendingBeyondRange, ThreadWarningCode.BendingBeyondRange),
    ];

    /// <summary>Of the threads themselves.</summary>
    public static IEnumerable<ThreadWarning> Of(ThreadQuestion question)
    {
        ThreadLimits[] members = [question.External, question.Internal];
        foreach (ThreadLimits member in members.Where(member => member.ClassAssumed))
        {
            yield return new(ThreadWarningCode.ClassAssumed, member);
        }

        // Of the two members of one thread, or of two that are written alike, it is said once.
        foreach (ThreadLimits member in members.DistinctBy(member => (member.Thread.Size, member.Thread.CoarsePitchAssumed)))
        {
            if (member.Thread.CoarsePitchAssumed)
            {
                yield return new(ThreadWarningCode.CoarsePitchAssumed, member);
            }
        }

        foreach (ThreadLimits member in members.DistinctBy(member => member.Thread.Size))
        {
            if (member.Thread.IsSpecial)
            {
                yield return new(ThreadWarningCode.SpecialThread, member);
            }

            if (member.BeyondTables)
            {
                yield return new(ThreadWarningCode.BeyondTables, member);
            }
        }
    }

    /// <summary>Of the engagement of the pair.</summary>
    public static IEnumerable<ThreadWarning> Of(
        ThreadQuestion question, ThreadedPair? pair, RequiredEngagement? engagement, double? dilation)
    {
        if (engagement is null)
        {
            yield return new(ThreadWarningCode.ThreadsDoNotMatch, question.External);
            yield break;
        }

        yield return new(ThreadWarningCode.SteelAssumed, question.External);
        if (pair is null)
        {
            yield return new(ThreadWarningCode.ThreadsMayNotMeet, question.External);
            yield break;
        }

        if (engagement.Strength is null)
        {
            ThreadGender? missing = (question.MaleTensile, question.FemaleTensile) switch
            {
                (null, null) => null,
                (null, _) => ThreadGender.External,
                _ => ThreadGender.Internal,
            };
            yield return new(ThreadWarningCode.StrengthNotChecked, question.External, missing);
        }

        StrengthCaveats caveats = engagement.Strength?.Caveats
            ?? (question.Outside is not null && dilation is null ? StrengthCaveats.SleeveTooThin : StrengthCaveats.None);
        foreach ((StrengthCaveats caveat, ThreadWarningCode code) in Caveats)
        {
            if (caveats.HasFlag(caveat))
            {
                yield return new(code, question.External);
            }
        }
    }
}
