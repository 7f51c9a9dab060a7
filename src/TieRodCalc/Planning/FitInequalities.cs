namespace TieRodCalc.Planning;

/// <summary>
/// What must hold so that some cuts and some setting keep all limits: <see cref="FitConditions"/> with the cuts eliminated. All are
/// straight in every dimension; where all of them are zero or more, and only there, the rod can be built.
/// </summary>
internal static class FitInequalities
{
    /// <summary>How many there are.</summary>
    public const int Count = 112;

    // Where the conditions of the fit stand, by what the cuts do to them.
    private static readonly int[] s_free = [0, 2, 4, 6, 8, 10, 12, 14, 28];
    private static readonly int[] s_mostInner = [1, 3, 5, 7];
    private static readonly int[] s_mostOuter = [9, 11, 13, 15];
    private static readonly int[] s_mostTotal = [16, 17, 18, 19, 20, 21, 22, 23, 24];
    private static readonly int[] s_leastTotal = [25, 29];
    private const int LeastInner = 26;
    private const int LeastOuter = 27;

    /// <summary>By how much each holds; below zero it is missed.</summary>
    public static void Slacks(in RodProblem wanted, Span<double> slacks)
    {
        Span<double> fit = stackalloc double[FitConditions.Count];
        FitConditions.Slacks(wanted, default, fit);
        int next = 0;
        foreach (int free in s_free)
        {
            slacks[next++] = fit[free];
        }

        foreach (int most in s_mostInner)
        {
            slacks[next++] = fit[most];
            slacks[next++] = fit[most] + fit[LeastInner];
        }

        foreach (int most in s_mostOuter)
        {
            slacks[next++] = fit[most];
            slacks[next++] = fit[most] + fit[LeastOuter];
        }

        foreach (int most in s_mostTotal)
        {
            slacks[next++] = fit[most];
            slacks[next++] = fit[most] + fit[LeastInner];
            slacks[next++] = fit[most] + fit[LeastOuter];
            slacks[next++] = fit[most] + fit[LeastInner] + fit[LeastOuter];
            foreach (int least in s_leastTotal)
            {
                slacks[next++] = fit[most] + fit[least];
            }
        }

        foreach (int least in s_leastTotal)
        {
            foreach (int inner in s_mostInner)
            {
                foreach (int outer in s_mostOuter)
                {
                    slacks[next++] = fit[inner] + fit[outer] + fit[least];
                }
            }
        }

        slacks[next] = wanted.Turning.Adjusts ? double.PositiveInfinity : -wanted.Shorter - wanted.Longer;
    }
}
