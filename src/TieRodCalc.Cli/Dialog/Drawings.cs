namespace TieRodCalc.Cli.Dialog;

/// <summary>Small drawings of parts, in plain characters, with one dimension marked below.</summary>
internal static class Drawings
{
    /// <summary>Column of the ball center of an end, of the beginning of its thread and of its tip.</summary>
    public const int Ball = 9;
    public const int Thread = 24;
    public const int Tip = 38;

    /// <summary>Columns of the two faces of a sleeve, and of the ends of its threads.</summary>
    public const int InnerFace = 4;
    public const int InnerDepth = 18;
    public const int OuterDepth = 34;
    public const int OuterFace = 48;

    /// <summary>Columns of the ends of a socket's thread; its face is the second one.</summary>
    public const int SocketDepth = 17;
    public const int SocketFace = 30;

    private const string End =
        """
               .---.
              /     \__________________________
             |   +   |__________/\/\/\/\/\/\/\>
              \     /
               '---'
        """;

    private const string Sleeve =
        """
            inner end                         outer end
             ___________________________________________
            |/\/\/\/\/\/\/|               |/\/\/\/\/\/\/|
         -> |             |               |             | <-
            |\/\/\/\/\/\/\|_______________|\/\/\/\/\/\/\|
        """;

    private const string SocketEnd =
        """
               .---.
              /     \_________________
             |   +   |___|/\/\/\/\/\/\| <- the inner end goes in here
              \     /    |\/\/\/\/\/\/|
               '---'
        """;

    /// <summary>A bent end: how far the ball lies beside the thread.</summary>
    public const string Offset =
        """
               .---.
              |  +  | - - - - - - - - - - - - - - - -   ball center
               '-. .'                              ^
                  \ \                              |  offset
                   \ \_______________________      v
                    \_________/\/\/\/\/\/\/\/> - - -   thread axis
        """;

    /// <summary>How the hand of a thread is told.</summary>
    public const string Hand =
        """
              right-hand            left-hand
              |   _-|               |-_   |
              |_-   |               |   -_|
              |   _-|               |-_   |
              |_-   |               |   -_|
          rises to the right     rises to the left     the thread held upright
        """;

    /// <summary>A bore that ends at the thread, and one that goes on.</summary>
    public const string Bore =
        """
              closed                     open
              ________________           __________________
             |/\/\/\/\/|######          |/\/\/\/\/
          -> |         |######       -> |            clear up to
             |\/\/\/\/\|######          |\/\/\/\/\   the other thread
        """;

    /// <summary>A witness hole.</summary>
    public const string Witness =
        """
             ______________________________
            |/\/\/\/\/\/\/\( )/\|
         -> |                   |
            |\/\/\/\/\/\/\/\/\/\|__________
            |<- witness ------>|  from the face to the far edge of the hole
        """;

    /// <summary>A clamp.</summary>
    public const string Clamp =
        """
               .======.
             __|______|____________________
            |/\/\/\/\/\/\/\/\/\/|
         -> |                   |
            |\/\/\/\/\/\/\/\/\/\|__________
               '======'
            |<- clamp->|  from the face to the inner edge of the clamp
        """;

    /// <summary>A countersink.</summary>
    public const string Countersink =
        """
            \   __________________________
             \_/\/\/\/\/\/\/\/\/|
         ->                     |
              _\/\/\/\/\/\/\/\/\|________
             /
            |<>|  from the face to the first full thread
        """;

    /// <summary>A jam nut.</summary>
    public const string Nut =
        """
             ____
            |    |
            |/\/\|
            |    |      washers and tab locks counted in
            |\/\/|
            |____|
            |<-->|  thickness
        """;

    /// <summary>A rod from ball to ball.</summary>
    public const string Rod =
        """
            inner end         sleeve          outer end
              .-.        _______________        .-.
             | + |======|_______________|======| + |
              '-'                               '-'
               |<------- center to center ------>|
        """;

    /// <summary>The offsets of two bent ends.</summary>
    public const string Clocking =
        """
             looking along the rod, from the inner end
               offset of      offset of
               the inner end  the outer end
                   |        /
                   |  <-> /      the angle between them
                   |    /
                   |  /
                   o   thread axis
        """;

    /// <summary>A steering arm from above.</summary>
    public const string Arm =
        """
             seen from above, the front of the car up
                           | o |   o steer axis
                           | | |
                             |     arm: square from the axis to the joint
                             |
                =============+     + center of the outer joint
                     rod           the angle of arm and rod counts from 90
        """;

    /// <summary>Toe plates from above.</summary>
    public const string Plates =
        """
             seen from above, the front of the car up
               |<-- in front -->|
               /                \     ^
              /                  \    | width of the plates
             /                    \   v
             |<----- behind ----->|
             toe: behind minus in front, more behind is toe-in
        """;

    /// <summary>An end with a dimension marked.</summary>
    public static string OfEnd(int from, int to, string label) => $"{End}\n{Mark(from, to, label)}";

    /// <summary>A sleeve with a dimension marked.</summary>
    public static string OfSleeve(int from, int to, string label) => $"{Sleeve}\n{Mark(from, to, label)}";

    /// <summary>An end with a socket, a dimension marked.</summary>
    public static string OfSocket(int from, int to, string label) =>
        $"{SocketEnd}\n{Mark(from, to, label)}";

    /// <summary>A dimension line between two columns, its label inside where there is room and beside it where not.</summary>
    private static string Mark(int from, int to, string label)
    {
        int inside = to - from - 3;
        string named = label.Length + 2 <= inside ? $" {label} " : string.Empty;
        int before = (inside - named.Length) / 2;
        string line = $"|<{new string('-', before)}{named}{new string('-', inside - named.Length - before)}>|";
        return new string(' ', from) + line + (named.Length == 0 ? $"  {label}" : string.Empty);
    }
}
