using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using TieRodCalc.Text;
using TieRodCalc.Threads;
using UnitsNet;

namespace TieRodCalc.Tests.Text;

/// <summary>What must hold of every text and every value.</summary>
public class TextProperties
{
    /// <summary>Pieces that values are made of, and some that they are not; what is put together of them comes near to every rule.</summary>
    private static readonly string[] Pieces =
    [
        " ", " ", " ", "-", "+", "±", "+/-", "/", ".", ",", "0", "1", "2", "5", "8", "10", "15", "16", "18", "32", "64", "1.5",
        "0.25", "212", "in", "mm", "cm", "\"", "'", "out", "deg", "°", "kN", "MPa", "lb", "USD", "hex", "round", "D", "diameters", "M",
        "M18", "x", "×", "UNF", "UNC", "2A", "6g", "6H", "LH", "RH", "e", "½", "\u2212", "\u00A0", "\u0000", "\uD800", "\U0001F527", "#",
        "99999999999999999999",
    ];

    /// <summary>Every reader, its value as text or its fault.</summary>
    private static readonly Func<string, (string? Value, ParseFault? Fault)>[] Readers =
    [
        text => Shown(LengthText.Parse(text), value => $"{value.Mm:R}±{value.PlusMinusMm:R}"),
        text => Shown(LengthText.ParseExact(text), value => $"{value.Millimeters:R}"),
        text => Shown(LengthText.ParseSigned(text), value => $"{value.Millimeters:R}"),
        text => Shown(ThreadText.Parse(text), value => $"{ThreadText.Format(value)} {value.CoarsePitchAssumed}"),
        text => Shown(ThreadText.Parse(text, ThreadGender.External), value => $"{ThreadText.Format(value)}"),
        text => Shown(ThreadText.Parse(text, ThreadGender.Internal), value => $"{ThreadText.Format(value)}"),
        text => Shown(ValueText.ParseStress(text), value => $"{value.Megapascals:R}"),
        text => Shown(ValueText.ParseForce(text), value => $"{value.Newtons:R}"),
        text => Shown(ValueText.ParseAngle(text), value => $"{value.Degrees:R}"),
        text => Shown(ValueText.ParseMass(text), value => $"{value.Kilograms:R}"),
        text => Shown(ValueText.ParsePrice(text), value => $"{value.Amount} {value.Currency}"),
        text => Shown(ValueText.ParseOutside(text), value => $"{value.Shape} {value.Across.Mm:R}±{value.Across.PlusMinusMm:R}"),
        text => Shown(ValueText.ParseEngagement(text), value => $"{value.InDiameters:R} {value.AsLength?.Millimeters:R}"),
        text => Shown(ValueText.ParseToe(text), value => $"{value.AsLength?.Millimeters:R} {value.AsAngle?.Degrees:R}"),
    ];

    /// <summary>Every text of the tables of good and bad spellings.</summary>
    private static IEnumerable<string> Spellings =>
    [
        .. LengthTextTests.GoodLengths.Select(row => (string)row[0]),
        .. LengthTextTests.GoodTolerances.Select(row => (string)row[0]),
        .. LengthTextTests.BadLengths.Select(row => (string)row[0]),
        .. ThreadTextTests.GoodUnified.Select(row => (string)row[0]),
        .. ThreadTextTests.GoodMetric.Select(row => (string)row[0]),
        .. ThreadTextTests.Bad.Select(row => (string)row[0]),
        "120 ksi", "10 kN", "-4.5 deg", "0.9 lb", "12.50 USD", "12,50 USD", "hex 1 in",
        "1.5 DIAMETERS", "1/8 IN IN", "0.25° out", "3,5 mm in",
    ];

    [Fact]
    public void Every_sixty_fourth_up_to_30_in_is_exact()
    {
        for (int n = 0; n <= 30 * 64; n++)
        {
            // n * 254 / 640 is n * 25.4 / 64 without a rounding on the way.
            double exact = n * 254 / 640d;
            Length length = Length.FromMillimeters(exact);
            Length below = Length.FromMillimeters(0.0 - exact);
            string mixed = Invariant($"{n / 64} {n % 64}/64");
            Assert.Equal(exact, LengthText.Parse(mixed + " in").Value.Mm);
            Assert.Equal(exact, LengthText.Parse(mixed.Replace(' ', '-') + "\"").Value.Mm);
            Assert.Equal(exact, LengthText.Parse(Invariant($"{n}/64in")).Value.Mm);
            Assert.Equal(exact, LengthText.Parse(Invariant($"{n / 64m} in")).Value.Mm);
            Assert.Equal(length, LengthText.ParseSigned(LengthFormat.Fraction(length)).Value);
            Assert.Equal(below, LengthText.ParseSigned(LengthFormat.Fraction(below)).Value);
        }
    }

    [Property(MaxTest = RandomCounts.Texts, Replay = RandomCounts.Replay)]
    public Property Any_text_gives_a_value_or_a_fault_inside_it() => Prop.ForAll(
        ArbMap.Default.ArbFor<NonNull<string>>(), text => Sound(text.Get));

