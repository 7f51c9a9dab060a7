namespace TieRodCalc.Text;

/// <summary>Finds the valid name that somebody most likely meant.</summary>
public static class Nearest
{
    /// <summary>Longer names are not compared: nobody mistypes a name of that length by a letter or two.</summary>
    private const int Longest = 64;

    /// <summary>One letter in common says nothing.</summary>
    private const int ShortestPart = 2;

    /// <summary>The nearest of some names, or null where none is near; of equally near ones the first.</summary>
    /// <remarks>
    /// Near is a name in other letter case, one that differs in a third of the letters (at least one, at most three), and one that
    /// contains what was written or begins it.
    /// </remarks>
    /// <param name="written">What was written.</param>
    /// <param name="names">The valid names.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string? Of(string written, IEnumerable<string> names)
    {
        ArgumentNullException.ThrowIfNull(written);
        ArgumentNullException.ThrowIfNull(names);

        // A third of the letters may be wrong, at least one and at most three (no source).
        int limit = Math.Clamp(written.Length / 3, 1, 3);
        string? nearest = null;
        foreach (string name in names)
        {
            int distance = Distance(written, name, limit);
            if (distance <= limit)
            {
                nearest = name;
                limit = distance - 1;
            }
        }

        return nearest ?? PartOf(written, names);
    }

    /// <summary>
    /// The first name that what was written is a part of, or that begins it: <c>jam_nuts</c> for <c>nuts</c>, <c>in</c> for
    /// <c>inch</c>.
    /// </summary>
    private static string? PartOf(string written, IEnumerable<string> names)
    {
        foreach (string name in names)
        {
            bool part = written.Length >= ShortestPart && name.Contains(written, StringComparison.OrdinalIgnoreCase);
            if (part || (name.Length >= ShortestPart && written.StartsWith(name, StringComparison.OrdinalIgnoreCase)))
            {
                return name;
            }
        }

        return null;
    }

    /// <summary>
    /// How many letters must be put in, left out, exchanged or swapped with their neighbor (optimal string alignment
    /// distance); above the limit any number above it.
    /// </summary>
    internal static int Distance(string one, string other, int limit)
    {
        if (Math.Abs(one.Length - other.Length) > limit || one.Length > Longest || other.Length > Longest)
        {
            return limit + 1;
        }

        Span<int> before = stackalloc int[Longest + 1];
        Span<int> last = stackalloc int[Longest + 1];
        Span<int> row = stackalloc int[Longest + 1];
        for (int j = 0; j <= other.Length; j++)
        {
            last[j] = j;
        }

        for (int i = 1; i <= one.Length; i++)
        {
            row[0] = i;
            int least = i;
            for (int j = 1; j <= other.Length; j++)
            {
                int exchange = last[j - 1] + (Same(one[i - 1], other[j - 1]) ? 0 : 1);
                row[j] = Math.Min(exchange, Math.Min(last[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && Same(one[i - 1], other[j - 2]) && Same(one[i - 2], other[j - 1]))
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }

                least = Math.Min(least, row[j]);
            }

            if (least > limit)
            {
                return limit + 1;
            }

            Span<int> free = before;
            before = last;
            last = row;
            row = free;
        }

        return last[other.Length];
    }

    private static bool Same(char one, char other) => char.ToLowerInvariant(one) == char.ToLowerInvariant(other);
}
