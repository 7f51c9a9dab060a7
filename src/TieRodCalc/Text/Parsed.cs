namespace TieRodCalc.Text;

/// <summary>Why a text could not be read.</summary>
/// <param name="Offset">Where in the text, counted in characters from 0.</param>
/// <param name="Length">How many characters from there are meant; 0 where something is missing.</param>
/// <param name="Message">What is wrong and what was expected.</param>
public sealed record ParseFault(int Offset, int Length, string Message);

/// <summary>What came of reading a text: a value, or a fault with its place.</summary>
/// <typeparam name="T">Type of the value.</typeparam>
public readonly record struct Parsed<T>
{
    private readonly T? _value;

    /// <summary>A text that was read.</summary>
    public Parsed(T value) => _value = value;

    /// <summary>A text that could not be read.</summary>
    public Parsed(ParseFault fault) => Fault = fault;

    /// <summary>The fault, or null where the text was read.</summary>
    public ParseFault? Fault { get; }

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">The text could not be read.</exception>
    public T Value => Fault is null ? _value! : throw new InvalidOperationException(Fault.Message);

    /// <summary>What the next step makes of the value, or the fault.</summary>
    internal Parsed<TNext> Then<TNext>(Func<T, Parsed<TNext>> next) => Fault is null ? next(_value!) : new Parsed<TNext>(Fault);
}