    [Property(MaxTest = 5 * RandomCounts.Texts, Replay = RandomCounts.Replay)]
    public Property A_text_of_likely_pieces_gives_a_value_or_a_fault_inside_it() => Prop.ForAll(Texts(), Sound);

    [Property(MaxTest = RandomCounts.Texts, Replay = RandomCounts.Replay)]
    public Property A_decimal_length_is_off_by_half_of_its_last_digit_at_most() => Prop.ForAll(Lengths(), mm =>
    {
        var value = Length.FromMillimeters(mm);
        Length inches = LengthText.ParseSigned(LengthFormat.Decimal(value, LengthDisplay.Inch)).Value;
        Length millimeters = LengthText.ParseSigned(LengthFormat.Decimal(value, LengthDisplay.Millimeter)).Value;
        Assert.InRange(Math.Abs(inches.Millimeters - mm), 0, 0.0127 + 1e-9);
        Assert.InRange(Math.Abs(millimeters.Millimeters - mm), 0, 0.005 + 1e-9);
    });

    [Property(MaxTest = RandomCounts.Texts, Replay = RandomCounts.Replay)]
    public Property A_fraction_is_off_by_a_hundred_and_twenty_eighth_at_most_and_says_so() => Prop.ForAll(Lengths(), mm =>
    {
        string text = LengthFormat.Fraction(Length.FromMillimeters(mm));
        double missed = Math.Abs(LengthText.ParseSigned(text.TrimStart('~')).Value.Millimeters - mm);
        Assert.InRange(missed, 0, (25.4 / 128) + 1e-9);
        Assert.True(Math.Abs(missed - 0.0254) < 1e-9 || text.StartsWith('~') == missed > 0.0254, text);
    });

    [Property(MaxTest = RandomCounts.Texts, Replay = RandomCounts.Replay)]
    public Property A_decimal_in_millimeters_is_read_as_the_same_number() => Prop.ForAll(Lengths(), mm =>
        Assert.Equal(mm, LengthText.ParseSigned(Invariant($"{(decimal)mm} mm")).Value.Millimeters));

    [Property(MaxTest = RandomCounts.Texts, Replay = RandomCounts.Replay)]
    public Property A_thread_that_was_written_reads_the_same() => Prop.ForAll(ThreadDesignations().ToArbitrary(), thread =>
    {
        string text = ThreadText.Format(thread);
        Assert.Equal(thread, ThreadText.Parse(text).Value);
        Assert.Equal(text, ThreadText.Format(ThreadText.Parse(text).Value));
        Assert.Equal(thread, ThreadText.Parse(text.Replace('x', '×').Replace(" LH", "-lh", StringComparison.Ordinal)).Value);
    });

    /// <summary>Numbers at the edges of what can be written, and beyond them, with every unit.</summary>
    [Fact]
    public void A_number_at_the_edge_gives_a_value_or_a_fault_inside_it()
    {
        int values = 0;
        foreach (string text in Edges())
        {
            Sound(text);
            values += Readers.Count(read => read(text).Value is not null);
        }

        Assert.InRange(values, 50, int.MaxValue);
    }

    [Theory]
    [InlineData("0.0000000000000000001 mm", 1e-19)]
    [InlineData("00000000000000000001 mm", 1)]
    [InlineData("1/99999999999999999999 in", 25.4e-20)]
    [InlineData("99999999999999999999/99999999999999999999 in", 25.4)]
    [InlineData("0 0/99999999999999999999 in", 0)]
    public void The_smallest_number_that_can_be_written_keeps_its_value(string text, double mm) =>
        Assert.Equal(mm, LengthText.ParseExact(text).Value.Millimeters, 1e-15 * mm);

