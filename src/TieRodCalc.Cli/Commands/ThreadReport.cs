using TieRodCalc.Parts;
using TieRodCalc.Planning;
using TieRodCalc.Rods;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Cli.Commands;

/// <summary>What is asked of a thread or a pair.</summary>
/// <param name="External">The male.</param>
/// <param name="Internal">The female.</param>
/// <param name="IsPair">Whether both were named; otherwise they are the two members of one thread.</param>
/// <param name="MaleTensile">Tensile strength of the male, where it is said.</param>
/// <param name="FemaleTensile">Tensile strength of the female, where it is said.</param>
/// <param name="Outside">The outside of the female, where it is said.</param>
internal sealed record ThreadQuestion(
    ThreadLimits External, ThreadLimits Internal, bool IsPair, Pressure? MaleTensile, Pressure? FemaleTensile, Outside? Outside);

/// <summary>What there is to say to a question.</summary>
/// <param name="Question">The question.</param>
/// <param name="Difference">What keeps the two threads from going together.</param>
/// <param name="Fit">What happens when they are turned together.</param>
/// <param name="Pair">The pair, null where the threads do not match or do not meet at their loosest limits.</param>
/// <param name="Engagement">What the usual rule and the strengths ask for; null where the threads do not match.</param>
/// <param name="Dilation"><c>C1</c>, where an outside is known and it is computed.</param>
/// <param name="Tensile">The load that breaks the male, where its strength is known.</param>
/// <param name="Loads">The loads at the required engagement, where both strengths are known.</param>
/// <param name="LookAlikes">Of a single thread.</param>
/// <param name="Warnings">What was assumed or not checked.</param>
internal sealed record ThreadReport(
    ThreadQuestion Question,
    ThreadDifference Difference,
    ThreadFit Fit,
    ThreadedPair? Pair,
    RequiredEngagement? Engagement,
    double? Dilation,
    Force? Tensile,
    PairLoads? Loads,
    IReadOnlyList<LookAlike> LookAlikes,
    IReadOnlyList<ThreadWarning> Warnings)
{
    /// <summary>Whether they go together.</summary>
    public bool Matches => Difference == ThreadDifference.None;

    /// <summary>Works everything out.</summary>
    public static ThreadReport Of(ThreadQuestion question)
    {
        ThreadDesignation male = question.External.Thread;
        ThreadDesignation female = question.Internal.Thread;
        ThreadDifference difference = Rod.Difference(male, female);
        bool matches = difference == ThreadDifference.None;
        ThreadedPair? pair = matches ? ThreadedPair.Of(male, female) : null;
        FemaleWall wall = question.Outside?.Wall() ?? FemaleWall.Unknown;
        RequiredEngagement? engagement = matches ? EngagementOf(question, pair, wall) : null;
        return new(
            question,
            difference,
            ThreadFit.Of(male, female)!,
            pair,
            engagement,
            pair?.DilationOf(wall),
            question.MaleTensile is { } strength ? pair?.TensileLoad(strength) : null,
            engagement is { Strength: not null }
                ? pair!.Loads(question.MaleTensile!.Value, question.FemaleTensile!.Value, engagement.Required, wall)
                : null,
            question.IsPair ? [] : LookAlike.Of(male),
            [.. ThreadWarnings.Of(question), .. ThreadWarnings.Of(question, pair, engagement, pair?.DilationOf(wall))]);
    }

    private static RequiredEngagement EngagementOf(ThreadQuestion question, ThreadedPair? pair, FemaleWall wall) => new(
        UsualEngagement.SteelDiameters,
        UsualEngagement.SteelDiameters * question.External.Thread.Size.Diameter,
        null,
        question is { MaleTensile: { } male, FemaleTensile: { } female } ? pair?.RequiredEngagement(male, female, wall) : null);
}
