using System.Reflection;
using System.Runtime.CompilerServices;

namespace TieRodCalc.Mutants;

/// <summary>The switch of the mutated library: which of its mutants is on, and which a run comes by.</summary>
internal sealed class Mutation
{
    private readonly Assembly _library = Assembly.Load("TieRodCalc");
    private readonly Type _control;

    public Mutation() => _control = _library.GetTypes().Single(type => type.Name == "MutantControl");

    /// <summary>The mutant that is on; -1 for none.</summary>
    public int Active
    {
        set => _control.GetField("ActiveMutant")!.SetValue(null, value);
    }

    /// <summary>The mutants that something comes by; while it is recorded, none is on.</summary>
    public IReadOnlySet<int> Reached(Action run)
    {
        FieldInfo capture = _control.GetField("CaptureCoverage")!;
        object recording = _control.GetField("_coverageLock", BindingFlags.Static | BindingFlags.NonPublic)!.GetValue(null)!;
        MethodInfo taking = _control.GetMethod("GetCoverageData")!;
        HashSet<int> reached = [];
        capture.SetValue(null, true);
        var running = Task.Run(run);

        // The list is looked through at every place that is come by, so it is emptied all the while.
        while (!running.Wait(1))
        {
            Take();
        }

        capture.SetValue(null, false);
        Take();
        return reached;

        void Take()
        {
            lock (recording)
            {
                reached.UnionWith(((IList<int>[])taking.Invoke(null, null)!).SelectMany(list => list));
            }
        }
    }

    /// <summary>
    /// Runs every static initializer of the library: what these compute is decided once in a process, so that a mutant that they come by has a
    /// process of its own.
    /// </summary>
    public void Initialize() => Initialize(_library);

    /// <summary>Runs every static initializer of an assembly.</summary>
    public static void Initialize(Assembly assembly)
    {
        foreach (Type type in assembly.GetTypes().Where(type => !type.ContainsGenericParameters))
        {
            try
            {
                RuntimeHelpers.RunClassConstructor(type.TypeHandle);
            }
            catch (TypeInitializationException)
            {
                // The tests will meet it.
            }
        }
    }
}