    /// <summary>Each culture with one spelling in forty, another one in each, and so each spelling in twenty cultures.</summary>
    [Fact]
    public void The_culture_changes_nothing()
    {
        const int Share = 40;
        string[] spellings = [.. Spellings];
        string[][] expected = [.. spellings.Select(text => Results(text).ToArray())];
        string[] formats = [.. Formats()];
        CultureInfo[] cultures = [.. CultureInfo.GetCultures(CultureTypes.AllCultures), OddCulture.Made];
        HashSet<string> differing = [];
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            for (int number = 0; number < cultures.Length; number++)
            {
                CultureInfo.CurrentCulture = cultures[number];
                differing.Add($"{-1.5} {"i".ToUpper(cultures[number])}");
                Assert.Equal(formats, Formats());
                for (int at = number % Share; at < spellings.Length; at += Share)
                {
                    Assert.True(Results(spellings[at]).SequenceEqual(expected[at]), $"{spellings[at]} in {cultures[number].Name}");
                }
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.True(differing.Count > 3, $"The machine knows too few cultures that differ: {string.Join("; ", differing)}");
    }

    private static IEnumerable<string> Edges()
    {
        string nines = new('9', 400);
        string[] numbers =
        [
            "0", "-0", "+0", "-1", "0.0", ".0", "0.", "1e308", "1e-400", "1E5", "4.9e-324", "NaN", "Infinity", "-Infinity", "∞", "0x1F",
            "0.0000000000000000001", "0.00000000000000000001", "99999999999999999999", "100000000000000000000", nines, $"-{nines}",
            $"0.{new string('0', 400)}1", $"{new string('0', 400)}1", $"{nines}/{nines}", $"1/{nines}", $"{nines}/1", "0/0", "1/0", "5 1/0",
            "1/99999999999999999999", "99999999999999999999 99999999999999999998/99999999999999999999", "1//2", "1/2/3", "1 1 1/2", "1/-2",
            string.Concat(Enumerable.Repeat("1/", 2_000)), string.Concat(Enumerable.Repeat("1 ", 2_000)), new string('.', 4_000),
            new string('-', 4_000), new string('±', 4_000), "1,5", "1'000", "1 000", "1_000", "1.000.000", "١٢", "１２", "½", "1½", "²",
        ];
        string[] units =
        [
            "", " in", " cm", " mm ± 0 mm", "°", " kN", " ksi", " lb", " USD", " diameters", " in in", " deg out", "-18 UNF", "-0",
        ];
        return
        [
            .. from number in numbers from unit in units select number + unit,
            .. from number in numbers from start in (string[])["M18x", "5/8-", "hex ", "1 in +/- "] select start + number + " mm",
            .. from number in numbers select "M" + number,
        ];
    }

    private static IEnumerable<string> Results(string text) => Readers.Select(read => read(text)).Select(
        result => result.Fault is { } fault ? Invariant($"{fault.Offset} {fault.Length} {fault.Message}") : result.Value!);

    private static IEnumerable<string> Formats() =>
        from mm in new[] { -227.0125, -0.001, 0, 1234.5 }
        from unit in Enum.GetValues<LengthDisplay>()
        select LengthFormat.Both(Length.FromMillimeters(mm), unit);

    private static void Sound(string text)
    {
        foreach ((string? value, ParseFault? fault) in Readers.Select(read => read(text)))
        {
            Assert.True((value is null) != (fault is null));
            Assert.DoesNotContain("NaN", value ?? string.Empty, StringComparison.Ordinal);
            Assert.DoesNotContain("Infinity", value ?? string.Empty, StringComparison.Ordinal);
            if (fault is not null)
            {
                Assert.InRange(fault.Offset, 0, text.Length);
                Assert.InRange(fault.Length, 0, text.Length - fault.Offset);
                Assert.NotEmpty(fault.Message);
                Assert.DoesNotContain(fault.Message, char.IsControl);
                Assert.DoesNotContain(fault.Message, char.IsSurrogate);
            }
        }
    }

    private static (string? Value, ParseFault? Fault) Shown<T>(Parsed<T> parsed, Func<T, FormattableString> show) =>
        parsed.Fault is null ? (FormattableString.Invariant(show(parsed.Value)), null) : (null, parsed.Fault);

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);

    private static Arbitrary<string> Texts() =>
        Gen.Choose(1, 9).SelectMany(count => Gen.Elements(Pieces).ListOf(count)).Select(pieces => string.Concat(pieces)).ToArbitrary();

    /// <summary>Lengths of four decimals of a millimeter, negative ones too.</summary>
    private static Arbitrary<double> Lengths() => Gen.Choose(-20_000_000, 20_000_000).Select(n => n / 10_000d).ToArbitrary();

    private static Gen<ThreadDesignation> ThreadDesignations() => Gen.OneOf(Unified(), Metric());

    private static Gen<ThreadDesignation> Unified() =>
        from sixtyFourths in Gen.Choose(8, 256)
        from offGrid in Gen.Elements(0, 0, 0.001, 0.0005, 0.000001)
        from halves in Gen.Choose(6, 160)
        let inches = Math.Round((sixtyFourths / 64d) + offGrid, 6)
        where 2 / (double)halves <= inches / 3
        from series in Gen.Elements<UnifiedSeries?>(null, UnifiedSeries.Un, UnifiedSeries.Uns)
        from tolerance in Gen.Elements(null, "1A", "2A", "3A", "1B", "2B", "3B")
        from hand in Gen.Elements(Hand.Right, Hand.Left)
        select new ThreadDesignation(ThreadSize.Unified(Length.FromMillimeters(Millimeters.FromInches(inches)), halves / 2d), hand)
        {
            Series = series,
            ToleranceClass = tolerance,
        };

    private static Gen<ThreadDesignation> Metric() =>
        from tenths in Gen.Choose(10, 1500)
        from twentieths in Gen.Choose(4, 120)
        where twentieths / 20d <= tenths / 30d
        from tolerance in Gen.Elements(null, "6g", "6H", "5g6g", "4H5H", "6e", "8f", "5h", "7G")
        from hand in Gen.Elements(Hand.Right, Hand.Left)
        select new ThreadDesignation(
            ThreadSize.Metric(Length.FromMillimeters(tenths / 10d), Length.FromMillimeters(twentieths / 20d)), hand)
        {
            ToleranceClass = tolerance,
        };
}
