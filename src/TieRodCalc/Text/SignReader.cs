namespace TieRodCalc.Text;

/// <summary>Reads the sign in front of a number: plus, hyphen or the minus of U+2212.</summary>
internal static class SignReader
{
    /// <summary>Takes a sign where there is one: 1 or -1.</summary>
    public static int Take(TextCursor cursor)
    {
        if (cursor.TakeIf("-") || cursor.TakeIf("\u2212"))
        {
            return -1;
        }

        cursor.TakeIf("+");
        return 1;
    }

    /// <summary>The fault at a sign, or null where there is none.</summary>
    public static ParseFault? Refuse(TextCursor cursor, string message) =>
        cursor.Current.Is("-") || cursor.Current.Is("\u2212") || cursor.Current.Is("+")
            ? TextCursor.FaultAt(cursor.Current, message)
            : null;
}
