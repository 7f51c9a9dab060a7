using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace TieRodCalc.Mutants;

/// <summary>A test that passes, the milliseconds it takes and the mutants whose place it comes by.</summary>
internal sealed record KnownTest(string Assembly, string Name, double Milliseconds, IReadOnlySet<int> Reached)
{
    public static KnownTest Read(string line) => line.Split('\t') is [string milliseconds, string assembly, string name, string reached]
        ? new(assembly, name, double.Parse(milliseconds, CultureInfo.InvariantCulture),
            reached.Split(',', StringSplitOptions.RemoveEmptyEntries).Select(id => int.Parse(id, CultureInfo.InvariantCulture)).ToHashSet())
        : throw new InvalidDataException(line);

    /// <inheritdoc/>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Milliseconds:F3}\t{Assembly}\t{Name}\t{string.Join(',', Reached.Order())}");
}

/// <summary>Some tests, run within this process, one after the other.</summary>
internal sealed class TestSuite : IDisposable
{
    private const int FirstRun = 10;
    private readonly XunitTestFramework _framework = new(new Sink());
    private readonly Dictionary<IXunitTestCase, ITestFrameworkExecutor> _executors = [];
    private readonly List<Action> _forget = [];

    /// <summary>The tests of a list, in its order.</summary>
    public TestSuite(IReadOnlyList<KnownTest> tests)
    {
        Dictionary<string, IXunitTestCase> found = tests.Select(test => test.Assembly).Distinct()
            .SelectMany(Discovered).DistinctBy(test => test.DisplayName).ToDictionary(test => test.DisplayName);
        Tests = [.. tests.Select(test => (found[test.Name], test.Reached))];
    }

    /// <summary>The tests of an assembly whose names match.</summary>
    public TestSuite(string assembly, Regex names) => Tests = [.. Discovered(assembly).Where(test => names.IsMatch(test.DisplayName))
        .Select(test => (test, (IReadOnlySet<int>)new HashSet<int>()))];

    /// <summary>The tests, each with the mutants that it reaches.</summary>
    public IReadOnlyList<(IXunitTestCase Test, IReadOnlySet<int> Reached)> Tests { get; }

    /// <summary>The tests of an assembly that pass in less than a time, shortest first; the first run of each also pays for compiling.</summary>
    public static IEnumerable<KnownTest> Known(string assembly, Regex names, double milliseconds, Mutation mutation)
    {
        using TestSuite suite = new(assembly, names);
        List<KnownTest> known = [];
        foreach (IXunitTestCase test in suite.Tests.Select(test => test.Test))
        {
            if (Passing() < FirstRun * milliseconds && Passing() is double taken && taken < milliseconds)
            {
                known.Add(new(assembly, test.DisplayName, taken, mutation.Reached(() => _ = Passing())));
            }

            double Passing()
            {
                suite.Forget();
                long start = Stopwatch.GetTimestamp();
                return suite.FirstFailed([test]) is null ? Stopwatch.GetElapsedTime(start).TotalMilliseconds : double.PositiveInfinity;
            }
        }
        return known.OrderBy(test => test.Milliseconds);
    }

    /// <summary>Lets the tests forget what they have worked out once for all of them: it was by another mutant, or by none.</summary>
    public void Forget() => _forget.ForEach(forget => forget());

    /// <summary>The first of some tests that fails; null where none does.</summary>
    public IXunitTestCase? FirstFailed(IEnumerable<IXunitTestCase> tests)
    {
        foreach (IGrouping<ITestFrameworkExecutor, IXunitTestCase> group in tests.GroupBy(test => _executors[test]))
        {
            using Sink sink = new();
            group.Key.RunTests(group, sink, new Options());
            sink.Finished.WaitOne();
            if (sink.Failed is not null)
            {
                return sink.Failed;
            }
        }
        return null;
    }

    /// <inheritdoc/>
    public void Dispose() => _framework.Dispose();

    private List<IXunitTestCase> Discovered(string name)
    {
        Assembly assembly = Assembly.Load(name);

        // What they hold for good is worked out before a mutant is on.
        Mutation.Initialize(assembly);
        _forget.AddRange(assembly.GetTypes().Where(type => !type.ContainsGenericParameters)
            .SelectMany(type => type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
            .Where(field => field.FieldType.IsGenericType && field.FieldType.GetGenericTypeDefinition() == typeof(Lazy<>))
            .Select(field => Forgetting(field.GetValue(null)!)));
        ITestFrameworkExecutor executor = _framework.GetExecutor(assembly.GetName());
        using ITestFrameworkDiscoverer discoverer = _framework.GetDiscoverer(Reflector.Wrap(assembly));
        using Sink found = new();
        discoverer.Find(false, found, new Options());
        found.Finished.WaitOne();
        found.Discovered.ForEach(test => _executors[test] = executor);
        return found.Discovered;
    }

    /// <summary>What sets a value that was not worked out yet back to that.</summary>
    private static Action Forgetting(object lazy)
    {
        (FieldInfo Field, object? Value)[] now = [.. lazy.GetType().GetFields(BindingFlags.Instance | BindingFlags.NonPublic)
            .Select(field => (field, field.GetValue(lazy)))];
        return () => Array.ForEach(now, part => part.Field.SetValue(lazy, part.Value));
    }

    private sealed class Sink : Xunit.LongLivedMarshalByRefObject, IMessageSink, IDisposable
    {
        public ManualResetEvent Finished { get; } = new(false);

        public List<IXunitTestCase> Discovered { get; } = [];

        public IXunitTestCase? Failed { get; private set; }

        /// <summary>Whether to go on.</summary>
        public bool OnMessage(IMessageSinkMessage message)
        {
            switch (message)
            {
                case ITestCaseDiscoveryMessage found:
                    Discovered.Add((IXunitTestCase)found.TestCase);
                    break;
                case ITestFailed failed:
                    Failed ??= (IXunitTestCase)failed.TestCase;
                    break;
                case ITestAssemblyFinished or IDiscoveryCompleteMessage:
                    Finished.Set();
                    break;
            }
            return Failed is null;
        }

        public void Dispose() => Finished.Dispose();
    }

    /// <summary>A theory is one test; one test at a time.</summary>
    private sealed class Options : ITestFrameworkDiscoveryOptions, ITestFrameworkExecutionOptions
    {
        private readonly Dictionary<string, object?> _values = new()
        {
            ["xunit.discovery.PreEnumerateTheories"] = false,
            ["xunit.discovery.SynchronousMessageReporting"] = true,
            ["xunit.execution.DisableParallelization"] = true,
            ["xunit.execution.SynchronousMessageReporting"] = true,
        };

        public TValue GetValue<TValue>(string name) => _values.GetValueOrDefault(name) is TValue value ? value : default!;

        public void SetValue<TValue>(string name, TValue value) => _values[name] = value;
    }
}
